using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Balance;

/// <summary>
/// The maker's problem in numbers: least mass, subject to balance, strength in every case, flex and the shape's limits, over the
/// nine sizes. Values and exact gradients at any sizes, without allocation. Theory B1–B4.
/// </summary>
internal sealed class DesignProblem
{
    internal const int N = PaddleSizes.Count;

    // Sizes at which the outline is taken before any are known; strength and width depend on them only weakly.
    private static readonly double[] Typical = [30, 31, 27, 28, 27, 11, 7.5, 4.5, 29];

    // The printed stations lie closer than the coarse grid: this much strength in hand keeps their worst place within the limit.
    private const double StationMargin = 0.004;

    // What a balance row is measured in, whatever the tolerance: a narrow one must not outweigh the rules of shape.
    internal const double BalanceScaleMm = 12;

    private readonly NodeTerms[] nodes;
    private readonly Aims aims;
    private readonly double gramsPerMm3;
    private readonly double target;
    private readonly ShapeRow[] shapeRows;

    private DesignProblem(NodeTerms[] nodes, Aims aims, double gramsPerMm3, double target, ShapeRow[] shapeRows)
    {
        (this.nodes, this.aims, this.gramsPerMm3, this.target, this.shapeRows) = (nodes, aims, gramsPerMm3, target, shapeRows);
        var rows = 4 + shapeRows.Length; // balance and flex, each from both sides
        foreach (var node in nodes) rows += (node.ModulusNeeded > 0 ? 1 : 0) + (node.SlendernessLimit > 0 ? 1 : 0);
        Rows = new double[rows];
        RowGradients = new double[rows * N];
        Limits = new Limit[rows];
    }

    /// <summary>Least allowed of each size, mm.</summary>
    internal double[] Low { get; } = new double[N];

    /// <summary>Most allowed of each size, mm.</summary>
    internal double[] High { get; } = new double[N];

    /// <summary>Where to begin.</summary>
    internal double[] Start { get; } = new double[N];

    /// <summary>Mass at the last sizes evaluated, g.</summary>
    internal double MassG { get; private set; }

    /// <summary>Balance point at the last sizes evaluated, mm along the shaft's line.</summary>
    internal double CentreMm { get; private set; }

    /// <summary>Gradient of the mass, g/mm.</summary>
    internal double[] MassGradient { get; } = new double[N];

    /// <summary>Rows at the last sizes evaluated; none may be negative.</summary>
    internal double[] Rows { get; }

    /// <summary>Gradients of the rows, one after the other.</summary>
    internal double[] RowGradients { get; }

    /// <summary>What each row stands for.</summary>
    internal Limit[] Limits { get; }

    /// <summary>How many rows there are at the last sizes evaluated.</summary>
    internal int RowCount { get; private set; }

    /// <summary>States the problem for one paddle.</summary>
    /// <param name="form">What fixes the solid apart from its sizes.</param>
    /// <param name="pinned">Sizes that the caller fixes (mm), null where the solver may choose; in the order of the sizes.</param>
    /// <param name="wood">The wood.</param>
    /// <param name="loads">The forces.</param>
    /// <param name="aims">The aims.</param>
    /// <param name="strengthReserve">Factor on every safety factor, to make up for what the coarse grid does not see.</param>
    /// <param name="around">Sizes (mm) around which outline and moments are taken; null for typical ones.</param>
    internal static DesignProblem State(
        PaddleForm form,
        ReadOnlySpan<double?> pinned,
        WoodInUse wood,
        Loads loads,
        Aims aims,
        double strengthReserve = 1,
        PaddleSizes? around = null)
    {
        var nodes = Nodes(
            form, around ?? TypicalSizes(pinned), wood, loads, strengthReserve * (1 + StationMargin));
        var target = BalanceTarget.Mm(form, aims);
        var problem = new DesignProblem(nodes, aims, wood.DensityKgM3 * 1e-6, target, ShapeRow.For(pinned));
        problem.SetLimits(pinned);
        problem.LoosenUnreachableRows();
        return problem;
    }

