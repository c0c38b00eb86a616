using Paddle.Design.Balance;
using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;
using static Paddle.Design.Tests.Laminating.LaminatedDesignTests;

namespace Paddle.Design.Tests.Laminating;

public class GluedOnPartsTests
{
    private const double Beyond = 1000;
    private static readonly Facing Maple = new(TestPaddles.Wood("sugar-maple"), 0.8);
    private static readonly TipPiece Tip = new(TestPaddles.Wood("sugar-maple"), 30);

    private static Laminate Spruce => Strips(true, ("sitka-spruce", 36), ("sitka-spruce", 60));

    // Textbook: sandwich beam, 200 mm wide, plastic core 150 mm of E = 800 MPa, aluminium faces of 5 mm and 72 GPa, under 3.0 kN·m (Gere, Mechanics of
    // Materials, example of composite beams, from memory; figures worked again by hand): I of the faces 12.017e6 mm⁴, of the core 56.25e6 mm⁴,
    // 19.0 MPa at the outside of the faces and 0.198 MPa in the core.
    [Fact]
    public void Textbook_sandwich_beam()
    {
        var section = new Section(100, 80, 80, SectionMoments.Ellipse);
        var beam = new StripLayup([new(-Beyond, Beyond, 1, 1, 1, 1, 1, 1)]) { Sheet = new(5, 1, 90, 1, 90, 1) };
        var second = beam.Numbers(section.Moments, 100).Stiff.FlatSecondMomentMm4(section);
        TestPaddles.AssertRelative(90 * 12.017e6 + 56.25e6, second, 1e-4);

        var bending = 3e6 * 80 / second;
        TestPaddles.AssertRelative(19.0, 90 * bending, 2e-3);
        TestPaddles.AssertRelative(0.198, beam.Governing(section, bending, 0, ofStrips: true).StressMPa, 3e-3);
        Assert.Equal(0.198, beam.Governing(section, bending, 0).StressMPa * 75 / 80 / 90, 0.001);
        Assert.Equal(90 * bending, (beam with { Sheet = new(5, 1, 90, 1, 45, 1) }).Governing(section, bending, 0).StressMPa, 6);
    }

    // Quadrature: columns of a ridged blade's section, each with its own sheets and strip.
    [Fact]
    public void Quadrature_a_faced_section_of_strips()
    {
        var section = new Section(66, 9, 2.5, SectionMoments.For(1.2, 0.9));
        var strips = new StripLayup([new(-Beyond, -18, 0.6, 0.5, 0.5, 1, 1, 1), new(-18, 18, 1, 1, 1, 1, 1, 1), new(18, Beyond, 0.6, 0.5, 0.5, 1, 1, 1)]) { Sheet = new(0.8, 1.2, 1.4, 1, 1, 1) };
        var numbers = strips.Numbers(section.Moments, 66);
        const int Columns = 200000;
        double mass = 0, second = 0;
        for (var k = 0; k < Columns; k++)
        {
            var u = (k + 0.5) / Columns;
            var (h, dy) = (section.HalfThicknessAtMm(u), 66.0 / Columns);
            var (density, modulus) = u * 66 < 18 ? (1, 1) : (0.6, 0.5);
            mass += 4 * dy * (density * (h - 0.8) + 1.2 * 0.8);
            second += 4 * dy * (modulus * Math.Pow(h - 0.8, 3) + 1.4 * (Math.Pow(h, 3) - Math.Pow(h - 0.8, 3))) / 3;
        }

        TestPaddles.AssertRelative(mass, numbers.Mass.AreaMm2(section), 1e-5);
        TestPaddles.AssertRelative(second, numbers.Stiff.FlatSecondMomentMm4(section), 1e-5);
    }

    // Property: sheets of the strips' own wood change nothing.
    [Fact]
    public void Property_sheets_of_the_same_wood_are_none()
    {
        var (plain, faced) = (PaddleDesigner.Design(Asked(Spruce, wood: "sitka-spruce")), PaddleDesigner.Design(Asked(Spruce with { Facing = new(TestPaddles.Wood("sitka-spruce"), 0.8) }, wood: "sitka-spruce")));
        Assert.Equal(plain.Sizes, faced.Sizes);
        TestPaddles.AssertRelative(plain.Mass.TotalG, faced.Mass.TotalG, 1e-9);
        TestPaddles.AssertRelative(plain.Flex.BenchFlexMm, faced.Flex.BenchFlexMm, 1e-9);
        TestPaddles.AssertRelative(plain.Strength.Governing.SafetyFactor, faced.Strength.Governing.SafetyFactor, 1e-9);
    }

