namespace Paddle.Design.Outline;

/// <summary>A closed range of allowed or usual values.</summary>
/// <param name="Min">Smallest value.</param>
/// <param name="Max">Largest value.</param>
public readonly record struct Range(double Min, double Max)
{
    /// <summary>Whether <paramref name="value"/> lies within the range, ends included.</summary>
    public bool Contains(double value) => value >= Min && value <= Max;
}

/// <summary>How the part of the blade below its widest point is drawn.</summary>
public enum TailKind
{
    /// <summary>One sweep from the widest point to a round tip.</summary>
    Rounded,
    /// <summary>Nearly straight sides, then a tip that turns the corner.</summary>
    Straight,
}

/// <summary>A blade shape known to the trade, with the sizes it usually has.</summary>
/// <param name="Id">Name in the contract, such as <c>ottertail</c>.</param>
/// <param name="Name">Name to print.</param>
/// <param name="Water">What water and use it is for.</param>
/// <param name="DefaultLengthMm">Blade length when none is asked, mm.</param>
/// <param name="UsualLengthMm">Blade lengths usual in the trade, mm.</param>
/// <param name="DefaultWidthMm">Full width when none is asked, mm.</param>
/// <param name="UsualWidthMm">Full widths usual in the trade, mm.</param>
/// <param name="DefaultWidestAt">Place of the widest point as a fraction of the blade from the throat.</param>
/// <param name="WidestAtLimits">Places of the widest point that the family's curve can carry.</param>
/// <param name="DefaultFullness">Area below the widest point, over that part's length times the full width.</param>
/// <param name="FullnessLimits">Fullnesses that the family's curve can carry.</param>
/// <param name="Tail">How the part below the widest point is drawn.</param>
/// <param name="TailReach">Rounded tails: how far the widest point's flat direction carries on, as a fraction of the tail.</param>
/// <param name="SideEnd">Straight tails: where the side ends and the tip begins, as a fraction of the blade.</param>
/// <param name="SideDrop">Straight tails: how much the side closes in by then, as a fraction of the half-width.</param>
/// <param name="Source">Where the sizes come from.</param>
public sealed record BladeFamily(
    string Id,
    string Name,
    string Water,
    double DefaultLengthMm,
    Range UsualLengthMm,
    double DefaultWidthMm,
    Range UsualWidthMm,
    double DefaultWidestAt,
    Range WidestAtLimits,
    double DefaultFullness,
    Range FullnessLimits,
    TailKind Tail,
    double TailReach,
    double SideEnd,
    double SideDrop,
    string Source);
