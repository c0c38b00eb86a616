using System.Text.Json.Serialization;
using Paddle.Design.Boards;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Laminating;

/// <summary>How a laminated paddle is glued up.</summary>
/// <param name="Laminate">What was asked.</param>
/// <param name="GlueLines">Joints, glue and clamps.</param>
/// <param name="Shear">Shear in the glue lines; absent where the outline reaches none.</param>
/// <param name="Swelling">The neighbours that swell most differently.</param>
/// <param name="SidesDifferPercent">How much stiffer one side of the widest section is than the other, percent of the whole.</param>
public sealed record LaminateReport(
    [property: JsonIgnore] Laminate Laminate, GlueUp GlueLines, GlueLineShear? Shear, SwellingMismatch Swelling, double SidesDifferPercent)
{
    /// <summary>Beyond this difference of its sides a paddle warps and flexes sideways, per cent (common practice, no source).</summary>
    public const double MostSidesDifferPercent = 2;

    /// <summary>Always <c>laminated</c>.</summary>
    public string Kind { get; } = "laminated";
    /// <summary>The strips to cut, from the middle outward, wings at the grip included where it is wider than the middle strip.</summary>
    public IReadOnlyList<StripToCut> Strips => GlueLines.Strips;
    /// <summary>The values of each wood that were used.</summary>
    public IReadOnlyList<WoodInUse> Woods => Laminate.Woods;
    /// <summary>The glue.</summary>
    public Adhesive Adhesive => Laminate.Adhesive;
    /// <summary>The piece across the tip; absent without one.</summary>
    public TipPieceReport? TipPiece { get; internal init; }
    /// <summary>Sheets on the faces; absent without them.</summary>
    public FacingReport? Facing { get; internal init; }
    /// <summary>This design.</summary>
    public LaminateComparison? Laminated { get; private init; }
    /// <summary>The same request in one piece of the middle wood, its open sizes chosen for it.</summary>
    public LaminateComparison? OnePiece { get; private init; }

    /// <summary>The same beside a paddle of one piece, which is designed for it.</summary>
    internal static LaminateReport? Compared(DesignReport report) => report.Laminate is not { } laminate ? null
        : laminate with { Laminated = LaminateComparison.Row(report), OnePiece = LaminateComparison.OnePiece(report.Specification) };

    internal static LaminateReport Of(Laminate laminate, PaddleSolid stations, BladePressure pressure, Loads loads, double bucklingN, WoodInUse wood)
    {
        var parts = new GluedOnParts(stations, pressure, loads, bucklingN, wood);
        return new(
            laminate, GlueUp.Of(stations, laminate), GlueLineShear.Of(stations, pressure, bucklingN, laminate, loads), SwellingMismatch.Of(laminate),
            SidesDiffer(stations))
        {
            TipPiece = laminate.TipPiece is { } tip && parts.Tip(tip) is { } bent ? new(tip.Wood.Species, tip.LengthMm, bent) : null,
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

/// <summary>One way of making the paddle: glued up, or of one piece of its middle wood, each solved for the same request.</summary>
/// <param name="FinishedG">Mass finished, g.</param>
/// <param name="BalanceOffsetMm">Balance point less target, mm; negative when grip-heavy.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
/// <param name="SafetyFactor">Factor of the case nearest to its least.</param>
/// <param name="Margin">That over the least factor asked of the case.</param>
/// <param name="GoverningCase">The case.</param>
/// <param name="GlueLines">Joints to glue.</param>
/// <param name="BoardFeet">Boards that it takes by the trade's measure, with trim, kerf and planing; sheets on the faces apart. Theory N5.</param>
/// <param name="WoodCost">Their price by pricePerBoardFoot; absent where the price of one wood, or of sheets, is not known.</param>
public sealed record LaminateComparison(
    double FinishedG, double BalanceOffsetMm, double BenchFlexMm, double SafetyFactor, double Margin, string GoverningCase, int GlueLines, double BoardFeet, double? WoodCost)
{
    /// <summary>A design's own row.</summary>
    internal static LaminateComparison Row(DesignReport report)
    {
        var (asked, boards) = (report.Specification, Boards(report));
        var isPriced = report.Laminate?.Facing is null && boards.All(board => asked.PricesPerBoardFoot.ContainsKey(board.Species));
        return new(
            report.Finished.MassG, report.Balance.OffsetMm, report.Flex.BenchFlexMm, report.Strength.Governing.SafetyFactor, report.Strength.Governing.Margin,
            report.Strength.Governing.Case.Id, report.Laminate?.GlueLines.Count ?? 0, boards.Sum(board => board.Feet),
            isPriced ? boards.Sum(board => board.Feet * asked.PricesPerBoardFoot[board.Species]) : null);
    }

    // Each piece as it is sawn out of a board that is planed on both faces: with trim, kerf and planing, whether it is the whole paddle or a strip.
    private static List<(string Species, double Feet)> Boards(DesignReport report)
    {
        const double PlaningMm = 2 * PaddleSpecification.SurfacedFaceMm;
        if (report.Laminate is { } laminate)
            return [.. laminate.GlueLines.Strips.Select(strip => (strip.Species, strip.Count * BoardMeasure.Feet(strip.LengthMm, strip.BoardWidthMm, strip.ThicknessMm + PlaningMm)))];
        var stations = report.Stations;
        return
        [
            (report.Specification.Wood.Species,
                BoardMeasure.Feet(stations.X[^1] + 2 * GlueUp.EndTrimMm, 2 * stations.HalfWidth.Max() + GlueUp.KerfMm, 2 * stations.HalfThickness.Max() + PlaningMm)),
        ];
    }

    /// <summary>The row of one piece of the middle wood. Sizes that a solver chose are chosen again, so that a design and the one read back from its
    /// code are held against the same paddle.</summary>
    internal static LaminateComparison OnePiece(PaddleSpecification asked, CancellationToken cancellation = default) =>
        Row(PaddleDesigner.Design(asked.Reopened().GluedUp(null), cancellation));
}
