using Paddle.Design.Outline;

namespace Paddle.Design.Build;

/// <summary><see cref="SawnOutline"/> with a memory: several stages leave the same allowance at the same places, and each is searched for
/// once. Belongs to one sheet or one correction; not for several threads.</summary>
/// <param name="outline">The finished outline.</param>
internal sealed class OutlineLine(HalfBreadthCurve outline)
{
    private readonly Dictionary<(double XMm, double AllowanceMm), double> known = [];

    internal double HalfBreadthMm(double xMm, double allowanceMm)
    {
        if (known.TryGetValue((xMm, allowanceMm), out var half)) return half;
        half = SawnOutline.HalfBreadthMm(outline, xMm, allowanceMm);
        known.Add((xMm, allowanceMm), half);
        return half;
    }
}
