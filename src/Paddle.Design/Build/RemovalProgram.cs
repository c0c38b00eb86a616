using Paddle.Design.Balance;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Least wood that brings the balance point between two places: a linear program over the zones' thickness. Theory M25.</summary>
/// <remarks>A cut off the middle takes mass and moment in proportion to its depth, so balance in tolerance, <c>low (M - sum m r) &lt;= F -
/// sum f r &lt;= high (M - sum m r)</c>, is linear in the depths r, and so is the depth at each station. Where that cannot be met, a slack
/// of so many millimetres, dearer than any wood, takes up what is missing.</remarks>
internal static class RemovalProgram
{
    // Dearer than wood: a millimetre of missed balance costs more grams than there are in a paddle.
    internal const double MissG = 1e4;
    // A gram too heavy is dear as well, but less than a millimetre off balance.
    internal const double HeavyG = MissG / 100;

    /// <param name="massG">M, mass before, g.</param>
    /// <param name="first">F, first moment before, g·mm.</param>
    /// <param name="gPerMm">m, grams a millimetre of depth takes, by zone.</param>
    /// <param name="firstPerMm">f, moment that it takes, g·mm by zone.</param>
    /// <param name="lowMm">Least balance that is good enough, mm.</param>
    /// <param name="leastRemovedG">Grams that must come off in any case, g.</param>
    /// <param name="shares">Share of each zone's depth at each station.</param>
    /// <param name="limitsMm">Most depth at each station, mm.</param>
    /// <returns>Depths by zone, mm, and the millimetres by which that is missed.</returns>
    internal static (double[] DepthMm, double MissedMm) Solve(
        double massG, double first, double[] gPerMm, double[] firstPerMm, double lowMm, double highMm, double leastRemovedG,
        IReadOnlyList<double[]> shares, IReadOnlyList<double> limitsMm)
    {
        var n = gPerMm.Length;
        var rows = new List<double[]>();
        var bounds = new List<double>();

        // Balance rows divided by the mass, so that the slack is in millimetres.
        rows.Add([.. gPerMm.Select((m, z) => (highMm * m - firstPerMm[z]) / massG), -1, 0]);
        bounds.Add(highMm - first / massG);
        rows.Add([.. gPerMm.Select((m, z) => (firstPerMm[z] - lowMm * m) / massG), -1, 0]);
        bounds.Add(first / massG - lowMm);
        rows.Add([.. gPerMm.Select(m => -m), 0, -1]);
        bounds.Add(-leastRemovedG);
        for (var i = 0; i < shares.Count; i++)
        {
            if (!shares[i].Any(share => share > 1e-9)) continue;
            rows.Add([.. shares[i], 0, 0]);
            bounds.Add(limitsMm[i]);
        }

        var x = LeastCostProgram.Solve([.. gPerMm, MissG, HeavyG], rows, bounds)
            ?? throw new InvalidOperationException("With slack the program always has a solution.");
        return (x[..n], x[n]);
    }
}

/// <summary>A small linear program: least c·x with every row aᵢ·x ≤ bᵢ and x ≥ 0, no cost negative. Theory M25.</summary>
/// <remarks>Dual simplex on the full tableau: with no negative cost the empty plan is dual feasible, so rows with negative b are mended one
/// after the other until none is left; the result is an exact vertex. Source: Lemke 1954, Naval Research Logistics Quarterly 1:36-47 (from
/// memory). A test holds it against enumeration of all vertices.</remarks>
internal static class LeastCostProgram
{
    private const double Tiny = 1e-10;

