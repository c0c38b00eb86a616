using System.Globalization;
using System.Text;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Strength;
using Paddle.Design.Wood;
using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Tests.Validation;

/// <summary>What comes out when nothing is said but hands 35 in apart, a family and a wood, beside what makers carve.</summary>
/// <remarks>
/// The envelope is put together from carved paddles described in a book on canoe paddles quoted on a carving blog (shaft 1 1/8 in round in
/// hardwood, 1 1/4 in softwood), a canoe-history forum (66 in of maple with a 1 in shaft, 1 × 1 1/4 in at the throat), a hobby page (57 in of
/// redcedar, 1 1/8 × 1 1/4 in, a hair over a pound), a club workshop and its magazine plan (5/8 in in the middle third before fairing, edges
/// 3/16 in usual) and paddles weighed on forums (cherry 66 in 812 g, 60 in 742 g; touring 61 in 865 g, 57 in 668 g); shaft below the grip and
/// grip down to 7/8 in are common practice, no source.
/// </remarks>
internal static class PracticeTable
{
    internal const double HandSpacingMm = 889;

    private static readonly string[] Woods =
    [
        "white-ash", "yellow-birch", "sugar-maple", "red-maple", "black-cherry", "black-walnut", "sitka-spruce", "american-basswood", "western-redcedar",
    ];

    internal static IReadOnlyList<Row> Rows { get; } = [.. BladeFamilies.All.SelectMany(family => Woods.Select(wood => new Row(family, wood, Design(family, wood))))];

    internal sealed record Figure(string Name, double Value, Range Usual, string Unit)
    {
        internal bool IsInside => Value >= Usual.Min - 0.05 && Value <= Usual.Max + 0.05;
    }

    internal sealed record Row(BladeFamily Family, string Wood, DesignReport Report)
    {
        internal IReadOnlyList<Figure> Figures { get; } = Measure(Family, Wood, Report);

        internal string Name => $"{Family.Name}, {WoodCatalogue.Find(Wood)!.CommonName.ToLowerInvariant()}";
    }

    /// <summary>Why a figure may lie outside the envelope; null when nobody has explained it.</summary>
    internal static string? Explanation(Row row, Figure figure) => (row.Family.Id, figure.Name) switch
    {
        ("square-tip" or "teardrop", "overall") => "short blades: paddles of fast water and bent shafts are shorter by nature",
        (_, "shaft") when row.Wood == "american-basswood" => "basswood is as light and as weak as spruce, and its shafts as thick",
        ("voyageur", "shaft") when row.Wood == "western-redcedar" => "the weakest wood under the longest lever: take another",
        ("teardrop", "mass") when row.Wood == "american-basswood" => "the shortest paddle in one of the lightest woods",
        _ => null,
    };

    /// <summary>A design from nothing but hand spacing, family and wood.</summary>
    internal static DesignReport Design(BladeFamily family, string wood, double handSpacingMm = HandSpacingMm, PinnedSizes? pinned = null, Duty duty = Duty.Touring)
    {
        var request = new DesignRequest
        {
            HandSpacingMm = handSpacingMm,
            Blade = new() { Family = family.Id },
            Wood = new() { Species = wood },
            Loads = new() { Duty = Names.Of(duty) },
        };
        return PaddleDesigner.Design(request.Complete().Specification with { Pinned = pinned ?? new() });
    }

    private static Figure[] Measure(BladeFamily family, string wood, DesignReport report)
    {
        var species = WoodCatalogue.Find(wood)!;
        var sizes = report.Sizes;
        return
        [
            new("overall", report.Specification.Form.Places.OverallMm, new(1500, family.Id == "voyageur" ? 1680 : 1620), "mm"),
            new("shaft", (sizes.ShaftWidthMm + sizes.ShaftThicknessMm) / 2, new(27, species.IsSoftwood ? 33 : 30.5), "mm"),
            new("below grip", (sizes.UpperWidthMm + sizes.UpperThicknessMm) / 2, new(22, species.IsSoftwood ? 28 : 26), "mm"),
            new("grip", sizes.GripThicknessMm, new(22, 30), "mm"),
            new("mid-blade", sizes.MiddleThicknessMm, new(9, species.IsSoftwood ? 16 : 14), "mm"),
            new("edge", sizes.EdgeThicknessMm, new(3.5, 5.5), "mm"),
            new("mass", report.Mass.TotalG, UsualMassG(species), "g"),
            new("off balance", Math.Abs(report.Balance.OffsetMm), new(0, 12), "mm"),
        ];
    }

    // By density at 12 %: what the weighed paddles of these woods come to.
    private static Range UsualMassG(WoodSpecies species) => species.SpecificGravity12 switch
    {
        >= 0.58 => new(650, 850),
        >= 0.45 => new(560, 720),
        >= 0.36 => new(480, 620),
        _ => new(430, 560),
    };

    internal static string Render()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""

            ## What makers carve

            Hands {HandSpacingMm:0} mm (35 in) apart, a family, a wood, and nothing else said: {Rows.Count} designs beside the envelope of carved paddles.
            The envelope: overall 1500 to 1620 mm (voyageur to 1680); shaft mean diameter 27 to 30.5 mm in hardwood, to 33 in softwood; below the grip 22 to 26 mm
            (softwood to 28, which tapers from more), grip 22 to 30 mm; spine at mid-blade 9 to 14 mm, softwood to 16; edge 3.5 to 5.5 mm; bare mass 650 to 850 g in
            ash, birch and hard maple, 560 to 720 g in cherry, walnut and soft maple, 480 to 620 g in spruce and basswood, a pound or so in redcedar (430 to 560 g).
            Sources: a book on canoe paddles quoted on a carving blog; a canoe-history forum; a hobby page; a club workshop and its plan in a magazine;
            paddles weighed on forums; shaft below the grip and grip are common practice, no source. A figure outside is marked \*.

            | paddle | overall | shaft | below grip | grip | mid-blade | edge | bare g | finished g | off balance | least margin |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |

            """);
        foreach (var row in Rows)
        {
            text.Append("| ").Append(row.Name);
            foreach (var figure in row.Figures.Take(7)) text.Append(" | ").Append(Show(figure));
            var (report, off) = (row.Report, row.Figures[^1]);
            text.Append(CultureInfo.InvariantCulture, $" | {report.Finished.MassG:0} | {Show(off with { Value = report.Balance.OffsetMm }, off.IsInside)} | {report.Strength.Governing.Margin:0.00} |\n");
        }

        var all = Rows.SelectMany(row => row.Figures.Select(figure => (Row: row, Figure: figure))).ToArray();
        var outside = all.Where(pair => !pair.Figure.IsInside).ToArray();
        text.Append(CultureInfo.InvariantCulture, $"\n{all.Length - outside.Length} of {all.Length} figures lie inside ({100.0 * (all.Length - outside.Length) / all.Length:0.0} %). The margin is the least of all cases' factor reached over factor asked.\n");
        foreach (var why in outside.GroupBy(pair => Explanation(pair.Row, pair.Figure) ?? "not explained"))
            text.Append(CultureInfo.InvariantCulture, $"- {why.Key}: {string.Join("; ", why.Select(pair => $"{pair.Row.Name} ({pair.Figure.Name} {pair.Figure.Value:0.#} {pair.Figure.Unit})"))}\n");
        return text.ToString();
    }

    private static string Show(Figure figure, bool? inside = null) =>
        figure.Value.ToString(figure.Unit == "g" || figure.Name is "overall" or "off balance" ? "0" : "0.0", CultureInfo.InvariantCulture) + (inside ?? figure.IsInside ? "" : " \\*");
}
