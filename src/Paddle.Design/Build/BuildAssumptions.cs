using System.Globalization;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>What the build sheet's figures rest on.</summary>
internal static class BuildAssumptions
{
    internal static IReadOnlyList<string> For(WoodInUse wood, DrawingUnits units)
    {
        var source = StageScatter.DensityVariation(wood) < Scatter.SpecificGravityVariation
            ? "a weighed board, common practice, no source"
            : "Wood Handbook table 5-6, read in a survey: weigh the board and state its density to narrow it";
        var variation = StageScatter.DensityVariation(wood);
        return
        [
            string.Create(
                CultureInfo.InvariantCulture,
                $"Every stage is the design's own solid with that stage's allowance, summed as a solid; density "
                + $"{DrawnAmount.Density(wood.DensityKgM3, units)} at {wood.MoisturePercent:F0} % moisture."),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Bands hold nine paddles in ten. Mass: density varies by {100 * variation:F0} % (coefficient of variation; "
                + $"{source}) "
                + $"and every face is off by the stage's own tolerance."),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Balance: density changes from one end of the board to the other by {100 * StageScatter.EndToEndVariation:F0} % "
                + $"(standard deviation; assumption, no published figure found), and grip, shaft and blade faces are off each on "
                + $"their own."),
            "Allowances: common practice, no source, bounded by published sawing losses and sanding stock; wood cannot "
                + "be put back, so they are large rather than small.",
            "The balance point is measured from the finished top of the grip, along the shaft's line.",
            "A paddle takes 8-16 hours of work (a paddling magazine, 2015, p. 38, read), drying apart.",
        ];
    }
}
