using System.Text.Json;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.House;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Validation;

/// <summary>One paddle of FiniteElements.json: every size fixed, with what three-dimensional finite elements found. What each figure means stands in the file's head.</summary>
public sealed record FiniteElementCase(
    string Name,
    string Family,
    string Species,
    double HandSpacingMm,
    double FreeboardMm,
    double BladeLengthMm,
    double BladeWidthMm,
    double WidestAt,
    double Fullness,
    double[] SizesMm,
    double HardStrokeN,
    double DensityKgM3,
    double ModulusMPa,
    double ShearModulusMPa,
    double VolumeCm3,
    double CentreOfMassMm,
    double BenchFlexMm,
    double TipDeflectionMm,
    double? FlatwiseHz,
    double? EdgewiseHz,
    double AcrossMPa,
    double AcrossAtMm,
    double AcrossAtHalfWidth,
    double HandMPa,
    bool HeldOut,
    double[][] Spine)
{
    private const double BoardSlope = 0.04;

    // Which places could decide: those that use nine tenths of what the most used place does, the grain cut by the taper counted.
    private const double CouldGovern = 0.9;

    private static readonly JsonSerializerOptions CamelCase = new(JsonSerializerDefaults.Web);

    /// <summary>All cases.</summary>
    internal static IReadOnlyList<FiniteElementCase> All { get; } =
        JsonSerializer.Deserialize<Table>(Repository.Read("tests/Paddle.Design.Tests/Validation/FiniteElements.json"), CamelCase)!.Cases;

    /// <summary>The engine's figures for the same paddle.</summary>
    internal OwnFigures Ours()
    {
        var sizes = PaddleSizes.FromVector(SizesMm);
        var lower = GripPattern.Of(GripStyle.Pear).HandMm + HandSpacingMm;
        var grip = new GripShape(GripStyle.Pear, 64, 95, GripFaces.Matching, 5);
        var blade = new BladeShape(BladeFamilies.Find(Family)!, BladeLengthMm, BladeWidthMm, WidestAt, Fullness, null);
        var places = new PaddlePlaces(lower - HandSpacingMm, 95, lower, lower + FreeboardMm, lower + FreeboardMm + BladeLengthMm);
        var form = new PaddleForm(places, grip, blade, 0);
        var wood = WoodInUse.Resolve(WoodCatalogue.Find(Species)!, 12, BoardSlope, null, null) with
        {
            DensityKgM3 = DensityKgM3,
            ModulusMPa = ModulusMPa,
            ShearModulusMPa = ShearModulusMPa,
        };

        var outline = form.Outline(sizes);
        var fine = PaddleSolid.Shape(form, sizes, outline, StationGrid.Fine);
        var printed = PaddleSolid.Shape(form, sizes, outline, form.PrintedGrid());
        var pressure = BladePressure.On(printed);
        var mass = MassProperties.Of(fine, DensityKgM3);
        var flex = Flex.Of(fine, printed, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood);

        var moments = Moments(printed, pressure);
        double[] along = [.. Enumerable.Range(0, printed.Count).Select(i => StrengthCheck.StressMPa(printed, i, moments[i], 0).StressMPa)];
        var across = CrossGrainBending.Of(printed, moments, pressure, HardStrokeN, StrokePivots.HardMm);
        double At(double[] values, double x)
        {
            var next = Math.Clamp(Array.FindIndex(printed.X, place => place >= x), 1, printed.Count - 1);
            var share = (x - printed.X[next - 1]) / (printed.X[next] - printed.X[next - 1]);
            return values[next - 1] + share * (values[next] - values[next - 1]);
        }

        var use = Spine.Select(p => p[1] / new TaperedGrain(BoardSlope).Share(At(printed.FaceSlope, p[0]))).ToArray();
        var shortest = Spine.Where((_, i) => use[i] >= CouldGovern * use.Max()).MinBy(p => At(along, p[0]) / p[1])!;
        return new(
            mass.VolumeCm3,
            mass.CentreOfMassMm,
            flex,
            along.Max(),
            At(along, shortest[0]) / shortest[1],
            shortest[0],
            (shortest[0] - places.ThroatMm) / BladeLengthMm,
            across.StressMPa,
            across.AtMm);
    }

    /// <summary>Largest stress along the grain that the elements saw.</summary>
    internal double LargestMPa => Math.Max(HandMPa, Spine.Max(p => p[1]));

    /// <summary>A place along the paddle as a fraction of the blade.</summary>
    internal double OfBlade(double xMm) =>
        (xMm - (GripPattern.Of(GripStyle.Pear).HandMm + HandSpacingMm + FreeboardMm)) / BladeLengthMm;

    // Statics of the hard stroke: the blade's own moment, and the lever to the lower hand.
    private double[] Moments(PaddleSolid solid, BladePressure pressure)
    {
        var places = solid.Form.Places;
        var moments = new double[solid.Count];
        for (var i = solid.Grid.FirstBladePlace; i < solid.Count; i++)
            moments[i] = pressure.StrokeMomentNmm(i, solid.X[i], HardStrokeN, StrokePivots.HardMm);
        for (var i = 0; i < solid.Grid.FirstBladePlace; i++)
        {
            var toThroat = places.ThroatMm - Math.Max(solid.X[i], places.LowerHandMm);
            var share = Math.Clamp((solid.X[i] - places.TopHandMm) / places.HandSpacingMm, 0, 1);
            moments[i] = (moments[solid.Grid.FirstBladePlace] + HardStrokeN * toThroat) * share;
        }

        return moments;
    }

    private sealed record Table(string[] About, FiniteElementCase[] Cases);
}

/// <summary>The engine's figures for such a paddle; the shortest ratio is the least of ours over theirs where it could decide.</summary>
internal sealed record OwnFigures(
    double VolumeCm3,
    double CentreOfMassMm,
    Flex Flex,
    double LargestMPa,
    double ShortestRatio,
    double ShortestAtMm,
    double ShortestOfBlade,
    double AcrossMPa,
    double AcrossAtMm);
