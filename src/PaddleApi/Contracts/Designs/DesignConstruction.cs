using System.Text.Json.Serialization;
using Paddle.Design;
using Paddle.Design.Laminating;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Designs;

/// <summary>How a laminated paddle is glued up; absent of one piece.</summary>
/// <param name="Kind">Always <c>laminated</c>.</param>
/// <param name="Strips">The strips to cut, from the middle outward, wings at the grip included where it is wider than the middle strip.</param>
/// <param name="Woods">The values of each wood that were used.</param>
/// <param name="Adhesive">The glue.</param>
/// <param name="GlueLines">Joints, glue and clamps.</param>
/// <param name="Shear">Shear in the glue lines; absent where the outline reaches none.</param>
/// <param name="Swelling">The neighbours that swell most differently.</param>
/// <param name="SidesDifferPercent">How much stiffer one side of the widest section is than the other, percent of the whole.</param>
/// <param name="TipPiece">The piece across the tip; absent without one.</param>
/// <param name="Facing">Sheets on the faces; absent without them.</param>
/// <param name="Laminated">This design.</param>
/// <param name="OnePiece">The same request in one piece of the middle wood, its open sizes chosen for it.</param>
internal sealed record DesignConstruction(
    string Kind,
    IReadOnlyList<DesignStrip> Strips,
    IReadOnlyList<DesignStripWood> Woods,
    DesignAdhesive Adhesive,
    DesignGlueLines GlueLines,
    DesignGlueLineShear? Shear,
    DesignSwelling Swelling,
    [property: JsonConverter(typeof(Tenths))] double SidesDifferPercent,
    DesignTipPiece? TipPiece,
    DesignFacing? Facing,
    DesignMakeRow Laminated,
    DesignMakeRow OnePiece)
{
    /// <summary>The member for a report; null of one piece.</summary>
    internal static DesignConstruction? Of(DesignReport report)
    {
        if (report.Laminate is not { } laminate) return null;
        var (strips, glue, up) = (laminate.Laminate, laminate.Laminate.Adhesive, laminate.GlueUp);
        return new(
            "laminated",
            [.. up.Strips.Select(strip => new DesignStrip(
                strip.SpeciesId, strip.Count, strip.Part, strip.WidthMm, strip.CutWidthMm, strip.BoardWidthMm, strip.ThicknessMm, strip.LengthMm, strip.FromMm, strip.ToMm))],
            [.. strips.Woods.Select(DesignStripWood.Of)],
            new(
                glue.Id, glue.Name, glue.SpreadGM2, glue.SpreadSource, glue.ClampMPa.Least, glue.ClampMPa.Most, glue.ClampSource, glue.CureHours, glue.Use, glue.Caution,
                glue.CautionSource),
            new(up.Joints, up.JointAreaCm2, up.GlueG, up.ClampSpacingMm, up.Clamps, up.ClampN, GlueUp.Source),
            laminate.Shear is { } shear
                ? new(shear.CaseId, shear.AtMm, Math.Abs(shear.LineMm), shear.LengthwiseMPa, shear.CrosswiseMPa, shear.SafetyFactor, shear.LeastFactor)
                : null,
            new(
                laminate.Mismatch.Species, laminate.Mismatch.OtherSpecies, SwellingMismatch.MoisturePercent, laminate.Mismatch.StrainPercent, laminate.Mismatch.StressMPa,
                laminate.Mismatch.StrengthMPa),
            laminate.SidesDifferPercent,
            strips.TipPiece is { } tip && laminate.Tip is { } bent ? new(tip.Wood.SpeciesId, tip.LengthMm, DesignPartStress.Of(bent)) : null,
            strips.Facing is { } facing && laminate.Facing is { } faced
                ? new(
                    facing.Wood.SpeciesId, facing.ThicknessMm, 2, faced.FromMm, faced.LengthMm, faced.WidthMm, faced.AreaCm2, DesignPartStress.Of(faced.Sheet), DesignPartStress.Of(faced.Core),
                    DesignPartStress.Of(faced.Shear))
                : null,
            DesignMakeRow.Of(LaminateComparison.Row(report)),
            DesignMakeRow.Of(LaminateComparison.OnePiece(report.Specification)));
    }
}

/// <summary>A hard piece across the end of the blade, its grain square to the paddle; its stick stands among the strips.</summary>
/// <param name="Species">Id of its wood.</param>
/// <param name="LengthMm">Along the paddle, mm.</param>
/// <param name="Bending">Bending of it, or of its joint, across its grain.</param>
internal sealed record DesignTipPiece(string Species, [property: JsonConverter(typeof(Tenths))] double LengthMm, DesignPartStress Bending);

