namespace Paddle.Design.Wood;

/// <summary>Moisture that wood comes to in air that stays as it is.</summary>
internal static class EquilibriumMoisture
{
    /// <summary>Equilibrium moisture, Hailwood-Horrobin form: <c>EMC = (1800/W) [Kh/(1 - Kh) + (K1 Kh + 2 K1 K2 (Kh)^2)/(1 + K1 Kh + K1 K2
    /// (Kh)^2)]</c> with h the humidity as a fraction and W, K, K1, K2 quadratics of the temperature in degrees C. Theory W13. Source: USDA
    /// Wood Handbook FPL-GTR-282, equation 4-5 with its metric coefficients.</summary>
    /// <param name="temperatureC">T, degrees C, -1 to 60: from the cold end of table 4-2 (from memory) to a hot shed.</param>
    /// <param name="relativeHumidityPercent">Relative humidity, percent, 0 to 100.</param>
    /// <returns>EMC, percent moisture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Temperature or humidity outside its range.</exception>
    public static double Percent(double temperatureC, double relativeHumidityPercent)
    {
        RequireWithin(temperatureC, -1, 60, nameof(temperatureC), "degrees C");
        RequireWithin(relativeHumidityPercent, 0, 100, nameof(relativeHumidityPercent), "%");
        var t = temperatureC;
        var w = 349.0 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        var k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        var k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        var kh = k * relativeHumidityPercent / 100.0;
        var bound = ((k1 * kh) + (2.0 * k1 * k2 * kh * kh)) / (1.0 + (k1 * kh) + (k1 * k2 * kh * kh));
        return 1800.0 / w * ((kh / (1.0 - kh)) + bound); // theory W13
    }

    private static void RequireWithin(double value, double low, double high, string name, string unit)
    {
        if (!(value >= low && value <= high))
            throw new ArgumentOutOfRangeException(name, value, $"Must lie between {low} and {high} {unit}.");
    }
}
