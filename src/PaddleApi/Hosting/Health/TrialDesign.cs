using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace PaddleApi.Hosting.Health;

/// <summary>The design that the service solves for trial when it starts: a common paddle in a common wood.</summary>
internal static class TrialDesign
{
    // Compiling and tiering the solver takes a few runs; more would only delay the start.
    private const int Runs = 5;

    /// <summary>Solves the trial design.</summary>
    /// <exception cref="InvalidOperationException">The design came out with a mass that no paddle has.</exception>
    public static void Run()
    {
        for (var run = 0; run < Runs; run++)
        {
            var massG = PaddleDesigner.Design(Specification()).Mass.TotalG;
            if (massG is not (> 200 and < 2000))
            {
                throw new InvalidOperationException($"The trial design weighs {massG} g.");
            }
        }
    }

    private static PaddleSpecification Specification()
    {
        var family = BladeFamilies.Find("ottertail")!;
        var pattern = GripPattern.Of(GripStyle.Pear);
        var grip = new GripShape(GripStyle.Pear, pattern.WidthMm, pattern.LengthMm, GripFaces.Matching, pattern.HollowDepthMm);
        var blade = new BladeShape(family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
        const double HandSpacingMm = 880;
        const double FreeboardMm = 38;
        var lowerHandMm = pattern.HandMm + HandSpacingMm;
        var throatMm = lowerHandMm + FreeboardMm;
        var places = new PaddlePlaces(pattern.HandMm, pattern.LengthMm, lowerHandMm, throatMm, throatMm + family.DefaultLengthMm);
        var form = new PaddleForm(places, grip, blade, BendDegrees: 0);
        return new PaddleSpecification(
            form,
            new PinnedSizes(),
            WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, moisturePercent: 12, slopeOfGrain: 0.04, null, null),
            Loads.For(Duty.Touring, Loads.UnknownBodyMassKg, form.BladeAreaMm2()),
            new Aims(BalanceAim.LowerHand, BalanceToleranceMm: 12, MinimumSafetyFactor: 1.3, null, null, null));
    }
}
