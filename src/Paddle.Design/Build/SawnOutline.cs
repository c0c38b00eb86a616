using Paddle.Design.Outline;

namespace Paddle.Design.Build;

/// <summary>The outline with an even allowance all round: the curve that a tool leaves when it stays the same distance off the line
/// everywhere, round the ends too. Theory M7.</summary>
/// <remarks>Source: parallel curve as the edge of a disc's sweep (Minkowski sum), elementary geometry.</remarks>
internal static class SawnOutline
{
    /// <summary>Half-breadth (mm) at x: the highest point that a disc of the allowance's radius reaches from the line.</summary>
    /// <param name="xMm">x, mm; from the allowance above the top to the allowance below the tip.</param>
    /// <param name="allowanceMm">Distance off the line, mm, 0 or more.</param>
    public static double HalfBreadthMm(HalfBreadthCurve outline, double xMm, double allowanceMm)
    {
        if (allowanceMm <= 0) return outline.HalfBreadthMm(xMm);
        double low = Math.Max(outline.StartMm, xMm - allowanceMm), high = Math.Min(outline.EndMm, xMm + allowanceMm);
        if (low > high) return 0;

        double Reach(double centre) =>
            outline.HalfBreadthMm(centre)
            + Math.Sqrt(Math.Max(0, allowanceMm * allowanceMm - (xMm - centre) * (xMm - centre)));

        // Golden-section search: over so short a stretch the line bends one way, so there is one highest reach; a ten-thousandth
        // of a millimetre in place is far less in height, which is level there.
        const double Golden = 0.6180339887498949;
        double a = high - Golden * (high - low), b = low + Golden * (high - low);
        double atA = Reach(a), atB = Reach(b);
        for (var pass = 0; pass < 40 && high - low > 1e-4; pass++)
        {
            if (atA < atB)
            {
                (low, a, atA) = (a, b, atB);
                b = low + Golden * (high - low);
                atB = Reach(b);
            }
            else
            {
                (high, b, atB) = (b, a, atA);
                a = high - Golden * (high - low);
                atA = Reach(a);
            }
        }

        return Math.Max(Reach((low + high) / 2), Reach(Math.Clamp(xMm, outline.StartMm, outline.EndMm)));
    }
}
