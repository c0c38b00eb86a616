using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>How to take one measurement at home.</summary>
/// <param name="Id">Name of the member it belongs in, such as <c>armSpanMm</c>.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="TypicalError">Typical error, one standard deviation, in the unit.</param>
/// <param name="Range">Values accepted, in the unit.</param>
/// <param name="RangeReason">Why values outside are refused.</param>
/// <param name="UsedFor">What the measurement decides.</param>
/// <param name="Source">Source of the method and of its error.</param>
internal sealed record Measurement(
    string Id, string Name, string Unit, IReadOnlyList<string> Steps, double TypicalError, ValueRange Range, string RangeReason, string UsedFor, string Source);

/// <summary>Every body and boat measurement the fitting takes, with how to take it, its typical error and the range accepted.</summary>
internal static class MeasurementCatalogue
{
    private const string ErrorAssumed = "method: common practice, no source; typical error: assumption, no source";

    /// <summary>Hand spacing by the bar-on-the-head test.</summary>
    public static readonly Measurement HandSpacing = new(
        "handSpacingMm", "Hand spacing by a bar on the head", "mm",
        [
            "Sit or stand upright and rest a broomstick or a straight bar on the crown of the head.",
            "Grip it so that both elbows make a right angle, upper arms level and forearms upright: look in a mirror or ask a helper.",
            "Have the middle of each fist marked on the bar (under the middle knuckle) and measure between the marks.",
            "Put the bar down and repeat twice; take the middle of the three readings. One degree of elbow shifts it by about 12 mm.",
        ],
        HandSpacingMethods.BarErrorMm, new(400, 1100), "the service designs paddles for hand spacings in this range", "hand spacing; measured beats every estimate",
        ErrorAssumed);

    public static readonly Measurement Stature = new(
        "statureMm", "Stature", "mm",
        [
            "Stand without shoes with heels, seat and shoulders against a wall, looking level.",
            "Lay a book flat against the wall down on the crown, mark its underside, and measure from the floor.",
        ],
        HandSpacingMethods.HomeStatureErrorMm, new(900, 2200),
        "the survey behind the estimates holds adults of 1409 to 1993 mm; a child's estimate carries their proportions on, and so far is as far as that goes",
        "estimates hand spacing and hand size where they were not measured, and checks them where they were", ErrorAssumed);

    public static readonly Measurement SittingHeight = new(
        "sittingHeightMm", "Sitting height", "mm",
        [
            "Sit upright on a flat hard stool against a wall, looking level.",
            "Mark the crown on the wall with a book and measure down to the seat.",
        ],
        10, new(450, 1200), "nobody of the statures accepted sits outside it", "eye and shoulder height above the seat; rules for seated paddlers", ErrorAssumed);

    public static readonly Measurement ShoulderBreadth = new(
        "shoulderBreadthMm", "Shoulder breadth", "mm",
        [
            "Feel for the bony point at the outer top of each shoulder.",
            "Have a helper measure straight between the two points, across the back, arms hanging.",
        ],
        10, new(180, 550), "nobody of the statures accepted comes near the ends of it",
        "a check of the other measurements only: adding two upper arms to it overstates hand spacing by about a fifth", ErrorAssumed);

    public static readonly Measurement ArmSpan = new(
        "armSpanMm", "Arm span", "mm",
        [
            "Stand with the back to a wall, arms stretched out level, palms forward.",
            "Have a helper mark both middle finger tips on the wall and measure between the marks.",
        ],
        HandSpacingMethods.HomeSpanErrorMm, new(850, 2350), "it is the range of spans that go with the statures accepted",
        "the best estimate of hand spacing without a bar test", ErrorAssumed);

    public static readonly Measurement HandLength = new(
        "handLengthMm", "Hand length", "mm",
        ["Lay the hand flat, palm up.", "Measure from the wrist crease nearest the palm to the tip of the middle finger."],
        3, new(90, 260), "it runs from a small child's hand to far beyond the survey's (165 to 210 mm for nine adults in ten)", "shaft section and grip length", ErrorAssumed);

    public static readonly Measurement HandBreadth = new(
        "handBreadthMm", "Hand breadth", "mm",
        ["Lay the hand flat, fingers together.", "Measure across the four knuckles, thumb left out."],
        2, new(40, 120), "it runs from a small child's hand to far beyond the survey's (72 to 96 mm for nine adults in ten)", "grip width", ErrorAssumed);

    public static readonly Measurement BodyMass = new(
        "bodyMassKg", "Body mass", "kg",
        ["Weigh yourself in light clothes."],
        1, new(10, 250), "loads and blade area are scaled from an adult's, down to a small child's", "blade, shaft and the loads the paddle is checked for", ErrorAssumed);

    /// <summary>Seat height above the water.</summary>
    public static readonly Measurement SeatHeight = new(
        "heightAboveWaterMm", "Seat height above the water", "mm",
        [
            "With the boat afloat and loaded as usual, sit down and have a helper measure from the water straight up to the top of the pressed cushion, along the outside of the hull.",
            "On land: seat above the inside of the hull, less the draught at the seat (75 to 125 mm is usual), plus the pressed cushion.",
        ],
        15, new(0, 500), "a seat is above the water and below the shoulder of a canoe", "the shaft left clear below the lower hand, the rules for seated paddlers and the height of the grip hand", ErrorAssumed);

    public static readonly Measurement WaterDepth = new(
        "depthMm", "Water depth", "mm",
        ["Stand a marked pole on the bottom at the shallowest place you paddle often, and read the water line."],
        30, new(100, 12_000_000), "a canoe hardly floats in less, and no water is deeper", "whether the blade's length can be immersed", ErrorAssumed);

    /// <summary>All of them, in the order a person would take them.</summary>
    public static IReadOnlyList<Measurement> All { get; } =
    [
        HandSpacing, ArmSpan, Stature, SittingHeight, HandLength, HandBreadth, ShoulderBreadth, BodyMass, SeatHeight, WaterDepth,
    ];

    /// <summary>The plain name of a measurement inside a sentence.</summary>
    /// <exception cref="ArgumentException">There is no such measurement.</exception>
    public static string NameInSentence(string id)
    {
        var name = All.FirstOrDefault(m => m.Id == id)?.Name ?? throw new ArgumentException($"No measurement is called {id}.", nameof(id));
        return Words.Small(name);
    }
}

/// <summary>The range in which a measurement is taken, and which one it is, so that a refusal can say how to measure.</summary>
internal sealed class MeasuredAttribute : BoundAttribute
{
    /// <param name="id">Name of the measurement in the catalogue.</param>
    public MeasuredAttribute(string id)
        : this(MeasurementCatalogue.All.First(measurement => measurement.Id == id))
    {
    }

    private MeasuredAttribute(Measurement measurement)
        : base(measurement.Range.Min, measurement.Range.Max, measurement.Unit, Words.Capital(measurement.RangeReason)) => (Id, Source) = (measurement.Id, null);

    /// <summary>Name of the measurement.</summary>
    public string Id { get; }
}