    /// <summary>Evaluates mass, balance and every row, with gradients, at sizes <paramref name="v"/> (mm).</summary>
    internal void Evaluate(ReadOnlySpan<double> v)
    {
        Span<double> volumeGradient = stackalloc double[N];
        Span<double> firstGradient = stackalloc double[N];
        Span<double> flexGradient = stackalloc double[N];
        Span<double> thickness = stackalloc double[N]; // ∂c/∂v
        volumeGradient.Clear();
        firstGradient.Clear();
        flexGradient.Clear();
        double volume = 0, first = 0, flex = 0;
        RowCount = 0;
        var spine = SpineSensitivity.At(v);

        foreach (ref readonly var node in nodes.AsSpan())
        {
            var pattern = node.Pattern;
            var (from, to) = FillThickness(pattern, spine, thickness);
            // The slopes of the spine are of degree one in the sizes: their gradients times the sizes give the slopes back (Euler).
            var c = -node.Hollow / 2;
            for (var k = from; k < to; k++) c += thickness[k] * v[k];

            var e = pattern.EdgeShare * v[7] / 2;
            var w = node.WidthBase + node.WidthPerShaft * v[0] + node.WidthPerUpper * v[2];
            var m = pattern.Moments;
            var crown = c - e;
            var perWidth = e + crown * m.G1;
            var area = 4 * w * perWidth;
            var edgeRate = pattern.EdgeShare / 2;

            if (node.VolumeWeight > 0)
            {
                volume += node.VolumeWeight * area;
                first += node.VolumeWeight * area * node.Along;
                double byWidth = node.VolumeWeight * 4 * perWidth, byThickness = node.VolumeWeight * 4 * w * m.G1;
                double byEdge = node.VolumeWeight * 4 * w * (1 - m.G1) * edgeRate;
                Spread(volumeGradient, node, byWidth, byThickness, byEdge, thickness, from, to, 1);
                Spread(firstGradient, node, byWidth, byThickness, byEdge, thickness, from, to, node.Along);
            }

            if (node.ModulusNeeded <= 0 && node.BendingFlex <= 0 && node.SlendernessLimit <= 0) continue;

            double cube = e * e * e + 3 * e * e * crown * m.G1 + 3 * e * crown * crown * m.G2 + crown * crown * crown * m.G3;
            var second = 4.0 / 3 * w * cube;
            var secondByThickness = 4.0 / 3 * w * (3 * e * e * m.G1 + 6 * e * crown * m.G2 + 3 * crown * crown * m.G3);
            var secondByEdge = (4.0 / 3 * w * (3 * e * e + 6 * e * crown * m.G1 + 3 * crown * crown * m.G2) - secondByThickness) * edgeRate;

            if (node.BendingFlex > 0 && node.VolumeWeight > 0)
            {
                flex += node.BendingFlex / second + node.ShearFlex / area;
                double perSecond = -node.BendingFlex / (second * second), perArea = -node.ShearFlex / (area * area);
                Spread(
                    flexGradient,
                    node,
                    perSecond * second / w + perArea * 4 * perWidth,
                    perSecond * secondByThickness + perArea * 4 * w * m.G1,
                    perSecond * secondByEdge + perArea * 4 * w * (1 - m.G1) * edgeRate,
                    thickness,
                    from,
                    to,
                    1);
            }

            if (node.ModulusNeeded > 0) AddStrengthRow(node, w, c, second, secondByThickness, secondByEdge, thickness, from, to);
            if (node.SlendernessLimit > 0) AddPlateRow(node, w, c, thickness, from, to);
        }

        MassG = gramsPerMm3 * volume;
        CentreMm = first / volume;
        for (var k = 0; k < N; k++)
        {
            MassGradient[k] = gramsPerMm3 * volumeGradient[k];
            firstGradient[k] = (firstGradient[k] - CentreMm * volumeGradient[k]) / volume;
        }

        AddBalanceRows(firstGradient);
        AddFlexRows(flex, flexGradient);
        foreach (var row in shapeRows) AddShapeRow(row, v);
    }

    private static PaddleSizes TypicalSizes(ReadOnlySpan<double?> pinned)
    {
        Span<double> sizes = stackalloc double[N];
        for (var k = 0; k < N; k++) sizes[k] = pinned[k] ?? Typical[k];
        return PaddleSizes.FromVector(sizes);
    }

