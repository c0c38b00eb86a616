using Paddle.Design.Checks;
using Paddle.Design.Laminating;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Laminating;

public class GlueLineTests
{
    private const double Width = 120, Thickness = 10, Line = 20;

    // Hand formula: a slab of one wood under an even pressure bends as one strip does: nothing passes the line.
    [Fact]
    public void Formula_no_shear_in_an_even_slab()
    {
        var (solid, pressure, brace, moments, i) = Slab(("white-ash", 2 * Line), ("white-ash", 80));
        var (along, across) = GlueLineShear.Profile(solid, pressure, brace, moments, Line)[i];
        Assert.Equal(0, along, 1e-9);
        Assert.Equal(0, across, 1e-6);
    }

    // Hand formula: wings of modulus n times the middle's carry s = n·b/(2a + 2n·b) of the bending and catch b/(2a + 2b) of the pressure; the
    // difference passes the line, 1.5 times its mean at the middle plane of a rectangle. Strips a = 20, b = 40 mm on each side.
    [Fact]
    public void Formula_stiffer_wings_take_load_from_the_middle()
    {
        var (solid, pressure, brace, moments, i) = Slab(("western-redcedar", 2 * Line), ("white-ash", 80));
        double n = TestPaddles.Ash.ModulusMPa / TestPaddles.Wood("western-redcedar").ModulusMPa, b = Width / 2 - Line;
        var strip = brace.ForceN / pressure.AreaMm2 * Width;
        var flow = strip * Math.Abs(b / Width - n * b / (2 * Line + 2 * n * b));

        var (along, across) = GlueLineShear.Profile(solid, pressure, brace, moments, -Line)[i];

        Assert.Equal(0, along, 1e-9);
        TestPaddles.AssertRelative(1.5 * flow / Thickness, across, 1e-3);
    }

    // Hand formula: a slab that widens evenly, w = w₀ + k·x. The force of the half above beyond the line is (w − a)/w of the whole's, M·3/(8c), and grows by
    // ak/w² of it; per length that is the mean shear over the half-thickness, half of that at the face. So gentle a slope, 0.02, loses 4 % of it.
    [Fact]
    public void Formula_bending_flows_into_a_widening_slab()
    {
        var (solid, pressure, brace, moments, i) = Slab(("white-ash", 2 * Line), ("white-ash", 80));
        const double Slope = 0.02, C = Thickness / 2;
        for (var k = 0; k < solid.Count; k++)
        {
            solid.HalfWidth[k] = 60 + Slope * (solid.X[k] - solid.X[i]);
            solid.FlatSecondMoment[k] = 4.0 / 3 * solid.HalfWidth[k] * C * C * C;
        }

        var (along, _) = GlueLineShear.Profile(solid, pressure, brace, moments, Line)[i];
        TestPaddles.AssertRelative(0.96 * 2 * moments[i] * 3 * Line * Slope / (8 * C * 60 * 60) / C, along, 0.01);
    }

