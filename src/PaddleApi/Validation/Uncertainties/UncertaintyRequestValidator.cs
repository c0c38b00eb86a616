using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Uncertainties;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Uncertainties;

/// <summary>The rules of a request for the spread of a design.</summary>
internal sealed class UncertaintyRequestValidator : GivenDesignRules<UncertaintyRequest>
{
    private const string Own = "service's own limit";

    /// <summary>States the rules.</summary>
    public UncertaintyRequestValidator()
        : base("A paddle")
    {
        RuleFor(r => r.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        RuleFor(r => r.Samples).InRange(100, 10_000, "paddles", $"Fewer tell nothing of what is rare, more take seconds ({Own}).");
        RuleFor(r => r.Seed).InRange(0, 1_000_000, "", $"As many choices of sticks as anybody needs ({Own}).");
        RuleFor(r => r.PlaningErrorMm).InRange(0, 1, "mm", $"Who is off by more works without a caliper ({Own}).");
    }
}