    private static NodeTerms[] Nodes(
        PaddleForm form, PaddleSizes typical, WoodInUse wood, Loads loads, double reserve)
    {
        const double Step = 2;
        var solid = PaddleSolid.Shape(form, typical, form.Outline(typical), StationGrid.Coarse);
        var wider = SampleOutline(
            form,
            typical with { ShaftWidthMm = typical.ShaftWidthMm + Step, UpperWidthMm = typical.UpperWidthMm + Step },
            solid.X);
        var pressure = BladePressure.On(solid);
        var needed = ModulusNeeded(solid, pressure, wood, loads, reserve);
        var across = loads.Cases.First(loadCase => !loadCase.BendsAlongTheGrain);
        var slenderness = 0.75 * across.ForceN * across.LeastFactor * reserve / wood.CrossGrainStrengthMPa;
        var nodes = new NodeTerms[solid.Count];
        for (var i = 0; i < nodes.Length; i++)
        {
            var (m, v) = Flex.UnitLoad(form, solid.X[i], pressure.CentreOfPressureMm(StrokePivots.TouringMm));
            var weight = solid.WeightMm(i);

            // Grip and blade answer to one of the two widths alone; the shaft shares them out as it tapers.
            var perWidth = (wider[i] - solid.HalfWidth[i]) / Step;
            var shaftShare = solid.Grid.Patterns[i].Segment.Zone switch { Zone.Grip => 0, Zone.Blade => 1, _ => solid.Grid.Patterns[i].LowerShare };
            double perShaft = perWidth * shaftShare, perUpper = perWidth * (1 - shaftShare);
            var blade = i >= solid.Grid.FirstBladePlace;
            nodes[i] = new NodeTerms
            {
                Pattern = solid.Grid.Patterns[i],
                Hollow = solid.Grid.Patterns[i].HollowShare * form.Grip.HollowedFaces * form.Grip.HollowDepthMm,
                WidthBase = solid.HalfWidth[i] - perShaft * typical.ShaftWidthMm - perUpper * typical.UpperWidthMm,
                WidthPerShaft = perShaft,
                WidthPerUpper = perUpper,
                VolumeWeight = weight,
                Along = form.AlongShaftMm(solid.X[i]),
                BendingFlex = Loads.BenchN * weight * m * m / wood.ModulusMPa,
                ShearFlex = Loads.BenchN * weight * Flex.ShearForm * v * v / wood.ShearModulusMPa,
                ModulusNeeded = needed[i],
                SlendernessLimit = blade ? Math.Sqrt(slenderness * pressure.StrokePressureMPa(solid.X[i], 1, StrokePivots.HardMm)) : 0,
            };
        }

        return nodes;
    }

    private static double[] SampleOutline(PaddleForm form, PaddleSizes sizes, double[] xs)
    {
        var halfWidths = new double[xs.Length];
        form.Outline(sizes).Sample(xs, halfWidths, stackalloc double[xs.Length]);
        return halfWidths;
    }

    // Section modulus that the hardest case needs at each place, mm³.
    private static double[] ModulusNeeded(
        PaddleSolid solid, BladePressure pressure, WoodInUse wood, Loads loads, double reserve)
    {
        var needed = new double[solid.Count];
        Span<double> moments = stackalloc double[solid.Count];
        var buckling = StrengthCheck.ShaftBucklingN(solid, wood);

        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(solid, pressure, loadCase, buckling, moments);
            var allowed = loadCase.StrengthShare * wood.BendingStrengthMPa / Allowances.SpineStress / (loadCase.LeastFactor * reserve);
            for (var i = 0; i < needed.Length; i++)
            {
                if (moments[i] <= 0) continue;

                // Moments and thrust stress are those of typical sizes: they change little, and the strength reserve makes it good.
                var thrustStress = loadCase.ThrustN / solid.Area[i];
                needed[i] = Math.Max(needed[i], moments[i] / Math.Max(allowed - thrustStress, 0.05 * allowed));
            }
        }

