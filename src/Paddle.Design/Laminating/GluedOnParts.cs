using System.Text.Json.Serialization;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Laminating;

/// <summary>Where a part is nearest to its own strength.</summary>
/// <param name="Case">The load case.</param>
/// <param name="AtMm">Where, mm from the top of the grip.</param>
/// <param name="StressMPa">Stress there, MPa.</param>
/// <param name="StrengthMPa">Strength there, 5th percentile with the shares of L17 and L18, MPa.</param>
/// <param name="LeastFactor">Least factor asked of the case.</param>
public sealed record PartStress(string Case, double AtMm, double StressMPa, double StrengthMPa, double LeastFactor)
{
    /// <summary>Strength over stress.</summary>
    public double SafetyFactor => StrengthMPa / StressMPa;
    /// <summary>That over the least factor asked of the case.</summary>
    internal double Margin => SafetyFactor / LeastFactor;

    /// <summary>The one of the two that is nearer to its strength.</summary>
    internal static PartStress? Worse(PartStress? one, PartStress other) => other.StressMPa <= 0 || one?.Margin <= other.Margin ? one : other;
}

/// <summary>A hard piece across the end of the blade, its grain square to the paddle; its stick stands among the strips.</summary>
/// <param name="Species">Id of its wood.</param>
/// <param name="LengthMm">Along the paddle, mm.</param>
/// <param name="Bending">Bending of it, or of its joint, across its grain.</param>
public sealed record TipPieceReport(string Species, double LengthMm, PartStress Bending);

/// <summary>Thin sheets on both faces of the blade, within its thickness. Theory J12–J13.</summary>
/// <param name="Species">Id of their wood.</param>
/// <param name="ThicknessMm">Thickness of each, mm.</param>
/// <param name="Sheet">Bending of the sheets at their outer face.</param>
/// <param name="Core">Bending of the strips at their outermost fibres, under the sheets.</param>
/// <param name="Shear">Shear between both.</param>
/// <param name="Mismatch">The strip that swells most differently.</param>
/// <param name="FromMm">Where they begin, mm from the top of the grip; they end with the blade.</param>
/// <param name="LengthMm">Length of each, finished, mm.</param>
/// <param name="WidthMm">Widest place of each, finished, mm.</param>
/// <param name="AreaCm2">Area to spread with glue, both together, cm².</param>
public sealed record FacingReport(
    string Species, double ThicknessMm, PartStress Sheet, PartStress Core, PartStress Shear, [property: JsonIgnore] SwellingMismatch Mismatch, double FromMm, double LengthMm, double WidthMm, double AreaCm2)
{
    /// <summary>How many.</summary>
    public int Count { get; } = 2;

    /// <summary>The nearest of the three to its least factor.</summary>
    internal PartStress Governing => PartStress.Worse(PartStress.Worse(Sheet, Core), Shear)!;
}

/// <summary>Looks at what is glued onto the strips: a piece across the tip, and sheets on the faces.</summary>
internal sealed class GluedOnParts(PaddleSolid solid, BladePressure pressure, Loads loads, double bucklingN, WoodInUse wood)
{
    /// <summary>The piece across the tip, bent across its grain, or its joint: one place of it is the line. Theory J11.</summary>
    internal PartStress? Tip(TipPiece tip)
    {
        PartStress? worst = null;
        Look((loadCase, moments, i) =>
        {
            if (solid.Form.StripsAt(solid.X[i]) is not { IsAcross: true } layup) return;
            var (bending, thrust) = StrengthCheck.FaceStressMPa(solid, i, moments[i], loadCase.ThrustN);
            var stress = layup.Governing(solid.Section(i), bending, thrust, ofStrips: true).StressMPa;
            worst = PartStress.Worse(worst, Of(loadCase, i, stress, tip.Wood.CrossGrainStrengthMPa / wood.BendingStrengthMPa));
        });
        return worst;
    }

