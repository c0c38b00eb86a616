using System.Text.RegularExpressions;
using Paddle.Design.Units;

namespace Paddle.Drawings.Tests.Support;

/// <summary>How far a printed figure may lie from what it stands for.</summary>
internal enum Printed
{
    /// <summary>To the nearest step of the rule.</summary>
    Near,
    /// <summary>Never less than it is: thicknesses and widths of wood.</summary>
    Up,
    /// <summary>To a whole millimetre, or a sixteenth of an inch.</summary>
    Rough,
    /// <summary>To a hundredth of a millimetre, or a sixty-fourth of an inch and never less.</summary>
    Shaving,
    /// <summary>To a hundredth of a millimetre or exactly by sixty-fourths.</summary>
    Fine,
}

/// <summary>Words that a drawing must say, each # a length with its unit and each ~ one without.</summary>
internal sealed record Said(string Words, params (double Mm, Printed How)[] Lengths)
{
    public static implicit operator Said(string words) => new(words);

    public static void AssertAll(IReadOnlyList<Said> expected, IReadOnlyList<string> printed, DrawingUnits units)
    {
        Assert.True(expected.Count == printed.Count, $"{string.Join(" | ", expected.Select(one => one.Words))}\nbut\n{string.Join(" | ", printed)}");
        foreach (var (one, text) in expected.Zip(printed)) one.AssertIn(text, units);
    }

    /// <summary>Reads its lengths back out of a text and holds them against what they stand for.</summary>
    public void AssertIn(string text, DrawingUnits units)
    {
        var unit = units == DrawingUnits.Metric ? "mm" : "in";
        var match = Regex.Match(text, "^" + Regex.Escape(Words).Replace(@"\#", $"([0-9. /]+) {unit}", StringComparison.Ordinal).Replace("~", "([0-9. /]+)", StringComparison.Ordinal) + "$");
        Assert.True(match.Success, $"'{text}' is not '{Words}'");
        Assert.Equal(Lengths.Length, match.Groups.Count - 1);
        for (var k = 0; k < Lengths.Length; k++)
        {
            var ((mm, how), read) = (Lengths[k], DrawnFile.Millimetres(match.Groups[k + 1].Value, units));
            var (low, high) = (how, units) switch
            {
                (Printed.Near, _) => (-DrawnFile.Step(mm, units) / 2, DrawnFile.Step(mm, units) / 2),
                // A twentieth of a millimetre is the same on an inch rule.
                (Printed.Up, DrawingUnits.Metric) => (-1e-4, 0.1),
                (Printed.Up, _) => (-0.051, DrawnFile.Step(mm, units)),
                (Printed.Rough, DrawingUnits.Metric) => (-0.5, 0.5),
                (Printed.Rough, _) => (-25.4 / 32, 25.4 / 32),
                (_, DrawingUnits.Metric) => (-0.005, 0.005),
                (Printed.Shaving, _) => (-0.051, 25.4 / 64),
                _ => (-1e-6, 1e-6),
            };
            Assert.True(read - mm >= low - 1e-6 && read - mm <= high + 1e-6, $"'{text}' for {mm:0.###} mm");
        }
    }
}
