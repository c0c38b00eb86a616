using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Drawings.Tests;

/// <summary>Designs of every family to draw.</summary>
internal static class SampleDesigns
{
    public static DesignReport Of(
        string family, double bendDegrees = 0, GripStyle style = GripStyle.Pear, GripFaces faces = GripFaces.Matching, double handSpacingMm = 880)
    {
        var grip = GripPattern.Of(style);
        var blade = BladeFamilies.Find(family)!;
        var lower = grip.HandMm + handSpacingMm;
        var throat = lower + 38;
        var form = new PaddleForm(
            new(grip.HandMm, grip.LengthMm, lower, throat, throat + blade.DefaultLengthMm),
            new(style, grip.WidthMm, grip.LengthMm, faces, grip.HollowDepthMm),
            new(blade, blade.DefaultLengthMm, blade.DefaultWidthMm, blade.DefaultWidestAt, blade.DefaultFullness, null),
            bendDegrees);
        var wood = WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, 12, 0.04, null, null);
        var aims = new Aims(BalanceAim.LowerHand, 12, 1.5, null, null, null);
        var specification = new PaddleSpecification(form, new(), wood, Loads.ForBodyMass(75), aims);
        return PaddleDesigner.Design(specification with { Pinned = PinnedSizes.To(new(29, 32, 24.5, 27, 27, 10.5, 7.5, 5, 25)) });
    }
}
