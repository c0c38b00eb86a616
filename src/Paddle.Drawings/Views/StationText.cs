using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;

namespace Paddle.Drawings.Views;

/// <summary>An even station of a drawing and the room that its figures have to either neighbour, mm.</summary>
internal readonly record struct StationRoom(double XMm, double RoomMm);

/// <summary>The even stations of a drawing: the same places as on the build sheet and in the table of offsets.</summary>
internal static class StationText
{
    private const double GapMm = 5;

    /// <summary>The stations in order.</summary>
    public static IReadOnlyList<StationRoom> Places(DesignReport report, DrawingUnits units)
    {
        double[] xs = [.. StationPlan.Even(report.Specification.Form, units)];
        return
        [
            .. xs.Select((x, i) => new StationRoom(
                x, Math.Min(i > 0 ? x - xs[i - 1] : double.PositiveInfinity, i + 1 < xs.Length ? xs[i + 1] - x : double.PositiveInfinity) - GapMm)),
        ];
    }
}
