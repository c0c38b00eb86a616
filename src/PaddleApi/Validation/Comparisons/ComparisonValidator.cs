using FluentValidation;
using PaddleApi.Contracts.Comparisons;
using PaddleApi.Contracts.Designs;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Comparisons;

/// <summary>The rules of a comparison; those of the designs in it are the designs' own.</summary>
internal sealed class ComparisonValidator : AbstractValidator<ComparisonRequest>
{
    /// <summary>Most designs that one picture tells apart.</summary>
    public const int MostDesigns = 12;

    /// <summary>States the rules.</summary>
    public ComparisonValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Designs).Needed("Two designs or more are required.").CountBetween(2, MostDesigns, "designs", "As many as one picture tells apart.");
        RuleForEach(r => r.Designs).SetValidator(new DesignRules()).When(r => r.Designs?.Count <= MostDesigns);
        RuleFor(r => r).Custom((request, context) => context.RefuseSameIds("Designs", request.Designs?.Take(MostDesigns).Select(one => one.Id)));
    }

    private sealed class DesignRules : GivenDesignRules<ComparedDesignRequest>
    {
        public DesignRules()
            : base("A design")
        {
            RuleFor(d => d.Id).Printable(Labels.Longest);
            RuleFor(d => d.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        }
    }
}
