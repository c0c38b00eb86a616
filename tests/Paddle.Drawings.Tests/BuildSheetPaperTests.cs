using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Layout;
using Paddle.Design.Outline;
using Paddle.Design.Units;
using Paddle.Drawings.Files;
using Paddle.Drawings.Pages;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using UglyToad.PdfPig;

namespace Paddle.Drawings.Tests;

/// <summary>The build sheet as it hangs on the wall: read back from the page, from the PDF and from the pictures.</summary>
public partial class BuildSheetPaperTests
{
    private static readonly Dictionary<(string, DrawingUnits), DesignReport> Known = [];

    public static TheoryData<string, DrawingUnits> Designs()
    {
        var data = new TheoryData<string, DrawingUnits>();
        foreach (var name in (string[])[.. BladeFamilies.All.Select(family => family.Id), SampleDesigns.OwnOffsets, "too weak", "T-grip, hollowed on one face", "child", "all that is long", "glued up"])
        {
            foreach (var units in Enum.GetValues<DrawingUnits>()) data.Add(name, units);
        }

        return data;
    }

    [Theory, MemberData(nameof(Designs))]
    public void It_has_six_pages_at_most_and_they_are_the_papers(string name, DrawingUnits units)
    {
        var report = Report(name, units);
        foreach (var (paper, shortMm, longMm) in ((PaperSize, double, double)[])[(PaperSize.A4, 210, 297), (PaperSize.Letter, 215.9, 279.4)])
        {
            using var pdf = Pdf(report, paper);
            Assert.InRange(pdf.NumberOfPages, 3, 6);
            Assert.All(pdf.GetPages(), page =>
            {
                Assert.Equal((shortMm, longMm), (Math.Round(page.Width * 25.4 / 72, 1), Math.Round(page.Height * 25.4 / 72, 1)));
                Assert.All(page.Letters, letter => Assert.InRange(letter.StartBaseLine.X, 8 * 72 / 25.4, page.Width - 8 * 72 / 25.4));
                Assert.All(page.Letters, letter => Assert.InRange(letter.StartBaseLine.Y, 8 * 72 / 25.4, page.Height - 8 * 72 / 25.4));
            });
        }
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("child", DrawingUnits.Inch)]
    [InlineData("all that is long", DrawingUnits.Metric)]
    [InlineData("all that is long", DrawingUnits.Inch)]
    public void With_the_makers_board_on_it_it_still_has_six(string name, DrawingUnits units)
    {
        var report = Report(name, units);
        foreach (var (lengthMm, widthMm, isHeld) in ((double, double, bool)[])[(2200, 400, true), (700, 400, false)])
        {
            var plan = BoardPlan.For(report, lengthMm, widthMm, 60, OutlineSaw.BandSaw);
            using var stream = new WriteOnlyStream();
            new BuildSheetPdf(BuildSheet.For(report), plan).Write(report, SampleDesigns.Context(units) with { DesignCode = Code }, stream);
            using var pdf = PdfDocument.Open(stream.Bytes);
            Assert.InRange(pdf.NumberOfPages, 3, 6);

            var page = XDocument.Parse(BuildSheetPage.Write(report, BuildSheet.For(report), SampleDesigns.Context(units), plan));
            var words = page.Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value).ToList();
            Assert.Equal(plan.Count, words.Count(text => text.StartsWith("paddle no. ", StringComparison.Ordinal) && text.Contains(':', StringComparison.Ordinal)));
            Assert.Equal(isHeld, plan.Count > 0);
            if (!isHeld) Assert.Contains(page.Descendants().Where(element => element.Name.LocalName == "p"), line => line.Value.Contains("Board of yours", StringComparison.Ordinal));
            foreach (var place in plan.Layout.Placements) Assert.Contains(words, text => text.Contains(DrawnLength.Text(place.YMm, units), StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("teardrop", DrawingUnits.Inch)]
    [InlineData("too weak", DrawingUnits.Metric)]
    public void Page_and_paper_say_the_same(string name, DrawingUnits units)
    {
        var report = Report(name, units);
        using var pdf = Pdf(report, PaperSize.A4);
        var printed = Plain(string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
        string[] telling = ["h1", "h2", "p", "li", "caption", "th", "td", "text"];
        var said = Page(report).Root!.Element("body")!.Descendants().Where(element => telling.Contains(element.Name.LocalName)).Select(element => element.Value).ToList();
        Assert.InRange(said.Count, 500, 2000);
        Assert.All(said, words => Assert.Contains(Plain(words), printed, StringComparison.Ordinal));

        static string Plain(string words) => words.Replace(" ", "", StringComparison.Ordinal).Replace("\n", "", StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Designs))]
    public void The_tables_and_pictures_have_the_sheets_own_figures(string name, DrawingUnits units)
    {
        var report = Report(name, units);
        var (sheet, page) = (BuildSheet.For(report), Page(report));
        var rows = page.Descendants("table").Select(table => table.Descendants("tbody").Single().Elements().Select(row => row.Elements().Select(cell => cell.Value).ToList()).ToList()).ToList();

        Assert.Equal(11, rows[0].Count);
        foreach (var (stage, row) in sheet.Stages.Zip(rows[0]).Where(pair => sheet.Weighs(pair.First.Stage)))
        {
            Assert.Equal([stage.MassG.Value, stage.MassG.Low, stage.MassG.High], Numbers(Grams().Match(row[1]).Value), (a, b) => Math.Abs(a - b) <= 0.5);
            Assert.Equal(Length(row[2][..row[2].IndexOf('(', StringComparison.Ordinal)], units), stage.BalanceMm.Value, units == DrawingUnits.Metric ? 0.5 : 0.8);
        }

        var thinned = sheet.Stages.Where(stage => stage.Stage is >= BuildStage.BladeRoughed and <= BuildStage.Sanded).ToList();
        Assert.Equal(sheet.Stages[0].Stations.Count, rows[1].Count);
        for (var i = 0; i < rows[1].Count; i++)
        {
            AssertUp(sheet.Stages[(int)BuildStage.Sawn].Stations[i].HalfBreadthMm, rows[1][i][3], units);
            AssertUp(sheet.Stages[(int)BuildStage.Sanded].Stations[i].HalfBreadthMm, rows[1][i][4], units);
            for (var k = 0; k < thinned.Count; k++) AssertUp(thinned[k].Stations[i].ThicknessMm, rows[1][i][5 + k], units);
        }

        foreach (var (line, row) in sheet.ShaftLines.Zip(rows[2]))
        {
            double[] near = [line.LineOnFaceMm, line.LineOnSideMm, line.SixteenOnFaceMm, line.SixteenOnSideMm, line.SixteenOnCornerMm];
            Assert.Equal(near, ((int[])[4, 5, 7, 8, 9]).Select(i => Length(row[i], units)), (a, b) => Math.Abs(a - b) <= (units == DrawingUnits.Metric ? 0.051 : 0.4));
        }

        foreach (var (stage, k) in sheet.Stages.Select((stage, k) => (stage, k)))
        {
            var words = string.Join(" | ", StageView.Draw(report, sheet, k).Items.OfType<TextItem>().Select(text => text.Text));
            foreach (Match match in Section().Matches(words))
            {
                var station = stage.Stations[int.Parse(match.Groups["no"].Value, CultureInfo.InvariantCulture) - 1];
                Assert.Equal(station.XMm, Length(match.Groups["x"].Value, units), units == DrawingUnits.Metric ? 0.051 : 0.8);
                AssertUp(station.HalfBreadthMm, match.Groups["half"].Value, units);
                AssertUp(station.ThicknessMm, match.Groups["thick"].Value, units);
            }

            var cut = stage.Stage is BuildStage.ShaftEightSided or BuildStage.ShaftSixteenSided or BuildStage.Finished;
            Assert.Equal(!cut, Section().IsMatch(words));
            if (stage.Stage == BuildStage.ShaftEightSided)
            {
                var hand = sheet.ShaftLines.Single(line => stage.Stations[line.Number - 1].Mark == "lower hand");
                Assert.Contains($"{DrawnLength.Text(hand.LineOnFaceMm, units)} on the faces", words, StringComparison.Ordinal);
                Assert.Contains($"Gauge: {sheet.Gauge.Between(units)}", words, StringComparison.Ordinal);
            }

            if (stage.Stage == BuildStage.GripCut) Assert.Contains($"{DrawnLength.Text(sheet.Kerf.LeftMm, units, LengthRounding.Up)} stays", words, StringComparison.Ordinal);
        }
    }

    [Theory, MemberData(nameof(Designs))]
    public void Nothing_on_a_picture_runs_into_anything_and_who_cannot_see_it_is_told(string name, DrawingUnits units)
    {
        var report = Report(name, units);
        var sheet = BuildSheet.For(report);
        Sheet[] pictures = [StageView.Paddle(report, units), .. sheet.Stages.Select((_, i) => StageView.Draw(report, sheet, i))];
        Assert.Equal(pictures.Length, pictures.Select(picture => picture.Name).Distinct().Count());
        foreach (var picture in pictures)
        {
            TextLayout.AssertOnSheet(picture);
            TextLayout.AssertApart(picture);
            Assert.True(picture.Title.Length > 10 && picture.Description.Length > 40);
            Assert.InRange(picture.HeightMm, 10, 90);
            foreach (var end in picture.Items.OfType<PathItem>().SelectMany(path => path.Path.Steps).Select(step => step.End))
                Assert.True(end.X >= -0.01 && end.X <= picture.WidthMm + 0.01 && end.Y >= -0.01 && end.Y <= picture.HeightMm + 0.01, picture.Name);
        }
    }

    [Theory]
    [InlineData(BuildStage.BladeRoughed, "widest")]
    [InlineData(BuildStage.ShaftEightSided, "lower hand")]
    [InlineData(BuildStage.ShaftRounded, "lower hand")]
    public void A_section_is_drawn_in_the_proportions_that_it_has(BuildStage stage, string mark)
    {
        var report = Report("ottertail", DrawingUnits.Metric);
        var sheet = BuildSheet.For(report);
        var station = sheet.Stages[(int)stage].Stations.Single(one => one.Mark == mark);
        var sections = StageView.Draw(report, sheet, (int)stage).Items.OfType<PathItem>().Where(path => path.Layer == Layer.Sections).ToList();
        var now = sections.First(path => path.Fill == Fill.Wood).Path.Steps.Select(step => step.End).ToList();
        Assert.Equal(
            2 * station.HalfBreadthMm / station.ThicknessMm, (now.Max(p => p.X) - now.Min(p => p.X)) / (now.Max(p => p.Y) - now.Min(p => p.Y)), 1e-6);

        // What was there before is dashed and nowhere smaller.
        var before = sections.First(path => path.Line == LineKind.Hidden).Path.Steps.Select(step => step.End).ToList();
        Assert.True(before.Max(p => p.X) >= now.Max(p => p.X) - 1e-9 && before.Max(p => p.Y) >= now.Max(p => p.Y) - 1e-9);
    }

    [Fact]
    public void Cautions_stand_once_in_full_and_are_named_where_they_apply()
    {
        var report = Report("ottertail", DrawingUnits.Metric);
        var (sheet, page) = (BuildSheet.For(report), Page(report));
        var words = page.Root!.Element("body")!.Value;
        foreach (var caution in sheet.Stages.SelectMany(stage => stage.Cautions).Distinct()) Assert.Single(Regex.Matches(words, Regex.Escape(caution.Text)));
        var stages = page.Descendants("section").Where(section => section.Descendants("p").Any(p => (string?)p.Attribute("class") == "stop")).ToList();
        Assert.Equal(11, stages.Count);
        Assert.Contains("Take care (see Cautions): edge tools, power plane, noise and wood dust.", stages[3].Value, StringComparison.Ordinal);
        Assert.All(stages, stage => Assert.Contains("STOP when: ", stage.Value, StringComparison.Ordinal));
        Assert.True(page.Descendants("h2").First(heading => heading.Value == "Cautions").IsBefore(stages[0]));
        Assert.Equal(sheet.Tools, page.Descendants("ul").Single(list => (string?)list.Attribute("class") == "check").Elements().Select(item => item.Value));
    }

    [Fact]
    public void The_tools_are_those_of_the_design()
    {
        var jigsaw = BuildSheet.For(Report("ottertail", DrawingUnits.Inch), new(Saw: OutlineSaw.Jigsaw)).Tools;
        Assert.Contains(jigsaw, tool => tool.StartsWith("To saw: jigsaw", StringComparison.Ordinal));
        var bare = PaddleDesigner.Design(SampleDesigns.Asked("ottertail") with { Finish = new(default, 0, default, 0, true) });
        var finish = BuildSheet.For(bare).Tools.Single(tool => tool.StartsWith("To finish", StringComparison.Ordinal));
        Assert.StartsWith("To finish: glass cloth 203 g/m²", finish, StringComparison.Ordinal);
        Assert.DoesNotContain("oil", finish, StringComparison.Ordinal);
    }

    // As long as real ones.
    private static readonly string Code = "p1-" + new string('w', 600);

    private static DesignReport Report(string name, DrawingUnits units)
    {
        if (Known.TryGetValue((name, units), out var known)) return known;
        var report = name switch
        {
            "too weak" => SampleDesigns.TooWeak,
            "all that is long" => PaddleDesigner.Design(SampleDesigns.Asked("teardrop", 12, gripFaces: GripFaces.OneSided, species: "western-redcedar") with
            {
                Pinned = new(ShaftWidthMm: 23, ShaftThicknessMm: 23),
                Finish = new(SurfaceFinish.Varnish, FinishChoice.MostCoats, SurfaceFinish.Oil, FinishChoice.MostCoats, true),
            }),
            "glued up" => PaddleDesigner.Design(SampleDesigns.Asked("beavertail", species: "sitka-spruce").GluedUp(Wings)),
            "child" => SampleDesigns.Of("ottertail", handSpacingMm: 520),
            "T-grip, hollowed on one face" => SampleDesigns.Of("ottertail", style: GripStyle.T, faces: GripFaces.OneSided),
            _ => SampleDesigns.Varied(name),
        };
        return Known[(name, units)] = units == DrawingUnits.Inch ? PaddleDesigner.Design(SampleDesigns.InInchesOf(report.Specification)) : report;
    }

    private static Laminate Wings { get; } = new(
        [new(SampleDesigns.Wood("sitka-spruce"), 34), new(SampleDesigns.Wood("black-walnut"), 6), new(SampleDesigns.Wood("black-cherry"), 70)], true, Adhesive.All[0]);

    private static XDocument Page(DesignReport report) =>
        XDocument.Parse(BuildSheetPage.Write(report, BuildSheet.For(report), SampleDesigns.Context(report.Specification.Units) with { DesignCode = Code }));

    private static PdfDocument Pdf(DesignReport report, PaperSize paper)
    {
        using var stream = new WriteOnlyStream();
        new BuildSheetPdf(BuildSheet.For(report)).Write(report, SampleDesigns.Context(report.Specification.Units, paper: paper) with { DesignCode = Code }, stream);
        return PdfDocument.Open(stream.Bytes);
    }

    // What is printed of a size of wood is never less than the size, and a step more at most; 0.05 mm is the same on an inch rule.
    private static void AssertUp(double mm, string printed, DrawingUnits units) => Assert.InRange(
        Length(printed, units), mm - (units == DrawingUnits.Metric ? 1e-4 : 0.051), mm + (units == DrawingUnits.Metric ? 0.1 : 25.4 / (mm > 300 ? 16 : 32)));

    private static double Length(string printed, DrawingUnits units)
    {
        var figure = printed.Trim();
        figure = figure.EndsWith(" mm", StringComparison.Ordinal) || figure.EndsWith(" in", StringComparison.Ordinal) ? figure[..^3] : figure;
        return units == DrawingUnits.Inch ? InchRule.Read(figure) : double.Parse(figure, CultureInfo.InvariantCulture);
    }

    private static IEnumerable<double> Numbers(string words) => Regex.Matches(words, @"\d+").Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"\d+ g \(\d+ to \d+\)")]
    private static partial Regex Grams();

    [GeneratedRegex(@"No\. (?<no>\d+)[^|]*?(?: \| )?at (?<x>[\d ./]+ (?:mm|in))(?: \| |: )half (?<half>[\d ./]+ (?:mm|in))(?: \| |, )thick (?<thick>[\d ./]+ (?:mm|in))")]
    private static partial Regex Section();
}
