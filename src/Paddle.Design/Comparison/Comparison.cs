using System.Globalization;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Comparison;

/// <summary>A design among those that are set side by side.</summary>
/// <param name="Id">The caller's name of it.</param>
internal sealed record ComparedPaddle(string Id, DesignReport Report);

/// <summary>A figure of every design.</summary>
/// <param name="Pointer">JSON Pointer of it in the report of a design.</param>
/// <param name="Name">What it is, in the trade's words.</param>
/// <param name="Unit">Its unit; absent for a factor or a share.</param>
/// <param name="Better"><c>less</c>, <c>more</c> or <c>nearer-nothing</c>; absent where it is a matter of taste.</param>
/// <param name="Values">One for each design, in the order of the request.</param>
/// <param name="Best">Designs that have the best; empty where all are alike, or it is a matter of taste.</param>
/// <param name="Worst">Designs that have the worst; empty likewise.</param>
internal sealed record ComparedFigure(
    string Pointer, string Name, string? Unit, string? Better, IReadOnlyList<double> Values, IReadOnlyList<string> Best, IReadOnlyList<string> Worst);

/// <summary>What sets a design apart from the first.</summary>
/// <param name="Id">The design.</param>
/// <param name="Than">The first.</param>
/// <param name="Sentences">What a hand, a scale or a tape would notice; one sentence says so where that is nothing.</param>
internal sealed record DesignDifference(string Id, string Than, IReadOnlyList<string> Sentences);

/// <summary>Designs side by side.</summary>
/// <param name="Figures">Every figure, with the best and the worst.</param>
/// <param name="Differences">Every design but the first, beside the first.</param>
internal sealed record DesignComparison(IReadOnlyList<ComparedFigure> Figures, IReadOnlyList<DesignDifference> Differences)
{
    /// <summary>Compares designs.</summary>
    /// <param name="designs">Two or more.</param>
    /// <param name="units">Units of the sentences.</param>
    public static DesignComparison Of(IReadOnlyList<ComparedPaddle> designs, DrawingUnits units) => new(
        [.. FigureList.All.Select(figure => Compare(figure, designs))],
        [.. designs.Skip(1).Select(one => new DesignDifference(one.Id, designs[0].Id, Sentences(one, designs[0], units)))]);

    private static ComparedFigure Compare(Figure figure, IReadOnlyList<ComparedPaddle> designs)
    {
        double[] values = [.. designs.Select(one => figure.Of(one.Report))];
        double[] ranks = [.. values.Select(value => figure.Better switch { Better.More => -value, Better.NearerNothing => Math.Abs(value), _ => value })];
        IReadOnlyList<string> With(double rank) => [.. designs.Where((_, k) => ranks[k] == rank).Select(one => one.Id)];
        var isRanked = figure.Better != Better.Neither && ranks.Min() < ranks.Max();
        return new(figure.Pointer, figure.Name, figure.Unit, Name(figure.Better), values, isRanked ? With(ranks.Min()) : [], isRanked ? With(ranks.Max()) : []);
    }

    private static string? Name(Better better) => better switch
    {
        Better.Less => "less",
        Better.More => "more",
        Better.NearerNothing => "nearer-nothing",
        _ => null,
    };

    private static string[] Sentences(ComparedPaddle one, ComparedPaddle first, DrawingUnits units)
    {
        var (a, b) = (one.Report, first.Report);
        string[] sentences =
        [
            .. Other("Wood:", WoodName(a), WoodName(b)),
            .. Other("Blade:", BladeName(a), BladeName(b)),
            .. FigureList.All.Where(figure => figure.Words is not null).SelectMany(figure => Sentence(figure, figure.Of(a), figure.Of(b), units)),
            .. Balance(a, b, units),
            .. Met(a, b),
        ];
        return sentences.Length > 0 ? sentences : ["Nothing that a hand, a scale or a tape would notice."];
    }

    private static IEnumerable<string> Other(string what, string one, string first)
    {
        if (one != first) yield return $"{what} {one}, not {first}.";
    }

    private static IEnumerable<string> Sentence(Figure figure, double value, double first, DrawingUnits units)
    {
        var by = value - first;
        if (Math.Abs(by) < figure.Noticed) yield break;
        var (more, less) = figure.Words!.Value;
        var share = first > 0 && figure.HasShare ? string.Create(CultureInfo.InvariantCulture, $" ({100 * Math.Abs(by) / first:0} %)") : "";
        yield return $"{string.Format(CultureInfo.InvariantCulture, by > 0 ? more : less, figure.Print(Math.Abs(by), units) + share)}.";
    }

    // Both are told from the lower hand, for that is where a maker feels it.
    private static IEnumerable<string> Balance(DesignReport one, DesignReport first, DrawingUnits units)
    {
        var (a, b) = (FromHand(one, units), FromHand(first, units));
        if (a != b) yield return $"Finished it balances {a}, not {b}.";
    }

    private static string FromHand(DesignReport report, DrawingUnits units)
    {
        var offMm = report.Finished.CentreOfMassMm - report.Specification.Form.Places.LowerHandMm;
        var off = DrawnLength.Rough(Math.Abs(offMm), units);
        return off == DrawnLength.Rough(0, units) ? "at the lower hand" : $"{off} from the lower hand towards the {(offMm > 0 ? "blade" : "grip")}";
    }

    private static IEnumerable<string> Met(DesignReport one, DesignReport first)
    {
        if (one.Outcome.IsMet == first.Outcome.IsMet) yield break;
        yield return one.Outcome.IsMet ? "It meets every aim." : $"It misses an aim: {one.Outcome.Unmet[0].Message}";
    }

    private static string WoodName(DesignReport report) =>
        report.Specification.Laminate is null ? (WoodCatalogue.Find(report.Specification.Wood.Species)?.CommonName ?? report.Specification.Wood.Species).ToLowerInvariant() : "glued-up strips";

    private static string BladeName(DesignReport report) => report.Specification.Form.Blade.Family?.Name.ToLowerInvariant() ?? "own offsets";
}
