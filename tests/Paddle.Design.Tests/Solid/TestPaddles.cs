using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Solid;

/// <summary>Paddles that the checks share.</summary>
internal static class TestPaddles
{
    /// <summary>Sizes in the middle of what makers use (mm).</summary>
    internal static PaddleSizes UsualSizes { get; } = new(30, 31, 27, 28, 27, 11, 7.5, 4.5, 29);

    internal static WoodInUse Ash { get; } = Wood("white-ash");

    internal static WoodInUse Wood(string id, double moisturePercent = 12, double slopeOfGrain = 0.04) =>
        WoodInUse.Resolve(WoodCatalogue.Find(id)!, moisturePercent, slopeOfGrain, null, null);

    /// <summary>The load cases of a body mass with a least factor of its own.</summary>
    internal static Loads Loads(double bodyMassKg = 75, double leastFactor = 1.5, ForcesAsked? asked = null) =>
        Design.Strength.Loads.For(Duty.Touring, bodyMassKg, 70000, leastFactor, asked);

    /// <summary>A paddle to be designed with the loads and aims that most checks share.</summary>
    internal static PaddleSpecification Asked(
        PaddleForm form, WoodInUse? wood = null, Loads? loads = null, Aims? aims = null, double?[]? pinned = null) =>
        new(form, Pinned(pinned ?? new double?[PaddleSizes.Count]), wood ?? Ash, loads ?? Loads(), aims ?? new(BalanceAim.LowerHand, 12, 1.5, null, null, null));

    private static PinnedSizes Pinned(double?[] p) => new(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], p[8]);

    internal static BladeShape Blade(
        string family, double? length = null, double? width = null, double? widestAt = null, double? fullness = null)
    {
        var f = BladeFamilies.Find(family)!;
        return new(f, length ?? f.DefaultLengthMm, width ?? f.DefaultWidthMm, widestAt ?? f.DefaultWidestAt,
            fullness ?? f.DefaultFullness, null);
    }

    internal static BladeShape OffsetsBlade(params Offset[] offsets)
    {
        var (width, widestAt) = OffsetsOutline.Widest(offsets);
        return new(null, offsets[^1].XMm, width, widestAt, 0, offsets);
    }

    internal static PaddleForm Form(
        BladeShape blade,
        double handSpacing = 880,
        double freeboard = 38,
        double bend = 0,
        GripStyle style = GripStyle.Pear,
        GripFaces faces = GripFaces.Matching)
    {
        var grip = GripPattern.Of(style);
        var throat = grip.HandMm + handSpacing + freeboard;
        return new(
            new(grip.HandMm, grip.LengthMm, grip.HandMm + handSpacing, throat, throat + blade.LengthMm),
            new(style, grip.WidthMm, grip.LengthMm, faces, grip.HollowDepthMm),
            blade,
            bend);
    }

    internal static PaddleSolid Shape(PaddleForm form, StationGrid grid, PaddleSizes? sizes = null) =>
        PaddleSolid.Shape(form, sizes ?? UsualSizes, form.Outline(sizes ?? UsualSizes), grid);

    internal static StationGrid PrintedGrid(PaddleForm form) => StationGrid.Printed(form.Lengths, form.Blade.WidestAt, 10);

    /// <summary>A prismatic bar of rectangular section in place of the paddle: with e = c the section's exponents no longer matter.</summary>
    internal static PaddleSolid Bar(PaddleForm form, StationGrid grid, double widthMm, double thicknessMm)
    {
        var solid = Shape(form, grid);
        Array.Fill(solid.HalfWidth, widthMm / 2);
        Array.Fill(solid.HalfThickness, thicknessMm / 2);
        Array.Fill(solid.EdgeHalfThickness, thicknessMm / 2);
        Array.Fill(solid.Area, widthMm * thicknessMm);
        Array.Fill(solid.FlatSecondMoment, widthMm * thicknessMm * thicknessMm * thicknessMm / 12);
        return solid;
    }

    internal static void AssertRelative(double expected, double actual, double tolerance, string what = "") =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance * Math.Abs(expected),
            $"{what}: expected {expected:R}, got {actual:R}, off by {Math.Abs(actual / expected - 1):E2}, allowed {tolerance:E2}");
}
