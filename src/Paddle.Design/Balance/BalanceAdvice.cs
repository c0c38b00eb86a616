using Paddle.Design.Solid;
using Paddle.Design.Strength;

namespace Paddle.Design.Balance;

/// <summary>Says in plain words what to change when an aim is missed.</summary>
internal static class BalanceAdvice
{
    /// <summary>One line for each aim that is missed; empty when all are met.</summary>
    internal static IReadOnlyList<string> For(
        Aims aims, double offsetMm, StrengthCheck strength, Flex flex, MassProperties mass)
    {
        var advice = new List<string>();
        var weakest = strength.Governing;
        if (weakest.Margin < 1)
        {
            advice.Add(
                !weakest.Case.BendsAlongTheGrain
                    ? "The blade is weak across the grain: a narrower blade, a thicker spine or a wood stronger across the grain."
                    : "No shape within the limits is strong enough: a stronger wood, straighter grain, a lower force for this paddler, "
                      + "a shorter blade (less leverage), or thicker pinned sizes.");
        }

        if (Math.Abs(offsetMm) > aims.BalanceToleranceMm)
        {
            advice.Add(
                offsetMm < 0
                    ? "Grip-heavy: a longer or wider blade, less freeboard, a smaller grip, a lighter upper shaft, or a wider tolerance."
                    : "Blade-heavy: a shorter or narrower blade, a larger grip, a thicker upper shaft, or a wider tolerance.");
        }

        if (flex.BenchFlexMm > aims.MostBenchFlexMm) advice.Add("Too soft: a stiffer wood, a shorter blade, or thicker pinned sizes.");
        if (flex.BenchFlexMm < aims.LeastBenchFlexMm) advice.Add("Too stiff: a wood of lower modulus, a longer blade, or thinner pinned sizes.");
        if (mass.TotalG > aims.MaximumMassG)
            advice.Add("Too heavy: a lighter wood, a smaller blade, a lower hard stroke, or a wider balance tolerance.");
        return advice;
    }
}
