using Paddle.Design.Outline;
using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Fitting;

/// <summary>The lengths a caller gives, mm; null ones follow from the others or from custom.</summary>
/// <param name="HandSpacingMm">S: middle of the grip hand to middle of the lower hand.</param>
/// <param name="FreeboardMm">c: lower hand to throat.</param>
/// <param name="OverallMm">L: top of the grip to the tip.</param>
/// <param name="BladeLengthMm">B: throat to tip.</param>
internal sealed record LengthsAsked(double? HandSpacingMm, double? FreeboardMm, double? OverallMm, double? BladeLengthMm);

/// <summary>Lengths that agree with one another, and the places they lead to. L = t + S + c + B with t the grip hand's middle.</summary>
/// <param name="HandSpacingMm">S: middle of the grip hand to middle of the lower hand, mm.</param>
/// <param name="FreeboardMm">c: lower hand to throat, mm.</param>
/// <param name="OverallMm">L: top of the grip to the tip, mm.</param>
/// <param name="BladeLengthMm">B: throat to tip, mm.</param>
/// <param name="Places">Places along the paddle.</param>
internal sealed record PaddleLengths(double HandSpacingMm, double FreeboardMm, double OverallMm, double BladeLengthMm, PaddlePlaces Places)
{
    /// <summary>Freeboard when none follows from the other lengths, mm (common practice: 25–50, no source).</summary>
    public const double DefaultFreeboardMm = 38;

    // A grip hand may sit lower than its pattern says, but its middle stays on the grip.
    private const double LeastTopHandMm = 5, MostTopHandMm = 60, MostTopHandShareOfGrip = 0.7;

    /// <summary>Hand spacings that fit a person, from a child of 0.9 m up, mm (service's own limits).</summary>
    public static Range HandSpacingLimitsMm { get; } = new(400, 1100);

    /// <summary>Freeboards, mm (service's own limits; custom is 25–50).</summary>
    public static Range FreeboardLimitsMm { get; } = new(0, 150);

    /// <summary>Overall lengths, mm (service's own limits).</summary>
    public static Range OverallLimitsMm { get; } = new(800, 2100);

    /// <summary>Blade lengths, mm (service's own limits).</summary>
    public static Range BladeLengthLimitsMm { get; } = new(350, 1000);

    /// <summary>Where the middle of the grip hand may lie on a grip of a given length, mm from its top.</summary>
    public static Range TopHandLimitsMm(double gripLengthMm) =>
        new(LeastTopHandMm, Math.Min(MostTopHandMm, MostTopHandShareOfGrip * gripLengthMm));

    /// <summary>Completes the lengths, or says which clash.</summary>
    /// <param name="asked">The lengths given, each within its own limits; at least hand spacing or overall length.</param>
    /// <param name="usualBladeMm">Blade length when none is given and none follows, mm: the family's.</param>
    /// <exception cref="ArgumentException">Neither hand spacing nor overall length is given.</exception>
    public static LengthsResult Resolve(LengthsAsked asked, double usualBladeMm, GripPattern pattern, double gripLengthMm)
    {
        var hand = pattern.HandMm;
        return asked switch
        {
            { HandSpacingMm: null, OverallMm: null } =>
                throw new ArgumentException("Hand spacing or overall length must be given.", nameof(asked)),
            { HandSpacingMm: { } spacing, OverallMm: null } => OverallFollows(
                hand, spacing, asked.FreeboardMm ?? DefaultFreeboardMm, asked.BladeLengthMm ?? usualBladeMm, gripLengthMm),
            { HandSpacingMm: null, OverallMm: { } overall } => SpacingFollows(
                hand, asked.FreeboardMm ?? DefaultFreeboardMm, overall, asked.BladeLengthMm ?? usualBladeMm, gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: null, OverallMm: { } overall } => FreeboardFollows(
                hand, spacing, overall, asked.BladeLengthMm ?? usualBladeMm, asked.BladeLengthMm is null, gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: { } freeboard, OverallMm: { } overall, BladeLengthMm: null } =>
                BladeFollows(hand, spacing, freeboard, overall, gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: { } freeboard, OverallMm: { } overall, BladeLengthMm: { } blade } =>
                HandFollows(hand, spacing, freeboard, overall, blade, gripLengthMm),
        };
    }

    private static LengthsResult OverallFollows(double hand, double spacing, double freeboard, double blade, double grip)
    {
        var overall = Tidy(hand + spacing + freeboard + blade);
        return OverallLimitsMm.Contains(overall)
            ? Agreed(spacing, freeboard, overall, blade, grip)
            : Clash(new(
                [LengthFields.HandSpacing], overall, OverallLimitsMm,
                $"Grip hand {Show(hand)} + hand spacing {Show(spacing)} + freeboard {Show(freeboard)} + blade {Show(blade)} make an overall length of "
                + $"{Show(overall)} mm."));
    }

