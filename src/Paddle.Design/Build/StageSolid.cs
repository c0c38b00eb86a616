using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>One stage's solid summed on a Gauss grid, with what the allowance and the trim add beyond both ends. Theory M8.</summary>
internal sealed class StageSolid
{
    private static readonly GaussRule EndRule = new(3);

    private StageSolid(BuildStage stage, Blank blank, StageNode[] nodes, int overhang)
    {
        (Stage, Blank, Nodes, FirstPlace) = (stage, blank, nodes, overhang);
        double volume = 0, first = 0;
        foreach (var node in nodes)
        {
            volume += node.WeightMm * node.Section.AreaMm2;
            first += node.WeightMm * node.Section.AreaMm2 * node.AlongMm;
        }

        (VolumeMm3, CentreMm) = (volume, first / volume);
    }

    public BuildStage Stage { get; }

    /// <summary>The board.</summary>
    public Blank Blank { get; }

    /// <summary>Volume, mm³.</summary>
    public double VolumeMm3 { get; }

    /// <summary>Balance point of even wood, mm from the finished top of the grip along the shaft's line.</summary>
    public double CentreMm { get; }

    /// <summary>The nodes of the sum from the top end to the bottom end.</summary>
    internal IReadOnlyList<StageNode> Nodes { get; }

    /// <summary>Index of the node that stands for the first place of <see cref="StationGrid.Fine"/>.</summary>
    internal int FirstPlace { get; }

    /// <param name="densityKgM3">Density of the wood, kg/m³.</param>
    public double MassG(double densityKgM3) => densityKgM3 * 1e-6 * VolumeMm3;

    /// <summary>Shapes and sums a stage.</summary>
    /// <param name="finished">The finished paddle on <see cref="StationGrid.Fine"/>.</param>
    public static StageSolid Of(PaddleSolid finished, Blank blank, BuildStage stage, OutlineSaw saw) =>
        Of(finished, new(finished.Outline), blank, stage, saw);

    internal static StageSolid Of(PaddleSolid finished, OutlineLine line, Blank blank, BuildStage stage, OutlineSaw saw)
    {
        var allowance = StageAllowance.After(stage, saw);
        var shape = new StageShape(finished, line, blank, stage, allowance);
        var top = StationPattern.At(Segment.All[0], 0);
        var tip = StationPattern.At(Segment.All[^1], 1);
        var length = finished.Form.Places.OverallMm;
        var nodes = new List<StageNode>(finished.Count + 2 * EndRule.Abscissas.Length);

        void Add(StationPattern pattern, double x, double weight) => nodes.Add(
            new(pattern, x, finished.Form.AlongShaftMm(x), weight, shape.At(pattern, x)));

        // Beyond the ends the line closes like a square root: points in the square root of the distance keep Gauss its power.
        var reach = stage == BuildStage.Blank ? blank.EndTrimMm : allowance.OutlineMm;
        for (var k = 0; reach > 0 && k < EndRule.Abscissas.Length; k++)
        {
            var s = EndRule.Abscissas[k];
            Add(top, -reach + reach * s * s, EndRule.Weights[k] * 2 * reach * s);
        }

        var overhang = nodes.Count;
        for (var i = 0; i < finished.Count; i++) Add(finished.Grid.Patterns[i], finished.X[i], finished.WeightMm(i));
        for (var k = 0; reach > 0 && k < EndRule.Abscissas.Length; k++)
        {
            var s = EndRule.Abscissas[k];
            Add(tip, length + reach - reach * s * s, EndRule.Weights[k] * 2 * reach * s);
        }

        return new(stage, blank, [.. nodes], overhang);
    }
}

/// <summary>One node of a stage's sum.</summary>
/// <param name="Pattern">Pattern of the place.</param>
/// <param name="XMm">x, mm.</param>
/// <param name="AlongMm">Place along the shaft's line, mm.</param>
/// <param name="WeightMm">Quadrature weight, mm.</param>
internal readonly record struct StageNode(StationPattern Pattern, double XMm, double AlongMm, double WeightMm, StageSection Section);
