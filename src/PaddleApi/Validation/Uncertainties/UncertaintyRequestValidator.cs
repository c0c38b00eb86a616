using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Uncertainties;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Uncertainties;

/// <summary>The rules of a request for the spread of a design.</summary>
internal sealed class UncertaintyRequestValidator : GivenDesignRules<UncertaintyRequest>
{
    /// <summary>States the rules.</summary>
    public UncertaintyRequestValidator()
        : base("A paddle")
    {
        RuleFor(r => r.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
    }
}
