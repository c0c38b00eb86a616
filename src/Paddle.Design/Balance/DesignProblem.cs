using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Balance;

/// <summary>The maker's problem in numbers: least cost of mass and balance, subject to balance in tolerance, strength in every case along
/// the grain, flex and the shape's limits, over the nine sizes. Values and exact gradients at any sizes, without allocation. Theory
/// B1–B4.</summary>
internal sealed class DesignProblem
{
    internal const int N = PaddleSizes.Count;

    // Sizes at which the outline is taken before any are known; strength and width depend on them only weakly.
    private static readonly double[] Typical = [28, 29, 24, 25, 25, 10.5, 7, 4.5, 24];

    // The printed stations lie closer than the coarse grid: this much strength in hand keeps their worst place within the limit.
    private const double StationMargin = 0.004;
    private const double FarMm = 1000; // further than any paddle is off its balance

    // What a balance row is measured in, whatever the tolerance: a narrow one must not outweigh the rules of shape.
    internal const double BalanceScaleMm = 12;

    private readonly PlaceTerms[] nodes;
    private readonly Aims aims;
    private readonly double gramsPerMm3;
    private readonly double target;
    private readonly double finishG;
    private readonly double finishFirst;
    private readonly TaperedGrain grain;
    private readonly ShapeRow[] shapeRows;
    private int filled; // rows filled so far at the sizes being evaluated

    private DesignProblem(PaddleSpecification asked, PlaceTerms[] nodes, FinishLoad finish)
    {
        (this.nodes, aims, shapeRows) = (nodes, asked.Aims, ShapeRow.For(asked.Free, SizeLimits.SmallShare(asked.Form.Places.HandSpacingMm), asked.LatticeMm));
        (gramsPerMm3, grain) = (asked.Wood.DensityKgM3 * 1e-6, new(asked.Wood.SlopeOfGrain));
        target = BalanceTarget.Mm(asked.Form, asked.Aims);
        (finishG, finishFirst) = (finish.MassG, finish.FirstGmm);
        Limits = LimitsInOrder();
        Rows = new double[Limits.Length];
        RowGradients = new double[Limits.Length * N];
        Give = new double[Limits.Length];
    }

    /// <summary>Least allowed of each size, mm.</summary>
    internal double[] Low { get; } = new double[N];
    /// <summary>Most allowed of each size, mm.</summary>
    internal double[] High { get; } = new double[N];
    /// <summary>Where to begin.</summary>
    internal double[] Start { get; } = new double[N];
    /// <summary>Mass of the wood at the last sizes evaluated, g.</summary>
    internal double MassG { get; private set; }
    /// <summary>Balance point of the finished paddle at the last sizes evaluated, mm along the shaft's line.</summary>
    internal double CentreMm { get; private set; }
    /// <summary>What is made least: the mass, and what being off balance counts for, g. Theory B1 and B9.</summary>
    internal double CostG { get; private set; }
    /// <summary>Gradient of the cost, g/mm.</summary>
    internal double[] CostGradient { get; } = new double[N];
    /// <summary>How far each row has been let go because nothing can reach it; 0 for the rest. Theory B4.</summary>
    internal double[] Give { get; }
    /// <summary>Rows at the last sizes evaluated; none may be negative.</summary>
    internal double[] Rows { get; }
    /// <summary>Gradients of the rows, one after the other.</summary>
    internal double[] RowGradients { get; }
    /// <summary>What each row stands for.</summary>
    internal Limit[] Limits { get; }
    /// <summary>How many rows there are.</summary>
    internal int RowCount => Rows.Length;