/// <summary>Thin sheets on both faces of the blade, within its thickness.</summary>
/// <param name="Species">Id of their wood.</param>
/// <param name="ThicknessMm">Thickness of each, mm.</param>
/// <param name="Count">How many.</param>
/// <param name="FromMm">Where they begin, mm from the top of the grip; they end with the blade.</param>
/// <param name="LengthMm">Length of each, finished, mm.</param>
/// <param name="WidthMm">Widest place of each, finished, mm.</param>
/// <param name="AreaCm2">Area to spread with glue, both together, cm².</param>
/// <param name="Sheet">Bending of the sheets at their outer face.</param>
/// <param name="Core">Bending of the strips at their outermost fibres, under the sheets.</param>
/// <param name="Shear">Shear between both.</param>
internal sealed record DesignFacing(
    string Species,
    [property: JsonConverter(typeof(Hundredths))] double ThicknessMm,
    int Count,
    [property: JsonConverter(typeof(Tenths))] double FromMm,
    [property: JsonConverter(typeof(Tenths))] double LengthMm,
    [property: JsonConverter(typeof(Tenths))] double WidthMm,
    [property: JsonConverter(typeof(Tenths))] double AreaCm2,
    DesignPartStress Sheet,
    DesignPartStress Core,
    DesignPartStress Shear);

/// <summary>Where a part is nearest to its own strength.</summary>
/// <param name="Case">The load case.</param>
/// <param name="AtMm">Where, mm from the top of the grip.</param>
/// <param name="StressMPa">Stress there, MPa.</param>
/// <param name="StrengthMPa">Strength there, 5th percentile with the load's duration, MPa.</param>
/// <param name="SafetyFactor">Strength over stress.</param>
/// <param name="LeastFactor">Least factor asked of the case.</param>
internal sealed record DesignPartStress(
    string Case,
    [property: JsonConverter(typeof(Tenths))] double AtMm,
    [property: JsonConverter(typeof(ThreeDigits))] double StressMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double StrengthMPa,
    [property: JsonConverter(typeof(Thousandths))] double SafetyFactor,
    [property: JsonConverter(typeof(Thousandths))] double LeastFactor)
{
    internal static DesignPartStress Of(PartStress part) => new(part.CaseId, part.AtMm, part.StressMPa, part.StrengthMPa, part.SafetyFactor, part.LeastFactor);
}

/// <summary>Strips of one wood and size to cut.</summary>
/// <param name="Species">Id of the wood.</param>
/// <param name="Count">How many.</param>
/// <param name="Part"><c>whole</c> length, <c>blade</c> or <c>grip</c>; <c>tip</c>: the piece across the end of the blade, its length square to the paddle.</param>
/// <param name="WidthMm">Width in the glued-up blank, mm.</param>
/// <param name="CutWidthMm">Width to saw: 1 mm is planed off each edge for the glue.</param>
/// <param name="BoardWidthMm">Width of board that it takes, 3 mm of kerf included, mm.</param>
/// <param name="ThicknessMm">Thickness before gluing, mm: the thickest section within it and 1 mm to plane off each face after.</param>
/// <param name="LengthMm">Length to cut, 25 mm of trim at both ends included, mm.</param>
/// <param name="FromMm">Where its finished wood begins, mm from the top of the grip.</param>
/// <param name="ToMm">Where it ends, mm from the top of the grip.</param>
internal sealed record DesignStrip(
    string Species,
    int Count,
    string Part,
    [property: JsonConverter(typeof(Tenths))] double WidthMm,
    [property: JsonConverter(typeof(Tenths))] double CutWidthMm,
    [property: JsonConverter(typeof(Tenths))] double BoardWidthMm,
    [property: JsonConverter(typeof(Tenths))] double ThicknessMm,
    [property: JsonConverter(typeof(Tenths))] double LengthMm,
    [property: JsonConverter(typeof(Tenths))] double FromMm,
    [property: JsonConverter(typeof(Tenths))] double ToMm);

/// <summary>The values of one wood of a laminated paddle.</summary>
/// <param name="Species">Its id.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="ModulusMPa">True modulus along the grain, MPa.</param>
/// <param name="BendingStrengthMPa">Bending strength, 5th percentile, MPa.</param>
/// <param name="CrossGrainStrengthMPa">Strength across the grain, 5th percentile, MPa.</param>
/// <param name="Sources">Where they come from.</param>
internal sealed record DesignStripWood(
    string Species,
    [property: JsonConverter(typeof(Tenths))] double DensityKgM3,
    [property: JsonConverter(typeof(ThreeDigits))] double ModulusMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double BendingStrengthMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double CrossGrainStrengthMPa,
    IReadOnlyList<string> Sources)
{
    internal static DesignStripWood Of(WoodInUse wood) => new(
        wood.SpeciesId, wood.DensityKgM3, wood.ModulusMPa, wood.BendingStrengthMPa, wood.CrossGrainStrengthMPa, wood.Sources);
}

/// <summary>The glue.</summary>
/// <param name="Id">Its class.</param>
/// <param name="Name">Its name.</param>
/// <param name="SpreadGM2">Glue for a square metre of joint, both faces together, g/m².</param>
/// <param name="SpreadSource">Where that comes from.</param>
/// <param name="ClampLeastMPa">Least pressure of the clamps, MPa.</param>
/// <param name="ClampMostMPa">Most, MPa.</param>
/// <param name="ClampSource">Where that comes from.</param>
/// <param name="CureHours">Hours in the clamps and before planing, at 20 degrees C.</param>
/// <param name="Use">How it is used.</param>
/// <param name="Caution">What can hurt.</param>
/// <param name="CautionSource">Where the caution comes from.</param>
internal sealed record DesignAdhesive(
    string Id,
    string Name,
    [property: JsonConverter(typeof(Tenths))] double SpreadGM2,
    string SpreadSource,
    [property: JsonConverter(typeof(Hundredths))] double ClampLeastMPa,
    [property: JsonConverter(typeof(Hundredths))] double ClampMostMPa,
    string ClampSource,
    [property: JsonConverter(typeof(Tenths))] double CureHours,
    string Use,
    string Caution,
    string CautionSource);

