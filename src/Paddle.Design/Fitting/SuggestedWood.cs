namespace Paddle.Design.Fitting;

/// <summary>A wood to suggest.</summary>
/// <param name="Species">Its name in the catalogue of woods.</param>
/// <param name="StrengthOverCherry">Mean bending strength over that of black cherry, dry.</param>
/// <param name="Reason">Why this wood.</param>
internal sealed record SuggestedWood(string Species, double StrengthOverCherry, string Reason)
{
    // Mean bending strengths at 12 % moisture, MPa: USDA Wood Handbook, table 5-3, from memory (the catalogue of woods holds them with their sources).
    private const double CherryMPa = 85, AshMPa = 103, SpruceMPa = 70;

    /// <summary>The wood for an outing.</summary>
    /// <param name="duty">Duty: the harder ones ask for a strong wood.</param>
    /// <param name="water">Kind of water: rocks ask for a tough wood whatever the wish.</param>
    /// <param name="lightCarry">Whether weight counts on portages.</param>
    /// <returns>The wood. Source: common practice, no source.</returns>
    public static SuggestedWood For(PaddleDuty duty, WaterKind water, bool lightCarry)
    {
        if (water == WaterKind.FastWater) return Ash;
        if (duty == PaddleDuty.Touring) return lightCarry ? Spruce : Cherry;
        return lightCarry ? Cherry : Ash;
    }

    /// <summary>Black cherry: light enough, works well.</summary>
    public static SuggestedWood Cherry { get; } = new("black-cherry", 1, "Wood: black cherry, a light hardwood that works cleanly.");

    /// <summary>White ash: tough.</summary>
    public static SuggestedWood Ash { get; } = new("white-ash", AshMPa / CherryMPa, "Wood: white ash, strong and tough enough for rocks, races and years of use.");

    /// <summary>Sitka spruce: light.</summary>
    public static SuggestedWood Spruce { get; } = new("sitka-spruce", SpruceMPa / CherryMPa, "Wood: Sitka spruce, as weight is to count; its shaft must be thicker, and it dents more easily.");
}
