using Paddle.Design.Units;

namespace Paddle.Design.Balance;

/// <summary>How far off balance a finished paddle is, and what weight would close it.</summary>
internal static class OffBalanceWords
{
    /// <summary>A sentence.</summary>
    internal static string Say(BalanceResult balance, DrawingUnits units) =>
        $"Finished, it balances {DrawnLength.Rough(Math.Abs(balance.OffsetMm), units)} {(balance.OffsetMm < 0 ? "above" : "below")} the aim; "
        + $"{DrawnAmount.Mass(balance.Ballast.G, units)} let in {DrawnLength.Rough(balance.Ballast.AtMm, units)} from the top would close it.";
}
