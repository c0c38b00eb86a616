using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;
using Paddle.Design.Units;

namespace Paddle.Design;

/// <summary>A finished design and everything known about it.</summary>
/// <param name="Specification">What was asked, every default filled in.</param>
/// <param name="Sizes">The nine sizes, rounded to what a caliper or an inch rule shows.</param>
/// <param name="Stations">The solid at places no more than 10 mm apart.</param>
/// <param name="Mass">Mass, balance point and swing of the bare wood.</param>
/// <param name="Strength">Every load case.</param>
/// <param name="Flex">Bench flex and first frequency.</param>
/// <param name="Outcome">How the aims came out.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
public sealed record DesignReport(
    PaddleSpecification Specification,
    PaddleSizes Sizes,
    HalfBreadthCurve Outline,
    PaddleSolid Stations,
    MassProperties Mass,
    FinishedMass Finished,
    BalanceResult Balance,
    StrengthCheck Strength,
    Flex Flex,
    StrokeFigures Stroke,
    DesignOutcome Outcome,
    IReadOnlyList<DesignCheck> Checks,
    IReadOnlyList<Caution> Cautions)
{
    /// <summary>What is known of its glue-up; null of one piece.</summary>
    public LaminateReport? Laminate { get; init; }

    /// <summary>The outcome with its sentences in other units than the design's own: a drawing may be asked for in either.</summary>
    internal DesignOutcome OutcomeIn(DrawingUnits units) =>
        units == Specification.Units ? Outcome : DesignOutcome.Of(Specification, Balance, Strength, Flex, Finished, units);
}