    // Three-dimensional finite elements of our own (CalculiX, 20-node bricks of 6 mm, ratios of the wood's moduli from the Wood Handbook's tables 5-1 and 5-2,
    // from memory; wings of n times the middle's moduli): the largest shear along the paddle in the plane y = line under the hard stroke, from 20 mm behind
    // the throat to 60 mm before the tip. The formula is an upper estimate: it must not fall short of them, nor be three times as much.
    [Theory]
    [InlineData("ottertail", "black-cherry", 880, 16, 1, 2.46, 23.4, 10.3, 8.3, 5.3, 27.9, 28.1, 22.2, 22.2, 22)]
    [InlineData("ottertail", "black-cherry", 880, 16, 1.2, 2.59, 23.4, 10.3, 8.3, 5.3, 27.9, 28.1, 22.2, 22.2, 22)]
    [InlineData("ottertail", "black-cherry", 880, 16, 0.7, 2.22, 23.4, 10.3, 8.3, 5.3, 27.9, 28.1, 22.2, 22.2, 22)]
    [InlineData("ottertail", "sitka-spruce", 760, 16, 1, 2.13, 25.5, 9.7, 6.1, 3.5, 29, 29.4, 22, 22.4, 28.7)]
    [InlineData("ottertail", "sitka-spruce", 760, 16, 1.4, 2.35, 25.5, 9.7, 6.1, 3.5, 29, 29.4, 22, 22.4, 28.7)]
    [InlineData("ottertail", "white-ash", 960, 20, 1, 1.81, 23.8, 14, 8.5, 5.5, 27.2, 28.8, 22.2, 22.2, 22)]
    [InlineData("ottertail", "white-ash", 960, 30, 1, 1.20, 23.8, 14, 8.5, 5.5, 27.2, 28.8, 22.2, 22.2, 22)]
    [InlineData("square-tip", "white-ash", 860, 16, 1, 1.39, 23, 9.3, 7.3, 4.3, 28, 28, 22.2, 22.2, 22)]
    [InlineData("square-tip", "white-ash", 860, 30, 1, 1.92, 23, 9.3, 7.3, 4.3, 28, 28, 22.2, 22.2, 22)]
    [InlineData("beavertail", "sitka-spruce", 900, 18, 1, 0.94, 27.9, 10.1, 8, 5, 29, 29.6, 22, 22.6, 22)]
    [InlineData("voyageur", "black-cherry", 940, 15, 1, 2.10, 26.1, 10.3, 7.6, 4.6, 28.9, 29.8, 22, 22.8, 22)]
    [InlineData("teardrop", "sugar-maple", 820, 16, 1, 1.39, 23, 10.5, 8.5, 5.5, 28, 28, 22.2, 22.2, 22)]
    [InlineData("teardrop", "sugar-maple", 820, 40, 1, 1.99, 23, 10.5, 8.5, 5.5, 28, 28, 22.2, 22.2, 22)]
    [InlineData("sturgeon-nose", "white-ash", 920, 17, 1, 0.90, 24.2, 13.1, 8.5, 5.5, 26.8, 29.2, 22.2, 22.2, 22)]
    public void Finite_elements_shear_in_a_line(
        string family, string species, double handMm, double lineMm, double n, double foundMPa,
        double throat, double middle, double tip, double edge, double width, double thickness, double upperWidth, double upperThickness, double grip)
    {
        var asked = new DesignRequest
        {
            HandSpacingMm = handMm,
            Blade = new() { Family = family, ThroatThicknessMm = throat, MiddleThicknessMm = middle, TipThicknessMm = tip, EdgeThicknessMm = edge },
            Shaft = new() { WidthMm = width, ThicknessMm = thickness, UpperWidthMm = upperWidth, UpperThicknessMm = upperThickness },
            Grip = new() { ThicknessMm = grip },
            Wood = new() { Species = species },
        }.Complete().Specification;
        var wing = asked.Wood with { ModulusMPa = n * asked.Wood.ModulusMPa };
        var report = PaddleDesigner.Design(asked.GluedUp(new Laminate([new(asked.Wood, 2 * lineMm), new(wing, 100)], true, Adhesive.All[0])));
        var (stations, pressure, hard) = (report.Stations, BladePressure.On(report.Stations), report.Specification.Loads.Case("hard-stroke"));
        var moments = new double[stations.Count];
        BendingMoments.Fill(stations, pressure, hard, report.Strength.BucklingLoadN, moments);

        var most = GlueLineShear.Profile(stations, pressure, hard, moments, lineMm).Max(at => at.AlongMPa);

        Assert.InRange(most / foundMPa, 1, 3);
    }

    // A middle strip about as wide as the shaft and lighter wings: the usual way to glue one up, and it does not shear (common practice, no source).
    [Theory]
    [InlineData("black-cherry", "sitka-spruce", 760)]
    [InlineData("black-cherry", "sitka-spruce", 880)]
    [InlineData("white-ash", "sitka-spruce", 880)]
    [InlineData("black-cherry", "western-redcedar", 920)]
    [InlineData("sitka-spruce", "sitka-spruce", 880)]
    public void A_usual_middle_and_lighter_wings_hold(string middle, string wings, double handMm)
    {
        foreach (var middleMm in new double[] { 28, 32, 40, 50 })
        {
            var asked = new DesignRequest
            {
                HandSpacingMm = handMm,
                Wood = new() { Species = middle },
                Construction = new() { Kind = "laminated", Strips = [new() { WidthMm = middleMm }, new() { Species = wings, WidthMm = 70 }] },
            };
            var report = PaddleDesigner.Design(asked.Complete().Specification);
            Assert.Equal(CheckStatus.Pass, report.Checks.Single(check => check.Id == "construction.glue-line").Status);
        }
    }

