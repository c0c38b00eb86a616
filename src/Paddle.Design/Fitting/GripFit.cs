using Paddle.Design.Outline;

namespace Paddle.Design.Fitting;

/// <summary>A grip that fits a hand.</summary>
/// <param name="WidthMm">Width across, mm.</param>
/// <param name="LengthMm">Length along the paddle, mm.</param>
/// <param name="Faces">Both faces alike, or one hollowed.</param>
/// <param name="TopHandMm">Grip end to the middle of the hand, mm.</param>
/// <param name="Reason">Why this style and these faces.</param>
public sealed record GripSize(GripStyle Style, double WidthMm, double LengthMm, GripFaces Faces, double TopHandMm, string Reason);

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
    public static GripSize Fit(double handLengthMm, double handBreadthMm, WaterKind water, double bendDegrees, PaddlerPreferences preferences)
    {
        var tee = water == WaterKind.FastWater;
        var bent = bendDegrees > 0;
        var pattern = GripPattern.Of(tee ? GripStyle.T : bent ? GripStyle.Palm : GripStyle.Pear);
        var wanted = tee ? handBreadthMm + TeeAllowanceMm : WidthOverHandBreadth * handBreadthMm; // theory F25
        var width = Math.Clamp(Math.Round(wanted), pattern.WidthLimitsMm.Min, pattern.WidthLimitsMm.Max);

        // The hand closes round a T's bar, so its length says nothing about the stem below; only a pear or a palm lies along the hand.
        var length = tee ? pattern.LengthMm : Math.Clamp(Math.Round(LengthOverHandLength * handLengthMm), ShortestMm, LongestMm);
        var (faces, why) = Wrist(tee, bent, preferences.StraighterWrist);
        return new GripSize(pattern.Style, width, length, faces, pattern.HandMm, why);
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