    /// <param name="cost">c, none negative.</param>
    /// <param name="rows">a, row by row.</param>
    /// <param name="bounds">b.</param>
    /// <returns>x, or null when no x satisfies all rows.</returns>
    internal static double[]? Solve(double[] cost, IReadOnlyList<double[]> rows, IReadOnlyList<double> bounds)
    {
        int n = cost.Length, m = rows.Count;
        var tableau = new double[m, n + 1];   // basic variable of the row = last column − Σ entries · outside variables
        var price = (double[])cost.Clone();
        var basic = new int[m];
        var outside = new int[n];
        for (var j = 0; j < n; j++) outside[j] = j;
        for (var i = 0; i < m; i++)
        {
            basic[i] = n + i;
            for (var j = 0; j < n; j++) tableau[i, j] = rows[i][j];
            tableau[i, n] = bounds[i];
        }

        for (var pass = 0; pass < 100 * (n + m); pass++)
        {
            var row = Broken(tableau, m, n, theFirst: pass > 20 * (n + m));
            if (row < 0) return Read(tableau, basic, n, m);
            var column = Entering(tableau, price, row, n);
            if (column < 0) return null;
            Pivot(tableau, price, row, column, m, n);
            (basic[row], outside[column]) = (outside[column], basic[row]);
        }

        throw new InvalidOperationException("The linear program did not come to an end.");
    }

    // The row broken worst mends fastest; the first one cannot cycle, should that ever go on for long (Bland's rule).
    private static int Broken(double[,] tableau, int m, int n, bool theFirst)
    {
        var worst = -1;
        var depth = -Tiny;
        for (var i = 0; i < m; i++)
        {
            if (tableau[i, n] >= depth) continue;
            (worst, depth) = (i, tableau[i, n]);
            if (theFirst) break;
        }

        return worst;
    }

    // The cheapest variable per unit of mending; ties go to the first, so that a result never depends on chance.
    private static int Entering(double[,] tableau, double[] price, int row, int n)
    {
        var best = -1;
        var least = double.PositiveInfinity;
        for (var j = 0; j < n; j++)
        {
            if (tableau[row, j] >= -Tiny) continue;
            var ratio = price[j] / -tableau[row, j];
            if (ratio < least - Tiny) (best, least) = (j, ratio);
        }

        return best;
    }

    private static void Pivot(double[,] tableau, double[] price, int row, int column, int m, int n)
    {
        var pivot = tableau[row, column];
        for (var j = 0; j <= n; j++) tableau[row, j] = j == column ? 1 / pivot : tableau[row, j] / pivot;
        for (var i = 0; i < m; i++)
        {
            if (i == row) continue;
            var factor = tableau[i, column];
            if (factor == 0) continue;
            for (var j = 0; j <= n; j++)
                tableau[i, j] = j == column ? -factor / pivot : tableau[i, j] - factor * tableau[row, j];
        }

        var rate = price[column];
        for (var j = 0; j < n; j++) price[j] = j == column ? -rate / pivot : price[j] - rate * tableau[row, j];
    }

    private static double[] Read(double[,] tableau, int[] basic, int n, int m)
    {
        var x = new double[n];
        for (var i = 0; i < m; i++)
        {
            if (basic[i] < n) x[basic[i]] = Math.Max(0, tableau[i, n]);
        }

        return x;
    }
}

/// <summary>How much may be planed off the middle at every printed station before a limit is crossed. Theory M24.</summary>
/// <remarks>Limits: the safety factor asked for in every load case; the least sizes a paddle may have (<see cref="SizeLimits.Pinned"/>);
/// the shaft's least mean of width and thickness and its roundness; the spine a millimetre above the edge; and <see cref="MostMm"/> in one
/// correction.</remarks>
internal static class RemovalLimits
{
    /// <summary>Most that one correction takes off a zone, mm of full thickness; beyond it, it is another design. Own choice.</summary>
    internal const double MostMm = 4;
    private const int Halvings = 30;

    /// <summary>Most that may come off at each station, mm of full thickness; 0 where a limit is reached already.</summary>
    /// <param name="solid">The paddle planed to plan at the printed stations.</param>
    /// <param name="reserve">Factor on every case's least factor.</param>
    internal static double[] At(PaddleSolid solid, Loads loads, WoodInUse wood, double reserve = 1)
    {
        var pressure = BladePressure.On(solid);
        var buckling = StrengthCheck.ShaftBucklingN(solid, wood);
        var moments = new double[loads.AlongTheGrain.Count][];
        for (var k = 0; k < moments.Length; k++)
        {
            moments[k] = new double[solid.Count];
            BendingMoments.Fill(solid, pressure, loads.AlongTheGrain[k], buckling, moments[k]);
        }

        var limits = new double[solid.Count];
        for (var i = 0; i < limits.Length; i++)
        {
            var most = Math.Min(MostMm, 2 * solid.HalfThickness[i] - LeastThicknessMm(solid, i));
            if (most <= 0) continue;
            var place = i;
            bool Holds(double removed) => IsStrong(solid, place, removed, moments, loads, wood, reserve);
            limits[i] = Holds(most) ? most : Bisect(Holds, most);
        }

        return limits;
    }

