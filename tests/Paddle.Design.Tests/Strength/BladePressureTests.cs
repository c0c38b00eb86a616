using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

public class BladePressureTests
{
    private const double LengthMm = 500;
    private const double HalfMm = 80;

    // Worked values of the reference figures for the centre of pressure: blades 500 mm long, pole above the throat (mm). Table printed to
    // 0.1 mm; an ellipse of four Béziers is round to 0.03 %, which moves nothing by 0.05 mm.
    [Theory]
    [InlineData("rectangle", 250.0, 285.7, 311.1, 351.7, 375.0)]
    [InlineData("ellipse", 250.0, 276.9, 296.4, 329.2, 350.0)]
    [InlineData("triangle wide at tip", 333.3, 355.0, 368.6, 388.4, 400.0)]
    [InlineData("triangle wide at throat", 166.7, 193.2, 216.4, 264.7, 300.0)]
    public void Worked_centre_of_pressure(string shape, double centroid, double at900, double at400, double at100, double at0)
    {
        var (pressure, throat) = On(shape);
        Assert.Equal(centroid, pressure.CentroidMm - throat, 0.051);
        Assert.Equal(at900, pressure.CentreOfPressureMm(900) - throat, 0.051);
        Assert.Equal(at400, pressure.CentreOfPressureMm(400) - throat, 0.051);
        Assert.Equal(at100, pressure.CentreOfPressureMm(100) - throat, 0.051);
        Assert.Equal(at0, pressure.CentreOfPressureMm(0) - throat, 0.051);
    }

    // Hand formula: rectangle, pole p above: x = −p + ¾((L + p)⁴ − p⁴)/((L + p)³ − p³), by integrating (x + p)³ and (x + p)².
    [Fact]
    public void Formula_rectangle()
    {
        var (pressure, throat) = On("rectangle");
        for (var p = 0.0; p <= 2000; p += 100)
        {
            var expected = -p + 0.75 * (Math.Pow(LengthMm + p, 4) - Math.Pow(p, 4)) / (Math.Pow(LengthMm + p, 3) - Math.Pow(p, 3));
            TestPaddles.AssertRelative(expected, pressure.CentreOfPressureMm(p) - throat, 1e-9);
        }
    }

    // Hand formulas: areas of the four shapes.
    [Fact]
    public void Formula_areas()
    {
        TestPaddles.AssertRelative(2 * HalfMm * LengthMm, On("rectangle").Pressure.AreaMm2, 1e-12);
        TestPaddles.AssertRelative(HalfMm * LengthMm, On("triangle wide at tip").Pressure.AreaMm2, 1e-12);
        TestPaddles.AssertRelative(Math.PI / 2 * HalfMm * LengthMm, On("ellipse").Pressure.AreaMm2, 5e-4);
    }

    // Property: a pole far away is an even pressure; the nearer the pole, the further out the centre.
    [Fact]
    public void Property_pole_far_away_is_even_pressure()
    {
        var (pressure, _) = On("ellipse");
        Assert.Equal(pressure.CentroidMm, pressure.CentreOfPressureMm(1e7), 0.01);
        for (var p = 0.0; p < 1500; p += 50) Assert.True(pressure.CentreOfPressureMm(p) > pressure.CentreOfPressureMm(p + 50));
    }

    // Property: area and centroid are the outline's own, for every family, on the coarse as on the printed grid. Three Gauss points a
    // stretch are exact for the area (degree 5) and not quite for the centroid (degree 8): 1e-7 allowed there.
    [Fact]
    public void Property_sums_do_not_depend_on_the_grid()
    {
        foreach (var family in BladeFamilies.All)
        {
            var form = TestPaddles.Form(TestPaddles.Blade(family.Id));
            var blade = new HalfBreadthCurve(form.BladePlan.Draw(form.Places.ThroatMm, TestPaddles.UsualSizes.ShaftWidthMm / 2));
            foreach (var grid in new[] { StationGrid.Coarse, StationGrid.Fine, TestPaddles.PrintedGrid(form) })
            {
                var pressure = BladePressure.On(TestPaddles.Shape(form, grid));
                TestPaddles.AssertRelative(blade.AreaMm2(), pressure.AreaMm2, 1e-9, family.Id);
                TestPaddles.AssertRelative(blade.CentroidMm(), pressure.CentroidMm, 1e-7, family.Id);
            }
        }
    }

    private static (BladePressure Pressure, double Throat) On(string shape)
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail", length: LengthMm));
        double throat = form.Places.ThroatMm, tip = form.Places.OverallMm;
        var outline = new HalfBreadthCurve([CubicBezier.Hermite(0, 15, 0, throat, 15, 0), .. Pieces(shape, throat, tip)]);
        return (BladePressure.On(PaddleSolid.Shape(form, TestPaddles.UsualSizes, outline, TestPaddles.PrintedGrid(form))), throat);
    }

    private static CubicBezier[] Pieces(string shape, double throat, double tip)
    {
        const double K = 0.5522847498; // quarter ellipse
        double middle = 0.5 * (throat + tip), reach = 0.5 * (tip - throat), slope = HalfMm / (tip - throat);
        return shape switch
        {
            "rectangle" => [CubicBezier.Hermite(throat, HalfMm, 0, tip, HalfMm, 0)],
            "triangle wide at tip" => [CubicBezier.Hermite(throat, 0, slope, tip, HalfMm, slope)],
            "triangle wide at throat" => [CubicBezier.Hermite(throat, HalfMm, -slope, tip, 0, -slope)],
            _ =>
            [
                new(throat, 0, throat, K * HalfMm, middle - K * reach, HalfMm, middle, HalfMm),
                new(middle, HalfMm, middle + K * reach, HalfMm, tip, K * HalfMm, tip, 0),
            ],
        };
    }
}
