using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Build;

/// <summary>Designs that the tests of the build start from.</summary>
internal static class BuildSamples
{
    internal static DesignReport Cherry { get; } = Design("beavertail", "black-cherry");

    internal static DesignReport Design(
        string familyId,
        string speciesId,
        double bendDegrees = 0,
        GripStyle grip = GripStyle.Pear,
        GripFaces faces = GripFaces.Matching,
        double toleranceMm = 12,
        double? densityKgM3 = null,
        double bodyMassKg = 75,
        BalanceAim balanceAt = BalanceAim.LowerHand)
    {
        var family = BladeFamilies.Find(familyId)!;
        var pattern = GripPattern.Of(grip);
        var blade = new BladeShape(
            family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
        const double HandSpacingMm = 880;
        var lowerHand = pattern.HandMm + HandSpacingMm;
        var throat = lowerHand + 38;
        var form = new PaddleForm(
            new(pattern.HandMm, pattern.LengthMm, lowerHand, throat, throat + family.DefaultLengthMm),
            new(grip, pattern.WidthMm, pattern.LengthMm, faces, pattern.HollowDepthMm),
            blade,
            bendDegrees);
        var species = WoodCatalogue.Find(speciesId)!;
        return PaddleDesigner.Design(new PaddleSpecification(
            form,
            new PinnedSizes(),
            WoodInUse.Resolve(species, 12, 0, densityKgM3, null),
            TestPaddles.Loads(bodyMassKg),
            new(balanceAt, toleranceMm, 1.5, null, null, null)));
    }
}
