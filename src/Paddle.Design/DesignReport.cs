using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;

namespace Paddle.Design;

/// <summary>A finished design and everything known about it.</summary>
/// <param name="Specification">What was asked, every default filled in.</param>
/// <param name="Sizes">The nine sizes, rounded to what a caliper shows.</param>
/// <param name="Outline">The outline on the face.</param>
/// <param name="Stations">The solid at places no more than 10 mm apart.</param>
/// <param name="Mass">Mass, balance point and swing.</param>
/// <param name="Balance">How the aims came out.</param>
/// <param name="Strength">Every load case.</param>
/// <param name="Flex">Bench flex and first frequency.</param>
/// <param name="Stroke">In the water.</param>
/// <param name="Checks">Every check with its limit.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
public sealed record DesignReport(
    PaddleSpecification Specification,
    PaddleSizes Sizes,
    HalfBreadthCurve Outline,
    PaddleSolid Stations,
    MassProperties Mass,
    BalanceResult Balance,
    StrengthCheck Strength,
    Flex Flex,
    StrokeFigures Stroke,
    IReadOnlyList<DesignCheck> Checks,
    IReadOnlyList<Caution> Cautions);

/// <summary>How a check came out.</summary>
public enum CheckStatus
{
    /// <summary>Within its limit.</summary>
    Pass,

    /// <summary>Worth a look.</summary>
    Warn,

    /// <summary>Outside its limit.</summary>
    Fail,
}

/// <summary>One figure held against its limit.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Status">How it came out.</param>
/// <param name="Value">The figure.</param>
/// <param name="Limit">Its limit.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Message">What it means, in plain words.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record DesignCheck(string Id, CheckStatus Status, double Value, double Limit, string Unit, string Message, string Source);

/// <summary>Something that can hurt, and how not to be hurt.</summary>
/// <param name="Id">Name of the caution.</param>
/// <param name="Text">The caution.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Caution(string Id, string Text, string Source);
