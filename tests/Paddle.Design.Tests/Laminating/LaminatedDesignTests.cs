using Paddle.Design.Balance;
using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Laminating;

public class LaminatedDesignTests
{
    private static readonly PaddleForm Form = TestPaddles.Form(TestPaddles.Blade("ottertail"));

    internal static Laminate Strips(bool isMirrored, params (string Species, double WidthMm)[] strips) => new(
        [.. strips.Select(strip => new Strip(TestPaddles.Wood(strip.Species), strip.WidthMm))], isMirrored, Adhesive.All[0]);

    internal static Laminate CedarWings => Strips(true, ("white-ash", 36), ("western-redcedar", 60));

    internal static PaddleSpecification Asked(Laminate? laminate, PaddleSizes? sizes = null, string wood = "white-ash")
    {
        var asked = TestPaddles.Asked(Form, TestPaddles.Wood(wood), loads: TestPaddles.Loads(leastFactor: 1.3), aims: new(BalanceAim.LowerHand, 12, 1.3, null, null, null));
        if (sizes is not null) asked = asked with { Pinned = PinnedSizes.To(sizes) };
        return asked.GluedUp(laminate);
    }

    // Property: glued up of one and the same wood it is the paddle of one piece, solved or not; 1e-9 is the incomplete Beta function's rounding.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Property_strips_of_one_wood_are_one_piece(bool isSolved)
    {
        var sizes = isSolved ? null : TestPaddles.UsualSizes;
        var one = PaddleDesigner.Design(Asked(null, sizes));
        var strips = PaddleDesigner.Design(Asked(Strips(true, ("white-ash", 12), ("white-ash", 9), ("white-ash", 70)), sizes));

        Assert.Equal(one.Sizes, strips.Sizes);
        TestPaddles.AssertRelative(one.Mass.TotalG, strips.Mass.TotalG, 1e-9);
        TestPaddles.AssertRelative(one.Mass.CentreOfMassMm, strips.Mass.CentreOfMassMm, 1e-9);
        TestPaddles.AssertRelative(one.Mass.InertiaTopHandKgM2, strips.Mass.InertiaTopHandKgM2, 1e-9);
        TestPaddles.AssertRelative(one.Flex.BenchFlexMm, strips.Flex.BenchFlexMm, 1e-9);
        TestPaddles.AssertRelative(one.Flex.FirstFrequencyHz, strips.Flex.FirstFrequencyHz, 1e-9);
        TestPaddles.AssertRelative(one.Strength.BucklingLoadN, strips.Strength.BucklingLoadN, 1e-9);
        foreach (var (a, b) in one.Strength.Cases.Zip(strips.Strength.Cases)) TestPaddles.AssertRelative(a.SafetyFactor, b.SafetyFactor, 1e-9, a.Case.Id);
    }

    // Property: a list from the middle outward and the whole list from edge to edge are one paddle.
    [Fact]
    public void Property_mirrored_and_written_out_are_the_same()
    {
        var mirrored = PaddleDesigner.Design(Asked(Strips(true, ("white-ash", 20), ("western-redcedar", 25), ("black-cherry", 45)), TestPaddles.UsualSizes));
        var whole = PaddleDesigner.Design(Asked(
            Strips(false, ("black-cherry", 45), ("western-redcedar", 25), ("white-ash", 20), ("western-redcedar", 25), ("black-cherry", 45)), TestPaddles.UsualSizes));
        Assert.Equal(mirrored.Mass, whole.Mass);
        Assert.Equal(mirrored.Flex, whole.Flex);
        Assert.Equal(mirrored.Strength.Cases, whole.Strength.Cases);
    }