    // Quadrature apart from the engine's: what tip piece and sheets weigh more, by 4 000 slices of the blade.
    [Theory]
    [InlineData(12)]
    [InlineData(30)]
    [InlineData(71.3)]
    public void Quadrature_mass_and_balance_of_what_is_glued_on(double tipMm)
    {
        var glued = Spruce with { Facing = Maple, TipPiece = Tip with { LengthMm = tipMm } };
        var (plain, report) = (PaddleDesigner.Design(Asked(Spruce, TestPaddles.UsualSizes, "sitka-spruce")), PaddleDesigner.Design(Asked(glued, TestPaddles.UsualSizes, "sitka-spruce")));
        var form = report.Specification.Form;
        const int Slices = 4000;
        var (places, extra) = (form.Places, TestPaddles.Wood("sugar-maple").DensityKgM3 - TestPaddles.Wood("sitka-spruce").DensityKgM3);
        double from = places.ThroatMm + 0.25 * places.BladeMm, step = (places.OverallMm - from) / Slices, mass = 0, first = 0;
        var solid = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Through(form.Lengths, [.. Enumerable.Range(0, Slices).Select(k => from + (k + 0.5) * step)]));
        for (var i = 0; i < Slices; i++)
        {
            var grams = extra * 1e-6 * step * (solid.X[i] > places.OverallMm - tipMm ? solid.Area[i] : 4 * solid.HalfWidth[i] * 0.8);
            mass += grams;
            first += grams * solid.X[i];
        }