    private static LengthsResult SpacingFollows(double hand, double freeboard, double overall, double blade, double grip)
    {
        var spacing = Tidy(overall - hand - freeboard - blade);
        var fits = new Range(Tidy(HandSpacingLimitsMm.Min + overall - spacing), Tidy(HandSpacingLimitsMm.Max + overall - spacing));
        return HandSpacingLimitsMm.Contains(spacing)
            ? Agreed(spacing, freeboard, overall, blade, grip)
            : Clash(new(
                [LengthFields.Overall], spacing, HandSpacingLimitsMm,
                $"Overall length {Show(overall)} less grip hand {Show(hand)}, freeboard {Show(freeboard)} and blade {Show(blade)} leaves a hand "
                + $"spacing of {Show(spacing)} mm; an overall length of {Show(fits)} mm would fit this blade."));
    }

    private static LengthsResult FreeboardFollows(
        double hand, double spacing, double overall, double blade, bool usualBlade, double grip)
    {
        var freeboard = Tidy(overall - hand - spacing - blade);
        var fits = new Range(Tidy(FreeboardLimitsMm.Min + overall - freeboard), Tidy(FreeboardLimitsMm.Max + overall - freeboard));
        var whose = usualBlade ? "the usual blade" : "blade";
        return FreeboardLimitsMm.Contains(freeboard)
            ? Agreed(spacing, freeboard, overall, blade, grip)
            : Clash(new(
                [LengthFields.HandSpacing, LengthFields.Overall, LengthFields.Blade], freeboard, FreeboardLimitsMm,
                $"Overall length {Show(overall)} less grip hand {Show(hand)}, hand spacing {Show(spacing)} and {whose} {Show(blade)} leaves a "
                + $"freeboard of {Show(freeboard)} mm; with this spacing and blade an overall length of {Show(fits)} mm would fit."));
    }

    private static LengthsResult BladeFollows(double hand, double spacing, double freeboard, double overall, double grip)
    {
        var blade = Tidy(overall - hand - spacing - freeboard);
        var fits = new Range(Tidy(BladeLengthLimitsMm.Min + overall - blade), Tidy(BladeLengthLimitsMm.Max + overall - blade));
        return BladeLengthLimitsMm.Contains(blade)
            ? Agreed(spacing, freeboard, overall, blade, grip)
            : Clash(new(
                [LengthFields.HandSpacing, LengthFields.Freeboard, LengthFields.Overall], blade, BladeLengthLimitsMm,
                $"Overall length {Show(overall)} less grip hand {Show(hand)}, hand spacing {Show(spacing)} and freeboard {Show(freeboard)} leaves a "
                + $"blade of {Show(blade)} mm; with this spacing and freeboard an overall length of {Show(fits)} mm would fit."));
    }

    private static LengthsResult HandFollows(
        double hand, double spacing, double freeboard, double overall, double blade, double grip)
    {
        var top = Tidy(overall - spacing - freeboard - blade);
        var limits = TopHandLimitsMm(grip);
        return limits.Contains(top)
            ? Agreed(spacing, freeboard, overall, blade, grip)
            : Clash(new(
                [LengthFields.HandSpacing, LengthFields.Freeboard, LengthFields.Overall, LengthFields.Blade], top, limits,
                $"Hand spacing {Show(spacing)} + freeboard {Show(freeboard)} + blade {Show(blade)} = {Show(Tidy(spacing + freeboard + blade))} mm leaves "
                + $"{Show(top)} mm of the overall length {Show(overall)} above the middle of the grip hand; an overall length of "
                + $"{Show(Tidy(hand + spacing + freeboard + blade))} mm puts it {Show(hand)} mm from the end, as this grip asks. Leave one of the "
                + "four null and it follows from the others."));
    }

    // One formula for the places, whichever length followed: completed lengths given back lead to the very same places.
    private static LengthsResult Agreed(double spacing, double freeboard, double overall, double blade, double grip)
    {
        var top = Tidy(overall - spacing - freeboard - blade);
        var lowerHand = top + spacing;
        return new(new(spacing, freeboard, overall, blade, new(top, grip, lowerHand, lowerHand + freeboard, overall)), []);
    }

    private static LengthsResult Clash(LengthConflict conflict) => new(null, [conflict]);

    // Sums of decimal lengths carry round-off in the 13th digit; a millionth of a millimetre is none of a maker's business.
    private static double Tidy(double lengthMm) => Math.Round(lengthMm, 6);

    private static string Show(double lengthMm) => lengthMm.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static string Show(Range range) => $"{Show(range.Min)} to {Show(range.Max)}";
}
