using Paddle.Design.Solid;
using Paddle.Design.Strength;

namespace Paddle.Design.Laminating;

/// <summary>What is known of a paddle's glue-up.</summary>
/// <param name="GlueUp">Strips, joints, glue and clamps.</param>
/// <param name="Shear">Shear in the glue lines; null where the outline reaches none.</param>
/// <param name="Mismatch">The neighbours that swell most differently.</param>
/// <param name="SidesDifferPercent">How much stiffer one side of the blade's widest section is than the other, per cent of the whole.</param>
public sealed record LaminateReport(Laminate Laminate, GlueUp GlueUp, GlueLineShear? Shear, SwellingMismatch Mismatch, double SidesDifferPercent)
{
    /// <summary>Beyond this difference of its sides a paddle warps and flexes sideways, per cent (common practice, no source).</summary>
    public const double MostSidesDifferPercent = 2;

    internal static LaminateReport Of(Laminate laminate, PaddleSolid stations, BladePressure pressure, Loads loads, double bucklingN) => new(
        laminate, GlueUp.Of(stations, laminate), GlueLineShear.Of(stations, pressure, bucklingN, laminate, loads), SwellingMismatch.Of(laminate),
        SidesDiffer(stations));

    private static double SidesDiffer(PaddleSolid stations)
    {
        var widest = Array.IndexOf(stations.HalfWidth, stations.HalfWidth.Max());
        var section = stations.Section(widest);
        var sides = 0.0;
        foreach (var strip in stations.Form.Strips!.Strips)
        {
            double Part(double from, double to) => to <= from ? 0
                : strip.ModulusRatio * StripLayup.Part(section.Moments, section.HalfWidthMm, from, to).FlatSecondMomentMm4(section);
            sides += Part(Math.Max(strip.FromMm, 0), strip.ToMm) - Part(strip.FromMm, Math.Min(strip.ToMm, 0));
        }

        return 100 * Math.Abs(sides) / stations.FlatSecondMoment[widest];
    }
}

/// <summary>A glued-up paddle beside one of one piece of its middle wood, each solved for the same request.</summary>
/// <param name="FinishedG">Mass finished, g.</param>
/// <param name="BalanceOffsetMm">Balance point less target, mm.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
/// <param name="LeastFactor">Safety factor of the case nearest to its least factor.</param>
/// <param name="LeastMargin">That over the least factor asked of it.</param>
/// <param name="GlueLines">Joints.</param>
public sealed record LaminateComparison(
    double FinishedG, double BalanceOffsetMm, double BenchFlexMm, double LeastFactor, double LeastMargin, string GoverningCase, int GlueLines)
{
    /// <summary>A design's own row.</summary>
    internal static LaminateComparison Row(DesignReport report) => new(
        report.Finished.MassG, report.Balance.OffsetMm, report.Flex.BenchFlexMm, report.Strength.Governing.SafetyFactor, report.Strength.Governing.Margin,
        report.Strength.Governing.Case.Id, report.Laminate?.GlueUp.Joints ?? 0);

    /// <summary>The row of one piece of the middle wood. Sizes that a solver chose are chosen again, so that a design and the one read back from its
    /// code are held against the same paddle.</summary>
    internal static LaminateComparison OnePiece(PaddleSpecification asked, CancellationToken cancellation = default) =>
        Row(PaddleDesigner.Design(asked.Reopened().GluedUp(null), cancellation));
}
