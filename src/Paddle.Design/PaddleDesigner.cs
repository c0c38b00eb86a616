using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Laminating;
using Paddle.Design.Request;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;

namespace Paddle.Design;

/// <summary>Calls the steps of a design in the order the work flows.</summary>
public static class PaddleDesigner
{
    /// <summary>Designs a paddle from as little as a hand spacing and a wood.</summary>
    /// <param name="request">What is asked; what is left open takes its default.</param>
    /// <returns>The design; when the aims cannot all be met, the closest one, saying so.</returns>
    /// <exception cref="ArgumentException">The lengths clash: they add up to no paddle.</exception>
    public static DesignReport Design(DesignRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Design(request.Complete().Specification);
    }

    /// <summary>Designs a paddle: chooses the sizes left open, then reports on the solid with those sizes, rounded as they are printed.</summary>
    /// <param name="asked">What is asked, every value checked beforehand.</param>
    /// <returns>The design; when the aims cannot all be met, the closest one, saying so.</returns>
    public static DesignReport Design(PaddleSpecification asked, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var (form, _, wood, loads, _) = asked;

        var choice = SizeChoice.For(asked, cancellation);
        var (sizes, stations, pressure, strength, fine, mass, finished) = choice;
        var flex = Flex.Of(fine, stations, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood);
        var stroke = StrokeStep.Of(form, pressure, loads, finished.MassG);
        var balance = BalanceResult.Of(asked, mass, finished, BindingLimitList.At(asked, sizes));
        var outcome = DesignOutcome.Of(asked, balance, strength, flex, finished, asked.Units);
        var laminate = asked.Laminate is { } strips ? LaminateReport.Of(strips, stations, pressure, loads, strength.BucklingLoadN, wood) : null;
        var checks = DesignChecks.Of(asked, sizes, 2 * stations.HalfThickness.Max(), balance, mass, finished, strength, flex, laminate);
        return new(
            asked, sizes, stations.Outline, stations, mass, finished, balance, strength, flex, stroke, outcome, checks, asked.Laminate is null ? Cautions.For(wood.Species) : LaminateChecks.Cautions(laminate!))
        {
            Laminate = laminate,
        };
    }
}