        // What no quadrature by slices sees, a share of a slice at the line: 4 mm² of 0.15 mm.
        Assert.Equal(mass, report.Mass.TotalG - plain.Mass.TotalG, 0.03);
        Assert.Equal((plain.Mass.TotalG * plain.Mass.CentreOfMassMm + first) / (plain.Mass.TotalG + mass), report.Mass.CentreOfMassMm, 0.05);
    }

    // Property: the solver's mass, balance and rows are those of the solid with tip piece and sheets, and its gradients those of its values.
    [Fact]
    public void Property_the_solver_sees_what_is_glued_on()
    {
        var asked = Asked(Strips(true, ("sitka-spruce", 36), ("black-cherry", 60)) with { Facing = Maple, TipPiece = Tip }, wood: "sitka-spruce");
        asked = asked with { Aims = asked.Aims with { MostBenchFlexMm = 9 } };
        var report = PaddleDesigner.Design(asked);
        var problem = DesignProblem.State(asked, around: report.Sizes);
        var v = new double[PaddleSizes.Count];
        report.Sizes.CopyTo(v);
        problem.Evaluate(v);
        TestPaddles.AssertRelative(report.Mass.TotalG, problem.MassG, 5e-4);
        Assert.Equal(report.Finished.CentreOfMassMm, problem.CentreMm, 0.5);
        Assert.True(report.Outcome.IsMet, string.Join(' ', report.Outcome.Unmet.Select(aim => aim.Message)));

        var (cost, rows) = (problem.CostGradient.ToArray(), problem.RowGradients.ToArray());
        const double Step = 1e-4;
        for (var k = 0; k < v.Length; k++)
        {
            double[] Values(double shift)
            {
                v[k] += shift;
                problem.Evaluate(v);
                v[k] -= shift;
                return [problem.CostG, .. problem.Rows[..problem.RowCount]];
            }

            var (above, below) = (Values(Step), Values(-Step));
            double[] exact = [cost[k], .. Enumerable.Range(0, problem.RowCount).Select(r => rows[r * PaddleSizes.Count + k])];
            for (var r = 0; r < exact.Length; r++) Assert.Equal((above[r] - below[r]) / (2 * Step), exact[r], 2e-5 * Math.Max(1, Math.Abs(exact[r])));
        }
    }

    // Textbook: shear between face and core of a bar of one section, VQ/(Ib), Q = n b t(c − t/2) (Jourawski).
    [Fact]
    public void Textbook_shear_between_sheet_and_strips()
    {
        const double Width = 100, Thickness = 10, Sheet = 0.8;
        var laid = Spruce with { Facing = Maple };
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        form = form with { Strips = laid.Layup(laid.Strips[0].Wood, form.Places) };
        var solid = TestPaddles.Bar(form, StationGrid.Printed(form.Lengths, form.Blade.WidestAt, 5), Width, Thickness);
        var n = Maple.Wood.ModulusMPa / laid.Strips[0].Wood.ModulusMPa;
        var second = Width * (Math.Pow(Thickness - 2 * Sheet, 3) + n * (Math.Pow(Thickness, 3) - Math.Pow(Thickness - 2 * Sheet, 3))) / 12;
        Array.Fill(solid.FlatSecondMoment, second);
        const double ForceN = 120;
        var moments = solid.X.Select(x => ForceN * (form.Places.OverallMm - x)).ToArray();
        var place = Array.FindIndex(solid.X, x => x > form.Places.ThroatMm + 300);
        TestPaddles.AssertRelative(ForceN * n * Width * Sheet * (Thickness - Sheet) / 2 / (second * Width), GluedOnParts.ShearMPa(solid, moments, place), 1e-6);
    }

    // A tip of any length or wood leaves the aims as they were: it is there to be replaced.
    [Theory]
    [InlineData("sugar-maple", 10)]
    [InlineData("white-ash", 40)]
    public void A_tip_piece_is_told_of_and_fails_no_aim(string species, double lengthMm)
    {
        var report = PaddleDesigner.Design(Asked(Spruce with { TipPiece = new(TestPaddles.Wood(species), lengthMm) }, wood: "sitka-spruce"));
        Assert.DoesNotContain(report.Outcome.Unmet, aim => aim.Code.StartsWith("strength.", StringComparison.Ordinal));
        Assert.True(report.Laminate!.TipPiece!.Bending.SafetyFactor < 1);
        Assert.Equal(TestPaddles.Wood(species).CrossGrainStrengthMPa, report.Laminate.TipPiece.Bending.StrengthMPa / 1.1, 0.02 * report.Laminate.TipPiece.Bending.StrengthMPa);
    }

    // A hard tip moves balance towards it by what it weighs more, and is bent across its grain; sheets stiffer than the strips stiffen the blade.
    [Fact]
    public void What_is_glued_on_is_told()
    {
        var (plain, report) = (
            PaddleDesigner.Design(Asked(Spruce, TestPaddles.UsualSizes, "sitka-spruce")),
            PaddleDesigner.Design(Asked(Spruce with { Facing = Maple, TipPiece = Tip }, TestPaddles.UsualSizes, "sitka-spruce")));
        Assert.True(report.Mass.CentreOfMassMm > plain.Mass.CentreOfMassMm + 5);
        Assert.True(report.Flex.BenchFlexMm < plain.Flex.BenchFlexMm);
        var (laminate, up) = (report.Laminate!, report.Laminate!.GlueLines);
        Assert.InRange(laminate.TipPiece!.Bending.AtMm, report.Specification.Form.Places.OverallMm - 30 - 1e-6, report.Specification.Form.Places.OverallMm);
        Assert.InRange(laminate.Facing!.Core.SafetyFactor, 1, 20);
        Assert.Equal(laminate.Facing.Sheet.AtMm, laminate.Facing.Core.AtMm, 100.0);
        Assert.Equal(("sugar-maple", 1, 30.0), (up.Strips[^1].Species, up.Strips[^1].Count, up.Strips[^1].WidthMm));
        Assert.Equal(plain.Laminate!.GlueLines.Count + 1, up.Count);
        Assert.Equal(plain.Laminate.GlueLines.Strips[0].LengthMm - 30, up.Strips[0].LengthMm, 1.0);
        Assert.Contains(report.Cautions, caution => caution.Id == "tip-piece");
        Assert.Contains(report.Checks, check => check.Id == "construction.facing");
    }
}
