namespace Paddle.Design.Wood;

/// <summary>Change of dry wood's stiffness with temperature; it comes back when the temperature does.</summary>
internal static class TemperatureEffect
{
    /// <summary>Change of modulus of elasticity of clear wood at 12 % from its value at 20 degrees C: +17 % at -50 and -7 % at +50,
    /// straight between. Theory W14. Source: USDA Wood Handbook FPL-GTR-282, table 5-15; the straight lines are ours, the text calls the
    /// change roughly linear.</summary>
    /// <param name="temperatureC">T, degrees C, -50 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the table.</exception>
    public static double ClearWoodModulusChangePercent(double temperatureC)
    {
        if (!(temperatureC is >= -50.0 and <= 50.0))
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "Table 5-15 runs from -50 to 50 degrees C.");
        return temperatureC < 20.0 ? 17.0 * (20.0 - temperatureC) / 70.0 : -7.0 * (temperatureC - 20.0) / 30.0; // theory W14
    }

    /// <summary>Change of modulus of elasticity of lumber at 12 %: <c>7.8553 - 0.1108 F</c> percent, F in degrees Fahrenheit. Theory W15.
    /// Source: USDA Wood Handbook FPL-GTR-282, table 5-16.</summary>
    /// <param name="temperatureC">T, degrees C; the table runs from -15 to 150 degrees F, -26.1 to 65.6 degrees C.</param>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the table.</exception>
    public static double LumberModulusChangePercent(double temperatureC)
    {
        var fahrenheit = 32.0 + (1.8 * temperatureC);
        if (!(fahrenheit is >= -15.0 and <= 150.0))
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "Table 5-16 runs from -26.1 to 65.6 degrees C.");
        return 7.8553 - (0.1108 * fahrenheit); // theory W15
    }
}
