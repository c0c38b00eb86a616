using Paddle.Design;

namespace PaddleApi.Contracts.Builds;

/// <summary>The maker's own board, on which the paddle is chalked; its thickness is <see cref="BuildChoices.BoardThicknessMm"/>.</summary>
internal sealed record BoardSizes
{
    /// <summary>Length of the board, mm; goes with its width.</summary>
    [BoardLengthBound]
    public double? BoardLengthMm { get; init; }

    /// <summary>Width of the board, mm; goes with its length.</summary>
    [BoardWidthBound]
    public double? BoardWidthMm { get; init; }
}
