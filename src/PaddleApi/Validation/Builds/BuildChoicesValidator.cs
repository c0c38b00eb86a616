using Paddle.Design;
using Paddle.Design.Build;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of a maker's choices, wherever they are sent.</summary>
internal sealed class BuildChoicesValidator : BoundedValidator<BuildChoices>
{
    /// <summary>States the rules.</summary>
    public BuildChoicesValidator()
    {
        RuleFor(b => b.Saw).OneOf(Names.All<OutlineSaw>(), "The outline is cut with one of these.");
    }

    /// <summary>Refuses a board that is thinner than the paddle of a design, which only the design can tell; null when it holds it.</summary>
    internal static Fault? BoardFault(double? boardThicknessMm, DesignReport report)
    {
        var thickest = 2 * report.Stations.HalfThickness.Max();
        return boardThicknessMm is { } stated && stated < thickest
            ? new("The board must be at least as thick as the thickest section of the paddle.", stated, Min: Math.Ceiling(10 * thickest) / 10, Unit: "mm",
                Code: "board-too-thin")
            : null;
    }
}
