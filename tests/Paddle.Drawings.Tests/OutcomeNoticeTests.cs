using System.Text;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Pages;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using UglyToad.PdfPig;

namespace Paddle.Drawings.Tests;

/// <summary>A design that misses an aim says so on everything that is made of it, and a sound one never does: read back from every file.</summary>
public class OutcomeNoticeTests
{
    private const string Advice = "thicken them or leave them open";

    public static TheoryData<string> Svgs() => [.. DesignFiles.All.Where(file => file.MediaType == "image/svg+xml").Select(file => file.FileName)];

    public static TheoryData<DrawingUnits, PaperSize> Prints() => new()
    {
        { DrawingUnits.Metric, PaperSize.A4 }, { DrawingUnits.Inch, PaperSize.Letter }, { DrawingUnits.Inch, PaperSize.A3 }, { DrawingUnits.Metric, PaperSize.Roll },
    };

    [Fact]
    public void The_samples_are_what_their_names_say()
    {
        Assert.True(SampleDesigns.TooWeak.Outcome.IsTooWeak);
        Assert.False(SampleDesigns.TooHeavy.Outcome.IsTooWeak);
        Assert.Equal(["mass"], SampleDesigns.TooHeavy.Outcome.Unmet.Select(aim => aim.Code));
        Assert.True(Sound.Outcome.IsMet);
    }

    [Theory, MemberData(nameof(Svgs))]
    public void A_drawing_says_it_in_letters_and_to_those_who_cannot_see_it(string name)
    {
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            var (weak, sound) = (Svg(SampleDesigns.TooWeak, name, units), Svg(Sound, name, units));
            var letters = string.Join(' ', weak.Descendants(SvgReader.Svg + "text").Select(text => text.Value));
            Assert.Contains("DO NOT BUILD: this paddle is too weak.", letters, StringComparison.Ordinal);
            Assert.Contains("Too weak in the hard stroke case", letters, StringComparison.Ordinal);
            Assert.Contains(Advice, letters, StringComparison.Ordinal);
            Assert.Contains("DO NOT BUILD", weak.Root!.Element(SvgReader.Svg + "title")!.Value, StringComparison.Ordinal);
            Assert.StartsWith("DO NOT BUILD", weak.Root.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
            Assert.Contains(weak.Descendants(SvgReader.Svg + "g"), group => Classes(group).Contains("line") && Classes(group).Contains("notice")
                && (string)group.Attribute("fill")! == "none");
            Assert.DoesNotContain("BUILD", sound.ToString(), StringComparison.Ordinal);
            Assert.DoesNotContain(sound.Descendants(), element => Classes(element).Contains("notice"));
        }
    }

