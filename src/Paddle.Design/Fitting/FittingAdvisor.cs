using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>Which paddle for this person: calls the steps of a fitting in order.</summary>
internal static class FittingAdvisor
{
    /// <summary>Shaft taken off for a bent paddle, mm (common practice, no source: 50 to 100).</summary>
    public const double BentShaftShorterMm = 75;

    /// <summary>Share of a seat's height above 130 mm that the clear shaft takes up: it spreads the trade's 25 to 50 mm over the usual
    /// seats, 65 to 190 mm above the water (service's own choice; what is left the paddler makes up by leaning).</summary>
    public const double FreeboardOverSeatHeight = 0.2;

    /// <summary>Scatter of that shortening, mm: 50 to 100 taken as even.</summary>
    private static readonly double BentShaftShorterErrorMm = (100 - 50) / Math.Sqrt(12);

    /// <summary>Answer a fitting.</summary>
    /// <param name="request">The person, seat, water, outing and preferences.</param>
    /// <param name="settle">Tries a suggestion and gives it a shaft with which it meets its aims; null leaves the hand's.</param>
    /// <returns>The advice, or the refusals with what to measure instead. The same request always gives the same answer.</returns>
    public static FittingOutcome Advise(FittingRequest request, Func<SuggestedDesign, SuggestedDesign>? settle = null)
    {
        var (refusals, doubts) = FittingChecks.Check(request);
        return refusals.Count > 0 ? new FittingOutcome(null, refusals) : new FittingOutcome(Answer(request, doubts, settle ?? (static design => design)), []);
    }

    /// <summary>Freeboard: 38 mm, a fifth of what the seat stands above 130 mm more, a little more where the paddler steers; kept within 25
    /// to 50.</summary>
    /// <returns>c, whole mm.</returns>
    /// <remarks>Source: range common practice, no source; the shares inside it are the service's own choice.</remarks>
    public static double FreeboardMm(SeatPlan seat)
    {
        double steering = seat.Place switch { SeatPlace.Stern => 6, SeatPlace.Solo => 3, _ => 0 };
        var seatHeight = seat.HeightAboveWaterMm ?? LengthRules.DefaultSeatHeightMm;
        var freeboard = LengthRules.DefaultFreeboardMm + (FreeboardOverSeatHeight * (seatHeight - LengthRules.DefaultSeatHeightMm)) + steering; // theory F27
        return Math.Round(Math.Clamp(freeboard, LengthRules.LowestFreeboardMm, LengthRules.HighestFreeboardMm));
    }

    private static FittingAdvice Answer(
        FittingRequest request, IReadOnlyList<FittingCaution> doubts, Func<SuggestedDesign, SuggestedDesign> settle)
    {
        var paddler = request.Paddler;
        var seat = request.Seat ?? new SeatPlan();
        var water = request.Water ?? new WaterPlan();
        var outing = request.Outing ?? new OutingPlan();
        var wishes = request.Preferences ?? new PaddlerPreferences();
        var label = string.IsNullOrWhiteSpace(request.Label) ? "Fitted paddle" : request.Label;

        // 1. Body: hand spacing, hands, mass, heights above the seat.
        var person = PersonInFull.Of(paddler);
        var body = person.Spacing;
        var seated = SeatedBody.Of(paddler);
        var seatHeight = seat.HeightAboveWaterMm ?? LengthRules.DefaultSeatHeightMm;

        // 2. Water and stroke: family, size, depth.
        var cadence = outing.StrokesPerMinute ?? EffortArea.DefaultStrokesPerMinute(outing.Effort);
        var hours = outing.HoursPerDay ?? EffortArea.ReferenceHours;
        var density = FreshWater.DensityKgM3(water.TemperatureC ?? FreshWater.DefaultTemperatureC);
        var demand = EffortArea.Demand(person.BodyMassKg, outing.Effort, cadence, hours);
        var bent = BladeChoice.IsBent(seat, water.Kind, outing.Purpose, wishes.BentShaft);
        var (family, familyReason) = BladeChoice.Choose(water.Kind, seat.Place, bent, wishes.SensitiveJoints);
        var immersion = ImmersionDepth.Check(family, body.ValueMm, demand, bent ? BladeChoice.BentShaftDegrees : 0, water.DepthMm);
        var blade = immersion.Blade;
        var inWater = EffortArea.InWater(demand, blade, immersion.ImmersedShare, density, cadence * 60 * hours);

        // 3. Strength and hands: duty, wood, shaft, grip, wrist.
        var duty = Duties.Of(outing.Purpose, water.Kind);
        var freeboard = FreeboardMm(seat);
        var wood = SuggestedWood.For(duty, water.Kind, wishes.LightCarry);
        var loadedMass = Math.Clamp(person.BodyMassKg, SuggestedDesign.LoadedMassLimitsKg.Min, SuggestedDesign.LoadedMassLimitsKg.Max);
        var shaft = ShaftFit.Fit(
            person.HandLengthMm, ShaftFit.ForStrokesMm(loadedMass, duty, freeboard, family, blade.LengthMm, wood), wishes);
        var grip = GripFit.Fit(person.HandLengthMm, person.HandBreadthMm, water.Kind, blade.BendDegrees, wishes);

        // 4. Length.
        var fitted = bent ? body.ValueMm - BentShaftShorterMm : body.ValueMm;
        var spacingError = bent ? LengthMethods.Join(body.StandardErrorMm, BentShaftShorterErrorMm) : body.StandardErrorMm;
        var design = settle(new SuggestedDesign(
            label, fitted, freeboard, blade.Family.Id, blade.MadeLengthMm, blade.MadeWidthMm, blade.BendDegrees, shaft, grip, wood.Species, loadedMass, duty)
            .WithinLimits());
        var (lengthMethods, spread) = LengthMethods.Show(
            grip.TopHandMm, design.HandSpacingMm, body, person.HandBreadthMm, freeboard, blade.MadeLengthMm, seatHeight, paddler.StatureMm, seated, bent);
        var spacingMethods = bent ? Shortened(body.Methods, fitted, spacingError) : body.Methods;

        // 5. Put together.
        var story = new FittingStory(person, seat, water, wishes, demand, immersion, familyReason, inWater, duty, wood, design.Shaft, grip, design, seated is null);
        var cautions = doubts.Concat(FittingCautions.Of(story, fitted, spread, seated, seatHeight, lengthMethods)).ToList();
        var alternatives = FittingAlternatives.Of(design, story, seated, seatHeight)
            .Select(other => other with { Design = settle(other.Design.WithinLimits()) }).Take(2).ToList();
        return new FittingAdvice(
            Band(design.OverallLengthMm, LengthMethods.Join(spacingError, LengthMethods.FreeboardErrorMm)),
            Band(design.HandSpacingMm, spacingError),
            freeboard, duty, blade, design.Shaft, grip, immersion, inWater,
            [.. spacingMethods, .. lengthMethods],
            spread, [.. FittingReasons.Of(story)], alternatives, cautions, design);
    }

    private static ValueBand Band(double value, double error) => new(value, Math.Round(value - error), Math.Round(value + error));

    private static IReadOnlyList<MethodResult> Shortened(IReadOnlyList<MethodResult> methods, double fittedMm, double errorMm) =>
    [
        new MethodResult("bent-shaft", "handSpacingMm", fittedMm, errorMm, "body's spacing less 75 mm; common practice 50 to 100, no source", "used"),
        .. methods.Select(m => m.Role == "used" ? m with { Role = "basis" } : m),
    ];
}
