using Paddle.Design;
using Paddle.Design.Layout;

namespace PaddleApi.Contracts.Builds;

/// <summary>The maker's own board, on which the paddle is chalked; its thickness is <see cref="BuildChoices.BoardThicknessMm"/>.</summary>
internal sealed record BoardSizes
{
    /// <summary>Length of the board, mm; goes with its width.</summary>
    [Bound(RackBoardRequest.LeastLengthMm, RackBoardRequest.MostLengthMm, "mm", "Boards of up to 20 ft")]
    public double? BoardLengthMm { get; init; }

    /// <summary>Width of the board, mm; goes with its length.</summary>
    [Bound(RackBoardRequest.LeastWidthMm, RackBoardRequest.MostWidthMm, "mm", "Boards, and panels glued up")]
    public double? BoardWidthMm { get; init; }
}
