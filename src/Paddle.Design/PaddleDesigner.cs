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
        var (sizes, _, stations, pressure, strength, fine, mass) = choice;
        var flex = Flex.Of(fine, stations, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood);
        var stroke = StrokeStep.Of(form, pressure, loads, mass);
        var balance = Balanced(specification, choice, mass, strength, flex);
        var checks = DesignChecks.Of(form, sizes, wood, loads, aims, mass, strength, flex, pressure);
        return new(
            specification, sizes, stations.Outline, stations, mass, balance, strength, flex, stroke, checks, Cautions.For(wood.SpeciesId));
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
