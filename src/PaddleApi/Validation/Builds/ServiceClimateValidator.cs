using FluentValidation;
using PaddleApi.Contracts.Builds;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of the place where a paddle is used.</summary>
internal sealed class ServiceClimateValidator : BoundedValidator<ServiceClimate>
{
    private const string Pair = "Temperature and relative humidity go together: neither alone tells the wood's moisture.";

    /// <summary>States the rules.</summary>
    public ServiceClimateValidator()
    {

        RuleFor(c => c.UsedMoisturePercent).Null().When(c => c.TemperatureC is not null || c.RelativeHumidityPercent is not null)
            .Because("State the wood's moisture or the climate, not both: the climate has a moisture of its own.");
        RuleFor(c => c.TemperatureC).NotNull().When(c => c.RelativeHumidityPercent is not null).Because(Pair);
        RuleFor(c => c.RelativeHumidityPercent).NotNull().When(c => c.TemperatureC is not null).Because(Pair);
    }
}
