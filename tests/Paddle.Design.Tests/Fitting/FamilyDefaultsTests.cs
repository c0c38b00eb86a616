using Paddle.Design.Fitting;
using Paddle.Design.Outline;

namespace Paddle.Design.Tests.Fitting;

/// <summary>The families' default blades, held to the trade's own arithmetic: hands 35 in apart make a paddle of 60 to 62 in or so.</summary>
public sealed class FamilyDefaultsTests
{
    private const double HandsMm = 35 * 25.4;

    // Common practice, no source: 59 to 64 in for a touring paddle, up to 66 in for the long voyageur; the fast-water and bent-shaft blades are
    // shorter by nature (57 and 56 in here; a general how-to page gives 52 to 60 in for straight and 48 to 54 in for bent paddles, the hands
    // of a bent one being 2 to 4 in closer).
    [Theory]
    [InlineData("ottertail", 1500, 1620)]
    [InlineData("beavertail", 1500, 1620)]
    [InlineData("sturgeon-nose", 1500, 1620)]
    [InlineData("sugar-island", 1500, 1620)]
    [InlineData("voyageur", 1600, 1680)]
    [InlineData("square-tip", 1400, 1500)]
    [InlineData("teardrop", 1380, 1450)]
    public void Hands_thirty_five_inches_apart_make_a_paddle_of_the_trades_length(string id, double leastMm, double mostMm)
    {
        var pattern = GripPattern.Of(GripStyle.Pear);
        var lengths = PaddleLengths.Resolve(new(HandsMm, null, null, null), _ => BladeFamilies.Find(id)!.DefaultLengthMm, pattern, pattern.LengthMm);

        Assert.InRange(lengths.Lengths!.OverallMm, leastMm, mostMm);
    }

    // Touring blades: 600 to 850 cm² (common practice, no source); nobody tours with more at the default size.
    [Fact]
    public void The_default_blades_have_the_area_of_touring_blades() =>
        Assert.All(BladeChoice.Families, family => Assert.InRange(family.AreaMm2(family.LengthMm, family.WidthMm) / 100, 600, 800));
}
