using Paddle.Design.Strength;
using Paddle.Design.Units;
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
    public static AnswerOrRefusals<FittingAdvice> Advise(FittingRequest request, Func<SuggestedDesign, SuggestedDesign>? settle = null)
    {
        var (refusals, doubts) = FittingChecks.Check(request);
        return refusals.Count > 0 ? new(null, refusals) : new(Answer(request.Complete(), doubts, settle ?? (static design => design)), []);
    }

    /// <summary>Freeboard: 38 mm, a fifth of what the seat stands above 130 mm more, a little more where the paddler steers; kept within 25
    /// to 50.</summary>
    /// <returns>c, whole mm.</returns>
    /// <remarks>Source: range common practice, no source; the shares inside it are the service's own choice.</remarks>
    public static double FreeboardMm(double seatHeightMm, SeatPlace? place)
    {
        double steering = place switch { SeatPlace.Stern => 6, SeatPlace.Solo => 3, _ => 0 };
        var freeboard = LengthRules.DefaultFreeboardMm + (FreeboardOverSeatHeight * (seatHeightMm - LengthRules.DefaultSeatHeightMm)) + steering; // theory F27
        return Math.Round(Math.Clamp(freeboard, LengthRules.LowestFreeboardMm, LengthRules.HighestFreeboardMm));
    }

    // A request completed, of a person for whom a hand spacing can be found.
    private static FittingAdvice Answer(
        FittingRequest request, IReadOnlyList<Caution> doubts, Func<SuggestedDesign, SuggestedDesign> settle)
    {
        var (paddler, seat, water, outing, wishes) = (request.Paddler!, request.Seat!, request.Water!, request.Outing!, request.Preferences!);
        var (seatHeight, cadence, hours) = (seat.HeightAboveWaterMm!.Value, outing.StrokesPerMinute!.Value, outing.HoursPerDay!.Value);
        var units = DrawingRequest.Read(request.Drawing?.Units);

        // 1. Body: hand spacing, hands, mass, heights above the seat.
        var person = PersonInFull.Of(paddler, units);
        var body = person.Spacing;
        var seated = SeatedBody.Of(paddler);

        // 2. Water and stroke: family, size, depth.
        var density = FreshWater.DensityKgM3(water.TemperatureC ?? FreshWater.DefaultTemperatureC);
        var demand = EffortArea.Demand(person.BodyMassKg, outing.Effort!.Value, cadence, hours);
        var bent = BladeChoice.IsBent(seat, water.Kind, outing.Purpose, wishes.BentShaft is true);
        var (family, familyReason) = BladeChoice.Choose(water.Kind, seat.Place, bent, wishes.SensitiveJoints is true);
        var immersion = ImmersionDepth.Check(family, body.ValueMm, demand, bent ? BladeChoice.BentShaftDegrees : 0, water.DepthMm);
        var blade = immersion.Blade;
        var inWater = EffortArea.InWater(demand, blade, immersion.ImmersedShare, density, cadence * 60 * hours);

        // 3. Strength and hands: duty, wood, shaft, grip, wrist.
        var duty = Duties.Of(outing.Purpose, water.Kind);
        var freeboard = FreeboardMm(seatHeight, seat.Place);
        var wood = SuggestedWood.For(duty, water.Kind, wishes.LightCarry is true);
        var loadedMass = Math.Clamp(person.BodyMassKg, SuggestedDesign.LoadedMassLimitsKg.Min, SuggestedDesign.LoadedMassLimitsKg.Max);
        var shaft = ShaftFit.Fit(
            person.HandLengthMm, ShaftFit.ForStrokesMm(loadedMass, duty, freeboard, family, blade.LengthMm, wood), wishes);
        var grip = GripFit.Fit(person.HandLengthMm, person.HandBreadthMm, water.Kind, blade.BendDegrees, wishes);

        // 4. Length.
        var fitted = bent ? body.ValueMm - BentShaftShorterMm : body.ValueMm;
        var spacingError = bent ? LengthMethods.Join(body.StandardErrorMm, BentShaftShorterErrorMm) : body.StandardErrorMm;
        var design = settle(new SuggestedDesign(
            request.Label!, fitted, freeboard, blade.Family.Id, blade.MadeLengthMm, blade.MadeWidthMm, blade.BendDegrees, shaft, grip, wood.Species, loadedMass, duty)
        {
            Units = units,
        }.WithinLimits());
        var (lengthMethods, spread) = LengthMethods.Show(
            grip.TopHandMm, design.HandSpacingMm, body, person.HandBreadthMm, freeboard, blade.MadeLengthMm, seatHeight, paddler.StatureMm, seated, bent);
        var spacingMethods = bent ? Shortened(body.Methods, fitted, spacingError) : body.Methods;

        // 5. Put together.
        var story = new FittingStory(person, seat, water, wishes, demand, immersion, familyReason, inWater, duty, wood, design.Shaft, grip, design, units, seated is null);
        var cautions = doubts.Concat(FittingCautions.Of(story, fitted, spread, seated, seatHeight, lengthMethods)).ToList();
        var alternatives = FittingAlternatives.Of(design, story, seated, seatHeight)
            .Select(other => other with { Design = settle(other.Design.WithinLimits()) }).Take(2).ToList();
        return new FittingAdvice(
            Band(design.OverallLengthMm, LengthMethods.Join(spacingError, LengthMethods.FreeboardErrorMm)),
            Band(design.HandSpacingMm, spacingError),
            freeboard, duty, FittedBlade.Of(blade), design.Shaft, grip, FittedImmersion.Of(immersion), FittedStroke.Of(inWater),
            [.. spacingMethods, .. lengthMethods],
            spread, [.. FittingReasons.Of(story)], cautions, design, alternatives);
    }

    private static ValueBand Band(double value, double error) => new(value, Math.Round(value - error), Math.Round(value + error));

    private static IReadOnlyList<MethodResult> Shortened(IReadOnlyList<MethodResult> methods, double fittedMm, double errorMm) =>
    [
        new MethodResult("bent-shaft", "handSpacingMm", fittedMm, errorMm, "body's spacing less 75 mm; common practice 50 to 100, no source", "used"),
        .. methods.Select(m => m.Role == "used" ? m with { Role = "basis" } : m),
    ];
}