    // A paddle of one wood needs no glue lines to be strong: those of usual places hold with room to spare.
    [Fact]
    public void Usual_lines_hold()
    {
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings));
        Assert.True(report.Laminate!.Shear!.Margin > 1, report.Laminate.Shear.ToString());
        Assert.InRange(report.Laminate.Shear.AtMm, report.Specification.Form.Places.ThroatMm, report.Specification.Form.Places.OverallMm);
        Assert.Contains(report.Checks, check => check.Id == "construction.glue-line");
        Assert.Contains(report.Cautions, caution => caution.Id == "adhesive");
    }

    // Hand formula: tangential shrinkage of white ash 7.8 %, of western redcedar 5.0 % (Wood Handbook table 4-3); from 12 to 16 % they swell
    // 4/(3000/7.8 − 18) = 0.01091 and 4/(3000/5.0 − 18) = 0.00687.
    [Fact]
    public void Formula_swelling_of_unlike_neighbours()
    {
        var pair = SwellingMismatch.Between(TestPaddles.Ash, TestPaddles.Wood("western-redcedar"));
        TestPaddles.AssertRelative(0.404, pair.StrainPercent, 0.005);
        double a = Laminate.AcrossMPa(TestPaddles.Ash), b = Laminate.AcrossMPa(TestPaddles.Wood("western-redcedar"));
        TestPaddles.AssertRelative(pair.StrainPercent / 100 / (1 / a + 1 / b), pair.StressMPa, 1e-12);
        Assert.Equal(0, SwellingMismatch.Between(TestPaddles.Ash, TestPaddles.Ash).StressMPa);
    }

    // Counting: a middle strip as wide as the shaft and one pair of wings: one whole strip, two blade wings, and two at the grip, which is wider.
    [Fact]
    public void Counting_strips_and_joints()
    {
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings));
        var up = report.Laminate!.GlueLines;
        Assert.Equal([(1, "whole"), (2, "blade"), (2, "grip")], up.Strips.Select(strip => (strip.Count, strip.Part)));
        Assert.Equal(4, up.Count);
        var blade = up.Strips[1];
        Assert.Equal(18, report.Outline.HalfBreadthMm(blade.ToMm), 0.3);
        Assert.True(blade.FromMm > report.Specification.Form.Places.ThroatMm);

        // The outline crosses a line where its half-breadth is the line's, by the curve itself.
        Assert.Equal(18, report.Outline.HalfBreadthMm(blade.FromMm), 0.2);
        TestPaddles.AssertRelative(1.2 * up.AreaCm2 * 1e-4 * 350, up.GlueG, 1e-12);
    }

    [Fact]
    public void Unlike_sides_are_warned_of()
    {
        var lopsided = LaminatedDesignTests.Strips(false, ("western-redcedar", 60), ("white-ash", 36), ("white-ash", 60));
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(lopsided, TestPaddles.UsualSizes));
        Assert.Equal(CheckStatus.Warn, report.Checks.First(check => check.Id == "construction.symmetry").Status);
    }

    // Property: every wood of the catalogue has a shear strength of the order of the published: 4 to 20 MPa before the percentile.
    [Fact]
    public void Property_every_wood_can_be_glued()
    {
        foreach (var species in WoodCatalogue.All)
        {
            var wood = TestPaddles.Wood(species.Id);
            var joint = JointStrength.Between(wood, wood);
            Assert.InRange(joint.LengthwiseMPa, 3, 20);
            Assert.InRange(joint.RollingMPa, 1.5, 14);
        }
    }

    // A prismatic slab with strips, the brace's moments on it, and a place well inside the blade.
    private static (PaddleSolid Solid, BladePressure Pressure, LoadCase Brace, double[] Moments, int Place) Slab(params (string Species, double WidthMm)[] strips)
    {
        var laminate = LaminatedDesignTests.Strips(true, strips);
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail")) with { Strips = laminate.Layup(laminate.Strips[0].Wood) };
        var grid = StationGrid.Printed(form.Lengths, form.Blade.WidestAt, 1);
        var solid = TestPaddles.Bar(form, grid, Width, Thickness);
        for (var k = 0; k < solid.Count; k++)
        {
            var section = solid.Section(k);
            solid.FlatSecondMoment[k] = form.Strips!.Numbers(section.Moments, section.HalfWidthMm).Stiff.FlatSecondMomentMm4(section);
        }

        var pressure = BladePressure.On(solid);
        var brace = TestPaddles.Loads().Cases.First(loadCase => loadCase.Action == LoadAction.EvenPressure);

        // An even strip force q on the whole blade: M = q(L − x)²/2.
        var strip = brace.ForceN / pressure.AreaMm2 * Width;
        var moments = solid.X.Select(x => strip * Math.Pow(form.Places.OverallMm - x, 2) / 2).ToArray();
        return (solid, pressure, brace, moments, Array.FindIndex(solid.X, x => x > form.Places.ThroatMm + 300));
    }
}
