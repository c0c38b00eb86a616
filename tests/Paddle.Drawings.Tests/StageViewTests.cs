using System.Globalization;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Units;
using Paddle.Drawings.Pages;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using static Paddle.Drawings.Tests.Support.Printed;

namespace Paddle.Drawings.Tests;

/// <summary>The pictures of the build sheet as the page has them: every word and figure read back, and what is drawn measured.</summary>
public class StageViewTests
{
    private const double Tiny = 0.003;

    private sealed record Sample(DesignReport Report, BuildSheet Sheet, XDocument Page)
    {
        public DrawingUnits Units => Report.Specification.Units;
        public PaddlePlaces Places => Report.Specification.Form.Places;

        public XElement Picture(string name) => Page.Descendants(SvgReader.Svg + "svg").Single(svg => svg.Elements().Any(part => (string?)part.Attribute("id") == $"{name}-title"));

        public XElement Picture(BuildStage stage) => Picture(Sheet.Stages[(int)stage].Id);

        public StageStation At(BuildStage stage, string mark) => Sheet.Stages[(int)stage].Stations.Single(station => station.Mark == mark);
    }

    private static readonly Dictionary<string, Sample> Known = [];

    // Of one piece in millimetres; a straight end in inches; a bent one with cloth at the tip and two finishes; a grip hollowed on one face.
    public static TheoryData<string> Names => ["plain", "own table", "bent", "one-sided"];

