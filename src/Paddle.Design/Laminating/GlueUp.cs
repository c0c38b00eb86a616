using System.Text.Json.Serialization;
using Paddle.Design.Solid;

namespace Paddle.Design.Laminating;

/// <summary>Strips of one wood and size to cut.</summary>
/// <param name="Species">Id of the wood.</param>
/// <param name="Count">How many: one on each side of a mirrored paddle.</param>
/// <param name="Part"><c>whole</c> length, <c>blade</c> or <c>grip</c>: a strip lies only where the outline reaches it; <c>tip</c>: the piece across the blade's end.</param>
/// <param name="WidthMm">Width in the glued-up blank, mm.</param>
/// <param name="CutWidthMm">Width to saw, with what is planed off both edges for the glue, mm.</param>
/// <param name="BoardWidthMm">Width of board that it takes, the saw's kerf included, mm.</param>
/// <param name="LengthMm">Length to cut, both ends' trim included, mm.</param>
/// <param name="ThicknessMm">Thickness to plane to before gluing, mm: the thickest section within it and what is planed off both faces after.</param>
/// <param name="FromMm">Where its finished wood begins, mm from the top of the grip.</param>
/// <param name="ToMm">Where it ends, mm.</param>
public sealed record StripToCut(
    string Species, int Count, string Part, double WidthMm, double CutWidthMm, double BoardWidthMm, double LengthMm, double ThicknessMm, double FromMm,
    double ToMm);

