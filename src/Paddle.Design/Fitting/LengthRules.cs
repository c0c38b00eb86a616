namespace Paddle.Design.Fitting;

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