    private static Sample Of(string name)
    {
        if (Known.TryGetValue(name, out var known)) return known;
        var report = name switch
        {
            "own table" => PaddleDesigner.Design(SampleDesigns.InInchesOf(SampleDesigns.Asked(SampleDesigns.OwnOffsets))),
            "bent" => PaddleDesigner.Design(SampleDesigns.Asked("teardrop", 12) with { Finish = new(SurfaceFinish.Varnish, 3, SurfaceFinish.Oil, 2, true) }),
            "one-sided" => PaddleDesigner.Design(SampleDesigns.InInchesOf(SampleDesigns.Varied("beavertail").Specification)),
            _ => SampleDesigns.Varied("ottertail"),
        };
        var sheet = BuildSheet.For(report);
        return Known[name] = new(report, sheet, XDocument.Parse(BuildSheetPage.Write(report, sheet, SampleDesigns.Context(report.Specification.Units))));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_word_and_figure_beside_a_stage_is_the_sheets(string name)
    {
        var sample = Of(name);
        var sheet = sample.Sheet;
        var closing = "Filled: now. Dashed: before; between them comes off.";
        Said Line(string words, params (double, Printed)[] lengths) => new(words, lengths);
        Said[] Beside(StageStation at) =>
            [at.Mark is null ? $"No. {at.Number}" : $"No. {at.Number}, {at.Mark}", Line("at #", (at.XMm, Near)), Line("half #", (at.HalfBreadthMm, Up)), Line("thick #", (at.ThicknessMm, Up))];
        Said[] Hand(BuildStage stage) => sample.At(stage, "lower hand") is var at
            ? [Line($"No. {at.Number}, lower hand, at #", (at.XMm, Near)), Line("# wide, # thick", (2 * at.HalfBreadthMm, Up), (at.ThicknessMm, Up))] : [];
        Said[] Widest(BuildStage stage) => Beside(sample.At(stage, "widest"));
        Said[] Other(BuildStage stage) => Beside(OtherOf(sample, stage));

        Says(BuildStage.Blank,
        [
            Line("# long, # wide, # thick", (sheet.Blank.LengthMm, Up), (sheet.Blank.WidthMm, Up), (sheet.Blank.ThicknessMm, Near)), .. Widest(BuildStage.Blank), "Thin upright lines: the paddle's edges",
        ]);
        Says(BuildStage.Sawn, [.. Widest(BuildStage.Sawn), Line("Saw # outside the thin upright lines", (2, Shaving)), closing]);
        Says(BuildStage.EdgeLined, [.. Widest(BuildStage.EdgeLined), Line("Edge on: its centre line, and lines # apart", (sample.Report.Sizes.EdgeThicknessMm, Up)), closing]);
        Says(BuildStage.BladeRoughed, [.. Widest(BuildStage.BladeRoughed), .. Other(BuildStage.BladeRoughed), closing]);
        Says(BuildStage.BladePlaned, [.. Widest(BuildStage.BladePlaned), .. Other(BuildStage.BladePlaned), closing]);

        // Shares of the regular figures about a circle, stretched; a gauge of 7, 10 and 7 parts of 24.
        var (square, gauge) = (sample.At(BuildStage.ShaftEightSided, "lower hand"), sheet.Gauge.BetweenFencesMm);
        double wide = 2 * square.HalfBreadthMm, thick = square.ThicknessMm, eight = 1 - 1 / Math.Sqrt(2), sixteen = (Math.Tan(Math.PI / 8) - Math.Tan(Math.PI / 16)) / 2;
        Says(BuildStage.ShaftEightSided,
        [
            .. Hand(BuildStage.ShaftEightSided), "Square first; from each edge strike", Line("# on the faces,", (eight * wide, Near)), Line("# on the sides", (eight * thick, Near)),
            Line("~", (gauge * 7 / 24, Fine)), Line("~", (gauge * 10 / 24, Fine)), Line("~", (gauge * 7 / 24, Fine)), Line("Gauge: #", (gauge, Fine)), "between fences", closing,
        ]);
        Says(BuildStage.ShaftSixteenSided,
        [
            .. Hand(BuildStage.ShaftSixteenSided), "From each corner of the eight strike", Line("# on the faces,", (sixteen * wide, Near)), Line("# on the sides,", (sixteen * thick, Near)),
            // A corner facet is as long as the chamfer's two legs make it: 0.2929 √(w² + t²) by 0.2599 of it.
            Line("# on the corner facets", (sixteen / Math.Tan(Math.PI / 8) * eight * Math.Sqrt(wide * wide + thick * thick), Near)), closing,
        ]);
        Says(BuildStage.ShaftRounded, [.. Hand(BuildStage.ShaftRounded), .. Widest(BuildStage.ShaftRounded), closing]);

        var (kerf, grip) = (sheet.Kerf, Crest(sample));
        Said[] other = kerf.OtherFaceDepthMm > 0.05 ? [Line("The other face lies # below the board's there", (kerf.OtherFaceDepthMm, Near))] : [];
        Says(BuildStage.GripCut,
        [
            Line($"Kerf # from the top on {(name == "one-sided" ? "the hollowed face" : "both faces")}", (kerf.PlaceMm, Near)), Line("Kerf # deep; # stays", (kerf.DepthMm, Near), (kerf.LeftMm, Up)), .. other,
            Line($"No. {grip.Number} at #: half #, thick #", (grip.XMm, Near), (grip.HalfBreadthMm, Up), (grip.ThicknessMm, Up)), closing,
        ]);
        Assert.Equal(name == "one-sided", other.Length == 1);
        Says(BuildStage.Sanded, [.. Hand(BuildStage.Sanded), .. Widest(BuildStage.Sanded), "Filled: now, at its designed sizes."]);

        Said[] tape = sheet.Finish.MaskingLineMm is { } line ? [Line("Tape round the shaft # from the top (upright line)", (line, Rough))] : [];
        Said[] cloth = name == "bent" ? [Line("Cloth over the last # of both faces", (sheet.Tip.LengthMm, Near))] : [];
        Says(BuildStage.Finished, [.. tape, .. cloth, Line("Balance point (round sign) #, aim #", (sample.Report.Finished.CentreOfMassMm, Rough), (sample.Report.Balance.TargetMm, Rough))]);
        Assert.True(name != "bent" || tape.Length == 1);

        void Says(BuildStage stage, Said[] expected)
        {
            var svg = sample.Picture(stage);
            var read = Texts(svg, "text");
            Said.AssertAll(expected, read, sample.Units);

            // Who hears the picture is told the same, and the stage's title.
            Assert.Equal($"{sheet.Stages[(int)stage].Title}: what to see", svg.Element(SvgReader.Svg + "title")!.Value);
            var told = svg.Element(SvgReader.Svg + "desc")!.Value;
            Assert.StartsWith("The paddle with the reach of the work marked under it; ", told, StringComparison.Ordinal);
            Assert.All(read.Where(text => !text.StartsWith("Filled", StringComparison.Ordinal) && text.Any(char.IsLetter)), text => Assert.Contains(text, told, StringComparison.Ordinal));
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Faces_are_drawn_to_scale_with_the_places_of_the_work(string name)
    {
        var sample = Of(name);
        var (blank, places, outline) = (sample.Sheet.Blank, sample.Places, sample.Report.Outline);
        foreach (var stage in Enum.GetValues<BuildStage>())
        {
            var svg = sample.Picture(stage);
            var inks = Ink.Of(svg);
            var face = inks.First(ink => ink.Layer == "outline");

            // One scale both ways: the picture is as wide as the board is long, and half a millimetre stays clear on either side.
            var scale = face.Width / places.OverallMm;
            Assert.Equal(81 / blank.LengthMm, scale, 1e-5);
            double X(double mm) => 0.5 + scale * (mm + blank.EndTrimMm);
            var centre = inks.First(ink => ink.Layer == "centre");
            foreach (var piece in outline.Pieces.ToArray())
            {
                foreach (var side in (int[])[1, -1]) Assert.Contains(face.Points, p => Math.Abs(p.X - X(piece.X3)) < Tiny && Math.Abs(p.Y - centre.Top - side * scale * piece.Y3) < Tiny);
            }

            Assert.Equal(stage != BuildStage.Blank, face.IsWood);
            if (stage is BuildStage.Blank or BuildStage.Sawn)
            {
                var board = inks.Single(ink => ink.Layer == "blank");
                Assert.Equal((0.5, 81.0, scale * blank.WidthMm), (board.Left, board.Width, board.Height), (a, b) => Near3(a, b));
                Assert.Equal(centre.Top, board.Centre.Y, Tiny);
                Assert.Equal(stage == BuildStage.Blank, board.IsWood);
            }

            var stations = sample.Sheet.Stages[(int)stage].Stations;
            if (stage == BuildStage.Blank)
                Assert.Equal(stations.Select(one => X(one.XMm)), inks.Where(ink => ink.Layer == "stations").Select(ink => ink.Left), (a, b) => Math.Abs(a - b) < Tiny);

            // Numbers above the places whose sections are shown.
            var shown = Shown(sample, stage);
            Assert.Equal(shown.Select(one => one.Number.ToString(CultureInfo.InvariantCulture)), Texts(svg, "stations"));
            var marks = svg.Descendants(SvgReader.Svg + "text").Where(text => IsOf(text, "stations")).ToList();
            Assert.Equal(shown.Select(one => X(one.XMm)), marks.Select(text => SvgReader.Number((string)text.Attribute("x")!)), (a, b) => Math.Abs(a - b) < Tiny);
            if (stage == BuildStage.Blank) continue;
            Assert.Equal(shown.Select(one => X(one.XMm)), inks.Where(ink => ink.Layer == "stations").Select(ink => ink.Left), (a, b) => Math.Abs(a - b) < Tiny);

            // The line under the face reaches as far as the work does.
            var (from, to) = stage switch
            {
                BuildStage.BladeRoughed or BuildStage.BladePlaned => (places.ThroatMm, places.OverallMm),
                BuildStage.ShaftEightSided or BuildStage.ShaftSixteenSided => (places.GripEndMm, places.ThroatMm),
                BuildStage.ShaftRounded => (places.GripEndMm, places.OverallMm),
                BuildStage.GripCut => (0, places.GripEndMm),
                _ => (0, places.OverallMm),
            };
            var reach = inks.First(ink => ink.Layer == "marks" && ink.Points.Count == 2 && ink.Height == 0);
            Assert.Equal((X(from), X(to)), (reach.Left, reach.Right), (a, b) => Math.Abs(a.Item1 - b.Item1) < Tiny && Math.Abs(a.Item2 - b.Item2) < Tiny);
            Assert.True(reach.Top > face.Bottom);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Sections_are_drawn_as_large_as_they_are_now_and_were_before(string name)
    {
        var sample = Of(name);
        foreach (var stage in Enum.GetValues<BuildStage>().Where(stage => stage is not (BuildStage.GripCut or BuildStage.Finished)))
        {
            var sections = Ink.Of(sample.Picture(stage)).Where(ink => ink.Layer == "sections").ToList();
            StageStation[] drawn = stage switch
            {
                BuildStage.Blank or BuildStage.Sawn or BuildStage.EdgeLined => [sample.At(stage, "widest")],
                BuildStage.BladeRoughed or BuildStage.BladePlaned => [sample.At(stage, "widest"), OtherOf(sample, stage)],
                BuildStage.ShaftEightSided or BuildStage.ShaftSixteenSided => [sample.At(stage, "lower hand")],
                _ => [sample.At(stage, "lower hand"), sample.At(stage, "widest")],
            };
            var now = sections.Where(ink => ink.IsWood).ToList();
            var before = sections.Where(ink => ink.IsDashed).ToList();
            Assert.Equal(drawn.Length, now.Count);
            Assert.Equal(stage is BuildStage.Blank or BuildStage.Sanded ? 0 : drawn.Length, before.Count);
            for (var k = 0; k < drawn.Length; k++)
            {
                // A blade fills the room that it has, a shaft is shown at one scale in all pictures.
                var isShaft = drawn[k].Mark == "lower hand";
                var scale = isShaft ? 0.62 : 56 / sample.Sheet.Blank.WidthMm;
                AssertSize(drawn[k], now[k]);

                // A blade's edge is as thick as it is designed, and by the wood that is left on both faces.
                var left = sample.Sheet.Stages[(int)stage].Allowance.BladeFaceMm;
                if (!isShaft && left is { } face)
                {
                    var edge = now[k].Points.Where(p => Math.Abs(p.X - now[k].Right) < Tiny).ToList();
                    var designed = SolidLook.At(sample.Report, [drawn[k].XMm]).EdgeHalfThickness[0] / (sample.Report.Sizes.EdgeThicknessMm / 2);
                    Assert.Equal(scale * designed * (sample.Report.Sizes.EdgeThicknessMm + 2 * face), edge.Max(p => p.Y) - edge.Min(p => p.Y), Tiny);
                }

                if (before.Count == 0) continue;
                AssertSize(sample.Sheet.Stages[(int)stage - 1].Stations[drawn[k].Number - 1], before[k]);
                Assert.Equal(now[k].Centre, before[k].Centre, (a, b) => Math.Abs(a.X - b.X) < Tiny && Math.Abs(a.Y - b.Y) < Tiny);

                void AssertSize(StageStation at, Ink ink)
                {
                    Assert.Equal(scale * 2 * at.HalfBreadthMm, ink.Width, Tiny);
                    Assert.Equal(scale * at.ThicknessMm, ink.Height, Tiny);
                }
            }

            // How many corners it has is what the stage makes of it.
            var corners = stage switch { BuildStage.ShaftEightSided => (8, 4), BuildStage.ShaftSixteenSided => (16, 8), BuildStage.ShaftRounded => (129, 16), BuildStage.BladeRoughed => (130, 4), _ => (0, 0) };
            if (corners.Item1 == 0) continue;
            Assert.InRange(now[0].Points.Count, corners.Item1, corners.Item1 + 3);
            Assert.Equal(corners.Item2, before[0].Points.Count);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Lines_to_strike_lie_where_their_figures_say(string name)
    {
        var sample = Of(name);

        // Saw lines and edge lines at the widest place.
        foreach (var stage in (BuildStage[])[BuildStage.Blank, BuildStage.Sawn, BuildStage.EdgeLined, BuildStage.BladeRoughed, BuildStage.BladePlaned, BuildStage.ShaftRounded, BuildStage.Sanded])
        {
            var inks = Ink.Of(sample.Picture(stage));
            var at = sample.At(stage, "widest");
            var section = inks.Last(ink => ink.Layer == "sections" && ink.IsWood && Math.Abs(ink.Width - 56 / sample.Sheet.Blank.WidthMm * 2 * at.HalfBreadthMm) < Tiny);
            var scale = section.Width / (2 * at.HalfBreadthMm);
            if (stage <= BuildStage.EdgeLined)
            {
                var upright = inks.Where(ink => ink.Layer == "marks" && ink.IsUpright).OrderBy(ink => ink.Left).ToList();
                Assert.Equal(2, upright.Count);
                var half = scale * sample.Report.Specification.Form.Blade.WidthMm / 2;
                Assert.Equal((section.Centre.X - half, section.Centre.X + half), (upright[0].Left, upright[1].Left), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.01 && Math.Abs(a.Item2 - b.Item2) < 0.01);
                Assert.All(upright, line => Assert.True(line.Top < section.Top && line.Bottom > section.Bottom));
                continue;
            }

            var edges = inks.Where(ink => ink.Layer == "gauge" && ink.Points.Count == 2 && ink.Height == 0 && ink.Top > section.Top && ink.Bottom < section.Bottom).ToList();
            Assert.Equal(4, edges.Count);
            Assert.All(edges, edge => Assert.Equal(scale * sample.Report.Sizes.EdgeThicknessMm / 2, Math.Abs(edge.Top - section.Centre.Y), Tiny));
            Assert.All(edges, edge => Assert.True(Math.Abs(edge.Left - section.Right) < Tiny || Math.Abs(edge.Right - section.Left) < Tiny));
            Assert.Equal(2, edges.Count(edge => edge.Top < section.Centre.Y));
            Assert.Equal(2, edges.Count(edge => edge.Left > section.Centre.X));
        }

        // The edge from its side: as much larger as the board is drawn thicker, its two lines about its middle.
        var side = Ink.Of(sample.Picture(BuildStage.EdgeLined));
        var bar = side.Last(ink => ink.Layer == "outline");
        var lines = side.Where(ink => ink.Layer == "gauge" && ink.Height == 0).OrderBy(ink => ink.Top).ToList();
        Assert.Equal(2, lines.Count);
        Assert.Equal(sample.Report.Sizes.EdgeThicknessMm / sample.At(BuildStage.EdgeLined, "widest").ThicknessMm, (lines[1].Top - lines[0].Top) / bar.Height, 0.002);
        Assert.Equal(bar.Centre.Y, (lines[0].Top + lines[1].Top) / 2, Tiny);
        Assert.Contains(side, ink => ink.Layer == "centre" && Math.Abs(ink.Top - bar.Centre.Y) < Tiny && ink.Left < bar.Left && ink.Right > bar.Right);

        // Eight sides: the square, and a tick off each corner, 0.2929 of a side from its ends (geometry of the octagon).
        var eight = Ink.Of(sample.Picture(BuildStage.ShaftEightSided)).Where(ink => ink.Layer == "gauge").ToList();
        var now = Ink.Of(sample.Picture(BuildStage.ShaftEightSided)).First(ink => ink.Layer == "sections" && ink.IsWood);
        var square = eight[0];
        Assert.Equal((now.Left, now.Top, now.Width, now.Height), (square.Left, square.Top, square.Width, square.Height), (a, b) =>
            Math.Abs(a.Left - b.Left) < Tiny && Math.Abs(a.Top - b.Top) < Tiny && Math.Abs(a.Width - b.Width) < Tiny && Math.Abs(a.Height - b.Height) < Tiny);
        var share = 1 - 1 / Math.Sqrt(2);
        var ticks = eight.Where(ink => ink.Points.Count == 2 && Math.Abs(Math.Max(ink.Width, ink.Height) - 2) < Tiny && ink.Bottom < square.Bottom + 2.1).ToList();
        Assert.Equal(8, ticks.Count);
        foreach (var (x, y) in ((int, int)[])[(1, 1), (1, -1), (-1, 1), (-1, -1)])
        {
            var (inX, inY) = (square.Centre.X + x * square.Width * (0.5 - share), square.Centre.Y + y * square.Height * (0.5 - share));
            Assert.Contains(ticks, tick => tick.IsUpright && Math.Abs(tick.Left - inX) < Tiny && Math.Abs((y > 0 ? tick.Top : tick.Bottom) - (square.Centre.Y + y * square.Height / 2)) < Tiny);
            Assert.Contains(ticks, tick => tick.Height < Tiny && Math.Abs(tick.Top - inY) < Tiny && Math.Abs((x > 0 ? tick.Left : tick.Right) - (square.Centre.X + x * square.Width / 2)) < Tiny);
        }

        // Sixteen: dots on the octagon about the section, each 0.2599 of its facet from a corner.
        var sixteen = Ink.Of(sample.Picture(BuildStage.ShaftSixteenSided));
        var dots = sixteen.Where(ink => ink.Layer == "gauge" && ink.Fill == "#000").ToList();
        var round = sixteen.First(ink => ink.Layer == "sections" && ink.IsDashed);
        Assert.Equal(16, dots.Count);
        var atHand = sample.At(BuildStage.ShaftEightSided, "lower hand");
        var facet = (Math.Tan(Math.PI / 8) - Math.Tan(Math.PI / 16)) / (2 * Math.Tan(Math.PI / 8));
        for (var k = 0; k < 8; k++)
        {
            (double X, double Y) Corner(int i) => (0.62 * atHand.HalfBreadthMm * Math.Cos(Math.PI / 8 + i * Math.PI / 4) / Math.Cos(Math.PI / 8), 0.31 * atHand.ThicknessMm * Math.Sin(Math.PI / 8 + i * Math.PI / 4) / Math.Cos(Math.PI / 8));
            var (a, b) = (Corner(k), Corner(k + 1));
            foreach (var part in (double[])[facet, 1 - facet])
                Assert.Contains(dots, dot => Math.Abs(dot.Centre.X - round.Centre.X - a.X - part * (b.X - a.X)) < Tiny && Math.Abs(dot.Centre.Y - round.Centre.Y - a.Y - part * (b.Y - a.Y)) < Tiny);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void The_gauge_is_drawn_in_its_own_parts(string name)
    {
        var sample = Of(name);
        var svg = sample.Picture(BuildStage.ShaftEightSided);
        var inks = Ink.Of(svg).Where(ink => ink.Layer == "gauge").ToList();
        var wood = inks.Where(ink => ink.IsWood).ToList();
        Assert.Equal(3, wood.Count);
        var (bar, fences) = (wood[0], wood.Skip(1).OrderBy(ink => ink.Left).ToList());
        Assert.Equal((bar.Left, bar.Right), (fences[0].Left, fences[1].Right));
        Assert.All(fences, fence => Assert.Equal(bar.Bottom, fence.Top, Tiny));
        var between = fences[1].Left - fences[0].Right;
        Assert.Equal(1.2 * sample.Sheet.Gauge.BetweenFencesMm, between, Tiny);

        // Seven, ten and seven parts of 24.
        var points = inks.Where(ink => ink.IsUpright && ink.StrokeMm > 0.4).OrderBy(ink => ink.Left).ToList();
        Assert.Equal([fences[0].Right + between * 7 / 24, fences[0].Right + between * 17 / 24], points.Select(point => point.Left), (a, b) => Math.Abs(a - b) < Tiny);
        Assert.All(points, point => Assert.True(Math.Abs(point.Top - bar.Bottom) < Tiny && point.Bottom < fences[0].Bottom));
        var figures = svg.Descendants(SvgReader.Svg + "text").Where(text => !text.Value.Any(char.IsLetter) && IsOf(text, "text")).Select(text => SvgReader.Number((string)text.Attribute("x")!)).ToList();
        Assert.Equal([fences[0].Right + between * 3.5 / 24, fences[0].Right + between / 2, fences[0].Right + between * 20.5 / 24], figures, (a, b) => Math.Abs(a - b) < Tiny);
    }

    [Theory, MemberData(nameof(Names))]
    public void The_grip_is_drawn_in_its_board_with_the_kerf_down_to_what_stays(string name)
    {
        var sample = Of(name);
        var (kerf, blank, places) = (sample.Sheet.Kerf, sample.Sheet.Blank, sample.Places);
        var inks = Ink.Of(sample.Picture(BuildStage.GripCut));
        var board = inks.Single(ink => ink.Layer == "blank");
        var grip = inks.Last(ink => ink.Layer == "outline");
        var scale = board.Width / places.GripEndMm;
        Assert.Equal(scale * blank.ThicknessMm, board.Height, 2 * Tiny);
        Assert.Equal((board.Left, board.Centre.Y), (grip.Left, inks.Last(ink => ink.Layer == "centre").Top), (a, b) => Math.Abs(a.Left - b.Left) < Tiny && Math.Abs(a.Item2 - b.Item2) < Tiny);
        Assert.InRange(grip.Width / scale, places.GripEndMm + 20, places.GripEndMm + 30.1);

        // The grip's faces, three tenths outside the designed ones and never outside the board.
        foreach (var side in (int[])[1, -1])
        {
            foreach (var (x, y) in grip.Points.Where(p => side * (board.Centre.Y - p.Y) > 0.02 * board.Height))
            {
                var solid = SolidLook.At(sample.Report, [Math.Clamp((x - board.Left) / scale, 0, places.OverallMm)]);
                var offset = (x - board.Left) / scale < places.GripEndMm - 0.5 ? solid.CentreOffsetMm(0) : 0;
                var face = offset * side + Math.Min(solid.HalfThickness[0] + 0.3, blank.ThicknessMm / 2);
                Assert.Equal(face, side * (board.Centre.Y - y) / scale, 0.06);
            }
        }

        var kerfs = inks.Where(ink => ink.Layer == "gauge" && ink.IsUpright).OrderBy(ink => ink.Top).ToList();
        Assert.Equal(name == "one-sided" ? 1 : 2, kerfs.Count);
        Assert.All(kerfs, line => Assert.Equal(kerf.PlaceMm, (line.Left - board.Left) / scale, 0.01));
        Assert.Equal(kerf.DepthMm, (kerfs[0].Bottom - board.Top) / scale, 0.01);
        Assert.True(kerfs[0].Top < board.Top);
        if (kerfs.Count == 2) Assert.Equal(kerf.LeftMm, (kerfs[1].Top - kerfs[0].Bottom) / scale, 0.01);
        else Assert.Equal(kerf.LeftMm, (board.Bottom - kerfs[0].Bottom) / scale - kerf.OtherFaceDepthMm, 0.01);
    }

    [Theory, MemberData(nameof(Names))]
    public void The_finished_paddle_has_its_tape_and_its_balance_point(string name)
    {
        var sample = Of(name);
        var inks = Ink.Of(sample.Picture(BuildStage.Finished));
        var face = inks.First(ink => ink.Layer == "outline");
        var scale = face.Width / sample.Places.OverallMm;
        var upright = inks.Where(ink => ink.Layer == "marks" && ink.IsUpright).ToList();
        if (sample.Sheet.Finish.MaskingLineMm is { } tape) Assert.Equal(tape, (Assert.Single(upright).Left - face.Left) / scale, 0.05);
        else Assert.Empty(upright);
        AssertBalance(sample, inks, face, scale);
    }

    [Theory, MemberData(nameof(Names))]
    public void The_picture_of_the_paddle_letters_the_places_that_it_shows(string name)
    {
        var sample = Of(name);
        var svg = sample.Picture("paddle");
        var (inks, form, places) = (Ink.Of(svg), sample.Report.Specification.Form, sample.Places);
        var face = inks.First(ink => ink.Layer == "outline");
        var scale = face.Width / places.OverallMm;
        Assert.Equal(170 / places.OverallMm, scale, 1e-5);
        Assert.Equal(scale * Math.Max(form.Blade.WidthMm, form.Grip.WidthMm), face.Height, 0.1);
        AssertBalance(sample, inks, face, scale);

        // Each name beside a line that runs from it to the edge.
        var marks = new (string Name, double XMm, Printed How)[]
        {
            ("Top hand", places.TopHandMm, Near), ("Lower hand", places.LowerHandMm, Near), ("Balance", Landmarks.BalanceXMm(sample.Report), Rough),
            ("Throat", places.ThroatMm, Near), ("Widest", places.ThroatMm + form.Blade.WidestAt * places.BladeMm, Near),
        };
        foreach (var (mark, x, how) in marks)
        {
            var text = svg.Descendants(SvgReader.Svg + "text").Single(one => one.Value.StartsWith($"{mark} ", StringComparison.Ordinal));
            new Said($"{mark} #", (x, how)).AssertIn(text.Value, sample.Units);
            var foot = SvgReader.Number((string)text.Attribute("y")!);
            var line = inks.Single(ink => ink.Layer == "stations" && Math.Abs(ink.Left - face.Left - scale * x) < Tiny);
            Assert.Equal(line.Left + 0.8, SvgReader.Number((string)text.Attribute("x")!), 2 * Tiny);
            Assert.True(line.Top < foot && line.Bottom > foot);
            Assert.Equal(face.Centre.Y + scale * sample.Report.Outline.HalfBreadthMm(x), line.Bottom, 0.01);
            Assert.Contains(text.Value, svg.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
        }

        Said overall = new("Overall #, blade # × #", (places.OverallMm, Near), (places.BladeMm, Near), (form.Blade.WidthMm, Near));
        var words = Assert.Single(svg.Descendants(SvgReader.Svg + "text"), text => text.Value.StartsWith("Overall", StringComparison.Ordinal)).Value;
        overall.AssertIn(words, sample.Units);
        Assert.Equal("The paddle, face and edge, grip to the left", svg.Element(SvgReader.Svg + "title")!.Value);
        Assert.StartsWith(words, svg.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);

        // The edge below it, at the same scale: the blade as far off the shaft's line as it is bent.
        var edge = inks.Last(ink => ink.Layer == "outline");
        var bend = form.BendDegrees * Math.PI / 180;
        Assert.Equal(face.Left, edge.Left, Tiny);
        Assert.Equal(scale * (places.ThroatMm + places.BladeMm * Math.Cos(bend)), edge.Width, 0.15);
        var thickest = 2 * scale * sample.Report.Stations.HalfThickness.Max();
        Assert.InRange(edge.Height, scale * places.BladeMm * Math.Sin(bend) + (bend > 0 ? 0 : thickest - 0.05), scale * places.BladeMm * Math.Sin(bend) + thickest + 0.05);
        if (bend > 0) Assert.True(edge.Points.MaxBy(p => p.X).Y < edge.Centre.Y);
        Assert.True(edge.Top > face.Bottom);
    }

    // A circle and two opposite quarters of it, where the finished paddle balances.
    private static void AssertBalance(Sample sample, List<Ink> inks, Ink face, double scale)
    {
        var quarters = inks.Where(ink => ink.Layer == "marks" && ink.Fill == "#000").ToList();
        Assert.Equal(2, quarters.Count);
        var x = (quarters.Min(ink => ink.Left) + quarters.Max(ink => ink.Right)) / 2;
        var beyond = sample.Report.Finished.CentreOfMassMm - sample.Places.ThroatMm;
        var along = beyond <= 0 ? sample.Report.Finished.CentreOfMassMm : sample.Places.ThroatMm + beyond / Math.Cos(sample.Report.Specification.Form.BendDegrees * Math.PI / 180);
        Assert.Equal(along, (x - face.Left) / scale, 0.05);
        Assert.All(quarters, ink => Assert.True(ink.Left >= x - 2 && ink.Right <= x + 2));
    }

    // Beside the widest place a second one is shown where the blade differs: near three quarters of it, or 0.4 where the widest lies there.
    private static StageStation OtherOf(Sample sample, BuildStage stage)
    {
        var share = sample.Report.Specification.Form.Blade.WidestAt > 0.6 ? 0.4 : 0.75;
        return sample.Sheet.Stages[(int)stage].Stations.MinBy(at => Math.Abs(at.XMm - sample.Places.ThroatMm - share * sample.Places.BladeMm))!;
    }

    private static StageStation Crest(Sample sample) =>
        sample.Sheet.Stages[(int)BuildStage.GripCut].Stations.Where(at => at.XMm <= sample.Places.GripEndMm).MaxBy(at => at.HalfBreadthMm)!;

    private static StageStation[] Shown(Sample sample, BuildStage stage)
    {
        StageStation[] shown = stage switch
        {
            BuildStage.BladeRoughed or BuildStage.BladePlaned => [sample.At(stage, "widest"), OtherOf(sample, stage)],
            BuildStage.ShaftEightSided or BuildStage.ShaftSixteenSided => [sample.At(stage, "lower hand")],
            BuildStage.ShaftRounded or BuildStage.Sanded => [sample.At(stage, "lower hand"), sample.At(stage, "widest")],
            _ => [],
        };
        return [.. shown.OrderBy(one => one.XMm)];
    }

    private static List<string> Texts(XElement svg, string layer) => [.. svg.Descendants(SvgReader.Svg + "text").Where(text => IsOf(text, layer)).Select(text => text.Value)];

    private static bool IsOf(XElement item, string layer) => ((string)item.Parent!.Attribute("class")!).Split(' ')[0] == layer;

    private static bool Near3((double, double, double) a, (double, double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < Tiny && Math.Abs(a.Item2 - b.Item2) < Tiny && Math.Abs(a.Item3 - b.Item3) < Tiny;
}
