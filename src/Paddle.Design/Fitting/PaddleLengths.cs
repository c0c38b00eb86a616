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
    /// <summary>Ends of the ranges below, mm.</summary>
    public const double LeastHandSpacingMm = 400, MostHandSpacingMm = 1100, LeastFreeboardMm = 0, MostFreeboardMm = 150;
    /// <inheritdoc cref="LeastHandSpacingMm"/>
    public const double LeastOverallMm = 800, MostOverallMm = 2100, LeastBladeLengthMm = 350, MostBladeLengthMm = 1000;

    // A grip hand may sit lower than its pattern says, but its middle stays on the grip.
    private const double LeastTopHandMm = 5, MostTopHandMm = 60, MostTopHandShareOfGrip = 0.7;

    /// <summary>Hand spacings that fit a person, from a child of 0.9 m up, mm (service's own limits).</summary>
    public static Range HandSpacingLimitsMm { get; } = new(LeastHandSpacingMm, MostHandSpacingMm);
    /// <summary>Freeboards, mm (service's own limits; custom is 25–50).</summary>
    public static Range FreeboardLimitsMm { get; } = new(LeastFreeboardMm, MostFreeboardMm);
    /// <summary>Overall lengths, mm (service's own limits).</summary>
    public static Range OverallLimitsMm { get; } = new(LeastOverallMm, MostOverallMm);
    /// <summary>Blade lengths, mm (service's own limits).</summary>
    public static Range BladeLengthLimitsMm { get; } = new(LeastBladeLengthMm, MostBladeLengthMm);

    /// <summary>Where the middle of the grip hand may lie on a grip of a given length, mm from its top.</summary>
    public static Range TopHandLimitsMm(double gripLengthMm) =>
        new(LeastTopHandMm, Math.Min(MostTopHandMm, MostTopHandShareOfGrip * gripLengthMm));

    /// <summary>Completes the lengths, or says which clash.</summary>
    /// <param name="asked">The lengths given, each within its own limits; at least hand spacing or overall length.</param>
    /// <param name="usualBladeMm">Blade length (mm) for a hand spacing (mm) when none is given and none follows.</param>
    /// <exception cref="ArgumentException">Neither hand spacing nor overall length is given.</exception>
    public static LengthsResult Resolve(LengthsAsked asked, Func<double, double> usualBladeMm, GripPattern pattern, double gripLengthMm)
    {
        var (hand, usualFreeboard) = (pattern.HandMm, asked.FreeboardMm ?? DefaultFreeboardMm);
        return asked switch
        {
            { HandSpacingMm: null, OverallMm: null } =>
                throw new ArgumentException("Hand spacing or overall length must be given.", nameof(asked)),
            { HandSpacingMm: { } spacing, OverallMm: null } => OverallFollows(
                hand, spacing, usualFreeboard, asked.BladeLengthMm ?? usualBladeMm(spacing), gripLengthMm),
            { HandSpacingMm: null, OverallMm: { } overall } => SpacingFollows(
                hand, usualFreeboard, overall, asked.BladeLengthMm ?? BladeOf(overall - hand - usualFreeboard, usualBladeMm), gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: null, OverallMm: { } overall } => FreeboardFollows(
                hand, spacing, overall, asked.BladeLengthMm ?? usualBladeMm(spacing), asked.BladeLengthMm is null, gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: { } freeboard, OverallMm: { } overall, BladeLengthMm: null } =>
                BladeFollows(hand, spacing, freeboard, overall, gripLengthMm),
            { HandSpacingMm: { } spacing, FreeboardMm: { } freeboard, OverallMm: { } overall, BladeLengthMm: { } blade } =>
                HandFollows(hand, spacing, freeboard, overall, blade, gripLengthMm),
        };
    }

    // The usual blade of the hand spacing that it leaves. It grows by little more than half a millimetre for each of the spacing.
    private static double BladeOf(double spacingAndBladeMm, Func<double, double> usualBladeMm)
    {
        const int Rounds = 30;
        var blade = usualBladeMm(spacingAndBladeMm);
        for (var round = 0; round < Rounds; round++) blade = usualBladeMm(spacingAndBladeMm - blade);
        return blade;
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

    private static LengthsResult FreeboardFollows(double hand, double spacing, double overall, double blade, bool usualBlade, double grip)
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

    private static LengthsResult HandFollows(double hand, double spacing, double freeboard, double overall, double blade, double grip)
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

/// <summary>Shows the trade's length rules for one person beside the service's own geometry.</summary>
internal static class LengthMethods
{
    private const string Quantity = "overallLengthMm";
    private const string BarRule = "bar-on-head-rule";
    private const double NoseErrorMm = 10;

    /// <summary>Every overall-length rule that applies, the service's own first, and how far they lie apart.</summary>
    /// <param name="topHandMm">g, mm.</param>
    /// <param name="usedSpacingMm">S as used (shortened for a bent shaft), mm.</param>
    /// <param name="handBreadthMm">h_b, mm.</param>
    /// <param name="freeboardMm">c, mm.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <param name="seatAboveWaterMm">z, mm.</param>
    /// <param name="statureMm">H, mm, or null.</param>
    /// <param name="seated">Heights above the seat, or null.</param>
    /// <returns>Methods and spread. A cap is listed and left out of the spread.</returns>
    public static (IReadOnlyList<MethodResult> Methods, RuleSpread Spread) Show(
        double topHandMm, double usedSpacingMm, SpacingChoice body, double handBreadthMm, double freeboardMm, double bladeLengthMm,
        double seatAboveWaterMm, double? statureMm, SeatedBody? seated, bool bent)
    {
        var methods = new List<MethodResult>
        {
            new("service-geometry", Quantity, LengthRules.OwnGeometryMm(topHandMm, usedSpacingMm, freeboardMm, bladeLengthMm), Join(body.StandardErrorMm, FreeboardErrorMm), "geometry: grip end to hand + hand spacing + freeboard + blade, hands at their middles; allowances common practice, no source", "used", "service"),
            new(BarRule, Quantity, LengthRules.BarOnHeadMm(topHandMm, body.ValueMm, handBreadthMm, freeboardMm, bladeLengthMm), Join(body.StandardErrorMm, FreeboardErrorMm), "common practice, no source; counts half the lower hand besides the freeboard", "beside", "long-reach"),
        };
        if (statureMm is { } h)
        {
            var low = LengthRules.FloorToChinMm(h);
            var high = LengthRules.FloorToNoseMm(h);
            methods.Add(new("floor-to-chin-or-nose", Quantity, (low + high) / 2, (high - low) / Math.Sqrt(12), "a boating-education course; middle of chin to nose, ratios Drillis and Contini 1966 (from memory) and ANSUR II", "beside", "long-reach"));
        }

        if (seated is not null)
        {
            methods.Add(new("nose-to-seat", Quantity, LengthRules.NoseToSeatMm(seated.EyeHeightMm, bladeLengthMm), Join(seated.EyeHeightErrorMm, NoseErrorMm), "a hobby paddle-making guide; " + seated.Source, "beside", "seated"));
            methods.Add(new("shoulder-to-water", Quantity, LengthRules.ShoulderToWaterMm(seated.ShoulderHeightMm, seatAboveWaterMm, bladeLengthMm), Join(seated.ShoulderHeightErrorMm, MeasurementCatalogue.SeatHeight.TypicalError), "an outfitter's article and a boating-education course; " + seated.Source, "beside", "seated"));
            methods.Add(new("crown-cap", Quantity, LengthRules.CrownCapMm(seated.SittingHeightMm, seatAboveWaterMm, bladeLengthMm), Join(seated.SittingHeightErrorMm, MeasurementCatalogue.SeatHeight.TypicalError), "common practice and assumption, no source; an upper limit", "cap", "cap"));
        }

        var ranked = methods.Where(m => m.Role != "cap").Select(m => m.ValueMm).ToList();
        var spread = ranked.Max() - ranked.Min();
        return (methods, new RuleSpread("service-geometry", Mean(methods, "long-reach"), Mean(methods, "seated"), spread, IsNews(methods, bent)));
    }

    /// <summary>The rules of the two styles always lie 200 mm or more apart: that is no news. News is a length outside what the independent
    /// rules of its own style span, by more than twice their scatter. Bent shafts lie between the styles.</summary>
    private static bool IsNews(IReadOnlyList<MethodResult> methods, bool bent)
    {
        var used = methods.Single(m => m.Role == "used");
        var others = methods.Where(m => m.Role == "beside" && m.Id != BarRule && (bent || m.Group == "long-reach")).ToList();
        return others.Count > 0 && (others.All(m => used.ValueMm > m.ValueMm + Scatter(m)) || others.All(m => used.ValueMm < m.ValueMm - Scatter(m)));

        double Scatter(MethodResult m) =>
            LengthRules.FlaggedStandardErrors * Join(Join(used.StandardErrorMm, m.StandardErrorMm), LengthRules.RuleScatterMm); // theory F39
    }

    /// <summary>Scatter of the freeboard allowance, mm: 25 to 50 taken as even.</summary>
    public static double FreeboardErrorMm => (LengthRules.HighestFreeboardMm - LengthRules.LowestFreeboardMm) / Math.Sqrt(12);

    /// <summary>Two independent errors together: √(a² + b²).</summary>
    /// <param name="firstMm">First standard error, mm.</param>
    /// <param name="secondMm">Second standard error, mm.</param>
    /// <returns>Standard error of the sum, mm.</returns>
    public static double Join(double firstMm, double secondMm) => Math.Sqrt((firstMm * firstMm) + (secondMm * secondMm));

    private static double? Mean(IEnumerable<MethodResult> methods, string group)
    {
        var values = methods.Where(m => m.Group == group).Select(m => m.ValueMm).ToList();
        return values.Count == 0 ? null : values.Average();
    }
}

/// <summary>The trade's rules for overall length, and the service's own geometry. Millimetres; straight paddle, throat at the waterline.
/// The rules fall into two groups 200 to 260 mm apart (long reach: R1, R2; seated: R3, R4), so they are shown side by side and never
/// averaged.</summary>
internal static class LengthRules
{
    /// <summary>Shortest clear shaft between lower hand and water, mm (common practice, no source).</summary>
    public const double LowestFreeboardMm = 25;
    /// <summary>Longest clear shaft between lower hand and water, mm (common practice, no source).</summary>
    public const double HighestFreeboardMm = 50;
    /// <summary>Usual clear shaft between lower hand and water, mm (common practice, no source; middle of 25 to 50).</summary>
    public const double DefaultFreeboardMm = 38;
    /// <summary>Seat height above the water where none is given, mm (assumption, no source: seat above hull 178 to 279, draught 75 to 125).</summary>
    public const double DefaultSeatHeightMm = 130;
    /// <summary>Nose below the eye, mm (assumption, no source).</summary>
    public const double NoseBelowEyeMm = 45;
    /// <summary>Chin height over stature. Source: Drillis and Contini 1966 from memory, confirmed by ANSUR II (0.868, 0.867).</summary>
    public const double ChinOverStature = 0.870;
    /// <summary>Nose height over stature (about the standing eye height less 45 mm; the 45 mm is an assumption).</summary>
    public const double NoseOverStature = 0.91;
    /// <summary>Scatter of one rule against another of the same style, mm, one standard deviation (assumption, no source: two inches).</summary>
    public const double RuleScatterMm = 50;
    /// <summary>Standard errors by which a length must lie outside its style's rules to be worth a word.</summary>
    public const double FlaggedStandardErrors = 2;

    /// <summary>Overall length as the service builds it: L = g + S + c + L_b. Hands are taken at their middles, so half the lower hand lies
    /// in the clear shaft; with 35 in between the hands, 1½ in clear and a two-foot blade it gives the 60 to 62 in of common
    /// practice.</summary>
    /// <param name="topHandMm">g, grip end to middle of grip hand, mm.</param>
    /// <param name="handSpacingMm">S, between the middles of the hands, mm.</param>
    /// <param name="freeboardMm">c, middle of lower hand to throat, mm.</param>
    /// <param name="bladeLengthMm">L_b, throat to tip, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: geometry; allowances common practice, no source.</remarks>
    public static double OwnGeometryMm(double topHandMm, double handSpacingMm, double freeboardMm, double bladeLengthMm) =>
        topHandMm + handSpacingMm + freeboardMm + bladeLengthMm; // theory F10

    /// <summary>R1, bar on the head, with half the lower hand's breadth counted besides: L = g + S + h_b/2 + c + L_b.</summary>
    /// <param name="topHandMm">g, grip end to middle of grip hand, mm.</param>
    /// <param name="handSpacingMm">S, between the middles of the hands, mm.</param>
    /// <param name="handBreadthMm">h_b, hand breadth, mm.</param>
    /// <param name="freeboardMm">c, clear shaft below the lower hand, mm.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: common practice, no source; geometry derived.</remarks>
    public static double BarOnHeadMm(double topHandMm, double handSpacingMm, double handBreadthMm, double freeboardMm, double bladeLengthMm) =>
        topHandMm + handSpacingMm + (handBreadthMm / 2) + freeboardMm + bladeLengthMm; // theory F11

    /// <summary>R2, floor to chin: L = 0.870 H, the short end of the rule.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: a boating-education course; ratio Drillis and Contini 1966, ANSUR II.</remarks>
    public static double FloorToChinMm(double statureMm) => ChinOverStature * statureMm; // theory F12

    /// <summary>R2, floor to nose: L ≈ 0.91 H, the long end of the rule.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: a boating-education course; nose height assumed.</remarks>
    public static double FloorToNoseMm(double statureMm) => NoseOverStature * statureMm; // theory F12

    /// <summary>R3, nose to seat plus blade: L = (eye height sitting − 45) + L_b.</summary>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: a hobby paddle-making guide; nose 45 mm below the eye assumed.</remarks>
    public static double NoseToSeatMm(double eyeHeightSittingMm, double bladeLengthMm) =>
        eyeHeightSittingMm - NoseBelowEyeMm + bladeLengthMm; // theory F13

    /// <summary>R4, shoulder to water plus blade: L = shoulder height sitting + z + L_b.</summary>
    /// <param name="shoulderHeightSittingMm">Acromial height above the seat, mm.</param>
    /// <param name="seatAboveWaterMm">z, mm.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <returns>L, mm.</returns>
    /// <remarks>Source: an outfitter's article and a boating-education course.</remarks>
    public static double ShoulderToWaterMm(double shoulderHeightSittingMm, double seatAboveWaterMm, double bladeLengthMm) =>
        shoulderHeightSittingMm + seatAboveWaterMm + bladeLengthMm; // theory F14

    /// <summary>R5, a cap: L ≤ sitting height + z + L_b, so that the grip is never above the crown with the shaft upright.</summary>
    /// <param name="seatAboveWaterMm">z, mm.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <returns>Greatest L, mm.</returns>
    /// <remarks>Source: common practice and assumption, no source.</remarks>
    public static double CrownCapMm(double sittingHeightMm, double seatAboveWaterMm, double bladeLengthMm) =>
        sittingHeightMm + seatAboveWaterMm + bladeLengthMm; // theory F15

    /// <summary>Height of the grip hand above the seat: a cos φ − z, with a the shaft from the throat (at the water) to the middle of the grip hand.</summary>
    /// <param name="throatToTopHandMm">a, mm: S + c in the service's geometry, S + h_b/2 + c in R1.</param>
    /// <param name="leanDegrees">φ, lean of the shaft from upright, degrees.</param>
    /// <param name="seatAboveWaterMm">z, mm.</param>
    /// <remarks>Source: geometry.</remarks>
    public static double TopHandAboveSeatMm(double throatToTopHandMm, double leanDegrees, double seatAboveWaterMm) =>
        (throatToTopHandMm * Math.Cos(leanDegrees * Math.PI / 180)) - seatAboveWaterMm; // theory F16
}
