using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Validation.Fittings;

/// <summary>
/// The rules of a fitting. The engine knows what people, boats and waters can be and what to measure instead, so its refusals are taken over
/// as they are.
/// </summary>
internal sealed class FittingRequestValidator : AbstractValidator<FittingRequest>
{
    // The alternatives add a few words to the label, and theirs must still be a design's.
    private const int LongestLabel = Labels.Longest - 20;

    /// <summary>States the rules.</summary>
    public FittingRequestValidator()
    {
        RuleFor(r => r.Paddler).EngineRequired();
        RuleFor(r => r.Label).Printable(LongestLabel);
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "A shop measures in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r).Custom((request, context) => context.AddRefusals(FittingChecks.Check(request).Refusals));
    }
}
