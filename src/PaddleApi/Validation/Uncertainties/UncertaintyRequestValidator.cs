using FluentValidation;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Uncertainties;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Uncertainties;

/// <summary>The rules of a request for the spread of a design.</summary>
internal sealed class UncertaintyRequestValidator : AbstractValidator<UncertaintyRequest>
{
    private const string Own = "service's own limit";
    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>States the rules.</summary>
    public UncertaintyRequestValidator()
    {
        RuleFor(r => r.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        RuleFor(r => r.Samples).InRange(100, 20_000, "paddles", $"Fewer tell nothing of what is rare, more take seconds ({Own}).");
        RuleFor(r => r.Seed).InRange(0, int.MaxValue, "", "A whole number.");
        RuleFor(r => r.PlaningErrorMm).InRange(0, 1, "mm", $"Who is off by more works without a caliper ({Own}).");
        RuleFor(r => r).Custom((request, context) =>
        {
            if (request.DesignCode is null == request.Design is null)
                context.AddFault("DesignCode", new("A paddle is given by designCode or by design: one of them.", Code: RefusalCodes.OneFigureEach));
            if (request.Design is not { } design) return;
            foreach (var failure in DesignRules.Validate(design).Errors) context.AddFault($"Design.{failure.PropertyName}", Validated.ToFault(failure));
            if (DesignDefaults.IsLaminated(design)) context.AddFault("Design.Construction.Kind", StripAgreement.NotOfStrips);
        });
    }
}
