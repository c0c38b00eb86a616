using Paddle.Design.Balance;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Build;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Balance;

/// <summary>What a design misses and what to change, word for word: the wrong side or wood costs a second paddle.</summary>
public class DesignOutcomeTests
{
    private static readonly DesignReport Cherry = BuildSamples.Cherry;

    [Fact]
    public void A_sound_design_misses_nothing()
    {
        Assert.Empty(Of().Unmet);
        Assert.Equal(("met", "closest"), (Of().Word, Of(massG: 651, mostMassG: 650).Word));
    }

    [Theory]
    [InlineData(15, 12, "flex.most", "On the bench it gives 15 mm where at most 12 mm is asked.", "A stiffer wood, a shorter blade, or thicker pinned sizes.")]
    [InlineData(8, 12, "flex.least", "On the bench it gives 8 mm where at least 12 mm is asked.", "A wood of lower modulus, a longer blade, or thinner pinned sizes.")]
    public void Flex(double flexMm, double askedMm, string code, string message, string advice)
    {
        var outcome = code == "flex.most" ? Of(flexMm: flexMm, mostFlexMm: askedMm) : Of(flexMm: flexMm, leastFlexMm: askedMm);
        Assert.Equal([new(code, flexMm, askedMm, "mm", message, advice)], outcome.Unmet);
        Assert.False(outcome.IsTooWeak);
        Assert.Empty(Of(flexMm: askedMm, mostFlexMm: askedMm, leastFlexMm: askedMm).Unmet);
    }

    [Fact]
    public void Mass()
    {
        Assert.Equal(
            [
                new(
                    "mass", 680.4, 650, "g", "Finished, it weighs 24.0 oz (680 g) where at most 22.9 oz (650 g) is asked.",
                    "A lighter wood, a smaller blade, a lighter duty, or a wider balance tolerance."),
            ],
            Of(massG: 680.4, mostMassG: 650, units: DrawingUnits.Inch).Unmet);
        Assert.Empty(Of(massG: 650, mostMassG: 650).Unmet);
    }

    [Theory]
    [InlineData(
        -17, "above", "A longer or wider blade, a smaller grip, less freeboard, or a wider tolerance; or live with it: a short blade seldom balances at the lower hand.")]
    [InlineData(17, "below", "A shorter or narrower blade, a larger grip, or a wider tolerance.")]
    public void Balance(double offsetMm, string side, string advice)
    {
        var balance = Cherry.Balance with { ActualMm = Cherry.Balance.TargetMm + offsetMm, ToleranceMm = 12, BallastG = 21.3, BallastAtMm = 1500 };
        Assert.Equal(
            [
                new(
                    "balance", 17, 12, "mm", $"Finished, it balances 17 mm {side} the aim; 21 g let in 1500 mm from the top would close it.", advice),
            ],
            Of(balance: balance).Unmet.Select(aim => aim with { Value = Math.Round(aim.Value, 9) }));
        Assert.Equal([advice], balance.Advice);
    }

    [Fact]
    public void Strength_comes_first_the_weakest_before_the_others()
    {
        var hard = Weak("hard-stroke", 27, 20, 1.5);
        var press = Weak("edge-press", 3, 4, 1.1);
        const string Message = "Too weak in the hard stroke case: factor 1.35 where 1.50 is asked, 900 mm from the top.";
        CaseResult[] others = [.. Cherry.Strength.Cases.Where(found => found.Id is not "hard-stroke" and not "edge-press")];
        var outcome = Of(cases: [.. others, hard, press], massG: 700, mostMassG: 650);
        Assert.True(outcome.IsTooWeak);
        Assert.Equal(["strength.edge-press", "strength.hard-stroke", "mass"], outcome.Unmet.Select(aim => aim.Code));
        Assert.Equal("A narrower blade, a thicker spine, or a wood stronger across the grain.", outcome.Unmet[0].Advice);
        Assert.Equal(
            new(
                "strength.hard-stroke", 1.35, 1.5, "", Message,
                "No shape within what makers carve is strong enough: a stronger wood, straighter grain, a shorter blade (less leverage), or a lighter duty."),
            outcome.Unmet[1]);
        Assert.StartsWith("Too weak in the edge press case: factor 1.09 where 1.10 is asked, ", Of(cases: [.. others, Weak("edge-press", 4.397, 4, 1.1)]).Unmet.Single().Message, StringComparison.Ordinal);

        string Advice(PinnedSizes? pinned = null, BalanceResult? balance = null) => Assert.Single(Of(cases: [.. others, hard], pinned: pinned, balance: balance).Unmet).Advice;
        Assert.Equal(
            "No shape out of this board is strong enough: a thicker one, or two glued up; or a stronger wood, a shorter blade (less leverage), or a lighter duty.",
            Advice(balance: Cherry.Balance with { BindingLimits = [new("blade.edgeThicknessMm", "mm", 1, "g"), new("wood.boardThicknessMm", "mm", 2, "g")] }));
        Assert.Equal(
            "No shape with the sizes you fixed is strong enough: thicken them or leave them open, or take a stronger wood or straighter grain.",
            Advice(new(ShaftWidthMm: 23)));
        var sizes = Cherry.Sizes;
        Assert.Equal(
            "Do not build it so: thicken the sizes you fixed there, or leave them to the solver.",
            Advice(new(
                sizes.ShaftWidthMm, sizes.ShaftThicknessMm, sizes.UpperWidthMm, sizes.UpperThicknessMm, sizes.ThroatThicknessMm, sizes.MiddleThicknessMm,
                sizes.TipThicknessMm, sizes.EdgeThicknessMm, sizes.GripThicknessMm)));
    }

    // 3 g a millimetre from 8 mm on (theory B9): a parabola that meets its tangent, so price and rate are continuous.
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(4, 3, 1.5)]
    [InlineData(-4, 3, -1.5)]
    [InlineData(8, 12, 3)]
    [InlineData(18, 42, 3)]
    [InlineData(-18, 42, -3)]
    public void An_offset_has_its_price(double offsetMm, double priceG, double rate) => Assert.Equal((priceG, rate), BallastPrice.Of(offsetMm));

    private static CaseResult Weak(string id, double strengthMPa, double stressMPa, double least)
    {
        var found = Cherry.Strength.Cases.Single(one => one.Id == id);
        return found with { Case = found.Case with { LeastFactor = least }, StrengthMPa = strengthMPa, StressMPa = stressMPa, AtMm = 900 };
    }

    private static DesignOutcome Of(
        double flexMm = 10, double massG = 600, double? mostFlexMm = null, double? leastFlexMm = null, double? mostMassG = null,
        IReadOnlyList<CaseResult>? cases = null, PinnedSizes? pinned = null, BalanceResult? balance = null, DrawingUnits units = DrawingUnits.Metric) =>
        DesignOutcome.Of(
            Cherry.Specification with
            {
                Pinned = pinned ?? new(),
                SolvedBefore = default,
                Aims = Cherry.Specification.Aims with { MostBenchFlexMm = mostFlexMm, LeastBenchFlexMm = leastFlexMm, MaximumMassG = mostMassG },
            },
            balance ?? Cherry.Balance with { ActualMm = Cherry.Balance.TargetMm, BindingLimits = [] },
            Cherry.Strength with { Cases = cases ?? Cherry.Strength.Cases },
            Cherry.Flex with { BenchFlexMm = flexMm },
            Cherry.Finished with { MassG = massG },
            units);
}
