using Paddle.Drawings.Units;

namespace Paddle.Drawings.Views;

/// <summary>Where a drawing shows stations: even in the units that the maker's rule is marked in.</summary>
internal static class StationPlan
{
    /// <summary>Distance between stations, mm: 50 mm, or 2 in.</summary>
    public static double StepMm(DrawingUnits units) => units == DrawingUnits.Metric ? 50 : 2 * DrawnLength.MmPerInch;

    /// <summary>Stations from the first step to the last before the end, mm.</summary>
    public static IReadOnlyList<double> Places(double overallMm, DrawingUnits units)
    {
        var step = StepMm(units);
        var count = (int)Math.Ceiling(overallMm / step - 1e-9) - 1;
        return [.. Enumerable.Range(1, Math.Max(0, count)).Select(k => k * step)];
    }
}
