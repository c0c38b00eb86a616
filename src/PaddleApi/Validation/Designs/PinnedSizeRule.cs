using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Request;

namespace PaddleApi.Validation.Designs;

/// <summary>Limits of a size that the maker pins, or that a solver chose and a design's code holds: the solver's own table.</summary>
internal static class PinnedSizeRule
{
    /// <summary>States the limits of a pinned size; <see cref="Check"/> holds it to them, for they depend on the board.</summary>
    /// <param name="name">Name of the size in <see cref="SizeLimits.Names"/>.</param>
    internal static IRuleBuilderOptions<T, double?> Pinned<T>(this IRuleBuilder<T, double?> rule, string name)
    {
        const double ThinnestMm = PaddleSpecification.ThinnestBoardMm - 2 * PaddleSpecification.SurfacedFaceMm;
        var widest = SizeLimits.PinnedOn(IndexOf(name), ThinnestMm, PaddleSpecification.ThirtySecondMm);
        return rule.EngineRange(widest.Min, widest.Max);
    }

    /// <summary>Refuses a pinned size that would no longer be a paddle's.</summary>
    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        var (blade, shaft) = (request.Blade ?? new(), request.Shaft ?? new());
        ReadOnlySpan<(string Path, double? Size)> sizes =
        [
            ("Shaft.WidthMm", shaft.WidthMm), ("Shaft.ThicknessMm", shaft.ThicknessMm), ("Shaft.UpperWidthMm", shaft.UpperWidthMm),
            ("Shaft.UpperThicknessMm", shaft.UpperThicknessMm), ("Blade.ThroatThicknessMm", blade.ThroatThicknessMm),
            ("Blade.MiddleThicknessMm", blade.MiddleThicknessMm), ("Blade.TipThicknessMm", blade.TipThicknessMm),
            ("Blade.EdgeThicknessMm", blade.EdgeThicknessMm), ("Grip.ThicknessMm", request.Grip?.ThicknessMm),
        ];
        for (var k = 0; k < sizes.Length; k++)
        {
            var (path, size) = sizes[k];
            var limits = Limits(k, request);
            if (size is not { } given || limits.Contains(given)) continue;
            var solver = SizeLimits.Solver[k];
            context.AddFault(path, new(
                string.Create(
                    null, $"Beyond these it is no longer a paddle; left null, the solver chooses between {solver.Min} and {solver.Max} mm (service's own limits)."),
                FaultValue.Show(given), limits.Min, limits.Max, "mm"));
        }
    }

    /// <summary>Limits of one size in a request.</summary>
    internal static Paddle.Design.Outline.Range Limits(int size, DesignRequest request) => SizeLimits.PinnedOn(
        size, request.Wood?.BoardThicknessMm - 2 * PaddleSpecification.SurfacedFaceMm, DesignDefaults.LatticeMm(request));

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