    [Theory, MemberData(nameof(Svgs))]
    public void Another_aim_missed_is_said_without_alarm(string name)
    {
        var letters = string.Join(' ', Svg(SampleDesigns.TooHeavy, name, DrawingUnits.Metric).Descendants(SvgReader.Svg + "text").Select(text => text.Value));
        Assert.Contains("NOT ALL THAT WAS ASKED: weight.", letters, StringComparison.Ordinal);
        Assert.Contains("where at most 400 g is asked", letters, StringComparison.Ordinal);
        Assert.DoesNotContain("DO NOT BUILD", letters, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Svgs))]
    public void The_notice_runs_into_nothing_and_stays_on_the_sheet(string name)
    {
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            foreach (var report in (DesignReport[])[SampleDesigns.TooWeak, SampleDesigns.TooHeavy])
            {
                var context = SampleDesigns.Context(units);
                var sheet = name switch
                {
                    "overview.svg" => OverviewView.Draw(report, context),
                    "outline.svg" => OutlineView.Draw(report, context),
                    "half-template.svg" => HalfTemplateView.Draw(report, context),
                    "elevation.svg" => ElevationView.Draw(report, context),
                    "sections.svg" => SectionCards.OneSheet(report, context),
                    _ => StrengthView.Draw(report, context),
                };
                TextLayout.AssertOnSheet(sheet);
                TextLayout.AssertApart(sheet);
            }
        }
    }

    [Theory, MemberData(nameof(Prints))]
    public void Every_printed_page_says_it(DrawingUnits units, PaperSize paper)
    {
        using var weak = PdfDocument.Open(Bytes(SampleDesigns.TooWeak, "templates.pdf", units, paper));
        using var sound = PdfDocument.Open(Bytes(Sound, "templates.pdf", units, paper));
        foreach (var page in weak.GetPages())
        {
            Assert.Contains("DO NOT BUILD: this paddle is too weak.", page.Text, StringComparison.Ordinal);
            Assert.Contains("Too weak in the", page.Text, StringComparison.Ordinal);
        }

        Assert.Contains(Advice, weak.GetPage(1).Text, StringComparison.Ordinal);
        Assert.All(sound.GetPages(), page => Assert.DoesNotContain("BUILD", page.Text, StringComparison.Ordinal));
        Assert.All(sound.GetPages(), page => Assert.Contains("Heron Lake", page.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_cutters_drawing_says_it_on_its_text_layer()
    {
        var texts = new DxfReader(Bytes(SampleDesigns.TooWeak, "template.dxf")).Entities().Where(entity => entity.Kind == "TEXT" && entity.Layer == "TEXT").ToList();
        Assert.Contains(texts, text => text.Text == OutcomeNotice.TooWeak);
        Assert.Contains(texts, text => text.Text.Contains(Advice, StringComparison.Ordinal));
        Assert.All(new DxfReader(Bytes(Sound, "template.dxf")).Entities(), entity => Assert.DoesNotContain("BUILD", entity.Text, StringComparison.Ordinal));

        // What is cut is the same either way: the notice adds words, and its frame lies on the layer of the marks.
        var layers = new DxfReader(Bytes(SampleDesigns.TooWeak, "template.dxf")).Entities().Where(entity => entity.Layer is "OUTLINE" or "HALF_TEMPLATE");
        Assert.Equal(3, layers.Count());
    }

    [Fact]
    public void The_table_of_offsets_says_it_in_its_last_column_and_stays_a_table()
    {
        var (weak, sound) = (Rows(SampleDesigns.TooWeak), Rows(Sound));
        Assert.Equal("notice", weak[0][^1]);
        Assert.Equal(sound[0], weak[0]);
        Assert.StartsWith(OutcomeNotice.TooWeak, weak[1][^1], StringComparison.Ordinal);
        Assert.Contains(Advice, weak[1][^1], StringComparison.Ordinal);
        Assert.All(weak.Skip(2), row => Assert.Equal(OutcomeNotice.TooWeak, row[^1]));
        Assert.All(sound.Skip(1), row => Assert.Equal("", row[^1]));
        Assert.All(weak, row => Assert.Equal(weak[0].Count, row.Count));
    }

    [Fact]
    public void The_solid_names_itself_so_in_its_header()
    {
        var header = Encoding.ASCII.GetString(Bytes(SampleDesigns.TooWeak, "solid.stl").AsSpan(0, 80)).TrimEnd('\0');
        Assert.StartsWith("DO NOT BUILD: too weak, ", header, StringComparison.Ordinal);
        Assert.Matches(@"\d\.\d\d of \d\.\d\d; .*paddle", header);
        Assert.Equal("Canoe paddle, binary STL, millimetres", Encoding.ASCII.GetString(Bytes(Sound, "solid.stl").AsSpan(0, 80)).TrimEnd('\0'));
        Assert.StartsWith("NOT ALL THAT WAS ASKED: weight", Encoding.ASCII.GetString(Bytes(SampleDesigns.TooHeavy, "solid.stl").AsSpan(0, 80)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_build_sheet_says_it_at_the_top_and_on_every_stage()
    {
        var (weak, sound) = (Page(SampleDesigns.TooWeak), Page(Sound));
        var body = weak.Root!.Element("body")!;
        Assert.StartsWith("NOT TO BE BUILT", body.Element("h1")!.Value, StringComparison.Ordinal);
        var banner = body.Elements().ElementAt(1);
        Assert.Equal("notice", (string)banner.Attribute("class")!);
        Assert.StartsWith(OutcomeNotice.TooWeak, banner.Value.Trim(), StringComparison.Ordinal);
        Assert.Contains(Advice, banner.Value, StringComparison.Ordinal);

        var stages = body.Elements("section").Where(section => section.Elements("p").Any(p => (string?)p.Attribute("class") == "expect")).ToList();
        Assert.Equal(BuildStages.All.Count, stages.Count);
        Assert.All(stages, stage =>
        {
            var first = stage.Elements().ElementAt(1);
            Assert.StartsWith("DO NOT BUILD", first.Value, StringComparison.Ordinal);
            Assert.Contains(Advice, first.Value, StringComparison.Ordinal);
        });

        Assert.DoesNotContain(sound.Descendants(), element => Classes(element).Contains("notice") || Classes(element).Contains("too-weak"));
        Assert.DoesNotContain("BUILD", sound.Root!.Element("body")!.Value, StringComparison.Ordinal);
        Assert.Contains("NOT ALL THAT WAS ASKED", Page(SampleDesigns.TooHeavy).Root!.Element("body")!.Elements().ElementAt(1).Value, StringComparison.Ordinal);
        Assert.DoesNotContain("DO NOT BUILD", Page(SampleDesigns.TooHeavy).Root!.Value, StringComparison.Ordinal);
    }

    private static DesignReport Sound => SampleDesigns.Of("ottertail", species: "black-cherry");

    private static XDocument Page(DesignReport report) => XDocument.Parse(BuildSheetPage.Write(report, BuildSheet.For(report), SampleDesigns.Context()));

    private static XDocument Svg(DesignReport report, string name, DrawingUnits units) => DrawnFile.Svg(name, report, units);

    private static string[] Classes(XElement element) => ((string?)element.Attribute("class") ?? "").Split(' ');

    private static List<List<string>> Rows(DesignReport report) => CsvReader.Rows(Encoding.UTF8.GetString(Bytes(report, "offsets.csv")));

    private static byte[] Bytes(DesignReport report, string name, DrawingUnits units = DrawingUnits.Metric, PaperSize paper = PaperSize.A4) =>
        DrawnFile.Written(name, report, SampleDesigns.Context(units, paper: paper));
}
