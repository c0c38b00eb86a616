using FluentValidation;
using Paddle.Design;
using Paddle.Design.Build;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Designs;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of a mid-build weighing that hold for any design.</summary>
internal sealed class BalanceCorrectionValidator : BoundedValidator<BalanceCorrectionRequest>
{
    private const string Own = "service's own limit";
    private const int MostReadings = 200;
    private const int MostRemovals = 60;

    /// <summary>States the rules.</summary>
    public BalanceCorrectionValidator()
    {
        RuleFor(r => r.DesignCode).Needed("The design's code is required: readings are held against its solid.");
        RuleFor(r => r.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        RuleFor(r => r.Stage).Needed("The stage is required: it says how much wood is still to come off.");
        RuleFor(r => r.Stage).OneOf(Names.All<BuildStage>(), "The stages of the build sheet.");
        RuleFor(r => r.MassG).Needed("The mass is required.");
        RuleFor(r => r.BalanceMm).Needed("The balance point is required.");
        RuleFor(r => r.Readings).AtMost(MostReadings, "readings", $"Up to {MostReadings} readings are used ({Own}).");
        RuleForEach(r => r.Readings).SetValidator(new ReadingRules()).When(r => r.Readings?.Count <= MostReadings);
        RuleFor(r => r.EarlierRemovals).AtMost(MostRemovals, "cuts", $"Up to {MostRemovals} cuts are kept in mind ({Own}).");
        RuleForEach(r => r.EarlierRemovals).SetValidator(new RemovalRules()).When(r => r.EarlierRemovals?.Count <= MostRemovals);
        RuleFor(r => r.ReadingErrors!).SetValidator(new BoundedValidator<BalanceErrorsRequest>());
        RuleFor(r => r.Build!).SetValidator(new BuildChoicesValidator());
    }

    private sealed class ReadingRules : BoundedValidator<ThicknessReadingRequest>
    {
        public ReadingRules()
        {
            RuleFor(t => t.XMm).Needed("The place is required.");
            RuleFor(t => t.ThicknessMm).Needed("The thickness is required.");
        }
    }

    private sealed class RemovalRules : BoundedValidator<EarlierRemovalRequest>
    {
        public RemovalRules()
        {
            RuleFor(c => c.Zone).Needed("The zone is required.");
            RuleFor(c => c.Zone).OneOf(Names.All<CorrectionZone>(), "The zones that a correction takes wood from.");
            RuleFor(c => c.ThicknessMm).Needed("The thickness is required.");
        }
    }
}
