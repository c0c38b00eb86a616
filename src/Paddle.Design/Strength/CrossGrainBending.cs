using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>Stress across the grain where the water bends the blade across: the plate's own equation weighted with the distance from the
/// spine and summed over the width, so that nothing need be known of the edges. Theory L19.</summary>
/// <remarks>
/// <para>
/// m = ½[q·w/2 − (Mη)″ − 2λ·(…)] with M(x) the bending moment, q = M″ the strip force, w the half-width and η (theory S12) the mean
/// distance from the spine at which a section carries its bending. Where the blade widens, the bending that gathers at the spine from
/// all the blade further out must spread into the wings: that, not the pressure on the strip itself, is what bends the blade across.
/// λ is the share of the twist that stress along the rays y/w = const carries.
/// </para>
/// <para>
/// To this comes a small share of the stress along the grain: wood under bending would curl up across (Poisson's ratio ν_TL of woods
/// is 0.02 to 0.05), and is held back in part where the bending varies along the blade.
/// </para>
/// <para>
/// λ, that share and where the looking begins are fitted to three-dimensional finite elements of 43 paddles; the validation page holds
/// them against 20 others. Further up, in the shoulder's first part, the elements' second peak lies near the edges (y/w 0.7 to 0.8) and
/// is covered by what is found here.
/// </para>
/// </remarks>
internal static class CrossGrainBending
{
    /// <summary>λ: share of the twist that stress along rays carries.</summary>
    internal const double TwistShare = 0.30;
    /// <summary>Share of the stress along the grain that appears across it.</summary>
    internal const double CurlShare = 0.008;
    /// <summary>Where the looking begins, fraction of the blade: above it the section is still more shaft than plate.</summary>
    internal const double From = 0.20;

    /// <summary>The largest stress across the grain and where it is.</summary>
    /// <param name="solid">The solid at close places.</param>
    /// <param name="momentsNmm">Bending moment at each of its places, N·mm.</param>
    /// <param name="pivotMm">Distance of the stroke's pivot above the throat, mm. Theory L5.</param>
    internal static (double StressMPa, double AtMm) Of(
        PaddleSolid solid, ReadOnlySpan<double> momentsNmm, BladePressure pressure, double forceN, double pivotMm)
    {
        Span<double> stresses = stackalloc double[solid.Count];
        Fill(solid, momentsNmm, pressure, forceN, pivotMm, stresses);
        var worst = solid.Grid.FirstBladePlace;
        for (var i = worst; i < solid.Count; i++)
        {
            if (stresses[i] > stresses[worst]) worst = i;
        }

        return (stresses[worst], solid.X[worst]);
    }

    /// <summary>Stress across the grain on the spine's face at every place, MPa; 0 above <see cref="From"/> and where the solid closes.</summary>
    /// <param name="solid">The solid at close places.</param>
    /// <param name="momentsNmm">Bending moment at each of its places, N·mm.</param>
    /// <param name="pivotMm">Distance of the stroke's pivot above the throat, mm.</param>
    /// <param name="stressesMPa">Receives the stresses; one for each place.</param>
    internal static void Fill(
        PaddleSolid solid, ReadOnlySpan<double> momentsNmm, BladePressure pressure, double forceN, double pivotMm,
        Span<double> stressesMPa)
    {
        Span<double> spread = stackalloc double[solid.Count], across = stackalloc double[solid.Count], cubes = stackalloc double[solid.Count];
        for (var i = 0; i < spread.Length; i++) spread[i] = solid.Section(i).BendingSpreadMm;
        var from = FirstPlace(solid);
        for (var i = from; i < solid.Count; i++)
        {
            double x = solid.X[i], w = solid.HalfWidth[i], c = solid.HalfThickness[i];
            across[i] = AcrossNmmPerMm(solid.X, momentsNmm, spread, i, w, 2 * w * pressure.StrokePressureMPa(x, forceN, pivotMm));
            cubes[i] = c * c * c;
        }

        stressesMPa.Clear();
        for (var i = from; i < solid.Count; i++)
        {
            double x = solid.X[i], w = solid.HalfWidth[i], c = solid.HalfThickness[i];
            if (w <= 0 || c <= 0) continue;
            double above = Math.Max(x - ReachMm(w), solid.X[from]), below = Math.Min(x + ReachMm(w), solid.X[^1]);
            var curl = Sum(solid.X, across, above, below) / Sum(solid.X, cubes, above, below);
            // A piece across the tip bends with its own grain: what curls it is the stress of its own section.
            var stiff = solid.Form.StripsAt(x) is { IsAcross: true } ? solid.Section(i).FlatSecondMomentMm4 : solid.FlatSecondMoment[i];
            var along = momentsNmm[i] * c / stiff;
            stressesMPa[i] = Math.Max(0, 1.5 * c * curl) + CurlShare * along; // theory L19
        }
    }

