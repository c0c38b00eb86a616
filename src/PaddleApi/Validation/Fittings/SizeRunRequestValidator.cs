using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Validation.Fittings;

/// <summary>
/// The rules of a size run. Those of customers and sizes are the engine's: it passes over a long list once, without a word for those who fit.
/// </summary>
internal sealed class SizeRunRequestValidator : AbstractValidator<SizeRunRequest>
{
    /// <summary>States the rules.</summary>
    public SizeRunRequestValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "Drawings are lettered in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r.Groups).EngineCount(1, SizeRunChecks.MostGroups);
        RuleFor(r => r.Customers).EngineCount(1, SizeRunChecks.MostCustomers);
    }

    private sealed class GroupRules : AbstractValidator<CustomerGroupRequest>
    {
        public GroupRules() => RuleFor(g => g.MeanMm).EngineRange(SizeRunChecks.MeanLimitsMm.Min, SizeRunChecks.MeanLimitsMm.Max);
    }
}
