namespace Paddle.Design.Water;

/// <summary>Properties of the fresh water a paddle works in.</summary>
internal static class FreshWater
{
    /// <summary>Lowest water temperature accepted, °C: below it the lake is ice.</summary>
    public const double LowestTemperatureC = 0;
    /// <summary>Highest water temperature accepted, °C: an upper limit for open water (service's own choice).</summary>
    public const double HighestTemperatureC = 40;
    /// <summary>Temperature used where the caller gives none, °C: a temperate lake in the paddling season (assumption, no source).</summary>
    public const double DefaultTemperatureC = 15;

    /// <summary>Density ρ of air-free fresh water at one atmosphere, kg/m³: ρ = (999.83952 + 16.952577 t − 7.9905127e-3 t² − 46.241757e-6
    /// t³ + 105.84601e-9 t⁴ − 281.03006e-12 t⁵) / (1 + 16.887236e-3 t).</summary>
    /// <param name="temperatureC">t, water temperature, °C (ITS-90), 0 to 40.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <remarks>Source: Bettin and Spieweck's formula (ITS-90), as printed in an extract of the IP Standard Methods.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not a number or lies outside 0 to 40 °C.</exception>
    public static double DensityKgM3(double temperatureC)
    {
        if (!(temperatureC >= LowestTemperatureC && temperatureC <= HighestTemperatureC))
        {
            throw new ArgumentOutOfRangeException(nameof(temperatureC), temperatureC, "Water temperature must lie between 0 and 40 °C.");
        }

        // theory H1: Horner's form keeps the fifth power from losing digits.
        var t = temperatureC;
        var numerator = 999.83952
            + (t * (16.952577 + (t * (-7.9905127e-3 + (t * (-46.241757e-6 + (t * (105.84601e-9 + (t * -281.03006e-12)))))))));
        return numerator / (1 + (16.887236e-3 * t));
    }
}
