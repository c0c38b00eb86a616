using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Units;
using Paddle.Design.Water;
using PaddleApi.Contracts.Fittings;

namespace PaddleApi.Validation.Fittings;

/// <summary>
/// The rules of a fitting. The engine knows what people, boats and waters can be and what to measure instead, so its refusals are taken over
/// as they are; the ranges are stated here for the description.
/// </summary>
internal sealed class FittingRequestValidator : AbstractValidator<Contracts.Fittings.FittingRequest>
{
    // The alternatives add a few words to the label, and theirs must still be a design's.
    private const int LongestLabel = Labels.Longest - 20;

    /// <summary>States the rules.</summary>
    public FittingRequestValidator()
    {
        RuleFor(r => r.Paddler).EngineRequired();
        RuleFor(r => r.Label).Printable(LongestLabel);
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "A shop measures in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r).Custom((request, context) => context.AddRefusals(FittingChecks.Check(FittingReader.Read(request)).Refusals));
    }

    private sealed class PaddlerRules : AbstractValidator<PaddlerRequest>
    {
        public PaddlerRules()
        {
            RuleFor(p => p.HandSpacingMm).EngineRange(MeasurementCatalogue.HandSpacing);
            RuleFor(p => p.StatureMm).EngineRange(MeasurementCatalogue.Stature);
            RuleFor(p => p.SittingHeightMm).EngineRange(MeasurementCatalogue.SittingHeight);
            RuleFor(p => p.ShoulderBreadthMm).EngineRange(MeasurementCatalogue.ShoulderBreadth);
            RuleFor(p => p.ArmSpanMm).EngineRange(MeasurementCatalogue.ArmSpan);
            RuleFor(p => p.HandLengthMm).EngineRange(MeasurementCatalogue.HandLength);
            RuleFor(p => p.HandBreadthMm).EngineRange(MeasurementCatalogue.HandBreadth);
            RuleFor(p => p.BodyMassKg).EngineRange(MeasurementCatalogue.BodyMass);
        }
    }

    private sealed class SeatRules : AbstractValidator<SeatRequest>
    {
        public SeatRules() => RuleFor(s => s.HeightAboveWaterMm).EngineRange(MeasurementCatalogue.SeatHeight);
    }

    private sealed class WaterRules : AbstractValidator<WaterRequest>
    {
        public WaterRules()
        {
            RuleFor(w => w.DepthMm).EngineRange(MeasurementCatalogue.WaterDepth);
            RuleFor(w => w.TemperatureC).EngineRange(FreshWater.LowestTemperatureC, FreshWater.HighestTemperatureC);
        }
    }

    private sealed class OutingRules : AbstractValidator<OutingRequest>
    {
        public OutingRules()
        {
            RuleFor(o => o.HoursPerDay).EngineRange(FittingChecks.LowestHoursPerDay, FittingChecks.HighestHoursPerDay);
            RuleFor(o => o.StrokesPerMinute).EngineRange(FittingChecks.LowestStrokesPerMinute, FittingChecks.HighestStrokesPerMinute);
        }
    }
}