/// <summary>A design ready to ask for: only the fields a fitting decides. Lengths are whole millimetres inside the ranges a design accepts.</summary>
/// <param name="Label">Name of the design.</param>
/// <param name="HandSpacingMm">S, mm.</param>
/// <param name="FreeboardMm">c, lower hand to throat, mm.</param>
/// <param name="BladeFamily">Trade name of the blade.</param>
/// <param name="BladeLengthMm">L_b, mm.</param>
/// <param name="BladeWidthMm">W, mm.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees.</param>
/// <param name="Shaft">Shaft section that fits the hand and bears the strokes.</param>
/// <param name="Grip">Grip that fits the hand.</param>
/// <param name="BodyMassKg">Body mass that the design's loads scale with, kg.</param>
/// <param name="Duty">Duty that the design's loads follow from.</param>
public sealed record SuggestedDesign(
    string Label,
    double HandSpacingMm,
    double FreeboardMm,
    string BladeFamily,
    double BladeLengthMm,
    double BladeWidthMm,
    double BendDegrees,
    FittedShaft Shaft,
    FittedGrip Grip,
    string Species,
    double BodyMassKg,
    Duty Duty)
{
    /// <summary>Body masses that a design's loads are given for, kg: a lighter child's paddle is made for the least.</summary>
    public static Outline.Range LoadedMassLimitsKg { get; } = new(12, 250);
    /// <summary>Units that the shop measures in.</summary>
    public DrawingUnits Units { get; init; }
    /// <summary>Overall length these sizes add up to, mm.</summary>
    public double OverallLengthMm => LengthRules.OwnGeometryMm(Grip.TopHandMm, HandSpacingMm, FreeboardMm, BladeLengthMm);

    /// <summary>The nearest design that is accepted: hand spacing and overall length both inside their limits, whole mm.</summary>
    /// <returns>This design, its hand spacing changed where it must be.</returns>
    internal SuggestedDesign WithinLimits()
    {
        var rest = OverallLengthMm - HandSpacingMm;
        var (spacings, overalls) = (PaddleLengths.HandSpacingLimitsMm, PaddleLengths.OverallLimitsMm);
        var least = Math.Max(spacings.Min, Math.Ceiling(overalls.Min - rest));
        var most = Math.Min(spacings.Max, Math.Floor(overalls.Max - rest));
        return this with { HandSpacingMm = Math.Round(Math.Clamp(HandSpacingMm, least, most)) };
    }
}

/// <summary>A wood to suggest.</summary>
/// <param name="Species">Its name in the catalogue of woods.</param>
/// <param name="StrengthOverCherry">Mean bending strength over that of black cherry, dry.</param>
internal sealed record SuggestedWood(string Species, double StrengthOverCherry, string Reason)
{
    // Mean bending strengths at 12 % moisture, MPa: USDA Wood Handbook, table 5-3, from memory (the catalogue of woods holds them with their sources).
    private const double CherryMPa = 85, AshMPa = 103, SpruceMPa = 70;

    /// <summary>The wood for an outing.</summary>
    /// <param name="duty">Duty: the harder ones ask for a strong wood.</param>
    /// <param name="water">Kind of water: rocks ask for a tough wood whatever the wish.</param>
    /// <param name="lightCarry">Whether weight counts on portages.</param>
    /// <returns>The wood. Source: common practice, no source.</returns>
    public static SuggestedWood For(Duty duty, WaterKind? water, bool lightCarry)
    {
        if (water == WaterKind.FastWater) return Ash;
        if (duty == Duty.Touring) return lightCarry ? Spruce : Cherry;
        return lightCarry ? Cherry : Ash;
    }

    /// <summary>Black cherry: light enough, works well.</summary>
    public static SuggestedWood Cherry { get; } = new("black-cherry", 1, "Wood: black cherry, a light hardwood that works cleanly.");
    /// <summary>White ash: tough.</summary>
    public static SuggestedWood Ash { get; } = new("white-ash", AshMPa / CherryMPa, "Wood: white ash, strong and tough enough for rocks, races and years of use.");
    /// <summary>Sitka spruce: light.</summary>
    public static SuggestedWood Spruce { get; } = new("sitka-spruce", SpruceMPa / CherryMPa, "Wood: Sitka spruce, as weight is to count; its shaft must be thicker, and it dents more easily.");
}
