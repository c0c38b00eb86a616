using System.Globalization;
using System.Text.Json.Serialization;
using Paddle.Design.Finishing;
using Paddle.Design.Strength;
using Paddle.Design.Units;

namespace Paddle.Design.Balance;

/// <summary>An aim that a design misses.</summary>
/// <param name="Code">Stable name: <c>strength.</c> and the case, <c>balance</c>, <c>flex.least</c>, <c>flex.most</c> or <c>mass</c>.</param>
/// <param name="Value">What the design reaches.</param>
/// <param name="Limit">What was asked.</param>
/// <param name="Unit">Unit of both; empty for a factor.</param>
/// <param name="Message">What is missed.</param>
/// <param name="Advice">What to change.</param>
public sealed record UnmetAim(string Code, double Value, double Limit, string Unit, string Message, string Advice)
{
    /// <summary>Whether the paddle is too weak: a danger, where every other aim is a wish.</summary>
    [JsonIgnore]
    public bool IsStrength => Code.StartsWith("strength.", StringComparison.Ordinal);
}

/// <summary>How the aims came out, all of them.</summary>
/// <param name="Unmet">The aims missed, the gravest first; none when all are met.</param>
public sealed record DesignOutcome(IReadOnlyList<UnmetAim> Unmet)
{
    /// <summary>How all came out, in a word.</summary>
    public string Word => IsMet ? "met" : "closest";
    /// <summary>Whether every aim is met.</summary>
    public bool IsMet => Unmet.Count == 0;
    /// <summary>Whether a strength is missed: such a design says so on everything that is made of it.</summary>
    public bool IsTooWeak => Unmet.Any(aim => aim.IsStrength);

    /// <summary>Reads the outcome off a finished design, its sentences in the given units.</summary>
    internal static DesignOutcome Of(
        PaddleSpecification asked, BalanceResult balance, StrengthCheck strength, Flex flex, FinishedMass finished, DrawingUnits units)
    {
        var unmet = new List<UnmetAim>();
        string Length(double mm) => DrawnLength.Text(mm, units);
        var pinned = asked.Free.Bits == 0 ? Pins.All : asked.Fixed.Any(size => size is not null) ? Pins.Some : Pins.None;
        foreach (var result in strength.Cases.Where(result => result.Margin < 1).OrderBy(result => result.Margin))
            unmet.Add(Weak(result, pinned, balance.BindingLimits.Any(limit => limit.Id == BindingLimitList.Board), units));
        if (!balance.Achieved) unmet.Add(new("balance", Math.Abs(balance.OffsetMm), balance.ToleranceMm, "mm", OffBalanceWords.Say(balance, units), OffBalanceWords.Advice(balance)));
        var aims = asked.Aims;
        if (flex.BenchFlexMm > aims.MostBenchFlexMm)
        {
            unmet.Add(new("flex.most", flex.BenchFlexMm, aims.MostBenchFlexMm.Value, "mm",
                $"On the bench it gives {Length(flex.BenchFlexMm)} where at most {Length(aims.MostBenchFlexMm.Value)} is asked.",
                "A stiffer wood, a shorter blade, or thicker pinned sizes."));
        }

        if (flex.BenchFlexMm < aims.LeastBenchFlexMm)
        {
            unmet.Add(new("flex.least", flex.BenchFlexMm, aims.LeastBenchFlexMm.Value, "mm",
                $"On the bench it gives {Length(flex.BenchFlexMm)} where at least {Length(aims.LeastBenchFlexMm.Value)} is asked.",
                "A wood of lower modulus, a longer blade, or thinner pinned sizes."));
        }

        if (finished.MassG > aims.MaximumMassG)
        {
            unmet.Add(new("mass", finished.MassG, aims.MaximumMassG.Value, "g",
                $"Finished, it weighs {DrawnAmount.Mass(finished.MassG, units)} where at most {DrawnAmount.Mass(aims.MaximumMassG.Value, units)} is asked.",
                "A lighter wood, a smaller blade, a lighter duty, or a wider balance tolerance."));
        }

        return new(unmet);
    }

    private enum Pins
    {
        None,
        Some,
        All,
    }

    private static UnmetAim Weak(CaseResult result, Pins pinned, bool byBoard, DrawingUnits units)
    {
        var factor = Math.Floor(100 * result.SafetyFactor) / 100; // down: 1.499 is not the 1.50 that is asked
        var message = string.Create(
            CultureInfo.InvariantCulture,
            $"Too weak in the {result.Case.Name} case: factor {factor:0.00} where {result.Case.LeastFactor:0.00} is asked, {DrawnLength.Rough(result.AtMm, units)} from the top.");
        var advice = (result.Case.BendsAlongTheGrain, pinned) switch
        {
            (false, _) => "A narrower blade, a thicker spine, or a wood stronger across the grain.",
            (_, Pins.All) => "Do not build it so: thicken the sizes you fixed there, or leave them to the solver.",
            (_, Pins.Some) => "No shape with the sizes you fixed is strong enough: thicken them or leave them open, or take a stronger wood or straighter grain.",
            _ when byBoard => "No shape out of this board is strong enough: a thicker one, or two glued up; or a stronger wood, a shorter blade (less leverage), or a lighter duty.",
            _ => "No shape within what makers carve is strong enough: a stronger wood, straighter grain, a shorter blade (less leverage), or a lighter duty.",
        };
        return new("strength." + result.Case.Id, result.SafetyFactor, result.Case.LeastFactor, "", message, advice);
    }
}

/// <summary>How far off balance a finished paddle is, and what weight would close it.</summary>
internal static class OffBalanceWords
{
    /// <summary>What to change.</summary>
    internal static string Advice(BalanceResult balance) => balance.OffsetMm < 0
        ? "A longer or wider blade, a smaller grip, less freeboard, or a wider tolerance; or live with it: a short blade seldom balances at the lower hand."
        : "A shorter or narrower blade, a larger grip, or a wider tolerance.";

    /// <summary>A sentence.</summary>
    internal static string Say(BalanceResult balance, DrawingUnits units) =>
        $"Finished, it balances {DrawnLength.Rough(Math.Abs(balance.OffsetMm), units)} {(balance.OffsetMm < 0 ? "above" : "below")} the aim; "
        + $"{DrawnAmount.Mass(balance.BallastG, units)} let in {DrawnLength.Rough(balance.BallastAtMm, units)} from the top would close it.";
}

/// <summary>What being off balance counts for, in grams: nothing near the aim, and never more a millimetre than ballast is worth to a
/// maker. Theory B9.</summary>
internal static class BallastPrice
{
    /// <summary>Most that a millimetre of balance may cost, g/mm. Own choice: 10 mm, which a hand feels, for 30 g, which it feels as well.</summary>
    internal const double MostGPerMm = 3;
    /// <summary>Offset at which that price is reached, mm.</summary>
    internal const double FullAtMm = 8;

    /// <summary>Price (g) of an offset (mm) and its rate (g/mm): a parabola, then straight.</summary>
    internal static (double PriceG, double RateGPerMm) Of(double offsetMm)
    {
        var off = Math.Abs(offsetMm);
        return off <= FullAtMm
            ? (MostGPerMm * off * off / (2 * FullAtMm), MostGPerMm * offsetMm / FullAtMm)
            : (MostGPerMm * (off - FullAtMm / 2), MostGPerMm * Math.Sign(offsetMm));
    }
}
