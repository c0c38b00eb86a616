using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>What is left of the wood's bending strength at the face of a tapering spine. Thinning cuts the grain: on one of the two faces
/// the slope of the surface adds to the board's own slope of grain, and either face may be the one in tension. Theory L18.</summary>
/// <param name="boardSlope">Slope of grain of the board, rise over run.</param>
internal readonly struct TaperedGrain(double boardSlope)
{
    private readonly double ofBoard = GrainSlope.HankinsonFraction(boardSlope, GrainSlope.RuptureRatio);

    /// <summary>Share of the board's bending strength left at a surface slope: W4 at both slopes together over W4 at the board's.</summary>
    /// <param name="surfaceSlope">Slope of the face along the paddle, rise over run, 0 or more.</param>
    internal double Share(double surfaceSlope) => GrainSlope.HankinsonFraction(boardSlope + surfaceSlope, GrainSlope.RuptureRatio) / ofBoard;

    /// <summary>Derivative of <see cref="Share"/> by the surface slope.</summary>
    internal double ShareRate(double surfaceSlope) => GrainSlope.HankinsonRate(boardSlope + surfaceSlope, GrainSlope.RuptureRatio) / ofBoard;
}