/// <summary>Joints, glue and clamps.</summary>
/// <param name="Count">How many joints are glued.</param>
/// <param name="AreaCm2">Their area together, cm².</param>
/// <param name="GlueG">Glue needed, g: a fifth stays in the pot.</param>
/// <param name="ClampSpacingMm">Distance from clamp to clamp, mm.</param>
/// <param name="Clamps">How many clamps the longest joint takes.</param>
/// <param name="ClampForceN">Force of each clamp at the least pressure, N.</param>
/// <param name="Source">Where allowances and spacing come from.</param>
internal sealed record DesignGlueLines(
    int Count,
    [property: JsonConverter(typeof(Tenths))] double AreaCm2,
    [property: JsonConverter(typeof(Tenths))] double GlueG,
    [property: JsonConverter(typeof(Tenths))] double ClampSpacingMm,
    int Clamps,
    [property: JsonConverter(typeof(Tenths))] double ClampForceN,
    string Source);

/// <summary>Shear in the glue lines where it is nearest to the strength of the wood beside them.</summary>
/// <param name="Case">The load case.</param>
/// <param name="AtMm">Where, mm from the top of the grip.</param>
/// <param name="FromCentreMm">The line's distance from the centre line, mm.</param>
/// <param name="LengthwiseMPa">Shear along the paddle, MPa.</param>
/// <param name="CrosswiseMPa">Shear square to the faces, MPa.</param>
/// <param name="SafetyFactor">How many times both could grow before the weaker wood beside the line shears.</param>
/// <param name="LeastFactor">Least factor asked of the case.</param>
internal sealed record DesignGlueLineShear(
    string Case,
    [property: JsonConverter(typeof(Tenths))] double AtMm,
    [property: JsonConverter(typeof(Tenths))] double FromCentreMm,
    [property: JsonConverter(typeof(ThreeDigits))] double LengthwiseMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double CrosswiseMPa,
    [property: JsonConverter(typeof(Thousandths))] double SafetyFactor,
    [property: JsonConverter(typeof(Thousandths))] double LeastFactor);

/// <summary>Stress in a glue line because the woods beside it swell differently.</summary>
/// <param name="Species">The one wood.</param>
/// <param name="OtherSpecies">The other.</param>
/// <param name="MoisturePercent">Change of moisture, percent.</param>
/// <param name="StrainPercent">Difference of their swelling, percent.</param>
/// <param name="StressMPa">Stress across the grain, an upper estimate, MPa.</param>
/// <param name="StrengthMPa">Strength across the grain of the weaker, 5th percentile, MPa.</param>
internal sealed record DesignSwelling(
    string Species,
    string OtherSpecies,
    [property: JsonConverter(typeof(Tenths))] double MoisturePercent,
    [property: JsonConverter(typeof(Thousandths))] double StrainPercent,
    [property: JsonConverter(typeof(ThreeDigits))] double StressMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double StrengthMPa);

/// <summary>One way of making the paddle.</summary>
/// <param name="FinishedG">Mass finished, g.</param>
/// <param name="BalanceOffsetMm">Balance point less target, mm; negative when grip-heavy.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
/// <param name="SafetyFactor">Factor of the case nearest to its least.</param>
/// <param name="Margin">That over the least factor asked of the case.</param>
/// <param name="GoverningCase">The case.</param>
/// <param name="GlueLines">Joints to glue.</param>
/// <param name="BoardFeet">Boards that it takes by the trade's measure, with trim, kerf and planing; sheets on the faces apart.</param>
/// <param name="WoodCost">Their price by pricePerBoardFoot; null where the price of one wood, or of sheets, is not known.</param>
internal sealed record DesignMakeRow(
    [property: JsonConverter(typeof(Tenths))] double FinishedG,
    [property: JsonConverter(typeof(Hundredths))] double BalanceOffsetMm,
    [property: JsonConverter(typeof(Hundredths))] double BenchFlexMm,
    [property: JsonConverter(typeof(Thousandths))] double SafetyFactor,
    [property: JsonConverter(typeof(Thousandths))] double Margin,
    string GoverningCase,
    int GlueLines,
    [property: JsonConverter(typeof(Hundredths))] double BoardFeet,
    double? WoodCost)
{
    internal static DesignMakeRow Of(LaminateComparison row) => new(
        row.FinishedG, row.BalanceOffsetMm, row.BenchFlexMm, row.LeastFactor, row.LeastMargin, row.GoverningCase, row.GlueLines, row.BoardFeet,
        row.WoodCost is { } cost ? Math.Round(cost, 2) : null);
}