    /// <param name="strengthReserve">Factor on every safety factor, to make up for what the coarse grid does not see.</param>
    /// <param name="around">Sizes (mm) around which outline, moments and finish are taken; null for typical ones.</param>
    /// <param name="leastSpine">Least thickness of the spine, where it is more than the usual least.</param>
    internal static DesignProblem State(PaddleSpecification asked, double strengthReserve = 1, PaddleSizes? around = null, LeastSpine leastSpine = default)
    {
        var sizes = around ?? TypicalSizes(asked);
        var solid = PaddleSolid.Shape(asked.Form, sizes, asked.Form.Outline(sizes), asked.Form.CoarseGrid());
        var nodes = Nodes(asked, solid, strengthReserve * (1 + StationMargin));
        var problem = new DesignProblem(asked, nodes, FinishLoad.On(solid, asked.Finish));
        problem.SetLimits(asked, leastSpine);
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
        filled = 0;
        var spine = SpineSensitivity.At(v);

        foreach (ref readonly var node in nodes.AsSpan())
        {
            var pattern = node.Pattern;
            var (from, to) = FillHalves(pattern, pattern.Weights, spine, thickness);
            // The slopes of the spine are of degree one in the sizes: their gradients times the sizes give the slopes back (Euler).
            var c = -node.Hollow / 2;
            for (var k = from; k < to; k++) c += thickness[k] * v[k];

            var e = pattern.EdgeShare * v[PaddleSizes.Edge] / 2;
            var w = node.WidthBase + node.WidthPerShaft * v[PaddleSizes.ShaftWidth] + node.WidthPerUpper * v[PaddleSizes.UpperWidth];
            ref readonly var m = ref node.Mass;
            var crown = c - e;
            var perWidth = e * m.G0 + crown * m.G1 - node.MassLess;
            var area = 4 * w * perWidth;
            var edgeRate = pattern.EdgeShare / 2;

            if (node.VolumeWeight > 0)
            {
                volume += node.VolumeWeight * area;
                first += node.VolumeWeight * area * node.Along;
                double byWidth = node.VolumeWeight * 4 * perWidth, byThickness = node.VolumeWeight * 4 * w * m.G1;
                var byEdge = node.VolumeWeight * 4 * w * (m.G0 - m.G1) * edgeRate;
                Spread(volumeGradient, node, byWidth, byThickness, byEdge, thickness, 1);
                Spread(firstGradient, node, byWidth, byThickness, byEdge, thickness, node.Along);
            }

            if (node.ModulusNeeded <= 0 && node.BendingFlex <= 0) continue;

            var (second, secondByThickness, secondByEdge) = Second(node.Stiff.Whole, w, e, crown);
            if (node.Stiff.SheetMm > 0)
            {
                // Theory J12: what the strips count more than the sheets, within them.
                var core = Second(node.Stiff.Core, w, e - node.Stiff.SheetMm, crown);
                (second, secondByThickness, secondByEdge) = (second + core.Value, secondByThickness + core.ByThickness, secondByEdge + core.ByEdge);
            }

            secondByEdge *= edgeRate;

            if (node.BendingFlex > 0 && node.VolumeWeight > 0)
            {
                flex += node.BendingFlex / second + node.ShearFlex / area;
                double perSecond = -node.BendingFlex / (second * second), perArea = -node.ShearFlex / (area * area);
                Spread(
                    flexGradient,
                    node,
                    perSecond * second / w + perArea * 4 * perWidth,
                    perSecond * secondByThickness + perArea * 4 * w * m.G1,
                    perSecond * secondByEdge + perArea * 4 * w * (m.G0 - m.G1) * edgeRate,
                    thickness,
                    1);
            }

            if (node.ModulusNeeded > 0) AddStrengthRow(node, w, c, second, secondByThickness, secondByEdge, thickness, from, to, v, spine);
        }

        MassG = gramsPerMm3 * volume;
        var finished = MassG + finishG;
        CentreMm = (gramsPerMm3 * first + finishFirst) / finished;
        var (price, priceRate) = BallastPrice.Of(CentreMm - target);
        CostG = MassG + price;
        for (var k = 0; k < N; k++)
        {
            firstGradient[k] = gramsPerMm3 * (firstGradient[k] - CentreMm * volumeGradient[k]) / finished;
            CostGradient[k] = gramsPerMm3 * volumeGradient[k] + priceRate * firstGradient[k];
        }

        AddBalanceRows(firstGradient);
        AddFlexRows(flex, flexGradient);
        foreach (var row in shapeRows) AddShapeRow(row, v);
    }

