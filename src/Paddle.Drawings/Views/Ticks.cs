namespace Paddle.Drawings.Views;

/// <summary>Round steps for the scales of a graph.</summary>
internal static class Ticks
{
    /// <summary>1, 2 or 5 times a power of ten, at least the wanted step.</summary>
    public static double Step(double wanted)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(wanted, 1e-9))));
        return wanted <= power ? power : wanted <= 2 * power ? 2 * power : wanted <= 5 * power ? 5 * power : 10 * power;
    }
}
