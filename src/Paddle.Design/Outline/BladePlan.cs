using MathNet.Numerics.RootFinding;

namespace Paddle.Design.Outline;

/// <summary>Draws a family's blade: a shoulder from the shaft to the widest point, then a tail to the tip. The curve is tangent-continuous
/// at the shaft, curvature-continuous at the widest point, has one maximum there, bends the other way only in the shoulder, and ends in a
/// vertical tangent at the tip. Theory O4–O6.</summary>
public sealed class BladePlan
{
    // A shoulder handle longer than this makes the shoulder bulge before it turns; found by looking at all families.
    private const double LongestShoulderHandle = 0.60;
    // How long the shaft's direction carries on into the shoulder: half the shoulder lets the blade flow out of the shaft.
    private const double ThroatHandle = 0.50;

    private readonly BladeShape blade;
    private readonly double handlePerRoot; // shoulder's end handle over √(half-width − shaft's half-width): keeps the curvature at the widest point
    private readonly CubicBezier[] tail;   // from the widest point on, with the throat at 0

    private BladePlan(BladeShape blade, double handlePerRoot, CubicBezier[] tail) =>
        (this.blade, this.handlePerRoot, this.tail) = (blade, handlePerRoot, tail);

    /// <summary>Fullness that the curve has: the asked one, or the nearest at which it stays fair at these proportions. A maker's own
    /// offsets have none and give their shape's.</summary>
    public double Fullness => tail.Length == 0
        ? blade.Fullness
        : tail.Sum(piece => piece.AreaUnder()) / ((1 - blade.WidestAt) * blade.LengthMm * blade.HalfWidthMm);

    /// <summary>Works out all that does not depend on the shaft.</summary>
    /// <param name="blade">The blade; its sizes within the family's limits.</param>
    public static BladePlan For(BladeShape blade)
    {
        if (blade.Offsets is not null) return new(blade, 0, []);
        var family = blade.Family ?? throw new ArgumentException("A blade needs a family or offsets.", nameof(blade));
        return family.Tail == TailKind.Rounded ? Rounded(blade, family) : Straight(blade, family);
    }

    /// <param name="throatMm">x of the throat, mm.</param>
    /// <returns>Pieces from the throat to the tip.</returns>
    public CubicBezier[] Draw(double throatMm, double shaftHalfWidthMm)
    {
        if (blade.Offsets is not null) return OffsetsOutline.Draw(blade, throatMm, shaftHalfWidthMm);
        var pieces = new CubicBezier[tail.Length + 1];
        pieces[0] = Shoulder(
            throatMm, shaftHalfWidthMm, throatMm + blade.WidestAt * blade.LengthMm, blade.HalfWidthMm,
            handlePerRoot * Math.Sqrt(blade.HalfWidthMm - shaftHalfWidthMm));
        for (var i = 0; i < tail.Length; i++) pieces[i + 1] = tail[i].ShiftedAlong(throatMm);
        return pieces;
    }

    private static BladePlan Rounded(BladeShape blade, BladeFamily family)
    {
        double half = blade.HalfWidthMm, widest = blade.WidestAt * blade.LengthMm, run = blade.LengthMm - widest;
        var rise = half - BladeShape.NominalShaftHalfWidthMm;

        // Theory O5: tail handles f (along) and g (down), as fractions; its area fraction is 0.5 + 0.3g + f(0.3 - 0.15g).
        double Reach(double g) => Math.Min(family.TailReach, LongestShoulderHandle * widest / run * Math.Sqrt((1 - g) * half / rise));
        double Area(double g) => 0.5 + 0.3 * g + Reach(g) * (0.3 - 0.15 * g);

        // The squarer the tip, the shorter its first handle must be: the area rises with g to a peak and falls again. The rising side is
        // the fair one, and all that lies beyond the peak can be had there too.
        var g = SolveRising(Area, blade.Fullness, 0.02, Peak(Area, 0.02, 0.97));

        // Theory O4: equal curvature at the widest point, (2/3)(W - ws)/(b ls)² = (2/3) W(1 - g)/(f lt)².
        var tailHandle = Reach(g) * run;
        return new(
            blade,
            tailHandle / Math.Sqrt(half * (1 - g)),
            [new(widest, half, widest + tailHandle, half, blade.LengthMm, g * half, blade.LengthMm, 0)]);
    }

    private static BladePlan Straight(BladeShape blade, BladeFamily family)
    {
        double half = blade.HalfWidthMm, widest = blade.WidestAt * blade.LengthMm, tip = blade.LengthMm;
        var rise = half - BladeShape.NominalShaftHalfWidthMm;
        var sideEnd = Math.Max(family.SideEnd, blade.WidestAt + 0.08) * blade.LengthMm;
        double side = sideEnd - widest, drop = family.SideDrop * half, endHalf = half - drop;

        // The side leaves the widest point level and ends 1.5 times as steep as its chord: it bends one way, gently.
        double endSlope = -1.5 * drop / side, endHandle = side / 3;
        var fall = drop + endSlope * endHandle;

        // Theory O4 with the side's first handle h: κ = (2/3) fall/h² = (2/3)(W - ws)/(b ls)².
        var shoulderHandle = LongestShoulderHandle * widest;
        var sideHandle = shoulderHandle * Math.Sqrt(fall / rise);
        var longest = side / 3; // any longer and the side would bend outwards before its end
        if (sideHandle > longest)
        {
            shoulderHandle *= longest / sideHandle;
            sideHandle = longest;
        }

        var sidePiece = new CubicBezier(
            widest, half, widest + sideHandle, half, sideEnd - endHandle, endHalf - endSlope * endHandle, sideEnd, endHalf);

        // Theory O6: the tip's squareness q carries what is left of the asked area.
        var wanted = blade.Fullness * (tip - widest) * half - sidePiece.AreaUnder();
        double TipArea(double q) => Tip(sideEnd, endHalf, endSlope, tip, q).AreaUnder();

        // Squarer than this and the tip would bend outwards where it leaves a side that closes in.
        var squarest = Math.Min(0.92, 1 + endSlope * (tip - sideEnd) / endHalf);
        var squareness = SolveRising(TipArea, wanted, 0.20, squarest);
        return new(blade, shoulderHandle / Math.Sqrt(rise), [sidePiece, Tip(sideEnd, endHalf, endSlope, tip, squareness)]);
    }

    private static CubicBezier Shoulder(double throat, double shaftHalf, double widest, double half, double endHandle) =>
        new(throat, shaftHalf, throat + ThroatHandle * (widest - throat), shaftHalf, widest - endHandle, half, widest, half);

    private static CubicBezier Tip(double x0, double y0, double slope, double tip, double q)
    {
        var reach = q * (tip - x0);
        return new(x0, y0, x0 + reach, y0 + slope * reach, tip, q * y0, tip, 0);
    }

    // Place of the largest value, to a hundredth of a fraction: the end of a bracket, not a result.
    private static double Peak(Func<double, double> f, double low, double high)
    {
        var best = low;
        for (var x = low; x <= high; x += 0.01)
        {
            if (f(x) > f(best)) best = x;
        }

        return best;
    }

    /// <summary>Root of a rising function; the nearer end when the asked value lies outside what it can reach.</summary>
    private static double SolveRising(Func<double, double> f, double wanted, double low, double high)
    {
        if (f(low) >= wanted) return low;
        if (f(high) <= wanted) return high;
        return Brent.FindRoot(x => f(x) - wanted, low, high, 1e-10, 100);
    }
}
