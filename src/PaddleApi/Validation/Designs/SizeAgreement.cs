using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Range = Paddle.Design.Outline.Range;

namespace PaddleApi.Validation.Designs;

/// <summary>Pinned sizes must go together: the paddle thins from the shaft to the edge, and the grip keeps wood behind its hollows.</summary>
internal static class SizeAgreement
{
    // Sizes that the solver chose are rounded to a millionth, and sums of them to the last digit: no saw and no caliper sees this.
    private const double HairMm = 0.001;

    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        var (blade, shaft, grip) = (request.Blade ?? new(), request.Shaft ?? new(), request.Grip ?? new());
        PinnedSizeRule.Check(request, context);
        Thinning(blade, shaft, context);
        NotAbove(context, "Shaft.UpperWidthMm", shaft.UpperWidthMm, shaft.WidthMm, "The shaft does not widen towards the grip.");
        NotAbove(context, "Shaft.UpperThicknessMm", shaft.UpperThicknessMm, shaft.ThicknessMm, "The shaft does not thicken towards the grip.");
        Board(request.Wood?.BoardThicknessMm, blade, shaft, grip, context);
        if (grip.Style is null || Names.Find<GripStyle>(grip.Style) is not null) Grip(request, grip, shaft, context);
    }

    private static void Thinning(BladeRequest blade, ShaftRequest shaft, ValidationContext<DesignRequest> context)
    {
        ReadOnlySpan<(string Path, string Name, double? Size)> order =
        [
            ("Shaft.ThicknessMm", "the shaft", shaft.ThicknessMm),
            ("Blade.ThroatThicknessMm", "the throat", blade.ThroatThicknessMm),
            ("Blade.MiddleThicknessMm", "the middle", blade.MiddleThicknessMm),
            ("Blade.TipThicknessMm", "the tip", blade.TipThicknessMm),
            ("Blade.EdgeThicknessMm", "the edge", blade.EdgeThicknessMm),
        ];
        var (above, name) = (double.PositiveInfinity, "");
        foreach (var (path, here, size) in order)
        {
            if (size is not { } given) continue;
            if (given > above + HairMm)
            {
                context.AddFault(path, new(
                    $"The spine thins from shaft to throat, middle, tip and edge: {here} may not be thicker than {name}.",
                    FaultValue.Show(given), Max: above, Unit: "mm", Code: RefusalCodes.SizesDisagree));
            }

            (above, name) = (given, here);
        }
    }

    // What is solved keeps to the board; what is pinned must do so too.
    private static void Board(double? boardMm, BladeRequest blade, ShaftRequest shaft, GripRequest grip, ValidationContext<DesignRequest> context)
    {
        if (boardMm - 2 * PaddleSpecification.SurfacedFaceMm is not { } usable) return;
        ReadOnlySpan<(string Path, double? Size)> thicknesses =
        [
            ("Shaft.ThicknessMm", shaft.ThicknessMm), ("Shaft.UpperThicknessMm", shaft.UpperThicknessMm),
            ("Blade.ThroatThicknessMm", blade.ThroatThicknessMm), ("Blade.MiddleThicknessMm", blade.MiddleThicknessMm),
            ("Blade.TipThicknessMm", blade.TipThicknessMm), ("Blade.EdgeThicknessMm", blade.EdgeThicknessMm), ("Grip.ThicknessMm", grip.ThicknessMm),
        ];
        foreach (var (path, size) in thicknesses)
        {
            if (size > usable + HairMm)
            {
                context.AddFault(path, new(
                    $"The board holds no more: {boardMm} mm, less {PaddleSpecification.SurfacedFaceMm} mm planed off each face (common practice, no source).",
                    FaultValue.Show(size), Max: usable, Unit: "mm", Code: RefusalCodes.BeyondBoard));
            }
        }
    }

    private static void Grip(DesignRequest request, GripRequest grip, ShaftRequest shaft, ValidationContext<DesignRequest> context)
    {
        var pattern = DesignDefaults.Pattern(request);
        var style = Names.Of(pattern.Style);
        Within(context, "Grip.WidthMm", grip.WidthMm, pattern.WidthLimitsMm, $"Widths of a {style} grip (common practice, no source).");
        Within(context, "Grip.LengthMm", grip.LengthMm, pattern.LengthLimitsMm, $"Lengths of a {style} grip (common practice, no source).");
        NotAbove(context, "Shaft.UpperWidthMm", shaft.UpperWidthMm, grip.WidthMm ?? pattern.WidthMm, "The grip is at least as wide as the shaft below it.");

        var (thickness, deepest) = (DesignDefaults.GripThicknessMm(request), DesignDefaults.DeepestHollowMm(request));
        // A thickness or a hollow that is refused already needs no second reason.
        if (grip.HollowDepthMm is not { } hollow || !Bounds.Of<GripRequest>(nameof(grip.HollowDepthMm)).Holds(hollow) || hollow <= deepest + HairMm) return;
        if (!PinnedSizeRule.Limits(PaddleSizes.Grip, request).Contains(thickness)) return;
        var whose = grip.ThicknessMm is not null ? "this grip"
            : thickness < SizeLimits.Solver[PaddleSizes.Grip].Max ? "a grip as thick as this board holds" : "a grip as thick as the solver may choose";
        var faces = grip.Faces is { } name && Names.Find<GripFaces>(name) == GripFaces.OneSided ? "one face" : "two faces";
        context.AddFault("Grip.HollowDepthMm", new(
            $"{SizeLimits.LeastGripCoreMm} mm of wood must stay between the faces of {whose}, {thickness} mm, hollowed on {faces} (common practice, no source).",
            FaultValue.Show(hollow), 0, Math.Max(0, deepest), "mm", Code: RefusalCodes.SizesDisagree));
    }

    private static void NotAbove(ValidationContext<DesignRequest> context, string path, double? value, double? most, string reason)
    {
        if (value > most + HairMm) context.AddFault(path, new(reason, FaultValue.Show(value), Max: most, Unit: "mm", Code: RefusalCodes.SizesDisagree));
    }

    private static void Within(ValidationContext<DesignRequest> context, string path, double? value, Range limits, string reason)
    {
        if (value is { } given && !limits.Contains(given))
            context.AddFault(path, new(reason, FaultValue.Show(given), limits.Min, limits.Max, "mm"));
    }
}