        return needed;
    }

    private static (int From, int To) FillThickness(StationPattern pattern, in SpineSensitivity spine, Span<double> thickness)
    {
        thickness.Clear();
        switch (pattern.Segment.Zone)
        {
            case Zone.Grip:
                thickness[3] = pattern.UpperWeight / 2;
                thickness[8] = pattern.GripWeight / 2;
                return (3, 9);
            case Zone.Shaft:
                thickness[1] = pattern.LowerShare / 2;
                thickness[3] = pattern.UpperWeight / 2;
                return (1, 4);
            default:
                var weights = pattern.Spine;
                thickness[1] = (weights.Shaft + weights.ThroatSlope * spine.ThroatByShaft) / 2;
                thickness[4] = (weights.Throat + weights.ThroatSlope * spine.ThroatByThroat + weights.MiddleSlope * spine.MiddleByThroat) / 2;
                thickness[5] = (weights.Middle + weights.ThroatSlope * spine.ThroatByMiddle + weights.MiddleSlope * spine.MiddleByMiddle) / 2;
                thickness[6] = (weights.Tip + weights.MiddleSlope * spine.MiddleByTip) / 2;
                return (1, 7);
        }
    }

    private static void Spread(
        Span<double> gradient, in NodeTerms node, double byWidth, double byThickness, double byEdge, ReadOnlySpan<double> thickness, int from, int to, double scale)
    {
        gradient[0] += scale * byWidth * node.WidthPerShaft;
        gradient[2] += scale * byWidth * node.WidthPerUpper;
        gradient[7] += scale * byEdge;
        var rate = scale * byThickness;
        for (var k = from; k < to; k++) gradient[k] += rate * thickness[k];
    }

    private void AddStrengthRow(
        in NodeTerms node, double w, double c, double second, double secondByThickness, double secondByEdge, ReadOnlySpan<double> thickness, int from, int to)
    {
        // The square root makes the row nearly linear in the thickness.
        var root = Math.Sqrt(second / (c * node.ModulusNeeded));
        var row = NewRow(root - 1, new("strength.safetyFactor", LimitGroup.Strength, "", 0.5 / aims.MinimumSafetyFactor));
        var rate = 0.5 * root / second;
        Spread(row, node, rate * second / w, rate * (secondByThickness - second / c), rate * secondByEdge, thickness, from, to, 1);
    }

    private void AddPlateRow(in NodeTerms node, double w, double c, ReadOnlySpan<double> thickness, int from, int to)
    {
        var ratio = c / (w * node.SlendernessLimit);
        var row = NewRow(ratio - 1, new("strength.edgePress", LimitGroup.Strength, "", 0.5 / aims.MinimumSafetyFactor));
        Spread(row, node, -ratio / w, ratio / c, 0, thickness, from, to, 1);
    }

    private void AddBalanceRows(ReadOnlySpan<double> centreGradient)
    {
        // A hair inside the tolerance, so that rounding the sizes does not cross it.
        double tolerance = 0.98 * aims.BalanceToleranceMm, off = CentreMm - target;
        var limit = new Limit("aims.balanceToleranceMm", LimitGroup.Balance, "mm", 1 / BalanceScaleMm);
        var row = NewRow((tolerance - off) / BalanceScaleMm, limit);
        for (var k = 0; k < N; k++) row[k] = -centreGradient[k] / BalanceScaleMm;
        row = NewRow((tolerance + off) / BalanceScaleMm, limit);
        for (var k = 0; k < N; k++) row[k] = centreGradient[k] / BalanceScaleMm;
    }

    private void AddFlexRows(double flex, ReadOnlySpan<double> flexGradient)
    {
        if (aims.MostBenchFlexMm is { } most)
        {
            var row = NewRow(0.998 * most - flex, new("aims.benchFlexMm.max", LimitGroup.Flex, "mm", 1));
            for (var k = 0; k < N; k++) row[k] = -flexGradient[k];
        }

        if (aims.LeastBenchFlexMm is { } least)
        {
            var row = NewRow(flex - 1.002 * least, new("aims.benchFlexMm.min", LimitGroup.Flex, "mm", 1));
            for (var k = 0; k < N; k++) row[k] = flexGradient[k];
        }
    }

    private void AddShapeRow(in ShapeRow shape, ReadOnlySpan<double> v)
    {
        var row = NewRow(
            shape.Constant + shape.FirstWeight * v[shape.First] + shape.SecondWeight * v[shape.Second],
            new(shape.Id, shape.Group, "mm", 1));
        row[shape.First] += shape.FirstWeight;
        row[shape.Second] += shape.SecondWeight;
    }

    private Span<double> NewRow(double value, in Limit limit)
    {
        Rows[RowCount] = value;
        Limits[RowCount] = limit;
        var gradient = RowGradients.AsSpan(RowCount * N, N);
        gradient.Clear();
        RowCount++;
        return gradient;
    }

    // A rule of shape that a pinned size puts out of reach is held as nearly as it can be: broken beyond help, it would let every
    // other rule be broken as far for nothing.
    private void LoosenUnreachableRows()
    {
        for (var r = 0; r < shapeRows.Length; r++)
        {
            var row = shapeRows[r];
            var most = row.Constant
                + Math.Max(row.FirstWeight * Low[row.First], row.FirstWeight * High[row.First])
                + Math.Max(row.SecondWeight * Low[row.Second], row.SecondWeight * High[row.Second]);
            if (most < 0) shapeRows[r] = row with { Constant = row.Constant - most };
        }
    }

    private void SetLimits(ReadOnlySpan<double?> pinned)
    {
        for (var k = 0; k < N; k++)
        {
            (Low[k], High[k]) = (SizeLimits.Solver[k].Min, SizeLimits.Solver[k].Max);
            if (pinned[k] is { } size) (Low[k], High[k]) = (size, size);
        }

        // A pinned thickness bounds those further down the blade from above and those further up from below.
        ReadOnlySpan<int> thinning = [1, 4, 5, 6, 7];
        for (var a = 0; a < thinning.Length; a++)
        {
            if (pinned[thinning[a]] is not { } size) continue;
            for (var b = 0; b < thinning.Length; b++)
            {
                var other = thinning[b];
                if (pinned[other] is not null) continue;
                if (b > a) (Low[other], High[other]) = (Math.Min(Low[other], size), Math.Min(High[other], size));
                if (b < a) (Low[other], High[other]) = (Math.Max(Low[other], size), Math.Max(High[other], size));
            }
        }

        for (var k = 0; k < N; k++) Start[k] = Math.Clamp(Typical[k], Low[k], High[k]);
    }
}
