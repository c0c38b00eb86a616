using Paddle.Design.Water;

namespace Paddle.Design.Tests.Water;

public class PlateDragTests
{
    private const double AreaM2 = 0.075;

    private static double Density15 => FreshWater.DensityKgM3(15);

    // The fit's own values, to the figures printed beside the handbook's table.
    [Theory]
    [InlineData(1, 1.14)]
    [InlineData(5, 1.204)]
    [InlineData(10, 1.302)]
    [InlineData(20, 1.501)]
    public void Fit_gives_its_printed_values(double aspectRatio, double expected) =>
        Assert.Equal(expected, PlateDrag.Coefficient(aspectRatio), 0.00051);

    // Fluid-mechanics handbook after Hoerner, from memory; the square plate is 3.4 % off and the rest within 1 %.
    [Theory]
    [InlineData(1, 1.18, 0.035)]
    [InlineData(5, 1.2, 0.01)]
    [InlineData(10, 1.3, 0.01)]
    [InlineData(20, 1.5, 0.01)]
    public void Fit_stays_near_the_handbook_table(double aspectRatio, double table, double relative) =>
        Assert.InRange(PlateDrag.Coefficient(aspectRatio) / table, 1 - relative, 1 + relative);

    // 1.17 for a square plate: Aeronautical Engineer's Data Book, fig. 5.13. 1.20 at 5: Hoerner's plate data.
    [Theory]
    [InlineData(1, 1.17)]
    [InlineData(5, 1.20)]
    public void Fit_stays_within_three_percent_of_the_values_seen(double aspectRatio, double seen) =>
        Assert.InRange(PlateDrag.Coefficient(aspectRatio) / seen, 0.97, 1.03);

    [Theory]
    [InlineData(2.2, 1.15)]
    [InlineData(11.7, 1.34)]
    public void Paddle_proportions_span_the_stated_coefficients(double aspectRatio, double expected) =>
        Assert.Equal(expected, PlateDrag.Coefficient(aspectRatio), 0.0051);

    [Fact]
    public void Band_runs_from_the_submerged_plate_to_the_flume()
    {
        var band = PlateDrag.Band(5);
        Assert.Equal(1.204, band.Low, 1e-9);
        Assert.Equal(2.0, band.High); // Caplan and Gardner, flat plate in a flume
    }

    [Fact]
    public void Turning_the_plate_on_its_side_changes_nothing()
    {
        Assert.Equal(PlateDrag.Coefficient(4.5), PlateDrag.Coefficient(1 / 4.5), 12);
        Assert.Equal(PlateDrag.AspectRatio(600, 150), PlateDrag.AspectRatio(150, 600), 12);
        Assert.Equal(4, PlateDrag.AspectRatio(600, 150), 12);
    }

    // Worked values: C_d 1.2, A 0.075 m², water at 15 °C.
    [Theory]
    [InlineData(1.0, 45.0)]
    [InlineData(1.5, 101.2)]
    [InlineData(2.0, 179.8)]
    public void Force_at_a_slip_matches_the_worked_values(double slipMS, double expectedN) =>
        Assert.Equal(expectedN, PlateDrag.ForceN(1.2, AreaM2, slipMS, Density15), 0.051);

    [Fact]
    public void Slip_at_a_force_matches_the_worked_value() =>
        Assert.Equal(1.491, PlateDrag.SlipMS(100, 1.2, AreaM2, Density15), 0.00051);

    // Worked values of slip and Froude efficiency, same blade and water. The second by hand to four figures:
    // s = sqrt(80 / (999.1 x 2 x 0.075)) = 0.7306 and 1.5 / 2.2306 = 0.6725.
    [Theory]
    [InlineData(1.5, 40, 1.2, 0.943, 0.614)]
    [InlineData(1.5, 40, 2.0, 0.7306, 0.6725)]
    [InlineData(2.0, 80, 1.2, 1.334, 0.600)]
    public void Slip_and_efficiency_match_the_worked_values(double boatMS, double pullN, double coefficient, double slipMS, double efficiency)
    {
        var slip = PlateDrag.SlipMS(pullN, coefficient, AreaM2, Density15);
        Assert.Equal(slipMS, slip, 0.00051);
        Assert.Equal(efficiency, PlateDrag.FroudeEfficiency(boatMS, slip), 0.00051);
    }

    [Fact]
    public void Plain_efficiency_example_holds() => Assert.Equal(0.75, PlateDrag.FroudeEfficiency(1.5, 0.5), 12);

    [Fact]
    public void A_fifth_more_area_takes_under_a_tenth_off_the_slip()
    {
        var ratio = PlateDrag.SlipMS(100, 1.2, AreaM2 * 1.2, 999.1) / PlateDrag.SlipMS(100, 1.2, AreaM2, 999.1);
        Assert.Equal(-0.087, ratio - 1, 0.00051);
    }

    [Theory]
    [InlineData(10, 1.15, 0.05)]
    [InlineData(180, 1.3, 0.09)]
    public void Force_and_slip_invert_each_other(double forceN, double coefficient, double areaM2)
    {
        var slip = PlateDrag.SlipMS(forceN, coefficient, areaM2, 999);
        Assert.Equal(forceN, PlateDrag.ForceN(coefficient, areaM2, slip, 999), 1e-9);
    }

    [Fact]
    public void A_boat_at_rest_gains_nothing() => Assert.Equal(0, PlateDrag.FroudeEfficiency(0, 0));

    [Fact]
    public void Values_without_meaning_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.Coefficient(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.Coefficient(20.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.Coefficient(1 / 20.1));
        Assert.Equal(PlateDrag.Coefficient(20), PlateDrag.Coefficient(1.0 / 20), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.AspectRatio(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.ForceN(0, 1, 1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.ForceN(1.2, 1, -1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.ForceN(1.2, 1, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.SlipMS(1, 0, 1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.SlipMS(1, 1.2, 0, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.SlipMS(1, 1.2, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.FroudeEfficiency(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.AspectRatio(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.ForceN(1.2, -1, 1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.SlipMS(-1, 1.2, 1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.SlipMS(double.NaN, 1.2, 1, 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateDrag.FroudeEfficiency(-1, 1));
    }
}
