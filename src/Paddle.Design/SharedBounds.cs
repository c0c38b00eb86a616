using Paddle.Design.Finishing;
using Paddle.Design.Fitting;

namespace Paddle.Design;

// Ranges of one thing that several requests ask for.

/// <summary>The range of a hand spacing.</summary>
public sealed class HandSpacingBoundAttribute()
    : BoundAttribute(PaddleLengths.LeastHandSpacingMm, PaddleLengths.MostHandSpacingMm, "mm", "Hand spacings that fit a person");

/// <summary>The range of an overall length.</summary>
public sealed class OverallLengthBoundAttribute()
    : BoundAttribute(PaddleLengths.LeastOverallMm, PaddleLengths.MostOverallMm, "mm", "Lengths of single-blade paddles");

/// <summary>The range of a place on a paddle, from the top of its grip.</summary>
public sealed class PaddlePlaceBoundAttribute() : BoundAttribute(0, PaddleLengths.MostOverallMm, "mm", "Places on the paddle");

/// <summary>The range of a balance point, from the top of the grip.</summary>
public sealed class BalancePointBoundAttribute()
    : BoundAttribute(1, PaddleLengths.MostOverallMm, "mm", "The balance point lies on the paddle, and no paddle is longer");

/// <summary>The range of the angle between shaft and blade.</summary>
public sealed class BendBoundAttribute : BoundAttribute
{
    /// <summary>States it.</summary>
    public BendBoundAttribute()
        : base(0, 15, "degrees", "Bent shafts of the trade bend 5 to 15 degrees") => (Source, Usual) = (Trade, 0);
}

/// <summary>The range of a number of coats.</summary>
public sealed class CoatsBoundAttribute : BoundAttribute
{
    /// <summary>States it.</summary>
    public CoatsBoundAttribute()
        : base(
            0, FinishChoice.MostCoats, "coats",
            "3 to 6 of varnish are usual (Wood Handbook FPL-GTR-190, ch. 16, read), 3 of oil (common practice, no source); the end is the service's own limit") =>
        Source = null;
}

/// <summary>The range of a bench flex.</summary>
public sealed class BenchFlexBoundAttribute() : BoundAttribute(0.5, 200, "mm", "Flex that a rule can measure");

/// <summary>The range of a force on a paddle.</summary>
public sealed class ForceBoundAttribute() : BoundAttribute(10, 2000, "N", "Forces that a person can put on a paddle");

/// <summary>The range of a price.</summary>
public sealed class PriceBoundAttribute() : BoundAttribute(0, 1_000_000, "", "Prices in any money");

/// <summary>The range of a board's length.</summary>
public sealed class BoardLengthBoundAttribute() : BoundAttribute(300, 6100, "mm", "Boards of up to 20 ft");

/// <summary>The range of a board's width.</summary>
public sealed class BoardWidthBoundAttribute() : BoundAttribute(40, WidestMm, "mm", "Boards, and panels glued up")
{
    /// <summary>Widest board, mm.</summary>
    public const double WidestMm = 1300;
}

/// <summary>The range of a saw's kerf.</summary>
public sealed class KerfBoundAttribute() : BoundAttribute(0, 10, "mm", "Saws for boards");

/// <summary>The range of the distance between two outlines.</summary>
public sealed class ClearanceBoundAttribute() : BoundAttribute(0, 100, "mm", "More between two outlines wastes the board");

/// <summary>The range of what is planed off a board.</summary>
public sealed class PlaningBoundAttribute() : BoundAttribute(0, 20, "mm", "More is another board");

/// <summary>The range of a reading's own standard error.</summary>
/// <inheritdoc cref="BoundAttribute"/>
public sealed class ReadingErrorBoundAttribute(double least, double most, string unit)
    : BoundAttribute(least, most, unit, least > 0 ? "Nothing is read without error, and a reading worse than this says nothing" : "A reading worse than this says nothing");
