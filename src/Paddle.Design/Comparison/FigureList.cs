using System.Globalization;
using Paddle.Design.Units;

namespace Paddle.Design.Comparison;

/// <summary>Which way a figure is better.</summary>
internal enum Better
{
    /// <summary>Neither: a matter of taste.</summary>
    Neither,
    /// <summary>The smaller.</summary>
    Less,
    /// <summary>The greater.</summary>
    More,
    /// <summary>The nearer nothing.</summary>
    NearerNothing,
}

/// <summary>A figure by which designs are compared.</summary>
/// <param name="Pointer">Its place in the report.</param>
/// <param name="Decimals">Decimals to which the report gives it; what is alike in print is alike.</param>
/// <param name="Noticed">The least difference that is put in words: what a hand, a kitchen scale or a tape tells apart (common practice, no source).</param>
/// <param name="Words">How more and less of it are said; null where it is not put in words.</param>
internal sealed record Figure(
    string Pointer, string Name, string? Unit, Better Better, int Decimals, Func<DesignReport, double> Read, double Noticed = 0, (string More, string Less)? Words = null, bool HasShare = false)
{
    /// <summary>Its value, as it is printed.</summary>
    public double Of(DesignReport report) => Math.Round(Read(report), Decimals);

    /// <summary>A difference with its unit, as a shop of one system says it.</summary>
    public string Print(double value, DrawingUnits units) => Unit switch
    {
        "mm" => DrawnLength.Text(value, units),
        "g" => DrawnAmount.Mass(value, units),
        "cm²" => DrawnAmount.Area(value, units),
        null => value.ToString("0.00", CultureInfo.InvariantCulture),
        _ => $"{value.ToString(value < 10 ? "0.#" : "0", CultureInfo.InvariantCulture)} {Unit}",
    };
}

/// <summary>The figures by which designs are compared, in the order of a maker's interest.</summary>
internal static class FigureList
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Figure> All { get; } =
    [
        new("/mass/finishedG", "Weight, finished", "g", Better.Less, 1, r => r.Finished.MassG, 5, ("It is {0} heavier", "It is {0} lighter"), true),
        new("/lengths/overallMm", "Overall length", "mm", Better.Neither, 2, r => r.Specification.Form.Places.OverallMm, 3, ("It is {0} longer", "It is {0} shorter")),
        new("/lengths/bladeMm", "Blade length", "mm", Better.Neither, 2, r => r.Specification.Form.Places.BladeMm, 3, ("Its blade is {0} longer", "Its blade is {0} shorter")),
        new("/design/blade/widthMm", "Blade width", "mm", Better.Neither, 2, r => r.Specification.Form.Blade.WidthMm, 2, ("Its blade is {0} wider", "Its blade is {0} narrower")),
        new("/stroke/bladeAreaCm2", "Blade area", "cm²", Better.Neither, 1, r => r.Stroke.BladeAreaCm2, 5, ("It has {0} more blade", "It has {0} less blade"), true),
        new("/sizes/shaftWidthMm", "Shaft width at the lower hand", "mm", Better.Neither, 3, r => r.Sizes.ShaftWidthMm, 0.7, ("Its shaft is {0} wider", "Its shaft is {0} narrower")),
        new("/sizes/shaftThicknessMm", "Shaft thickness at the lower hand", "mm", Better.Neither, 3, r => r.Sizes.ShaftThicknessMm, 0.7, ("Its shaft is {0} thicker", "Its shaft is {0} thinner")),
        new("/sizes/middleThicknessMm", "Thickness at mid-blade", "mm", Better.Neither, 3, r => r.Sizes.MiddleThicknessMm, 0.4, ("It is {0} thicker at mid-blade", "It is {0} thinner at mid-blade")),
        new("/sizes/edgeThicknessMm", "Blade edge", "mm", Better.Neither, 3, r => r.Sizes.EdgeThicknessMm),
        new("/balance/offsetMm", "Balance from the aim, finished", "mm", Better.NearerNothing, 2, r => r.Balance.ActualMm - r.Balance.TargetMm),
        new("/mass/finishedInertiaLowerHandKgM2", "Swing about the lower hand", "kg·m²", Better.Less, 4, r => r.Finished.InertiaLowerHandKgM2),
        new("/strength/minimumSafetyFactor", "Least safety factor", null, Better.More, 3, r => r.Strength.Governing.SafetyFactor, 0.05, ("Its least safety factor is {0} higher", "Its least safety factor is {0} lower")),
        new("/flex/benchFlexMm", "Bench flex", "mm", Better.Neither, 2, r => r.Flex.BenchFlexMm, 0.4, ("It gives {0} more on the bench", "It gives {0} less on the bench"), true),
        new("/stroke/topHandForceN", "Top-hand force, easy stroke", "N", Better.Less, 1, r => r.Stroke.TopHandForceN, 1, ("It asks {0} more of the top hand in an easy stroke", "It asks {0} less of the top hand in an easy stroke")),
        new("/stroke/lowerHandMomentNm", "Moment at the lower hand, easy stroke", "N·m", Better.Less, 2, r => r.Stroke.LowerHandMomentNm),
        new("/stroke/slipSpeedMS", "Slip through the water", "m/s", Better.Less, 3, r => r.Stroke.SlipSpeedMS),
        new("/stroke/froudeEfficiency", "Share of the power that moves the boat", null, Better.More, 3, r => r.Stroke.FroudeEfficiency),
        new("/stroke/immersionMm", "Depth that covers the blade", "mm", Better.Less, 2, r => r.Stroke.ImmersionMm, 5, ("It wants {0} more depth of water", "It wants {0} less depth of water")),
    ];
}
