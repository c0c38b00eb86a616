using Paddle.Design.Outline;
using Paddle.Design.Strength;

namespace Paddle.Design.Fitting;

/// <summary>Shaft section from the hand and the strokes.</summary>
internal static class ShaftFit
{
    /// <summary>Diameter over hand length that the hand finds most comfortable. Source: Kong and Lowe 2005 (abstract).</summary>
    public const double ComfortOverHandLength = 0.197;
    /// <summary>Diameter over hand length that lets the hand grip hardest. Source: Rossi et al., about 2014 (abstract).</summary>
    public const double ForceOverHandLength = 0.179;
    /// <summary>The trade's round hardwood shaft, mm: 1 1/8 in. Source: a book on canoe paddles, as quoted on a carving blog.</summary>
    public const double TradeMm = 28.6;
    /// <summary>Thinnest shaft suggested, mm: 7/8 in, a child's (common practice, no source).</summary>
    public const double SmallestMm = 22;
    /// <summary>Thickest shaft suggested, mm (Kong and Lowe 2005: 30 to 40 rated best).</summary>
    public const double LargestMm = 40;
    /// <summary>Long over short axis (common practice, no source: 1.1 to 1.25).</summary>
    public const double OvalRatio = 1.15;
    // Sparing the joints: a little more to hold than the hand likes; carrying light: a little less (service's own choices).
    private const double JointsShare = 1.05, LightShare = 0.94;
    /// <summary>Thickest shaft that a hand alone asks for, mm: as carved in hardwood (calibrated on what makers carve). Strokes may ask for more.</summary>
    public const double LargestForHandMm = 30.5;
    // A slim shaft thins a little to the grip (common practice, no source: 2 to 3 mm); thicker ones are left to the design.
    private const double SlimWidthMm = 25, SlimTaperMm = 2;

    // The paddle whose shaft is known to bear: an ottertail.
    private static readonly BladeSizes TradeBlade = BladeChoice.Family("ottertail");

    /// <summary>Diameter of the round with the same girth as an oval: perimeter/π, Ramanujan's approximation of the ellipse.</summary>
    /// <returns>D_eq = ½ (3 (w + t) − √((3 w + t)(w + 3 t))), mm.</returns>
    /// <remarks>Source: Ramanujan's first approximation, textbook.</remarks>
    public static double EquivalentDiameterMm(double widthMm, double thicknessMm) =>
        0.5 * ((3 * (widthMm + thicknessMm)) - Math.Sqrt(((3 * widthMm) + thicknessMm) * (widthMm + (3 * thicknessMm)))); // theory F23

    /// <summary>Shaft that a hand holds as the mean man's hand holds the trade's shaft: D = 28.6 × hand length/193.3.</summary>
    /// <returns>D, mm.</returns>
    /// <remarks>Source: in proportion to the hand, as Kong and Lowe 2005 and Rossi et al. found both of their diameters. Those are a fifth
    /// thicker than wooden shafts are made, so the trade's shaft, made for men, gives the size and the studies only the
    /// proportion.</remarks>
    public static double ForHandMm(double handLengthMm) => TradeMm * handLengthMm / Survey.HandLength.Men.Mean; // theory F24

    /// <summary>Shaft that bears a person's strokes as the trade's cherry shaft bears those of 75 kg in touring: bending stress M/D³ the
    /// same, so D = 28.6 ∛((m/75)^⅔ · duty · b/b₀ · R₀/R), b = c + κ L_b from the lower hand to where the water pushes.</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <param name="freeboardMm">c, mm.</param>
    /// <param name="blade">Family, for κ.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <param name="wood">Wood, for R.</param>
    /// <returns>D, mm.</returns>
    /// <remarks>Source: elementary beam theory; that the trade's shaft suffices is common practice. The design's own strength check has the last word.</remarks>
    public static double ForStrokesMm(double bodyMassKg, Duty duty, double freeboardMm, BladeSizes blade, double bladeLengthMm, SuggestedWood wood)
    {
        var force = EffortArea.MassScale(bodyMassKg / EffortArea.ReferenceBodyMassKg) * Duties.StrengthOverTouring(duty);
        var lever = (freeboardMm + (blade.PressureAt * bladeLengthMm)) / (LengthRules.DefaultFreeboardMm + (TradeBlade.PressureAt * TradeBlade.LengthMm));
        return TradeMm * Math.Cbrt(force * lever / wood.StrengthOverCherry); // theory F38
    }

