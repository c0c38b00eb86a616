using System.Globalization;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>What a design that misses an aim says of itself on everything that is made of it: the one place that words and draws it. A
/// sound design says nothing.</summary>
internal static class OutcomeNotice
{
    /// <summary>First words of a paddle that is too weak.</summary>
    public const string TooWeak = "DO NOT BUILD: this paddle is too weak.";
    /// <summary>First words of one that misses another aim.</summary>
    public const string Missed = "NOT ALL THAT WAS ASKED:";
    private const double LineShare = 1.6;

    /// <summary>Whether there is anything to say.</summary>
    public static bool IsNeeded(DesignReport report) => !report.Outcome.IsMet;

    /// <summary>The first line alone; empty for a sound design.</summary>
    public static string Headline(DesignReport report) => Headline(report.Outcome);

    /// <summary>The first line alone; empty when every aim is met.</summary>
    public static string Headline(DesignOutcome outcome) => outcome.IsMet ? ""
        : outcome.IsTooWeak ? TooWeak : $"{Missed} {Join(outcome.Unmet.Select(aim => Subject(aim.Code)))}.";

    /// <summary>The headline, then what is missed and what to do about it; none for a sound design.</summary>
    public static IReadOnlyList<string> Lines(DesignReport report, DrawingUnits units)
    {
        var outcome = report.OutcomeIn(units);
        return outcome.IsMet ? [] : [Headline(outcome), .. outcome.Unmet.GroupBy(aim => aim.Advice).Select(Sentence)];
    }

    /// <summary>Everything in one line; empty for a sound design.</summary>
    public static string Whole(DesignReport report, DrawingUnits units) => string.Join(' ', Lines(report, units));

    /// <summary>The same in plain ASCII and no more than so many characters, for a file's header.</summary>
    public static string Brief(DesignReport report, int most)
    {
        if (report.Outcome.IsMet) return "";
        var worst = report.Outcome.Unmet[0];
        var text = worst.IsStrength
            ? string.Create(CultureInfo.InvariantCulture, $"DO NOT BUILD: too weak, {Subject(worst.Code)} {worst.Value:0.00} of {worst.Limit:0.00}")
            : $"{Missed} {Join(report.Outcome.Unmet.Select(aim => Subject(aim.Code)))}";
        return text.Length <= most ? text : text[..most];
    }

    /// <summary>Draws the notice in a heavy frame with its top left corner at a place. Words, weight and frame say it; colour only adds to
    /// them.</summary>
    /// <param name="report">The design.</param>
    /// <param name="x">Left edge, mm.</param>
    /// <param name="y">Top edge, mm.</param>
    /// <param name="width">Width, mm.</param>
    /// <param name="height">Height of its lettering, mm; less where there is not room for all.</param>
    /// <param name="roomMm">Most room that it may take, mm.</param>
    /// <returns>How much room it took, mm; nothing for a sound design.</returns>
    public static double Draw(
        Sketch sketch, DesignReport report, DrawingUnits units, double x, double y, double width, double height, double roomMm = double.PositiveInfinity)
    {
        if (!IsNeeded(report)) return 0;
        var texts = Lines(report, units);
        var lines = Wrap(texts, height, width - 2 * height);
        while ((LineShare * lines.Count + 3) * height > roomMm)
        {
            height *= 0.95;
            lines = Wrap(texts, height, width - 2 * height);
        }

        double pad = height, line = LineShare * height, inner = width - 2 * pad, top = y + pad + height;
        for (var i = 0; i < lines.Count; i++)
            sketch.Text(lines[i], x + pad, top + i * line, Lettering.FitHeightMm(lines[i], height, inner), strong: true, css: Css);
        var tall = 2 * pad + height + (lines.Count - 1) * line;
        sketch.Path(SheetPath.Rectangle(x, y, width, tall), LineKind.Visible, Layer.Marks, css: Css);
        sketch.Path(SheetPath.Rectangle(x + 1, y + 1, width - 2, tall - 2), LineKind.Visible, Layer.Marks, css: Css);
        return tall + height;
    }

    /// <summary>A drawing's title with the headline after it.</summary>
    public static string Titled(DesignReport report, string title) => IsNeeded(report) ? $"{title}. {Headline(report)}" : title;

    /// <summary>A drawing's description with the whole notice before it: who cannot see the drawing is told as well.</summary>
    public static string Described(DesignReport report, DrawingUnits units, string description) =>
        IsNeeded(report) ? $"{Whole(report, units)} {description}" : description;

    /// <summary>Class of the notice in a drawing: a style sheet may colour it.</summary>
    public const string Css = "notice";

    /// <summary>What an aim is about, as a maker says it.</summary>
    private static string Subject(string code) => code switch
    {
        "balance" => "balance",
        "flex.least" or "flex.most" => "flex",
        "mass" => "weight",
        _ => code[(code.IndexOf('.', StringComparison.Ordinal) + 1)..].Replace('-', ' '),
    };

    private static string Sentence(IGrouping<string, UnmetAim> aims) =>
        $"{string.Join(' ', aims.Select(aim => aim.Message))} What to do: {aims.Key}";

    private static string Join(IEnumerable<string> parts)
    {
        string[] all = [.. parts.Distinct()];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    /// <summary>Each sentence on lines of its own, broken between words where it is too long.</summary>
    internal static List<string> Wrap(IEnumerable<string> texts, double height, double width)
    {
        var lines = new List<string>();
        foreach (var text in texts)
        {
            var line = "";
            foreach (var word in text.Split(' '))
            {
                var longer = line.Length == 0 ? word : $"{line} {word}";
                if (line.Length > 0 && Lettering.WidthMm(longer, height) > width)
                {
                    lines.Add(line);
                    longer = word;
                }

                line = longer;
            }

            lines.Add(line);
        }

        return lines;
    }
}