    private static double Bisect(Func<double, bool> holds, double high)
    {
        var low = 0.0;
        if (!holds(0)) return 0;
        for (var pass = 0; pass < Halvings; pass++)
        {
            var middle = (low + high) / 2;
            if (holds(middle)) low = middle;
            else high = middle;
        }

        return low;
    }

    private static double LeastThicknessMm(PaddleSolid solid, int i)
    {
        var pattern = solid.Grid.Patterns[i];
        var limits = SizeLimits.Pinned;
        var width = 2 * solid.HalfWidth[i];
        switch (pattern.Segment.Zone)
        {
            case Zone.Grip:
                // Where cap and hollow thin the grip the crest's limit does not apply, but its share of the crest does.
                return limits[PaddleSizes.Grip].Min * pattern.Weights.Grip + limits[PaddleSizes.Upper].Min * pattern.Weights.Upper
                    - pattern.HollowShare * solid.Form.Grip.HollowedFaces * solid.Form.Grip.HollowDepthMm;
            case Zone.Shaft:
                var share = pattern.LowerShare;
                var mean = SizeLimits.SmallShare(solid.Form.Places.HandSpacingMm)
                    * (share * SizeLimits.LeastMeanAtLowerHandMm + (1 - share) * SizeLimits.LeastMeanAtGripMm);
                return Math.Max(
                    Math.Max(share * limits[PaddleSizes.Shaft].Min + (1 - share) * limits[PaddleSizes.Upper].Min, 2 * mean - width), width / SizeLimits.MostOval);
            default:
                var t = pattern.Coordinate;
                var least = t < SpineProfile.Middle
                    ? Between(limits[PaddleSizes.Throat].Min, limits[PaddleSizes.Middle].Min, (t - SpineProfile.Throat) / (SpineProfile.Middle - SpineProfile.Throat))
                    : Between(limits[PaddleSizes.Middle].Min, limits[PaddleSizes.Tip].Min, (t - SpineProfile.Middle) / (SpineProfile.Tip - SpineProfile.Middle));
                return Math.Max(least, 2 * solid.EdgeHalfThickness[i] + SizeLimits.LeastTipOverEdgeMm * pattern.EdgeShare);
        }
    }

    private static double Between(double from, double to, double share) => from + (to - from) * Math.Clamp(share, 0, 1);

    private static bool IsStrong(
        PaddleSolid solid, int i, double removedMm, double[][] moments, Loads loads, WoodInUse wood, double reserve)
    {
        var section = solid.Section(i) with { HalfThicknessMm = solid.HalfThickness[i] - removedMm / 2 };
        if (section.HalfThicknessMm <= section.EdgeHalfThicknessMm) return false;
        for (var k = 0; k < moments.Length; k++)
        {
            if (moments[k][i] <= 0) continue;
            var loadCase = loads.AlongTheGrain[k];
            var share = StrengthCheck.StrengthShare(solid, i, loadCase, wood);
            var allowance = TaperAllowance.Factor(solid.Grid.Patterns[i], solid.FaceSlope[i]);
            if (solid.Form.StripsAt(solid.X[i]) is { } strips)
            {
                var numbers = strips.Numbers(section.Moments, section.HalfWidthMm).Stiff; // theory J3
                var bending = allowance * moments[k][i] * section.HalfThicknessMm / numbers.FlatSecondMomentMm4(section);
                var (most, ratio, _) = strips.Governing(section, bending, loadCase.ThrustN / numbers.AreaMm2(section));
                if (most * loadCase.LeastFactor * reserve > share * ratio * wood.BendingStrengthMPa) return false;
                continue;
            }

            var stress = allowance * moments[k][i] / section.FlatModulusMm3 + loadCase.ThrustN / section.AreaMm2;
            if (stress * loadCase.LeastFactor * reserve > share * wood.BendingStrengthMPa) return false;
        }

        return true;
    }
}
