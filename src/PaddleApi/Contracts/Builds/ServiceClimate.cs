namespace PaddleApi.Contracts.Builds;

/// <summary>Where the paddle is used: the wood's moisture there, or the air that gives it.</summary>
internal sealed record ServiceClimate
{
    /// <summary>Moisture in use, percent of ovendry mass, 0 to 40; null where the climate says it, or nothing is asked.</summary>
    public double? UsedMoisturePercent { get; init; }

    /// <summary>Temperature of the air, degrees C, -1 to 60; goes with the humidity.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Relative humidity of the air, percent, 0 to 100; goes with the temperature.</summary>
    public double? RelativeHumidityPercent { get; init; }
}
