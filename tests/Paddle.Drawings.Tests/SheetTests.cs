using System.Text;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;
using UglyToad.PdfPig.Fonts.Encodings;
using UglyToad.PdfPig.Fonts.Standard14Fonts;

namespace Paddle.Drawings.Tests;

public class SheetTests
{
    [Fact]
    public void Eight_sides_of_a_round_shaft_are_the_handbook_figures()
    {
        // A 30 mm square: lines 8.787 mm in, facets 12.426 mm, sixteen-side lines 3.230 mm from each corner; by geometry.
        var octagon = SectionPaths.Octagon(15, 15);
        Assert.Equal(8.787, 15 - octagon[1].X, 3);
        for (var i = 0; i < 8; i++) Assert.Equal(12.426, (octagon[i] - octagon[(i + 1) % 8]).Length, 3);
        var marks = SectionPaths.SixteenMarks(octagon);
        Assert.Equal(3.230, (marks[0] - octagon[0]).Length, 3);
    }

    [Theory]
    [InlineData(17, 14)]
    [InlineData(15, 15)]
    [InlineData(12.1, 13.4)]
    public void Every_facet_touches_the_oval_and_none_cuts_it(double a, double b)
    {
        var octagon = SectionPaths.Octagon(a, b);
        for (var i = 0; i < 8; i++)
        {
            var least = Enumerable.Range(0, 2001).Min(k =>
            {
                var p = octagon[i] + k / 2000.0 * (octagon[(i + 1) % 8] - octagon[i]);
                return p.X * p.X / (a * a) + p.Y * p.Y / (b * b);
            });
            Assert.Equal(1, least, 6);
        }
    }

    [Fact]
    public void Lettering_never_runs_into_a_leader()
    {
        double[] xs = [20, 888, 900, 938, 1179];
        double[] widths = [70, 80, 90, 70, 80];
        var rows = Landmarks.Rows(xs, widths);
        for (var i = 0; i < xs.Length; i++)
        {
            for (var j = i + 1; j < xs.Length; j++)
            {
                if (xs[j] < xs[i] + widths[i]) Assert.True(rows[i] > rows[j]);
            }
        }

        Assert.Equal([0, 2, 1, 0, 0], rows);
    }

    [Theory]
    [InlineData(false, Standard14Font.Helvetica)]
    [InlineData(true, Standard14Font.HelveticaBold)]
    public void Letters_are_as_wide_as_the_faces_own_metrics_say(bool strong, Standard14Font face)
    {
        // Adobe core 14 font metrics and the codes of WinAnsiEncoding, both as PdfPig carries them.
        var metrics = Standard14.GetAdobeFontMetrics(face).CharacterMetrics;
        var seen = 0;
        foreach (var (code, name) in WinAnsiEncoding.Instance.CodeToNameMap.Where(letter => letter.Key is >= ' ' and not 127))
        {
            Assert.Equal(metrics[name].Width.X, Helvetica.Width((byte)code, strong));
            seen++;
        }

        Assert.InRange(seen, 215, 224);
        Assert.Equal(metrics["Lslash"].Width.X + metrics["o"].Width.X, 1000 * Helvetica.WidthMm("Ło", Lettering.CapitalShare, strong), 1e-9);
        Assert.Equal(Helvetica.WidthMm("er", 5, strong), Helvetica.WidthMm("ěr\u030C", 5, strong), 9);
    }

    [Fact]
    public void The_face_has_every_letter_of_latin_keyboards()
    {
        var question = Helvetica.Letters("?").Single();
        Assert.True(Helvetica.Reads(new string([.. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c)])));
        var letters = "éèêëàâäáãåíîïñóôöõúûüçßøæ ÉÀÖÅ × · ° ² ³ ½ ¼ … – ŠŽčřőűłŁĄę−";
        Assert.Equal(letters.Length, Helvetica.Letters(letters).Count(letter => letter != question));
        Assert.False(Helvetica.Reads("č"));
        Assert.Equal(5, Helvetica.Letters("עברית").Count(letter => letter == question));
        Assert.Equal(0, Helvetica.WidthMm("", 5));
        Assert.True(Helvetica.WidthMm("\U0001F6F6", 5) > 0);
    }

    [Theory]
    [InlineData(0, 1000, "0")]
    [InlineData(-0.0004, 1000, "0")]
    [InlineData(-12.0506, 1000, "-12.051")]
    [InlineData(1475, 1000, "1475")]
    [InlineData(0.007, 1000, "0.007")]
    [InlineData(88.9, 10000, "88.9")]
    public void Numbers_have_no_idle_nought(double value, int scale, string expected) => Assert.Equal(expected, new StringBuilder().AppendDecimal(value, scale).ToString());

    [Fact]
    public void A_flattened_circle_keeps_to_its_tolerance()
    {
        var (points, closed) = Assert.Single(Flatten.Chains(SheetPath.Circle(0, 0, 50), 0.05));
        Assert.True(closed);
        for (var i = 0; i < points.Count; i++)
        {
            var middle = 0.5 * (points[i] + points[(i + 1) % points.Count]);
            Assert.InRange(middle.Length, 50 - 0.07, 50.02);
        }
    }
}
