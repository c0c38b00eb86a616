using PaddleApi.Endpoints.TradeOffs;

namespace PaddleApi.Tests.TradeOffs;

public class ParetoTests
{
    // Source: the definition (Pareto): beaten is who has another at most as dear in all and cheaper in one. On coarse figures, so that ties abound.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Random_sets_are_sorted_as_the_definition_says(int wishes)
    {
        var random = new Random(20 + wishes);
        for (var round = 0; round < 200; round++)
        {
            var costs = Enumerable.Range(0, random.Next(0, 40)).Select(_ => Enumerable.Range(0, wishes).Select(_ => (double)random.Next(6)).ToArray()).ToArray();
            bool Beats(double[] a, double[] b) => a.Zip(b).All(pair => pair.First <= pair.Second) && a.Zip(b).Any(pair => pair.First < pair.Second);

            var by = Pareto.BeatenBy(costs);

            Assert.Equal(costs.Select(one => costs.Any(other => Beats(other, one))), by.Select(one => one is not null));
            for (var k = 0; k < by.Length; k++)
            {
                if (by[k] is not { } other) continue;
                Assert.True(Beats(costs[other], costs[k]));
                Assert.Null(by[other]);
            }
        }
    }
}
