using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Request;

namespace PaddleApi.Validation.Designs;

/// <summary>Limits of a size that the maker pins, or that a solver chose and a design's code holds: the solver's own table.</summary>
internal static class PinnedSizeRule
{
    /// <summary>States the limits of a pinned size; <see cref="Check"/> holds it to them, for they depend on the board.</summary>
    /// <param name="size">Its place in <see cref="SizeLimits.Rows"/>.</param>
    internal static IRuleBuilderOptions<T, double?> Pinned<T>(this IRuleBuilder<T, double?> rule, int size)
    {
        const double ThinnestMm = PaddleSpecification.ThinnestBoardMm - 2 * PaddleSpecification.SurfacedFaceMm;
        var widest = SizeLimits.PinnedOn(size, ThinnestMm, PaddleSpecification.ThirtySecondMm);
        return rule.EngineRange(widest.Min, widest.Max);
    }

    /// <summary>Refuses a pinned size that would no longer be a paddle's.</summary>
    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        var sizes = request.Sizes();
        for (var k = 0; k < sizes.Length; k++)
        {
            var limits = Limits(k, request);
            if (sizes[k] is not { } given || limits.Contains(given)) continue;
            var solver = SizeLimits.Solver[k];
            context.AddFault(Path(SizeLimits.Names[k]), new(
                string.Create(
                    null, $"Beyond these it is no longer a paddle; left null, the solver chooses between {solver.Min} and {solver.Max} mm (service's own limits)."),
                FaultValue.Show(given), limits.Min, limits.Max, "mm"));
        }
    }

    /// <summary>Limits of one size in a request.</summary>
    internal static Paddle.Design.Outline.Range Limits(int size, DesignRequest request) => SizeLimits.PinnedOn(
        size, request.Wood?.BoardThicknessMm - 2 * PaddleSpecification.SurfacedFaceMm, DesignDefaults.LatticeMm(request));

    // A validator names members as the records do: shaft.widthMm is Shaft.WidthMm there.
    private static string Path(string name) => string.Join('.', name.Split('.').Select(part => char.ToUpperInvariant(part[0]) + part[1..]));
}
