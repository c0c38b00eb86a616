using FluentValidation;
using Paddle.Design.Build;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Designs;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of a mid-build weighing that hold for any design.</summary>
internal sealed class BalanceCorrectionValidator : AbstractValidator<BalanceCorrectionRequest>
{
    private const string Own = "service's own limit";
    private const int MostReadings = 200;
    private const int MostRemovals = 60;

    /// <summary>States the rules.</summary>
    public BalanceCorrectionValidator()
    {
        RuleFor(r => r.DesignCode).NotNull().Saying("The design's code is required: readings are held against its solid.");
        RuleFor(r => r.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        RuleFor(r => r.Stage).NotNull().Saying("The stage is required: it says how much wood is still to come off.");
        RuleFor(r => r.Stage).OneOf([.. BuildNames.Stages.Names], "The stages of the build sheet.");
        RuleFor(r => r.MassG).NotNull().Saying("The mass is required.").InRange(100, 20000, "g", $"From a finished paddle to a heavy blank ({Own}).");
        RuleFor(r => r.BalanceMm).NotNull().Saying("The balance point is required.")
            .InRange(1, 2100, "mm", $"The balance point lies on the paddle, and no paddle is longer ({Own}).");
        RuleFor(r => r.Confidence).InRange(0.5, 0.99, "", "0.5 takes the best estimate; nothing hand-made is surer than 0.99.");
        RuleFor(r => r.Readings).AtMost(MostReadings, "readings", $"Up to {MostReadings} readings are used ({Own}).");
        RuleForEach(r => r.Readings).SetValidator(new ReadingRules()).When(r => r.Readings?.Count <= MostReadings);
        RuleFor(r => r.EarlierRemovals).AtMost(MostRemovals, "cuts", $"Up to {MostRemovals} cuts are kept in mind ({Own}).");
        RuleForEach(r => r.EarlierRemovals).SetValidator(new RemovalRules()).When(r => r.EarlierRemovals?.Count <= MostRemovals);
        RuleFor(r => r.ReadingErrors!).SetValidator(new ErrorRules());
        RuleFor(r => r.Build!).SetValidator(new BuildChoicesValidator());
    }

    private sealed class ReadingRules : AbstractValidator<ThicknessReadingRequest>
    {
        public ReadingRules()
        {
            RuleFor(t => t.XMm).NotNull().Saying("The place is required.").InRange(0, 2100, "mm", $"Places on the paddle ({Own}).");
            RuleFor(t => t.ThicknessMm).NotNull().Saying("The thickness is required.").InRange(0, 1200, "mm", $"Thicknesses with a digit too many are still read, and doubted ({Own}).");
        }
    }

    private sealed class RemovalRules : AbstractValidator<EarlierRemovalRequest>
    {
        public RemovalRules()
        {
            RuleFor(c => c.Zone).NotNull().Saying("The zone is required.");
            RuleFor(c => c.Zone).OneOf([.. BuildNames.Zones.Names], "The zones that a correction takes wood from.");
            RuleFor(c => c.ThicknessMm).NotNull().Saying("The thickness is required.")
                .InRange(0, BalanceReadingLimits.MostTakenMm, "mm", $"More than this off one zone is another paddle ({Own}).");
        }
    }

    private sealed class ErrorRules : AbstractValidator<BalanceErrorsRequest>
    {
        public ErrorRules()
        {
            const string Reason = "Nothing is read without error, and a reading worse than this says nothing (" + Own + ").";
            RuleFor(e => e.MassG).InRange(0.01, 100, "g", Reason);
            RuleFor(e => e.BalanceMm).InRange(0.1, 50, "mm", Reason);
            RuleFor(e => e.ThicknessMm).InRange(0.01, 5, "mm", Reason);
        }
    }
}
