namespace Paddle.Design.Fitting;

/// <summary>An oval shaft that fits a hand.</summary>
/// <param name="EquivalentDiameterMm">Diameter of the round of the same girth, mm.</param>
/// <param name="LowMm">Diameter that lets the hand grip hardest, mm.</param>
/// <param name="HighMm">Diameter rated most comfortable, mm.</param>
/// <param name="WidthMm">Short axis, across the blade (parallel to its face), mm.</param>
/// <param name="ThicknessMm">Long axis, square to the blade's face, mm.</param>
public sealed record ShaftSection(double EquivalentDiameterMm, double LowMm, double HighMm, double WidthMm, double ThicknessMm);

/// <summary>Shaft section from hand length.</summary>
public static class ShaftFit
{
    /// <summary>Diameter over hand length that the hand finds most comfortable. Source: Kong and Lowe 2005 (abstract).</summary>
    public const double ComfortOverHandLength = 0.197;

    /// <summary>Diameter over hand length that lets the hand grip hardest. Source: Rossi et al., about 2014 (abstract).</summary>
    public const double ForceOverHandLength = 0.179;

    /// <summary>Smallest equivalent diameter accepted, mm (from the two studies and common practice; wood shafts of 28.6 are kept for weight).</summary>
    public const double SmallestMm = 28;

    /// <summary>Largest equivalent diameter accepted, mm (Kong and Lowe 2005: 30 to 40 rated best).</summary>
    public const double LargestMm = 40;

    /// <summary>Long over short axis (common practice, no source: 1.1 to 1.25).</summary>
    public const double OvalRatio = 1.15;

    /// <summary>Diameter of the round with the same girth as an oval: perimeter/π, Ramanujan's approximation of the ellipse.</summary>
    /// <param name="widthMm">One axis, mm.</param>
    /// <param name="thicknessMm">Other axis, mm.</param>
    /// <returns>D_eq = ½ (3 (w + t) − √((3 w + t)(w + 3 t))), mm.</returns>
    /// <remarks>Source: Ramanujan's first approximation, textbook.</remarks>
    public static double EquivalentDiameterMm(double widthMm, double thicknessMm) =>
        0.5 * ((3 * (widthMm + thicknessMm)) - Math.Sqrt(((3 * widthMm) + thicknessMm) * (widthMm + (3 * thicknessMm)))); // theory F23

    /// <summary>Shaft for a hand. The long axis stands square to the blade's face: stiffer under load, and it tells the hand the blade's angle.</summary>
    /// <param name="handLengthMm">Hand length, mm.</param>
    /// <param name="preferences">Sensitive joints lean to comfort, light carry to the smaller section, else between the two.</param>
    /// <returns>The section, sizes to 0.1 mm. Source: Kong and Lowe 2005; Rossi et al.; oval: common practice, no source.</returns>
    public static ShaftSection Fit(double handLengthMm, PaddlerPreferences preferences)
    {
        ArgumentNullException.ThrowIfNull(preferences);
        double low = Math.Clamp(ForceOverHandLength * handLengthMm, SmallestMm, LargestMm); // theory F24
        double high = Math.Clamp(ComfortOverHandLength * handLengthMm, SmallestMm, LargestMm);
        double target = preferences switch
        {
            { SensitiveJoints: true } => high,
            { LightCarry: true } => low,
            _ => (low + high) / 2,
        };
        double width = target / EquivalentDiameterMm(1, OvalRatio);
        return new ShaftSection(Math.Round(target, 1), Math.Round(low, 1), Math.Round(high, 1), Math.Round(width, 1), Math.Round(width * OvalRatio, 1));
    }
}
