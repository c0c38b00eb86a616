using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Units;
using PaddleApi.Contracts.SizeRuns;
using Range = Paddle.Design.Outline.Range;

namespace PaddleApi.Validation.Fittings;

/// <summary>
/// The rules of a size run. Those of customers and sizes are the engine's: it passes over a long list once, without a word for those who fit.
/// Their ranges are stated here for the description.
/// </summary>
internal sealed class SizeRunRequestValidator : AbstractValidator<Contracts.SizeRuns.SizeRunRequest>
{
    /// <summary>States the rules.</summary>
    public SizeRunRequestValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "Drawings are lettered in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r.Sizes).EngineRange(1, SizeRun.MostSizes);
        RuleFor(r => r.StepMm).EngineRange(SizeRunChecks.StepLimitsMm.Min, SizeRunChecks.StepLimitsMm.Max);
        RuleFor(r => r.FleetCount).EngineRange(SizeRunChecks.FleetLimits.Min, SizeRunChecks.FleetLimits.Max);
        RuleFor(r => r.Groups).EngineCount(1, SizeRunChecks.MostGroups);
        RuleFor(r => r.Customers).EngineCount(1, SizeRunChecks.MostCustomers);
        RuleFor(r => r.ShortestStockMm).EngineRange(SizeRunChecks.OverallLimitsMm.Min, SizeRunChecks.OverallLimitsMm.Max);
        RuleFor(r => r.LongestStockMm).EngineRange(SizeRunChecks.OverallLimitsMm.Min, SizeRunChecks.OverallLimitsMm.Max);
        RuleFor(r => r.BladeLengthMm).EngineRange(PaddleLengths.BladeLengthLimitsMm.Min, PaddleLengths.BladeLengthLimitsMm.Max);
        RuleFor(r => r.FreeboardMm).EngineRange(PaddleLengths.FreeboardLimitsMm.Min, PaddleLengths.FreeboardLimitsMm.Max);
    }

    private sealed class PopulationRules : AbstractValidator<PopulationRequest>
    {
        public PopulationRules()
        {
            RuleFor(p => p.Men).EngineRange(SizeRunChecks.ShareLimits.Min, SizeRunChecks.ShareLimits.Max);
            RuleFor(p => p.Women).EngineRange(SizeRunChecks.ShareLimits.Min, SizeRunChecks.ShareLimits.Max);
        }
    }

    private sealed class GroupRules : AbstractValidator<CustomerGroupRequest>
    {
        public GroupRules()
        {
            RuleFor(g => g.Share).EngineRange(SizeRunChecks.ShareLimits.Min, SizeRunChecks.ShareLimits.Max);
            var mean = (Range[])[SizeRunChecks.OverallLimitsMm, Of(MeasurementCatalogue.HandSpacing), Of(MeasurementCatalogue.Stature)];
            RuleFor(g => g.MeanMm).EngineRange(mean.Min(range => range.Min), mean.Max(range => range.Max));
            RuleFor(g => g.StandardDeviationMm).EngineRange(SizeRunChecks.DeviationLimitsMm.Min, SizeRunChecks.DeviationLimitsMm.Max);
        }
    }

    private static Range Of(MeasurementInstruction measurement) => new(measurement.Lowest, measurement.Highest);

    private sealed class CustomerRules : AbstractValidator<CustomerRequest>
    {
        public CustomerRules()
        {
            RuleFor(c => c.OverallLengthMm).EngineRange(SizeRunChecks.OverallLimitsMm.Min, SizeRunChecks.OverallLimitsMm.Max);
            RuleFor(c => c.HandSpacingMm).EngineRange(MeasurementCatalogue.HandSpacing);
            RuleFor(c => c.StatureMm).EngineRange(MeasurementCatalogue.Stature);
        }
    }
}
