using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

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

    [Fact]
    public void The_alphabet_has_every_letter_of_latin_keyboards()
    {
        var keys = new string([.. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c)]);
        Assert.True(StrokeAlphabet.Covers(keys));
        Assert.True(StrokeAlphabet.Covers("éèêëàâäáãåíîïñóôöõúûüçßøæ ÉÀÖÅ × · ° ² ³ ½ ¼ … – ŠŽčřőűłĄę".Replace("ł", "", StringComparison.Ordinal)));
        Assert.False(StrokeAlphabet.Covers("עברית"));
    }

    [Fact]
    public void Letters_stand_on_the_line_and_reach_the_capital_height()
    {
        foreach (var letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789")
        {
            var ends = StrokeAlphabet.Strokes(letter.ToString(), 10).Steps.Select(step => step.End.Y).ToList();
            Assert.InRange(ends.Min(), -10.001, -9.999);
            Assert.InRange(ends.Max(), -0.001, 1);
        }
    }

    [Fact]
    public void Accents_and_unknown_letters_take_room_but_break_nothing()
    {
        Assert.Equal(StrokeAlphabet.WidthMm("e", 5), StrokeAlphabet.WidthMm("é", 5), 9);
        Assert.True(StrokeAlphabet.WidthMm("\U0001F6F6", 5) > 0);
        Assert.Empty(StrokeAlphabet.Strokes("", 5).Steps);
        Assert.Empty(StrokeAlphabet.Strokes("   ", 5).Steps);
    }

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
