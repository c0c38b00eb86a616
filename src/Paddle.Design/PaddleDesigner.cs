using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;

namespace Paddle.Design;

/// <summary>Calls the steps of a design in the order the work flows.</summary>
public static class PaddleDesigner
{
    /// <summary>Designs a paddle: chooses the sizes left open, then reports on the solid with those sizes, rounded as they are printed.</summary>
    /// <param name="specification">What is asked, every value checked beforehand.</param>
    /// <returns>The design; when the aims cannot all be met, the closest one, saying so.</returns>
    public static DesignReport Design(PaddleSpecification specification)
    {
        ArgumentNullException.ThrowIfNull(specification);
        var (form, pinned, wood, loads, aims) = specification;

        var choice = SizeChoice.For(form, pinned.ToVector(), wood, loads, aims);
        var outline = form.Outline(choice.Sizes);
        var fine = PaddleSolid.Shape(form, choice.Sizes, outline, StationGrid.Fine);
        var stations = PaddleSolid.Shape(form, choice.Sizes, outline, form.PrintedGrid());

        var mass = MassProperties.Of(fine, wood.DensityKgM3);
        var pressures = StrokePressures.On(stations);
        var strength = StrengthCheck.Of(stations, pressures, loads, wood);
        var flex = Flex.Of(fine, stations, pressures.Touring.CentreOfPressureMm, wood);
        var stroke = StrokeStep.Of(form, pressures, loads, mass);
        var balance = Balanced(specification, choice, mass, strength, flex);
        var checks = DesignChecks.Of(form, choice.Sizes, wood, loads, aims, mass, strength, flex, pressures);
        return new(
            specification, choice.Sizes, outline, stations, mass, balance, strength, flex, stroke, checks, Cautions.For(wood.SpeciesId));
    }

    private static BalanceResult Balanced(
        PaddleSpecification specification, SizeChoice choice, MassProperties mass, StrengthCheck strength, Flex flex)
    {
        var aims = specification.Aims;
        var target = BalanceTarget.Mm(specification.Form, aims);
        var advice = BalanceAdvice.For(aims, mass.CentreOfMassMm - target, strength, flex, mass);
        return new(target, mass.CentreOfMassMm, aims.BalanceToleranceMm, advice.Count == 0, choice.BindingLimits, advice);
    }
}
