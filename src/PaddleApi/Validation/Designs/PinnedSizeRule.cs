using FluentValidation;
using Paddle.Design.Balance;

namespace PaddleApi.Validation.Designs;

/// <summary>Limits of a size that the maker pins.</summary>
internal static class PinnedSizeRule
{
    /// <summary>Refuses a pinned size that would no longer be a paddle's; null passes.</summary>
    /// <param name="name">Name of the size in <see cref="SizeLimits.Names"/>.</param>
    internal static IRuleBuilderOptions<T, double?> Pinned<T>(this IRuleBuilder<T, double?> rule, string name)
    {
        var (limits, solver) = (SizeLimits.Pinned[IndexOf(name)], SizeLimits.Solver[IndexOf(name)]);
        return rule.InRange(limits.Min, limits.Max, "mm", string.Create(
            null, $"Beyond these it is no longer a paddle; left null, the solver chooses between {solver.Min} and {solver.Max} mm (service's own limits)."));
    }

    /// <summary>Place of a size in the lists of <see cref="SizeLimits"/>.</summary>
    internal static int IndexOf(string name)
    {
        for (var k = 0; k < SizeLimits.Names.Count; k++)
        {
            if (SizeLimits.Names[k] == name) return k;
        }

        throw new ArgumentOutOfRangeException(nameof(name), name, "Not one of the nine sizes.");
    }
}
