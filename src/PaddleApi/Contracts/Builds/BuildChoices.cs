using Paddle.Design;

namespace PaddleApi.Contracts.Builds;

/// <summary>What the maker chooses about the build.</summary>
internal sealed record BuildChoices
{
    /// <summary>Thickness of the board as measured, mm; null for the design's board, or the next standard surfaced one.</summary>
    [Bound(10, 120, "mm", "Boards that a paddle is cut from")]
    public double? BoardThicknessMm { get; init; }

    /// <summary>The saw that cuts the outline; band-saw when null.</summary>
    public string? Saw { get; init; }
}
