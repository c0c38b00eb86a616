using Paddle.Design.Boards;
using Paddle.Design.Laminating;
using Paddle.Design.Request;
using Paddle.Design.Wood;

namespace Paddle.Design.Layout;

/// <summary>Strips that a board does not give, for it is of another wood.</summary>
/// <param name="Species">Id of their wood.</param>
/// <param name="Count">How many, for all the paddles.</param>
/// <param name="WidthMm">Width to saw, mm.</param>
/// <param name="LengthMm">Length to cut, mm.</param>
/// <param name="ThicknessMm">Thickness of the board before it is planed, mm.</param>
/// <param name="Stock">The thickness in the trade that gives it.</param>
public sealed record StripToBuy(string Species, int Count, double WidthMm, double LengthMm, double ThicknessMm, string Stock);

/// <summary>Strips of a glued-up paddle out of one board: theory N7.</summary>
internal static class FittedStrips
{
    // A narrower rest at the edge is left to the strip beside it.
    private const double LeastWidthMm = 3;

    /// <summary>The species that strips are of, the paddle's own first.</summary>
    public static IReadOnlyList<string> SpeciesOf(DesignRequest design) =>
        [.. (design.Construction?.Strips ?? []).Select(strip => strip.Species).Prepend(design.Wood?.Species).OfType<string>().Distinct()];

    /// <summary>Strips of a narrower paddle: the outermost give way on both sides, and are left out where nothing of them remains; those nearer
    /// the middle stay as wide as they are.</summary>
    /// <param name="lostMm">How much narrower the paddle's greatest width has become, mm.</param>
    /// <returns>The construction, or null where fewer than two strips would be left across.</returns>
    public static ConstructionRequest? Narrowed(ConstructionRequest asked, double lostMm)
    {
        if (lostMm <= 0) return asked;
        var strips = asked.Strips!.ToList();
        var isMirrored = asked.IsMirrored ?? true;
        return Trim(strips, ^1) && (isMirrored ? strips.Count > 1 : Trim(strips, 0)) ? asked with { Strips = strips } : null;

        // A mirrored list ends at both edges.
        bool Trim(List<StripRequest> list, Index edge)
        {
            var lost = lostMm / 2;
            while (list.Count > 1 && list[edge].WidthMm!.Value - lost < LeastWidthMm)
            {
                lost -= list[edge].WidthMm!.Value;
                list.RemoveAt(edge.GetOffset(list.Count));
            }

            var left = Math.Round(list[edge].WidthMm!.Value - lost, 3);
            list[edge] = list[edge] with { WidthMm = left };
            return list.Count > 1 && left >= LeastWidthMm;
        }
    }

    /// <summary>What else has to be bought.</summary>
    public static IReadOnlyList<StripToBuy> Others(GlueUp glueUp, string boardSpecies, int paddles, double planingMm) =>
    [
        .. glueUp.Strips.Where(strip => strip.Species != boardSpecies).Select(strip => new StripToBuy(
            strip.Species, strip.Count * paddles, strip.CutWidthMm, strip.LengthMm, Math.Round(strip.ThicknessMm + planingMm, 1),
            BoardStock.Holding(strip.ThicknessMm + planingMm, WoodCatalogue.Find(strip.Species)!.IsSoftwood).Name)),
    ];
}
