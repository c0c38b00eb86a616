using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Units;
using Paddle.Drawings.Pages;
using Paddle.Drawings.Tests.Support;

namespace Paddle.Drawings.Tests;

/// <summary>The printed build sheet: one system of units, the design's own finish, the stations of template and offsets.</summary>
public partial class BuildSheetPageTests
{
    public static TheoryData<SurfaceFinish, SurfaceFinish, bool> Finishes()
    {
        var data = new TheoryData<SurfaceFinish, SurfaceFinish, bool>();
        foreach (var blade in Enum.GetValues<SurfaceFinish>())
        {
            foreach (var shaft in Enum.GetValues<SurfaceFinish>()) data.Add(blade, shaft, blade == SurfaceFinish.Varnish);
        }

        return data;
    }

    [Theory]
    [InlineData("ottertail")]
    [InlineData("teardrop")]
    [InlineData("beavertail")]
    public void A_sheet_in_inches_has_no_millimetre_and_one_in_millimetres_no_inch(string family)
    {
        foreach (var report in (DesignReport[])[
            PaddleDesigner.Design(SampleDesigns.InInchesOf(SampleDesigns.Varied(family).Specification)), SampleDesigns.TooWeak, SampleDesigns.TooHeavy,
            SampleDesigns.Varied(family), SampleDesigns.GluedUpInInches, PaddleDesigner.Design(SampleDesigns.InInchesOf(SampleDesigns.TooWeak.Specification))])
        {
            var words = Words(Page(report));
            var foreign = report.Specification.Units == DrawingUnits.Inch ? Millimetres() : Inches();
            Assert.Empty(foreign.Matches(words).Select(match => words[Math.Max(0, match.Index - 40)..Math.Min(words.Length, match.Index + 40)]));
            Assert.True((report.Specification.Units == DrawingUnits.Inch ? Inches() : Millimetres()).Count(words) > 50);
        }
    }

