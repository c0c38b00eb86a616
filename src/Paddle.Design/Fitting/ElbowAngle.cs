namespace Paddle.Design.Fitting;

/// <summary>How far the hands move apart or together when the elbows are not square in the bar-on-the-head test.</summary>
internal static class ElbowAngle
{
    /// <summary>Upper arm as a fraction of stature. Source: Drillis and Contini 1966, from memory; the survey gives 0.191 between neighbouring landmarks.</summary>
    public const double UpperArmOverStature = 0.186;

    /// <summary>Error of judging a square elbow by eye, degrees (assumption, no source).</summary>
    public const double JudgementDegrees = 3;

    /// <summary>Change of hand spacing per degree of elbow angle near 90°, mm. Source: derived from <see cref="SpacingMm"/> at the survey's mean man.</summary>
    public const double SpacingMmPerDegree = 12;

    /// <summary>Hand spacing at elbow angle θ with the bar resting on the head: S(θ) = 2 (w + √(u² + f² − 2 u f cos θ − f²)), w = S90/2 −
    /// u.</summary>
    /// <param name="spacingAtRightAngleMm">S90, hand spacing with square elbows, mm.</param>
    /// <param name="upperArmMm">u, shoulder joint to elbow axis, mm.</param>
    /// <param name="forearmToGripMm">f, elbow axis to the middle of the gripping hand, mm; also the bar's height above the raised shoulder joint.</param>
    /// <param name="elbowDegrees">θ, angle between upper arm and forearm, degrees.</param>
    /// <returns>S, mm.</returns>
    /// <remarks>Source: derived from the triangle shoulder–elbow–grip with the bar's height held fixed.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The arm cannot reach the bar's height at that angle.</exception>
    public static double SpacingMm(double spacingAtRightAngleMm, double upperArmMm, double forearmToGripMm, double elbowDegrees)
    {
        var cosine = Math.Cos(elbowDegrees * Math.PI / 180);
        var reachSquared = (upperArmMm * upperArmMm) - (2 * upperArmMm * forearmToGripMm * cosine);
        if (!(reachSquared >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(elbowDegrees), elbowDegrees, "The hands cannot hold the bar at that height with so sharp an elbow.");
        }

        var jointHalfSpacing = (spacingAtRightAngleMm / 2) - upperArmMm;
        return 2 * (jointHalfSpacing + Math.Sqrt(reachSquared)); // theory F3
    }
}