/// <summary>Joints, glue and clamps.</summary>
/// <param name="Strips">The strips to cut, from the middle outward.</param>
/// <param name="Count">How many joints are glued.</param>
/// <param name="AreaCm2">Their area together, cm².</param>
/// <param name="GlueG">Glue needed, g: a fifth stays in the pot.</param>
/// <param name="ClampSpacingMm">Distance from clamp to clamp, mm.</param>
/// <param name="Clamps">How many clamps the longest joint takes.</param>
/// <param name="ClampForceN">Force of each clamp at the least pressure, N.</param>
public sealed record GlueUp(
    [property: JsonIgnore] IReadOnlyList<StripToCut> Strips, int Count, double AreaCm2, double GlueG, double ClampSpacingMm, int Clamps, double ClampForceN)
{
    /// <summary>Where allowances and spacing come from.</summary>
    public string Source { get; } = "allowances: common practice, no source; clamps: pressure spreads under 45 degrees from each (common practice, no source)";

    internal const double EndTrimMm = 25, FacePlaningMm = 1, KerfMm = 3;
    private const double EdgePlaningMm = 1, LeastSpacingMm = 75, MostSpacingMm = 150;
    private const double ShortestGapMm = 150; // strips with less than this between them are cut in one
    private const double MixingLoss = 1.2;    // what stays in the pot and on the roller, common practice, no source

    /// <summary>Reads strips and joints off a solid at close places.</summary>
    internal static GlueUp Of(PaddleSolid stations, Laminate laminate)
    {
        var lines = laminate.LinesMm;
        // Strips end where a piece across the tip begins.
        var endMm = stations.X[^1] - (laminate.TipPiece?.LengthMm ?? 0);
        var pieces = new List<Piece>();
        for (var k = 0; k < laminate.Across.Count; k++)
        {
            double from = k == 0 ? -laminate.WidthMm / 2 : lines[k - 1], to = k == lines.Count ? laminate.WidthMm / 2 : lines[k];
            var inner = from < 0 && to > 0 ? 0 : Math.Min(Math.Abs(from), Math.Abs(to));
            foreach (var (start, end) in Stretches(stations, inner).Where(one => one.Start < endMm).Select(one => (one.Start, Math.Min(one.End, endMm))))
                pieces.Add(new(k, inner, start, end, Thickest(stations, inner, start, end) + 2 * FacePlaningMm, laminate.Across[k], Widest(stations, start, end) - inner));
        }

        // A joint is as long and as thick as the piece on its outer side. Two strips that meet on the centre line have one joint.
        Piece[] glued = [.. pieces.Where(piece => piece.InnerMm > 0)];
        Piece[] central = lines.Any(line => Math.Abs(line) < 1e-6) ? [pieces.First(piece => piece.InnerMm == 0)] : [];
        Piece[] joints = [.. glued, .. central];
        var across = laminate.TipPiece is { } tip ? Across(stations, tip, endMm) : null;
        var sheetsMm2 = laminate.Facing is null ? 0 : GluedOnParts.SheetsMm2(stations);
        var area = joints.Sum(piece => piece.CutLengthMm * piece.ThicknessMm) + (across is null ? 0 : across.LengthMm * across.ThicknessMm);
        var narrowest = glued.Length == 0 ? MostSpacingMm : glued.Min(piece => piece.Strip.WidthMm);
        var spacing = Math.Clamp(5 * Math.Floor(2 * narrowest / 5), LeastSpacingMm, MostSpacingMm);
        var longest = joints.Length == 0 ? 0 : joints.Max(piece => piece.CutLengthMm);
        var thickest = joints.Length == 0 ? 0 : joints.Max(piece => piece.ThicknessMm);
        return new(
            [.. pieces.GroupBy(piece => piece.Kind).Select(Cut).OrderBy(strip => strip.Inner).ThenByDescending(strip => strip.Strip.LengthMm).Select(strip => strip.Strip), .. across is null ? [] : (StripToCut[])[across]],
            joints.Length + (across is null ? 0 : 1),
            area / 100,
            MixingLoss * (area + sheetsMm2) * 1e-6 * laminate.Adhesive.SpreadGM2,
            spacing,
            1 + (int)Math.Ceiling(longest / spacing),
            laminate.Adhesive.ClampLeastMPa * thickest * spacing);
    }

    // Sawn along its grain, which runs across the paddle.
    private static StripToCut Across(PaddleSolid stations, TipPiece tip, double fromMm) => new(
        tip.Wood.Species, 1, "tip", tip.LengthMm, tip.LengthMm + 2 * EdgePlaningMm, tip.LengthMm + 2 * EdgePlaningMm + KerfMm,
        Math.Ceiling(2 * Widest(stations, fromMm, stations.X[^1]) + 2 * EndTrimMm),
        Math.Ceiling(10 * (Thickest(stations, 0, fromMm, stations.X[^1]) + 2 * FacePlaningMm)) / 10, fromMm, stations.X[^1]);

    private static (double Inner, StripToCut Strip) Cut(IEnumerable<Piece> alike)
    {
        var piece = alike.First();
        var width = piece.WidthMm;
        return (piece.InnerMm, new(
            piece.Strip.Wood.Species, alike.Count(), piece.Part, width, width + 2 * EdgePlaningMm, width + 2 * EdgePlaningMm + KerfMm,
            Math.Ceiling(piece.CutLengthMm), Math.Ceiling(10 * piece.ThicknessMm) / 10, piece.StartMm, piece.EndMm));
    }

    // Where the outline reaches beyond a line, end to end.
    private static List<(double Start, double End)> Stretches(PaddleSolid solid, double innerMm)
    {
        if (innerMm == 0) return [(solid.X[0], solid.X[^1])];
        var found = new List<(double Start, double End)>();
        for (var i = 1; i < solid.Count; i++)
        {
            double a = solid.HalfWidth[i - 1] - innerMm, b = solid.HalfWidth[i] - innerMm;
            if (a <= 0 && b <= 0) continue;
            double Crossing() => solid.X[i - 1] + (solid.X[i] - solid.X[i - 1]) * a / (a - b);
            var (start, end) = (a >= 0 ? solid.X[i - 1] : Crossing(), b >= 0 ? solid.X[i] : Crossing());
            if (found.Count > 0 && start - found[^1].End < ShortestGapMm) found[^1] = (found[^1].Start, end);
            else found.Add((start, end));
        }

        return found;
    }

    private static double Widest(PaddleSolid solid, double start, double end) =>
        Enumerable.Range(0, solid.Count).Where(i => solid.X[i] >= start && solid.X[i] <= end).Max(i => solid.HalfWidth[i]);

    private static double Thickest(PaddleSolid solid, double innerMm, double start, double end)
    {
        var thickest = 0.0;
        for (var i = 0; i < solid.Count; i++)
        {
            if (solid.X[i] < start || solid.X[i] > end) continue;
            var section = solid.Section(i);
            if (section.HalfThicknessMm > 0 && StripLayup.ThicknessShare(section, innerMm) is { } share) thickest = Math.Max(thickest, 2 * share * section.HalfThicknessMm);
        }

        return thickest;
    }

    private sealed record Piece(int Place, double InnerMm, double StartMm, double EndMm, double ThicknessMm, Strip Strip, double ReachMm)
    {
        internal double CutLengthMm => EndMm - StartMm + 2 * EndTrimMm;

        internal string Part => InnerMm == 0 || (StartMm < 200 && EndMm - StartMm > 500) ? "whole" : StartMm < 200 ? "grip" : "blade";

        // The blade's strips are as wide as they are listed; a grip asks for less of them.
        internal double WidthMm => Part == "grip" ? Math.Min(Strip.WidthMm, Math.Ceiling(ReachMm - 1e-6)) : Strip.WidthMm;

        // Both sides of a mirrored paddle are cut alike.
        internal (string, double, double, double, double) Kind =>
            (Strip.Wood.Species, Strip.WidthMm, Math.Round(InnerMm, 3), Math.Round(StartMm, 1), Math.Round(EndMm, 1));
    }
}