    /// <summary>Shaft for a hand and its strokes: the thicker of the two asks. The long axis stands square to the blade's face: stiffer
    /// under load, and it tells the hand the blade's angle. Against the strokes w t² = D³, so an oval needs 2 % less girth than a
    /// round.</summary>
    /// <param name="strokesMm">Diameter of the round that bears the strokes, mm.</param>
    /// <param name="preferences">Sensitive joints ask for more to hold, light carry for less.</param>
    /// <returns>The section, sizes to 0.1 mm.</returns>
    public static FittedShaft Fit(double handLengthMm, double strokesMm, PreferencesRequest preferences)
    {
        var wish = preferences switch { { SensitiveJoints: true } => JointsShare, { LightCarry: true } => LightShare, _ => 1 };
        var hand = Math.Min(wish * ForHandMm(handLengthMm), LargestForHandMm);
        var girth = EquivalentDiameterMm(1, OvalRatio);
        var strokes = strokesMm * girth / Math.Cbrt(OvalRatio * OvalRatio);
        var target = Math.Clamp(Math.Max(hand, strokes), SmallestMm, LargestMm);
        var width = target / girth;
        var thickness = width * OvalRatio;
        var slim = width < SlimWidthMm;
        return new FittedShaft(
            Math.Round(width, 1),
            Math.Round(thickness, 1),
            Math.Round(target, 1),
            Math.Round(ForceOverHandLength * handLengthMm, 1),
            Math.Round(ComfortOverHandLength * handLengthMm, 1),
            slim ? Math.Round(width - SlimTaperMm, 1) : null,
            slim ? Math.Round(thickness - SlimTaperMm, 1) : null,
            Math.Max(hand, strokes) is < SmallestMm or > LargestMm ? ShaftSizeSetBy.Limits : hand >= strokes ? ShaftSizeSetBy.Hand : ShaftSizeSetBy.Strokes);
    }
}

/// <summary>Grip style, size and faces from the hand, the water and the wrist.</summary>
internal static class GripFit
{
    /// <summary>Pear or palm grip width over hand breadth (common practice, no source: 0.75 to 0.9).</summary>
    public const double WidthOverHandBreadth = 0.825;
    /// <summary>Grip length over hand length (assumption, no source: brings the mean hand to the middle of the trade's 70 to 100 mm).</summary>
    public const double LengthOverHandLength = 0.45;
    /// <summary>Shortest pear or palm grip, mm (common practice, no source).</summary>
    public const double ShortestMm = 70;
    /// <summary>Longest pear or palm grip, mm (common practice, no source).</summary>
    public const double LongestMm = 100;
    /// <summary>Room to add to the hand breadth on a T grip, mm (common practice, no source).</summary>
    public const double TeeAllowanceMm = 15;

    /// <param name="water">Kind of water: fast water asks for the hold of a T.</param>
    /// <param name="bendDegrees">Bend of the shaft: a bent paddle has one power face only.</param>
    /// <param name="preferences">Whether the wrist is to be kept straighter or joints spared.</param>
    /// <returns>The grip, whole millimetres. Sources: sizes common practice, no source; wrist: O'Driscoll et al. 1992, Fong and Ng 2001 (abstracts).</returns>
    public static FittedGrip Fit(double handLengthMm, double handBreadthMm, WaterKind? water, double bendDegrees, PreferencesRequest preferences)
    {
        var tee = water == WaterKind.FastWater;
        var bent = bendDegrees > 0;
        var pattern = GripPattern.Of(tee ? GripStyle.T : bent ? GripStyle.Palm : GripStyle.Pear);
        var wanted = tee ? handBreadthMm + TeeAllowanceMm : WidthOverHandBreadth * handBreadthMm; // theory F25
        var width = Math.Clamp(Math.Round(wanted), pattern.WidthLimitsMm.Min, pattern.WidthLimitsMm.Max);

        // The hand closes round a T's bar, so its length says nothing about the stem below; only a pear or a palm lies along the hand.
        var length = tee ? pattern.LengthMm : Math.Clamp(Math.Round(LengthOverHandLength * handLengthMm), ShortestMm, LongestMm);
        var (faces, why) = Wrist(tee, bent, preferences.StraighterWrist is true);
        return new FittedGrip(pattern.Style, width, length, faces, pattern.HandMm, why);
    }

    private static (GripFaces Faces, string Why) Wrist(bool tee, bool bent, bool straighter)
    {
        const string Study = "Grip strength is greatest with the wrist bent back 15 to 35° and not turned sideways (O'Driscoll et al. 1992; Fong and Ng 2001)";
        if (tee)
        {
            return (GripFaces.Matching, "T grip: a sure hold on both faces in fast water" + (straighter ? "; a one-sided hollow is not cut in a T, keep the wrist in line with the forearm instead." : "."));
        }

        if (straighter)
        {
            return (GripFaces.OneSided, Study + ": a grip hollowed on one face lets the heel of the hand sit lower and the wrist bend back less; the paddle then has a power face and a back.");
        }

        return bent
            ? (GripFaces.OneSided, "A bent shaft pulls with one face only, so the grip is shaped for that face.")
            : (GripFaces.Matching, "Matching faces let either face pull and let the grip turn in the palm. " + Study + ".");
    }
}
