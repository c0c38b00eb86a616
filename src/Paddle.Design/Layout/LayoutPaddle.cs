using Paddle.Design.Outline;

namespace Paddle.Design.Layout;

/// <summary>A kind of paddle to be laid out on boards.</summary>
/// <param name="Id">The caller's name of it.</param>
/// <param name="Species">Wood it was designed in.</param>
/// <param name="Outline">Its outline on the face.</param>
/// <param name="Places">Its places.</param>
/// <param name="ThickestMm">Thickest finished section, mm.</param>
/// <param name="SlopeOfGrain">Slope of grain that its strength counts with, rise over run.</param>
/// <param name="VolumeCm3">Finished wood, cm³.</param>
/// <param name="Count">How many are wanted.</param>
/// <param name="IsOptional">Whether the order is complete without it.</param>
internal sealed record LayoutPaddle(
    string Id, string Species, HalfBreadthCurve Outline, PaddlePlaces Places, double ThickestMm, double SlopeOfGrain, double VolumeCm3, int Count, bool IsOptional)
{
    // Where grip, shaft and the root of the blade end: no knot may be near these, for the bending moment is largest there.
    private const double RootShareOfBlade = 0.15;
    // The widest place is looked for in two looks, the second around what the first found.
    private const int Looks = 1000;
    private const double StepMm = 3;

    /// <summary>Whether it is a strip of a glued-up paddle, and no paddle.</summary>
    public bool IsStrip { get; private init; }

    /// <summary>Reads what is cut for a design: the paddle, or the strips that it is glued up of.</summary>
    public static IEnumerable<LayoutPaddle> Pieces(string id, DesignReport design, int count, bool isOptional)
    {
        if (design.Laminate?.GlueLines.Strips is not { } strips) return [Of(id, design, count, isOptional)];
        var whole = strips.Sum(strip => strip.Count * strip.CutWidthMm * strip.LengthMm * strip.ThicknessMm);
        return strips.Select((strip, k) => new LayoutPaddle(
            FormattableString.Invariant($"{id}: strip {k + 1}"),
            strip.Species,
            new(CubicBezier.Hermite(0, strip.CutWidthMm / 2, 0, strip.LengthMm, strip.CutWidthMm / 2, 0)),
            new(0, 0, 0, 0, strip.LengthMm),
            strip.ThicknessMm,
            design.Specification.Wood.SlopeOfGrain,
            design.Mass.VolumeCm3 * strip.CutWidthMm * strip.LengthMm * strip.ThicknessMm / whole,
            strip.Count * count,
            isOptional)
        { IsStrip = true });
    }

    /// <summary>Reads a design of one piece.</summary>
    public static LayoutPaddle Of(string id, DesignReport design, int count, bool isOptional) => new(
        id,
        design.Specification.Wood.Species,
        design.Outline,
        design.Specification.Form.Places,
        2 * design.Stations.HalfThickness.Max(),
        design.Specification.Wood.SlopeOfGrain,
        design.Mass.VolumeCm3,
        count,
        isOptional);

    /// <summary>Overall length, mm.</summary>
    public double LengthMm => Outline.EndMm;
    /// <summary>Widest half-breadth, mm.</summary>
    public double HalfWidthMm { get; } = WidestOf(Outline);
    /// <summary>Area of the face, mm².</summary>
    public double AreaMm2 { get; } = Outline.AreaMm2();
    /// <summary>From the top of the grip to where a knot begins to be borne, mm; a strip only holds none.</summary>
    public double GuardedToMm => IsStrip ? -1 : Places.ThroatMm + RootShareOfBlade * Places.BladeMm;

    private static double WidestOf(HalfBreadthCurve curve)
    {
        var around = Widest(0, curve.EndMm);
        return Widest(Math.Max(0, around.XMm - StepMm), Math.Min(curve.EndMm, around.XMm + StepMm)).HalfMm;

        (double XMm, double HalfMm) Widest(double fromMm, double toMm)
        {
            var xs = Enumerable.Range(0, Looks + 1).Select(k => fromMm + k * (toMm - fromMm) / Looks).ToArray();
            var halves = new double[xs.Length];
            curve.Sample(xs, halves, new double[xs.Length]);
            var at = Array.IndexOf(halves, halves.Max());
            return (xs[at], halves[at]);
        }
    }
}