    /// <summary>Lets go of the rows of a group that hold the solution and are broken there: to where they are, and a little more, so that
    /// the last hundredths of a hopeless limit do not drive every other size to its end. A balance out of reach is left to its price.
    /// Theory B4.</summary>
    internal void LetGo(LimitGroup group, ReadOnlySpan<double> multipliers)
    {
        var worst = -1;
        for (var r = 0; r < RowCount; r++)
        {
            if (Limits[r].Group != group || Rows[r] >= 0) continue;
            if (worst < 0 || Rows[r] < Rows[worst]) worst = r;
            if (multipliers[r] > 0) LetGo(r);
        }

        // The worst row holds the solution even where rounding has hidden its multiplier.
        if (worst >= 0 && Rows[worst] + Give[worst] < 0) LetGo(worst);
    }

    /// <summary>Whether a row of a group has been let go.</summary>
    internal bool HasLetGo(LimitGroup group)
    {
        for (var r = 0; r < RowCount; r++)
        {
            if (Limits[r].Group == group && Give[r] > 0) return true;
        }

        return false;
    }

    private void LetGo(int row)
    {
        Give[row] += Limits[row].Group switch
        {
            LimitGroup.Balance => FarMm,
            LimitGroup.Strength => 0.01 - Rows[row],
            _ => 0.02 - Rows[row],
        };
        Rows[row] = 0;
    }

    private static PaddleSizes TypicalSizes(PaddleSpecification asked)
    {
        Span<double> sizes = stackalloc double[N];
        var fixedSizes = asked.Fixed;
        for (var k = 0; k < N; k++) sizes[k] = fixedSizes[k] ?? Typical[k];
        return PaddleSizes.FromVector(sizes);
    }

    private static PlaceTerms[] Nodes(PaddleSpecification asked, PaddleSolid solid, double reserve)
    {
        const double Step = 2;
        var (form, typical) = (asked.Form, solid.Sizes);
        var wider = SampleOutline(
            form, typical with { ShaftWidthMm = typical.ShaftWidthMm + Step, UpperWidthMm = typical.UpperWidthMm + Step }, solid.X);
        var pressure = BladePressure.On(solid);
        var needed = ModulusNeeded(solid, pressure, asked.Wood, asked.Loads, reserve);
        var centreOfPressure = pressure.CentreOfPressureMm(StrokePivots.TouringMm);
        var benchN = asked.Aims.LeastBenchFlexMm is null && asked.Aims.MostBenchFlexMm is null ? 0 : Loads.BenchN; // the flex counts only where it is an aim
        var nodes = new PlaceTerms[solid.Count];
        for (var i = 0; i < nodes.Length; i++)
        {
            var (m, v) = Flex.UnitLoad(form, solid.X[i], centreOfPressure);
            var pattern = solid.Grid.Patterns[i];
            double weight = solid.WeightMm(i), unit = form.Lengths.Of(pattern.Segment);

            // Grip and blade answer to one of the two widths alone; the shaft shares them out as it tapers.
            var perWidth = (wider[i] - solid.HalfWidth[i]) / Step;
            var shaftShare = pattern.Segment.Zone switch { Zone.Grip => 0, Zone.Blade => 1, _ => pattern.LowerShare };
            var (perShaft, perUpper) = (perWidth * shaftShare, perWidth * (1 - shaftShare));
            var numbers = form.StripsAt(solid.X[i])?.Numbers(pattern.Moments, solid.HalfWidth[i]) ?? SectionNumbers.Even(pattern.Moments);
            nodes[i] = new()
            {
                Pattern = pattern,
                Mass = numbers.Mass.OfArea,
                MassLess = numbers.Mass.SheetMm * numbers.Mass.Core.G0,
                Stiff = numbers.Stiff,
                Hollow = form.Grip.HollowedFaces * form.Grip.HollowDepthMm * pattern.HollowShare,
                HollowRate = 2 * form.Grip.HollowDepthMm * pattern.Rates.Hollow,
                UnitMm = unit,
                WidthPerShaft = perShaft,
                WidthPerUpper = perUpper,
                WidthBase = solid.HalfWidth[i] - perShaft * typical.ShaftWidthMm - perUpper * typical.UpperWidthMm,
                VolumeWeight = weight,
                Along = form.AlongShaftMm(solid.X[i]),
                BendingFlex = benchN * weight * m * m / asked.Wood.ModulusMPa,
                ShearFlex = benchN * weight * Flex.ShearForm * v * v / asked.Wood.ShearModulusMPa * ShearOverMass(solid, i),
                ModulusNeeded = needed[i],
                AllowancePerSlope = TaperAllowance.PerSlopeAt(pattern),
            };
        }

        return nodes;
    }