    /// <summary>Sheets and what they cover.</summary>
    internal FacingReport Facing(Laminate laminate, Facing facing)
    {
        PartStress? sheet = null, core = null, shear = null;
        var joint = laminate.Strips.Min(strip => JointStrength.Between(strip.Wood, facing.Wood).LengthwiseMPa);
        Look((loadCase, moments, i) =>
        {
            if (solid.Form.StripsAt(solid.X[i]) is not { Sheet: { } laid } layup) return;
            var (bending, thrust) = StrengthCheck.FaceStressMPa(solid, i, moments[i], loadCase.ThrustN);
            sheet = PartStress.Worse(sheet, Of(loadCase, i, laid.ModulusRatio * (bending + thrust), laid.StrengthRatio));
            if (layup.IsAcross) return;
            var (stress, ratio, _) = layup.Governing(solid.Section(i), bending, thrust, ofStrips: true);
            core = PartStress.Worse(core, Of(loadCase, i, stress, ratio));
            shear = PartStress.Worse(shear, new(loadCase.Id, solid.X[i], ShearMPa(solid, moments, i), loadCase.StrengthShare * joint, loadCase.LeastFactor));
        });
        var from = Laminate.FacingFromMm(solid.Form.Places);
        var widest = Enumerable.Range(0, solid.Count).Where(i => solid.X[i] >= from).Max(i => solid.HalfWidth[i]);
        var mismatch = laminate.Strips.Select(strip => SwellingMismatch.OnFace(strip.Wood, facing.Wood)).MaxBy(one => one.StressMPa / one.StrengthMPa)!;
        return new(facing.Wood.Species, facing.ThicknessMm, sheet!, core!, shear!, mismatch, from, solid.Form.Places.OverallMm - from, 2 * widest, SheetsMm2(solid) / 100);
    }

    /// <summary>Faces that sheets cover, both together, mm².</summary>
    internal static double SheetsMm2(PaddleSolid solid)
    {
        var faced = Enumerable.Range(0, solid.Count).Where(i => solid.X[i] >= Laminate.FacingFromMm(solid.Form.Places)).ToList();
        return faced.Zip(faced.Skip(1), (a, b) => 2 * (solid.HalfWidth[a] + solid.HalfWidth[b]) * (solid.X[b] - solid.X[a])).Sum();
    }

    /// <summary>Shear (MPa) between sheet and strips at the centre line, where both lie furthest from the middle plane: the change of the sheet's force
    /// along the paddle, between this place and its neighbours. In a bar of one section it is VQ/(Ib). Theory J13.</summary>
    internal static double ShearMPa(PaddleSolid solid, ReadOnlySpan<double> moments, int i)
    {
        if (!IsFaced(solid, i)) return 0; // the very tip has no section
        int before = IsFaced(solid, i - 1) ? i - 1 : i, after = IsFaced(solid, i + 1) ? i + 1 : i;
        return before == after ? 0 : Math.Abs(Force(solid, moments, after) - Force(solid, moments, before)) / (solid.X[after] - solid.X[before]);

        static bool IsFaced(PaddleSolid solid, int i) => i < solid.Count && solid.Area[i] > 1e-9 && solid.Form.StripsAt(solid.X[i]) is { Sheet: not null, IsAcross: false };
        static double Force(PaddleSolid solid, ReadOnlySpan<double> moments, int i)
        {
            var sheet = solid.Form.StripsAt(solid.X[i])!.Sheet!.Value;
            return sheet.ModulusRatio * Math.Max(0, moments[i]) * sheet.ThicknessMm * (solid.HalfThickness[i] - sheet.ThicknessMm / 2) / solid.FlatSecondMoment[i]; // theory J13
        }
    }

    private PartStress Of(LoadCase loadCase, int i, double stressMPa, double strengthRatio) => new(
        loadCase.Id, solid.X[i], stressMPa, StrengthCheck.StrengthShare(solid, i, loadCase, wood) * strengthRatio * wood.BendingStrengthMPa, loadCase.LeastFactor);

    private void Look(Action<LoadCase, double[], int> at)
    {
        var moments = new double[solid.Count];
        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(solid, pressure, loadCase, bucklingN, moments);
            for (var i = solid.Grid.FirstBladePlace; i < solid.Count; i++) at(loadCase, moments, i);
        }
    }
}
