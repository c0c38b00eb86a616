using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Tests.Support;

namespace Paddle.Drawings.Tests;

public class SafeFilesTests
{
    public static TheoryData<string> Svgs() => Names(file => file.MediaType == "image/svg+xml");

    public static TheoryData<string> All() => Names(_ => true);

    [Theory]
    [MemberData(nameof(Svgs))]
    public void A_hostile_label_stays_text(string fileName)
    {
        var document = XDocument.Parse(Encoding.UTF8.GetString(Written(fileName, SampleDesigns.Context(label: SampleDesigns.HostileLabel))));
        Assert.Equal("svg", document.Root!.Name.LocalName);
        string[] known = ["svg", "title", "desc", "style", "rect", "g", "path", "text"];
        foreach (var element in document.Descendants())
        {
            Assert.Contains(element.Name.LocalName, known);
            Assert.Equal(SvgReader.Svg, element.Name.Namespace);
            foreach (var attribute in element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration))
            {
                Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name.LocalName);
                Assert.DoesNotContain("href", attribute.Name.LocalName, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("url(", attribute.Value, StringComparison.OrdinalIgnoreCase);
            }
        }

        foreach (var style in document.Descendants(SvgReader.Svg + "style"))
        {
            Assert.DoesNotContain("url(", style.Value, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("@import", style.Value, StringComparison.OrdinalIgnoreCase);
        }

        var shown = Lettering.Safe(SampleDesigns.HostileLabel);
        Assert.Contains("<script>alert('x')</script>", shown, StringComparison.Ordinal);
        Assert.Contains(document.Descendants(SvgReader.Svg + "text"), text => text.Value == shown);
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void A_drawing_says_what_it_is_to_those_who_cannot_see_it(string fileName)
    {
        var svg = XDocument.Parse(Encoding.UTF8.GetString(Written(fileName, SampleDesigns.Context()))).Root!;
        Assert.Equal("img", (string)svg.Attribute("role")!);
        var names = ((string)svg.Attribute("aria-labelledby")!).Split(' ');
        Assert.Equal(2, names.Length);
        foreach (var name in names)
        {
            var named = svg.Elements().Single(element => (string?)element.Attribute("id") == name);
            Assert.True(named.Value.Length > 10, named.Value);
        }

        Assert.Contains("Heron Lake", svg.Element(SvgReader.Svg + "title")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_same_design_gives_the_same_bytes_in_every_culture(string fileName)
    {
        var before = CultureInfo.CurrentCulture;
        var first = Written(fileName, SampleDesigns.Context(DrawingUnits.Inch));
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "−";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(first, Written(fileName, SampleDesigns.Context(DrawingUnits.Inch)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Units_change_the_lettering(string fileName)
    {
        var (metric, inch) = (Written(fileName, SampleDesigns.Context()), Written(fileName, SampleDesigns.Context(DrawingUnits.Inch)));
        if (fileName == "solid.stl") Assert.Equal(metric, inch);
        else Assert.NotEqual(metric, inch);
    }

    [Fact]
    public void Every_file_has_its_own_name_and_says_what_is_in_it()
    {
        Assert.Equal(DesignFiles.All.Count, DesignFiles.All.Select(file => file.FileName).Distinct().Count());
        Assert.All(DesignFiles.All, file =>
        {
            Assert.Same(file, DesignFiles.Find(file.FileName));
            Assert.Matches("^[a-z-]+\\.[a-z]{3}$", file.FileName);
            Assert.Matches("^[a-z]+/[a-z.+]+$", file.MediaType);
            Assert.NotEmpty(file.Description);
            Assert.NotEmpty(file.Version);
        });
        Assert.Null(DesignFiles.Find("OUTLINE.SVG"));
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a\r\nb\tc", "a  b c")]
    [InlineData("a\0b\u0007\u001b", "ab")]
    [InlineData("\u202Eevil\u2066", "evil")]
    [InlineData("é ß \U0001F6F6", "é ß \U0001F6F6")]
    [InlineData("\uD800broken\uFFFF", "broken")]
    public void Safe_text_keeps_what_can_be_read(string text, string expected) => Assert.Equal(expected, Lettering.Safe(text));

    internal static byte[] Written(string fileName, DrawingContext context) => DrawnFile.Written(fileName, SampleDesigns.Of("ottertail"), context);

    private static TheoryData<string> Names(Func<IDesignFile, bool> wanted)
    {
        var data = new TheoryData<string>();
        foreach (var file in DesignFiles.All.Where(wanted)) data.Add(file.FileName);
        return data;
    }
}
