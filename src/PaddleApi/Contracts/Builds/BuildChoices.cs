namespace PaddleApi.Contracts.Builds;

/// <summary>What the maker chooses about the build.</summary>
public sealed record BuildChoices
{
    /// <summary>Thickness of the board as measured, mm; null for the next standard surfaced one.</summary>
    public double? BoardThicknessMm { get; init; }

    /// <summary>The saw that cuts the outline; band-saw when null.</summary>
    public string? Saw { get; init; }

    /// <summary>Coats of varnish on the blade; 6 when null.</summary>
    public int? VarnishCoats { get; init; }

    /// <summary>Coats of oil on shaft and grip; 3 when null.</summary>
    public int? OilCoats { get; init; }
}
