namespace Paddle.Design.Solid;

/// <summary>Thickness of the grip along its length, γ = x over the grip's length. Theory S8.</summary>
internal static class GripProfile
{
    /// <summary>γ at which the rounded top has reached full thickness.</summary>
    public const double CapEnd = 0.16;

    /// <summary>γ at which the crest begins to run into the shaft.</summary>
    public const double CrestEnd = 0.36;

    /// <summary>Rounding of the top: 0 at the very end, 1 from <see cref="CapEnd"/>; a quarter ellipse.</summary>
    public static double Cap(double gamma)
    {
        if (gamma >= CapEnd) return 1;
        var fromFull = 1 - gamma / CapEnd;
        return Math.Sqrt(Math.Max(0, 1 - fromFull * fromFull));
    }

    /// <summary>Share of the grip's own thickness; the rest is the upper shaft's.</summary>
    public static double CrestShare(double gamma) => 1 - Smooth.Step((gamma - CrestEnd) / (1 - CrestEnd));

    /// <summary>Share of the hollow's depth: none on the crest, full from 0.60 to 0.64, none again at the shaft.</summary>
    public static double HollowShare(double gamma) => Smooth.Step((gamma - CrestEnd) / 0.24) * (1 - Smooth.Step((gamma - 0.64) / 0.32));
}