    // The rows see the weighted area; of one piece that of shear is the same.
    private static double ShearOverMass(PaddleSolid solid, int i) =>
        solid.Form.Strips is null || solid.Area[i] <= 0 ? 1 : solid.MassArea[i] / solid.ShearArea[i];

    private static double[] SampleOutline(PaddleForm form, PaddleSizes sizes, double[] xs)
    {
        var halfWidths = new double[xs.Length];
        form.Outline(sizes).Sample(xs, halfWidths, stackalloc double[xs.Length]);
        return halfWidths;
    }

    // Section modulus that the hardest case needs at each place of straight-grained, untapered wood, mm³.
    private static double[] ModulusNeeded(PaddleSolid solid, BladePressure pressure, WoodInUse wood, Loads loads, double reserve)
    {
        var (form, needed) = (solid.Form, new double[solid.Count]);
        Span<double> moments = stackalloc double[solid.Count];
        var buckling = StrengthCheck.ShaftBucklingN(solid, wood);

        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(solid, pressure, loadCase, buckling, moments);
            var allowed = loadCase.StrengthShare * wood.BendingStrengthMPa / (loadCase.LeastFactor * reserve);
            for (var i = 0; i < needed.Length; i++)
            {
                if (moments[i] <= 0) continue;

                // Moments and thrust stress are those of typical sizes: they change little, and the strength reserve makes it good.
                var thrustStress = loadCase.ThrustN / solid.StiffArea[i];
                var left = form.StripsAt(solid.X[i])?.MostBendingMPa(solid.Section(i), allowed, thrustStress) ?? allowed - thrustStress;
                needed[i] = Math.Max(needed[i], moments[i] / Math.Max(left, 0.05 * allowed));
            }
        }