    private static int FirstPlace(PaddleSolid solid)
    {
        var (first, places) = (solid.Grid.FirstBladePlace, solid.Form.Places);
        while (solid.X[first] < places.ThroatMm + From * places.BladeMm) first++;
        return first;
    }

    // Sum over a stretch of the blade of values at the places, straight between them.
    private static double Sum(ReadOnlySpan<double> x, ReadOnlySpan<double> values, double from, double to)
    {
        var next = x.BinarySearch(from);
        next = next >= 0 ? next + 1 : ~next;
        double sum = 0, at = from, value = ElasticCurve.At(x, values, from);
        for (; next < x.Length && x[next] < to; next++)
        {
            sum += (x[next] - at) * (value + values[next]) / 2;
            (at, value) = (x[next], values[next]);
        }

        return sum + (to - at) * (value + ElasticCurve.At(x, values, to)) / 2;
    }

    // A quarter of the width away, for stress spreads no faster; never so near that the printed places' spacing shows.
    private static double ReachMm(double halfWidthMm) => Math.Max(halfWidthMm / 2, 8);

    // Moment across the spine per length of it, N·mm/mm, by one central difference.
    private static double AcrossNmmPerMm(
        ReadOnlySpan<double> x, ReadOnlySpan<double> moments, ReadOnlySpan<double> spread, int i, double w, double strip)
    {
        var reach = ReachMm(w);
        var (momentBefore, spreadBefore) = Between(x, moments, spread, x[i] - reach);

        // Beyond the tip there is neither moment nor blade.
        var (momentAfter, spreadAfter) = x[i] + reach >= x[^1] ? (0, 0) : Between(x, moments, spread, x[i] + reach);
        double moment = moments[i], eta = spread[i];
        var bent = momentAfter * spreadAfter - 2 * moment * eta + momentBefore * spreadBefore;
        var twisted = (momentAfter + moment) * (spreadAfter - eta) - (moment + momentBefore) * (eta - spreadBefore);
        return 0.5 * (strip * w / 2 - (bent - TwistShare * twisted) / (reach * reach));
    }

    // Cubic through the four nearest places (Lagrange): second differences of chords would show the places' spacing.
    private static (double Moment, double Spread) Between(
        ReadOnlySpan<double> x, ReadOnlySpan<double> moments, ReadOnlySpan<double> spread, double at)
    {
        var next = x.BinarySearch(at);
        if (next >= 0) return (moments[next], spread[next]);
        var first = Math.Clamp(~next - 2, 0, x.Length - 4);
        double moment = 0, breadth = 0;
        for (var i = first; i < first + 4; i++)
        {
            double above = 1, below = 1;
            for (var j = first; j < first + 4; j++)
            {
                if (j == i) continue;
                above *= at - x[j];
                below *= x[i] - x[j];
            }

            var weight = above / below;
            moment += weight * moments[i];
            breadth += weight * spread[i];
        }

        return (moment, breadth);
    }
}
