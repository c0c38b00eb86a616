using FluentValidation;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Validation;

/// <summary>Turns refusals found by the engine itself into the same answer as those of the validators.</summary>
internal static class InputRefusals
{
    /// <summary>The answer to a request that the engine refuses.</summary>
    /// <returns>A problem with each refusal under its JSON Pointer.</returns>
    public static ProblemResult ToProblem(this IReadOnlyList<InputRefusal> refusals)
    {
        return Validated.Refusal([.. refusals.Select(refusal => (refusal.JsonPointer, ToFault(refusal)))]);
    }

    /// <summary>Adds refusals to those that the rules of the same request have found.</summary>
    internal static void AddRefusals<T>(this ValidationContext<T> context, IReadOnlyList<InputRefusal> refusals)
    {
        // A pointer turns back into itself: the parts of a property path and of a pointer are the same but for their marks.
        foreach (var refusal in refusals) context.AddFault(refusal.JsonPointer.TrimStart('/').Replace('/', '.'), ToFault(refusal));
    }

    private static Fault ToFault(InputRefusal refusal)
    {
        IReadOnlyList<string>? ids = refusal.MeasureInstead is { Count: > 0 } given ? given : null;
        return new(
            ids is null ? refusal.Message : $"{refusal.Message} To be measured{(refusal.Value is null ? "" : " again")}: {string.Join(", ", ids.Select(MeasurementCatalogue.NameInSentence))}.",
            refusal.Value,
            refusal.Low,
            refusal.High,
            refusal.Unit,
            MeasureInstead: ids,
            Code: refusal.Code);
    }
}
