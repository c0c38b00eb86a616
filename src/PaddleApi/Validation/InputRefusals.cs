using FluentValidation;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation;

/// <summary>Turns refusals found by the engine itself into faults like those of the validators.</summary>
internal static class InputRefusals
{
    /// <summary>Adds refusals to those that the rules of the same request have found.</summary>
    internal static void AddRefusals<T>(this ValidationContext<T> context, IReadOnlyList<InputRefusal> refusals)
    {
        // A pointer turns back into itself: the parts of a property path and of a pointer are the same but for their marks.
        foreach (var refusal in refusals) context.AddFault(refusal.JsonPointer.TrimStart('/').Replace('/', '.'), ToFault(refusal));
    }

    internal static Fault ToFault(this InputRefusal refusal)
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
