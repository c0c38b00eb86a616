using Paddle.Design;

namespace PaddleApi.Contracts.Builds;

/// <summary>Where the paddle is used: the wood's moisture there, or the air that gives it.</summary>
internal sealed record ServiceClimate
{
    /// <summary>Moisture in use, percent of ovendry mass; null where the climate says it, or nothing is asked.</summary>
    [Bound(0, 40, "percent", "From ovendry to well above fibre saturation, about 30 %")]
    public double? UsedMoisturePercent { get; init; }

    /// <summary>Temperature of the air, degrees C; goes with the humidity.</summary>
    [Bound(-1, 60, "degrees C", "From the cold end of the Wood Handbook's table 4-2 (from memory) to a hot shed", Source = null)]
    public double? TemperatureC { get; init; }

    /// <summary>Relative humidity of the air, percent; goes with the temperature.</summary>
    [Bound(0, 100, "percent", "From dry air to saturated", Source = null)]
    public double? RelativeHumidityPercent { get; init; }
}