        return needed;
    }

    // Theory S4 with the weighted numbers, and how it grows with the half-thicknesses at the centre and, the centre kept, at the edge.
    private static (double Value, double ByThickness, double ByEdge) Second(in StripNumbers s, double w, double e, double crown)
    {
        var value = 4.0 / 3 * w * (e * e * e * s.G0 + 3 * e * e * crown * s.G1 + 3 * e * crown * crown * s.G2 + crown * crown * crown * s.G3);
        var byThickness = 4.0 / 3 * w * (3 * e * e * s.G1 + 6 * e * crown * s.G2 + 3 * crown * crown * s.G3);
        return (value, byThickness, 4.0 / 3 * w * (3 * e * e * s.G0 + 6 * e * crown * s.G1 + 3 * crown * crown * s.G2) - byThickness);
    }

    // Half of each size's weight in the thickness, or in its rate along the segment.
    private static (int From, int To) FillHalves(StationPattern pattern, in ThicknessWeights weights, in SpineSensitivity spine, Span<double> halves)
    {
        halves.Clear();
        switch (pattern.Segment.Zone)
        {
            case Zone.Grip:
                halves[PaddleSizes.Upper] = weights.Upper / 2;
                halves[PaddleSizes.Grip] = weights.Grip / 2;
                return (3, 9);
            case Zone.Shaft:
                halves[PaddleSizes.Shaft] = weights.Spine.Shaft / 2;
                halves[PaddleSizes.Upper] = weights.Upper / 2;
                return (1, 4);
            default:
                var s = weights.Spine;
                halves[PaddleSizes.Shaft] = (s.Shaft + s.ThroatSlope * spine.ThroatByShaft) / 2;
                halves[PaddleSizes.Throat] = (s.Throat + s.ThroatSlope * spine.ThroatByThroat + s.MiddleSlope * spine.MiddleByThroat) / 2;
                halves[PaddleSizes.Middle] = (s.Middle + s.ThroatSlope * spine.ThroatByMiddle + s.MiddleSlope * spine.MiddleByMiddle) / 2;
                halves[PaddleSizes.Tip] = (s.Tip + s.MiddleSlope * spine.MiddleByTip) / 2;
                return (1, 7);
        }
    }

    private static void Spread(
        Span<double> gradient, in PlaceTerms node, double byWidth, double byThickness, double byEdge, ReadOnlySpan<double> thickness, double scale)
    {
        gradient[PaddleSizes.ShaftWidth] += scale * byWidth * node.WidthPerShaft;
        gradient[PaddleSizes.UpperWidth] += scale * byWidth * node.WidthPerUpper;
        gradient[PaddleSizes.Edge] += scale * byEdge;
        Lanes.Add(gradient[PaddleSizes.Shaft..], scale * byThickness, thickness[PaddleSizes.Shaft..]); // all but the first of the sizes, eight
    }

    private void AddStrengthRow(
        in PlaceTerms node, double w, double c, double second, double secondByThickness, double secondByEdge, ReadOnlySpan<double> thickness, int from, int to,
        ReadOnlySpan<double> v, in SpineSensitivity spine)
    {
        // What the taper leaves of strength and adds to stress, L14 and L18. The face's rate is of degree one in the sizes, too.
        Span<double> rates = stackalloc double[N];
        FillHalves(node.Pattern, node.Pattern.Rates, spine, rates);
        var rate = -node.HollowRate / 2;
        for (var k = from; k < to; k++) rate += rates[k] * v[k];
        var slope = Math.Abs(rate) / node.UnitMm;
        double share = grain.Share(slope), allowance = 1 + node.AllowancePerSlope * slope;
        var left = share / allowance;
        var leftRate = (grain.ShareRate(slope) - left * node.AllowancePerSlope) / allowance;

        // The square root makes the row nearly linear in the thickness.
        var root = Math.Sqrt(left * second / (c * node.ModulusNeeded));
        var row = NewRow(root - 1);
        var perSecond = 0.5 * root / second;
        Spread(row, node, perSecond * second / w, perSecond * (secondByThickness - second / c), perSecond * secondByEdge, thickness, 1);
        var perRate = 0.5 * root / left * leftRate * Math.Sign(rate) / node.UnitMm;
        Lanes.Add(row[PaddleSizes.Shaft..], perRate, rates[PaddleSizes.Shaft..]);
    }

    private void AddBalanceRows(ReadOnlySpan<double> centreGradient)
    {
        // A hair inside the tolerance, so that rounding the sizes does not cross it.
        double tolerance = 0.98 * aims.BalanceToleranceMm, off = CentreMm - target;
        var row = NewRow((tolerance - off) / BalanceScaleMm);
        for (var k = 0; k < N; k++) row[k] = -centreGradient[k] / BalanceScaleMm;
        row = NewRow((tolerance + off) / BalanceScaleMm);
        for (var k = 0; k < N; k++) row[k] = centreGradient[k] / BalanceScaleMm;
    }

    private void AddFlexRows(double flex, ReadOnlySpan<double> flexGradient)
    {
        if (aims.MostBenchFlexMm is { } most)
        {
            var row = NewRow(0.998 * most - flex);
            for (var k = 0; k < N; k++) row[k] = -flexGradient[k];
        }

        if (aims.LeastBenchFlexMm is { } least)
        {
            var row = NewRow(flex - 1.002 * least);
            for (var k = 0; k < N; k++) row[k] = flexGradient[k];
        }
    }

    private void AddShapeRow(in ShapeRow shape, ReadOnlySpan<double> v)
    {
        var row = NewRow(shape.Constant + shape.FirstWeight * v[shape.First] + shape.SecondWeight * v[shape.Second]);
        row[shape.First] += shape.FirstWeight;
        row[shape.Second] += shape.SecondWeight;
    }

    // What the rows stand for, in the order in which they are filled.
    private Limit[] LimitsInOrder()
    {
        var ofStrength = new Limit("strength.safetyFactor", LimitGroup.Strength, "", 0.5 / aims.MinimumSafetyFactor);
        var ofBalance = new Limit("aims.balanceToleranceMm", LimitGroup.Balance, "mm", 1 / BalanceScaleMm);
        var limits = new List<Limit>(nodes.Length + 4 + shapeRows.Length);
        foreach (ref readonly var node in nodes.AsSpan())
        {
            if (node.ModulusNeeded > 0) limits.Add(ofStrength);
        }

        limits.Add(ofBalance);
        limits.Add(ofBalance);
        if (aims.MostBenchFlexMm is not null) limits.Add(new("aims.benchFlexMm.max", LimitGroup.Flex, "mm", 1));
        if (aims.LeastBenchFlexMm is not null) limits.Add(new("aims.benchFlexMm.min", LimitGroup.Flex, "mm", 1));
        foreach (var shape in shapeRows) limits.Add(new(shape.Id, shape.Group, "mm", 1));
        return [.. limits];
    }

    private Span<double> NewRow(double value)
    {
        Rows[filled] = value + Give[filled];
        var gradient = RowGradients.AsSpan(filled * N, N);
        gradient.Clear();
        filled++;
        return gradient;
    }

    // A rule of shape that a pinned size puts out of reach is held as nearly as it can be: broken beyond help, it would let every
    // other rule be broken as far for nothing.
    private void LoosenUnreachableRows()
    {
        for (var r = 0; r < shapeRows.Length; r++)
        {
            var row = shapeRows[r];
            var most = row.Constant + Math.Max(row.FirstWeight * Low[row.First], row.FirstWeight * High[row.First])
                + Math.Max(row.SecondWeight * Low[row.Second], row.SecondWeight * High[row.Second]);
            if (most < 0) shapeRows[r] = row with { Constant = row.Constant - most };
        }
    }

    private void SetLimits(PaddleSpecification asked, LeastSpine leastSpine)
    {
        var fixedSizes = asked.Fixed;
        var usual = SizeLimits.For(
            asked.Wood.IsSoftwood, SizeLimits.SmallShare(asked.Form.Places.HandSpacingMm), asked.UsableThicknessMm, asked.LatticeMm);
        for (var k = 0; k < N; k++)
        {
            (Low[k], High[k]) = (usual[k].Min, usual[k].Max);
            if (fixedSizes[k] is { } size) (Low[k], High[k]) = (size, size);
        }

        RaiseLow(fixedSizes, PaddleSizes.Middle, leastSpine.MiddleMm);
        RaiseLow(fixedSizes, PaddleSizes.Tip, leastSpine.TipMm);
        RaiseLow(fixedSizes, PaddleSizes.Grip, SizeLimits.LeastGripCoreMm + asked.Form.Grip.HollowedFaces * asked.Form.Grip.HollowDepthMm);

        // A pinned size bounds those that must be smaller from above and those that must be larger from below: down the blade, and from
        // the lower hand to the grip.
        BoundByPins(fixedSizes, [1, 4, 5, 6, 7]);
        BoundByPins(fixedSizes, [0, 2]);
        BoundByPins(fixedSizes, [1, 3]);
        for (var k = 0; k < N; k++) Start[k] = Math.Clamp(Typical[k], Low[k], High[k]);
    }

    private void RaiseLow(double?[] fixedSizes, int size, double leastMm)
    {
        if (fixedSizes[size] is null) Low[size] = Math.Clamp(leastMm, Low[size], High[size]);
    }

    private void BoundByPins(double?[] fixedSizes, ReadOnlySpan<int> falling)
    {
        for (var a = 0; a < falling.Length; a++)
        {
            if (fixedSizes[falling[a]] is not { } size) continue;
            for (var b = 0; b < falling.Length; b++)
            {
                var other = falling[b];
                if (fixedSizes[other] is not null) continue;
                if (b > a) (Low[other], High[other]) = (Math.Min(Low[other], size), Math.Min(High[other], size));
                if (b < a) (Low[other], High[other]) = (Math.Max(Low[other], size), Math.Max(High[other], size));
            }
        }
    }
}
