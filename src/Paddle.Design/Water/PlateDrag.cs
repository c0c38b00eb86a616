namespace Paddle.Design.Water;

/// <summary>Low and high drag coefficient between which a stroke's effective value lies; dimensionless.</summary>
/// <param name="Low">Fully submerged plate in a steady stream.</param>
/// <param name="High">Plate blade in a shallow flume.</param>
internal readonly record struct DragCoefficientBand(double Low, double High);

/// <summary>Drag of a sharp-edged plate square to the flow, the model of a paddle blade in mid-stroke. The edges fix the separation, so the
/// coefficient does not depend on the Reynolds number at paddle speeds (about 1e5; from memory).</summary>
internal static class PlateDrag
{
    /// <summary>Largest coefficient of a flat plate blade in a shallow flume. Source: Caplan and Gardner's flume data, as tabulated on a rowing-physics page.</summary>
    public const double FlumeCoefficient = 2.0;
    /// <summary>Largest aspect ratio at which the fit below was checked.</summary>
    public const double LargestFittedAspectRatio = 20;

    /// <summary>Aspect ratio of a blade: long side over short side, at least 1.</summary>
    /// <param name="lengthMm">Blade length, mm, above 0.</param>
    /// <param name="widthMm">Blade's greatest width, mm, above 0.</param>
    /// <returns>Long over short, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not a positive finite number.</exception>
    public static double AspectRatio(double lengthMm, double widthMm)
    {
        RequirePositive(lengthMm, nameof(lengthMm));
        RequirePositive(widthMm, nameof(widthMm));
        return Math.Max(lengthMm, widthMm) / Math.Min(lengthMm, widthMm);
    }

    /// <summary>Drag coefficient of a fully submerged plate square to a steady flow: C_d = 1.10 + 0.02 (AR + 1/AR).</summary>
    /// <param name="aspectRatio">AR, long side over short side (either way up gives the same value), 1/20 to 20.</param>
    /// <returns>C_d, dimensionless.</returns>
    /// <remarks>Source: form from memory (fluid-mechanics handbook table after Hoerner: 1.18, 1.2, 1.3, 1.5 at 1, 5, 10, 20); anchored by
    /// two values seen: 1.17 for a square plate (Aeronautical Engineer's Data Book, fig. 5.13) and 1.20 at 5 (Hoerner's plate data). Blade
    /// shape is left out on purpose: water-tunnel tests found small differences between paddle blades (Ritchie and Selamat 2010,
    /// abstract).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The ratio lies outside the range of the fit.</exception>
    public static double Coefficient(double aspectRatio)
    {
        if (!(aspectRatio >= 1 / LargestFittedAspectRatio && aspectRatio <= LargestFittedAspectRatio))
        {
            throw new ArgumentOutOfRangeException(
                nameof(aspectRatio), aspectRatio, "The aspect ratio must lie between 1/20 and 20, where the fit was checked.");
        }

        return 1.10 + (0.02 * (aspectRatio + (1 / aspectRatio))); // theory H2
    }

    /// <summary>The band in which the effective coefficient of a real, impulsive stroke lies: the steady, fully submerged value up to the
    /// value measured in a shallow flume.</summary>
    /// <param name="aspectRatio">Long side over short side, 1/20 to 20.</param>
    /// <remarks>Sources: <see cref="Coefficient"/> and <see cref="FlumeCoefficient"/>. Both should be shown; neither is a prediction.</remarks>
    public static DragCoefficientBand Band(double aspectRatio) => new(Coefficient(aspectRatio), FlumeCoefficient);

    /// <summary>Drag force of a plate: F = ½ ρ C_d A s².</summary>
    /// <param name="coefficient">C_d, dimensionless.</param>
    /// <param name="areaM2">A, area of the blade under water, m².</param>
    /// <param name="slipMS">s, speed of the blade through the water, m/s (not the boat's speed).</param>
    /// <param name="densityKgM3">ρ, water density, kg/m³.</param>
    /// <returns>F, N.</returns>
    /// <remarks>Source: definition of the drag coefficient.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative, or area, coefficient or density is not positive.</exception>
    public static double ForceN(double coefficient, double areaM2, double slipMS, double densityKgM3)
    {
        RequirePositive(coefficient, nameof(coefficient));
        RequirePositive(areaM2, nameof(areaM2));
        RequirePositive(densityKgM3, nameof(densityKgM3));
        RequireNotNegative(slipMS, nameof(slipMS));
        return 0.5 * densityKgM3 * coefficient * areaM2 * slipMS * slipMS; // theory H4
    }

    /// <summary>Slip at which a plate carries a force: s = √(2 F / (ρ C_d A)).</summary>
    /// <param name="forceN">F, N, 0 or more.</param>
    /// <param name="coefficient">C_d, dimensionless.</param>
    /// <param name="areaM2">A, area of the blade under water, m².</param>
    /// <param name="densityKgM3">ρ, water density, kg/m³.</param>
    /// <returns>s, m/s.</returns>
    /// <remarks>Source: <see cref="ForceN"/> solved for the speed.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The force is negative, or area, coefficient or density is not positive.</exception>
    public static double SlipMS(double forceN, double coefficient, double areaM2, double densityKgM3)
    {
        RequireNotNegative(forceN, nameof(forceN));
        RequirePositive(coefficient, nameof(coefficient));
        RequirePositive(areaM2, nameof(areaM2));
        RequirePositive(densityKgM3, nameof(densityKgM3));
        return Math.Sqrt(2 * forceN / (densityKgM3 * coefficient * areaM2)); // theory H5
    }

    /// <summary>Froude efficiency of a propulsor that works by drag: η = V / (V + s), the share of the blade's power that reaches the
    /// boat.</summary>
    /// <param name="boatSpeedMS">V, boat speed through the water, m/s, 0 or more.</param>
    /// <param name="slipMS">s, speed of the blade through the water, m/s, 0 or more.</param>
    /// <returns>η, 0 to 1; 0 at rest.</returns>
    /// <remarks>Source: power to the boat F V over power of the blade F (V + s). Steady flow at C_d 1.2 reads about ten points below
    /// published paddling figures (67 to 76 %, Ho, Smith and O'Meara 2009), so it compares blades and predicts nothing.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A speed is negative or not finite.</exception>
    public static double FroudeEfficiency(double boatSpeedMS, double slipMS)
    {
        RequireNotNegative(boatSpeedMS, nameof(boatSpeedMS));
        RequireNotNegative(slipMS, nameof(slipMS));
        return boatSpeedMS == 0 ? 0 : boatSpeedMS / (boatSpeedMS + slipMS); // theory H7
    }

    private static void RequirePositive(double value, string name)
    {
        if (!(value > 0 && double.IsFinite(value))) throw new ArgumentOutOfRangeException(name, value, "Must be a positive finite number.");
    }

    private static void RequireNotNegative(double value, string name)
    {
        if (!(value >= 0 && double.IsFinite(value)))
            throw new ArgumentOutOfRangeException(name, value, "Must be a finite number, zero or more.");
    }
}
