using Paddle.Design.Boards;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

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

    /// <summary>The piece across the tip, or null.</summary>
    public PartStress? Tip { get; private init; }

    /// <summary>The sheets on the faces, or null.</summary>
    public FacingReport? Facing { get; private init; }

    internal static LaminateReport Of(Laminate laminate, PaddleSolid stations, BladePressure pressure, Loads loads, double bucklingN, WoodInUse wood)
    {
        var parts = new GluedOnParts(stations, pressure, loads, bucklingN, wood);
        return new(
            laminate, GlueUp.Of(stations, laminate), GlueLineShear.Of(stations, pressure, bucklingN, laminate, loads), SwellingMismatch.Of(laminate),
            SidesDiffer(stations))
        {
            Tip = laminate.TipPiece is null ? null : parts.Tip(),
            Facing = laminate.Facing is { } facing ? parts.Facing(laminate, facing) : null,
        };
    }

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

        var whole = stations.Form.Strips.Numbers(section.Moments, section.HalfWidthMm).Stiff.FlatSecondMomentMm4(section);
        return 100 * Math.Abs(sides) / whole;
    }
}

/// <summary>A glued-up paddle beside one of one piece of its middle wood, each solved for the same request.</summary>
/// <param name="FinishedG">Mass finished, g.</param>
/// <param name="BalanceOffsetMm">Balance point less target, mm.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
/// <param name="LeastFactor">Safety factor of the case nearest to its least factor.</param>
/// <param name="LeastMargin">That over the least factor asked of it.</param>
/// <param name="GlueLines">Joints.</param>
/// <param name="BoardFeet">Boards that it takes, sheets on the faces apart. Theory N5.</param>
/// <param name="WoodCost">Their price; null where one is not known.</param>
public sealed record LaminateComparison(
    double FinishedG, double BalanceOffsetMm, double BenchFlexMm, double LeastFactor, double LeastMargin, string GoverningCase, int GlueLines, double BoardFeet, double? WoodCost)
{
    /// <summary>A design's own row.</summary>
    internal static LaminateComparison Row(DesignReport report)
    {
        var (asked, boards) = (report.Specification, Boards(report));
        var isPriced = report.Laminate?.Facing is null && boards.All(board => asked.PricesPerBoardFoot.ContainsKey(board.SpeciesId));
        return new(
            report.Finished.MassG, report.Balance.OffsetMm, report.Flex.BenchFlexMm, report.Strength.Governing.SafetyFactor, report.Strength.Governing.Margin,
            report.Strength.Governing.Case.Id, report.Laminate?.GlueUp.Joints ?? 0, boards.Sum(board => board.Feet),
            isPriced ? boards.Sum(board => board.Feet * asked.PricesPerBoardFoot[board.SpeciesId]) : null);
    }

    // Each piece as it is sawn out of a board that is planed on both faces: with trim, kerf and planing, whether it is the whole paddle or a strip.
    private static List<(string SpeciesId, double Feet)> Boards(DesignReport report)
    {
        const double PlaningMm = 2 * PaddleSpecification.SurfacedFaceMm;
        if (report.Laminate is { } laminate)
            return [.. laminate.GlueUp.Strips.Select(strip => (strip.SpeciesId, strip.Count * BoardMeasure.Feet(strip.LengthMm, strip.BoardWidthMm, strip.ThicknessMm + PlaningMm)))];
        var stations = report.Stations;
        return
        [
            (report.Specification.Wood.SpeciesId,
                BoardMeasure.Feet(stations.X[^1] + 2 * GlueUp.EndTrimMm, 2 * stations.HalfWidth.Max() + GlueUp.KerfMm, 2 * stations.HalfThickness.Max() + PlaningMm)),
        ];
    }

    /// <summary>The row of one piece of the middle wood. Sizes that a solver chose are chosen again, so that a design and the one read back from its
    /// code are held against the same paddle.</summary>
    internal static LaminateComparison OnePiece(PaddleSpecification asked, CancellationToken cancellation = default) =>
        Row(PaddleDesigner.Design(asked.Reopened().GluedUp(null), cancellation));
}
