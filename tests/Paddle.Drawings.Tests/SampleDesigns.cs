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
        return Report(specification, new(29, 32, 24.5, 27, 27, 10.5, 7.5, 5, 25));
    }

    private static DesignReport Report(PaddleSpecification specification, PaddleSizes sizes)
    {
        var form = specification.Form;
        var outline = form.Outline(sizes);
        var fine = PaddleSolid.Shape(form, sizes, outline, StationGrid.Fine);
        var printed = PaddleSolid.Shape(form, sizes, outline, StationGrid.Printed(form.Lengths, form.Blade.WidestAt, 10));
        var mass = MassProperties.Of(fine, specification.Wood.DensityKgM3);
        var pressures = StrokePressures.On(printed);
        return new(
            specification,
            sizes,
            outline,
            printed,
            mass,
            new(form.Places.LowerHandMm, mass.CentreOfMassMm, 12, true, [], []),
            StrengthCheck.Of(printed, pressures, specification.Loads, specification.Wood),
            new(14.2, 31.5, 18.3),
            new(pressures.Touring.AreaMm2 / 100, 5, pressures.Touring.CentreOfPressureMm, 1.2, 2, 89, 43, 40, 129, 38, 0.9, 0.7, 1.5, 0.6, 0.7, 3, 10, 500, []),
            [],
            []);
    }
}
