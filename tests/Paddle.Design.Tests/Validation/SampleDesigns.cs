using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Validation;

/// <summary>Designs that several checks look at.</summary>
internal static class SampleDesigns
{
    internal static PaddleSpecification Touring(string species, double hardStrokeN, double handSpacingMm = 845, double bendDegrees = 0)
    {
        var family = BladeFamilies.Find("ottertail")!;
        var blade = new BladeShape(family, 650, 148, family.DefaultWidestAt, family.DefaultFullness, null);
        var places = new PaddlePlaces(17, 95, 17 + handSpacingMm, 55 + handSpacingMm, 705 + handSpacingMm);
        var grip = new GripShape(GripStyle.Pear, 64, 95, GripFaces.Matching, 5);
        return new(
            new PaddleForm(places, grip, blade, bendDegrees),
            new PinnedSizes(),
            WoodInUse.Resolve(WoodCatalogue.Find(species)!, 12, 0.04, null, null),
            TestPaddles.Loads(asked: new(HardStrokeN: hardStrokeN)),
            new Aims(BalanceAim.LowerHand, 12, 1.5, null, null, null));
    }
}