    // The strips of the list are thinner than the board of the stages: what they weigh is not said until the shaft is down to its strip.
    [Fact]
    public void A_glued_up_paddle_is_not_weighed_before_its_shaft_is_eight_sided()
    {
        var (report, words) = (SampleDesigns.GluedUpInInches, Words(Page(SampleDesigns.GluedUpInInches)));
        var sheet = BuildSheet.For(report);
        Assert.True(report.Laminate!.GlueLines.Strips.Min(strip => strip.ThicknessMm) < 0.8 * sheet.Blank.ThicknessMm);
        string Weight(StageSheet stage) => DrawnAmount.Mass(stage.MassG.Value, DrawingUnits.Inch).Split(' ')[0];
        foreach (var stage in sheet.Stages)
            Assert.Equal(stage.Stage >= BuildStage.ShaftEightSided, words.Contains($"Expect {Weight(stage)} oz", StringComparison.Ordinal));
        Assert.DoesNotContain(" S2S", words, StringComparison.Ordinal);
        Assert.Contains("weigh from the eight-sided shaft on", words, StringComparison.Ordinal);
        Assert.Contains("The strips glued up are the board", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Drawings_in_inches_have_no_millimetre_and_metric_ones_no_inch()
    {
        foreach (var name in DesignFiles.All.Where(file => file.MediaType == "image/svg+xml").Select(file => file.FileName))
        {
            foreach (var report in (DesignReport[])[SampleDesigns.InInches, SampleDesigns.TooWeak, SampleDesigns.TooHeavy])
            {
                foreach (var units in Enum.GetValues<DrawingUnits>())
                {
                    using var stream = new WriteOnlyStream();
                    DesignFiles.Find(name)!.Write(report, SampleDesigns.Context(units), stream);
                    var words = Words(XDocument.Parse(Encoding.UTF8.GetString(stream.Bytes)));
                    Assert.Empty((units == DrawingUnits.Inch ? Millimetres() : Inches()).Matches(words).Select(match => words[Math.Max(0, match.Index - 40)..]));
                    Assert.DoesNotMatch(@"\d\.0 ?(mm|in)\b", words); // 1475 mm, as people say it
                }
            }
        }
    }

    [Fact]
    public void An_inch_shops_sizes_are_printed_exactly()
    {
        // What the sheet prints, read back as a maker reads it, is the design's own size and no other.
        var report = SampleDesigns.InInches;
        foreach (var size in (double[])[
            report.Sizes.ShaftWidthMm, report.Sizes.ShaftThicknessMm, report.Sizes.UpperWidthMm, report.Sizes.UpperThicknessMm, report.Sizes.ThroatThicknessMm,
            report.Sizes.MiddleThicknessMm, report.Sizes.TipThicknessMm, report.Sizes.EdgeThicknessMm, report.Sizes.GripThicknessMm])
            Assert.Equal(size, InchRule.Read(DrawnLength.Figure(size, DrawingUnits.Inch, LengthRounding.Up)), 1e-5);

        var page = Words(Page(report));
        Assert.Contains($"Mark the edge thickness {DrawnLength.Text(report.Sizes.EdgeThicknessMm, DrawingUnits.Inch)}", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Sheet_template_and_offsets_have_the_same_stations(bool inInches)
    {
        var asked = SampleDesigns.Asked("ottertail");
        var report = PaddleDesigner.Design(inInches ? SampleDesigns.InInchesOf(asked) : asked);
        var units = report.Specification.Units;
        var context = SampleDesigns.Context(units);

        var sheet = BuildSheet.For(report).Stages[^1].Stations;
        var csv = Encoding.UTF8.GetString(DrawnFile.Written("offsets.csv", report, context)).Split("\r\n")[1..^1].Select(line => line.Split(',')).ToList();
        Assert.Equal(csv.Select(row => row[inInches ? 5 : 1]), sheet.Select(station => inInches ? DrawnLength.Figure(station.XMm, units) : $"{station.XMm:0.00}"));
        Assert.Equal(csv.Select(row => row[0]), sheet.Select(station => station.Mark ?? ""));

        var letters = XDocument.Parse(Encoding.UTF8.GetString(DrawnFile.Written("half-template.svg", report, context))).Descendants(SvgReader.Svg + "text").Select(text => text.Value).ToList();
        foreach (var station in sheet.Skip(1).SkipLast(1))
        {
            if (station.Mark is null) Assert.Contains(DrawnLength.Figure(station.XMm, units), letters);
            else Assert.Contains(letters, text => text.StartsWith($"{station.Mark} {DrawnLength.Text(station.XMm, units)}", StringComparison.OrdinalIgnoreCase));
        }

        // 2 in is a shop's own step, 1 in where the shape turns; 50 and 25 mm likewise.
        var step = inInches ? 25.4 : 25;
        Assert.All(sheet.Where(station => station.Mark is null), station => Assert.Equal(0, Math.IEEERemainder(station.XMm, step), 1e-9));
        Assert.All(sheet.Zip(sheet.Skip(1)), pair => Assert.InRange(pair.Second.XMm - pair.First.XMm, 0.5, 2 * step + 1e-9));
    }

    [Theory, MemberData(nameof(Finishes))]
    public void The_last_stages_follow_the_designs_finish(SurfaceFinish blade, SurfaceFinish shaft, bool cloth)
    {
        var choice = new FinishChoice(blade, FinishChoice.UsualCoats(blade), shaft, FinishChoice.UsualCoats(shaft), cloth);
        var report = PaddleDesigner.Design(SampleDesigns.Asked("ottertail") with { Finish = choice });
        var sheet = BuildSheet.For(report);
        var (sanded, finished) = (sheet.Stages[^2], sheet.Stages[^1]);
        var steps = string.Join(' ', finished.Mark);

        Assert.Equal(("sanded", "finished"), (sanded.Id, finished.Id));
        Assert.Equal(report.Mass.TotalG, sanded.MassG.Value, 1e-9 * report.Mass.TotalG);
        Assert.Equal(report.Finished.MassG, finished.MassG.Value, 1e-9);
        Assert.Equal(report.Finished.CentreOfMassMm, finished.BalanceMm.Value, 1e-9);
        Assert.Equal(blade == SurfaceFinish.Varnish || shaft == SurfaceFinish.Varnish, steps.Contains("Varnish", StringComparison.Ordinal));
        Assert.Equal(blade == SurfaceFinish.Oil || shaft == SurfaceFinish.Oil, steps.Contains("Oil ", StringComparison.Ordinal));
        Assert.Equal(blade != shaft, steps.Contains("Tape right round", StringComparison.Ordinal));
        Assert.Equal(blade != shaft, sheet.Finish.MaskingLineMm is not null);
        Assert.Equal(blade != shaft, Words(Page(report)).Contains("Masking line", StringComparison.Ordinal));
        Assert.Equal(cloth, steps.Contains("cloth", StringComparison.Ordinal));
        Assert.Equal(cloth, sheet.Tip.Chosen);
        Assert.Contains(cloth ? "The tip is reinforced" : "If you reinforce the tip", Words(Page(report)), StringComparison.Ordinal);
        Assert.Equal(choice.IsBare, finished.MassG.Value - sanded.MassG.Value < 1e-6);
    }

    [Fact]
    public void A_chosen_tip_is_counted_once()
    {
        // The cloth's own mass and shift are the same whether it is chosen or offered, and chosen it is in the finished figures.
        var asked = SampleDesigns.Asked("ottertail");
        var offered = PaddleDesigner.Design(asked);
        var chosen = PaddleDesigner.Design(asked with { Pinned = PinnedSizes.To(offered.Sizes), Finish = FinishChoice.Usual with { TipReinforcement = true } });
        var (with, without) = (BuildSheet.For(chosen), BuildSheet.For(offered));
        Assert.Equal(without.Tip.AddedG, with.Tip.AddedG, 1e-9);
        Assert.Equal(without.Tip.With.MassG, chosen.Finished.MassG, 1e-6);
        Assert.Equal(with.Tip.With.MassG, chosen.Finished.MassG, 1e-6);
        Assert.Equal(with.Tip.With.BalanceMm, chosen.Finished.CentreOfMassMm, 1e-6);
        Assert.Equal(without.Tip.With.ShiftMm, with.Tip.With.ShiftMm, 1e-6);
    }

    [Fact]
    public void A_stated_board_is_the_one_that_is_used()
    {
        var report = PaddleDesigner.Design(SampleDesigns.Asked("ottertail", species: "black-cherry") with { BoardThicknessMm = 32 });
        var blank = BuildSheet.For(report).Blank;
        Assert.True(blank.IsOwn);
        Assert.Equal(32, blank.ThicknessMm);
        Assert.Equal(32 - 2 * report.Stations.HalfThickness.Max(), blank.OverMm, 1e-9);
        Assert.Contains("Your own board is used, 32 mm thick.", Words(Page(report)), StringComparison.Ordinal);
        Assert.Contains("5/4 stock", Words(Page(SampleDesigns.Of("ottertail", species: "black-cherry"))), StringComparison.Ordinal);
    }

    [Fact]
    public void No_name_of_a_program_stands_in_a_sentence()
    {
        var page = Page(SampleDesigns.Of("ottertail", species: "western-redcedar"));
        var words = Words(page);
        foreach (var id in (string[])["western-redcedar", "wood dust 1", "western redcedar 1", "design aid", "edge-lined", "hard-stroke", "white-ash"])
            Assert.DoesNotContain(id, words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(@"\ba [aeiou]\w*tail", words);
        Assert.DoesNotMatch(@"\d\.0 (mm|in|g)\b", words);
    }

    private static XDocument Page(DesignReport report) =>
        XDocument.Parse(BuildSheetPage.Write(report, BuildSheet.For(report), SampleDesigns.Context(report.Specification.Units)));

    private static string Words(XDocument page) => string.Join(
        ' ', page.Descendants().Where(element => element.Name.LocalName != "style").SelectMany(element => element.Nodes().OfType<XText>()).Select(text => text.Value));

    [GeneratedRegex(@"\d ?mm\b|, mm\b|millimet|\d ?cm\b|\d ?°C")]
    private static partial Regex Millimetres();

    // "1 in 15" and "1910.133 in summaries" are no lengths.
    [GeneratedRegex(@"\d in\b(?! \d| summaries)|, in\b|\binches\b|\boz\b|fl oz|\d°F|lb/ft")]
    private static partial Regex Inches();
}
