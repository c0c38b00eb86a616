using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;
using Range = Paddle.Design.Outline.Range;

namespace PaddleApi.Validation.Designs;

/// <summary>The lengths must add up.</summary>
internal static class LengthAgreement
{
    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        if (request is { HandSpacingMm: null, OverallLengthMm: null })
        {
            const string Reason = "Give handSpacingMm, overallLengthMm, or both: nothing else says how long the paddle is.";
            context.AddFault(nameof(request.HandSpacingMm), new(Reason, Code: RefusalCodes.NoWayToHandSpacing));
            return;
        }

        if (!CanBeSummed(request)) return;
        foreach (var conflict in DesignDefaults.Lengths(request).Conflicts)
        {
            foreach (var field in conflict.Fields)
                context.AddFault(Path(field), new Fault(conflict.Reason, conflict.FollowsMm, conflict.LimitsMm.Min, conflict.LimitsMm.Max, "mm", Code: RefusalCodes.LengthsDisagree));
        }
    }

    /// <summary>The lengths of a request; null while they are refused or do not add up.</summary>
    internal static PaddleLengths? Of(DesignRequest request) => CanBeSummed(request) ? DesignDefaults.Lengths(request).Lengths : null;

    // A sum of lengths that are refused already would only repeat the refusal in other words.
    private static bool CanBeSummed(DesignRequest request)
    {
        var pattern = DesignDefaults.Pattern(request);
        return (request.HandSpacingMm ?? request.OverallLengthMm) is not null
            && Within(request.HandSpacingMm, PaddleLengths.HandSpacingLimitsMm)
            && Within(request.FreeboardMm, PaddleLengths.FreeboardLimitsMm)
            && Within(request.OverallLengthMm, PaddleLengths.OverallLimitsMm)
            && Within(request.Blade?.LengthMm, PaddleLengths.BladeLengthLimitsMm)
            && Within(request.Grip?.LengthMm, pattern.LengthLimitsMm)
            && (request.Grip?.Style is not { } style || Names.Find<GripStyle>(style) is not null)
            && (request.Blade?.Offsets is { } offsets
                ? offsets.Count > 0 && offsets[^1].XMm is { } end && PaddleLengths.BladeLengthLimitsMm.Contains(end)
                : DesignDefaults.Family(request) is not null);
    }

    private static bool Within(double? value, Range limits) => value is null || limits.Contains(value.Value);

    private static string Path(string field) => field switch
    {
        LengthFields.HandSpacing => "HandSpacingMm",
        LengthFields.Freeboard => "FreeboardMm",
        LengthFields.Overall => "OverallLengthMm",
        _ => "Blade.LengthMm",
    };
}