    // Quadrature apart from the engine's: mass and balance by 2 000 slices of 400 columns each, every column with its own wood's density.
    [Fact]
    public void Quadrature_mass_and_balance()
    {
        var report = PaddleDesigner.Design(Asked(CedarWings, TestPaddles.UsualSizes));
        const int Slices = 2000, Columns = 400;
        double ash = TestPaddles.Ash.DensityKgM3 * 1e-6, cedar = TestPaddles.Wood("western-redcedar").DensityKgM3 * 1e-6, length = Form.Places.OverallMm;
        var xs = Enumerable.Range(0, Slices).Select(k => length * (k + 0.5) / Slices).ToArray();
        var solid = PaddleSolid.Shape(Form, report.Sizes, report.Outline, StationGrid.Through(Form.Lengths, xs));
        double mass = 0, first = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var section = solid.Section(i);
            for (var k = 0; k < Columns; k++)
            {
                var u = (k + 0.5) / Columns;
                var density = u * section.HalfWidthMm < 18 ? ash : cedar;
                var grams = 4 * section.HalfThicknessAtMm(u) * section.HalfWidthMm / Columns * density * length / Slices;
                mass += grams;
                first += grams * xs[i];
            }
        }

        TestPaddles.AssertRelative(mass, report.Mass.TotalG, 2e-4);
        Assert.Equal(first / mass, report.Mass.CentreOfMassMm, 0.1);
    }

    // Solved again with its own woods: a spruce shaft under cherry wings balances and holds.
    [Fact]
    public void Solved_with_its_woods_it_balances()
    {
        var glued = Strips(true, ("sitka-spruce", 36), ("black-cherry", 60));
        var report = PaddleDesigner.Design(Asked(glued, wood: "sitka-spruce"));
        Assert.True(report.Outcome.IsMet, string.Join(' ', report.Outcome.Unmet.Select(aim => aim.Message)));
        Assert.True(report.Balance.Achieved);
        Assert.True(report.Strength.Governing.Margin >= 1);
    }

    // Light wings on a heavy shaft are lighter, and balance nearer to the grip than the same sizes in one wood: a lever, whatever the engine says.
    // Where the aim is then out of reach the design says so, as one of one piece does.
    [Fact]
    public void Light_wings_save_weight_and_take_balance()
    {
        var (one, glued) = (PaddleDesigner.Design(Asked(null, TestPaddles.UsualSizes)), PaddleDesigner.Design(Asked(CedarWings, TestPaddles.UsualSizes)));
        Assert.True(glued.Mass.TotalG < one.Mass.TotalG - 50, $"{glued.Mass.TotalG} against {one.Mass.TotalG}");
        Assert.True(glued.Mass.CentreOfMassMm < one.Mass.CentreOfMassMm - 20);
        Assert.True(glued.Flex.BenchFlexMm > one.Flex.BenchFlexMm);
        Assert.Contains(PaddleDesigner.Design(Asked(CedarWings)).Outcome.Unmet, aim => aim.Code == "balance");
    }

    // Property: the shares that the solver worked with are those of the sizes it ends at: stated again around them, the problem has the mass and
    // the balance of the fine grid (5e-4 is what the coarse one leaves), and no random shift of the sizes by up to 1 mm costs less.
    [Theory]
    [InlineData(36, "western-redcedar")]
    [InlineData(9, "western-redcedar")]
    [InlineData(22, "sugar-maple")]
    public void Property_the_solver_settles(double middleMm, string wings)
    {
        var asked = Asked(Strips(true, ("white-ash", middleMm), (wings, 80)));
        var report = PaddleDesigner.Design(asked);
        var problem = DesignProblem.State(asked, around: report.Sizes);
        var v = new double[PaddleSizes.Count];
        report.Sizes.CopyTo(v);
        problem.Evaluate(v);
        TestPaddles.AssertRelative(report.Mass.TotalG, problem.MassG, 5e-4, "mass");
        Assert.Equal(report.Finished.CentreOfMassMm, problem.CentreMm, 0.5);
        if (!report.Outcome.IsMet) return;

        var random = new Random(3);
        for (var n = 0; n < 300; n++)
        {
            var w = new double[v.Length];
            for (var k = 0; k < w.Length; k++) w[k] = Math.Clamp(v[k] + 2 * random.NextDouble() - 1, problem.Low[k], problem.High[k]);
            var sizes = PaddleSizes.FromVector(w);
            var around = DesignProblem.State(asked, around: sizes);
            around.Evaluate(w);
            // Rounding to the lattice costs up to half a gram, and so may the shares' own change with the shaft's width.
            Assert.True(
                around.Rows.Take(around.RowCount).Min() < 0 || around.CostG > problem.CostG - 1.5, $"{around.CostG:F2} g at {sizes}, {problem.CostG:F2} g at {report.Sizes}");
        }
    }
}
