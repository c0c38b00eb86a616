using MathNet.Numerics.Integration;

namespace Paddle.Design.Outline;

/// <summary>A Gauss–Legendre rule on 0..1 with its points held ready: the library hands out a fresh copy at every look.</summary>
internal sealed class GaussRule
{
    internal GaussRule(int points)
    {
        var rule = new GaussLegendreRule(0, 1, points);
        (Abscissas, Weights) = (rule.Abscissas, rule.Weights);
    }

    internal double[] Abscissas { get; }

    internal double[] Weights { get; }
}
