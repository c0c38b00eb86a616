using Paddle.Design.Outline;
using Paddle.Design.Tests.Build;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

/// <summary>What a stroke does to water and joints, computed once more from the drawn edge by thin strips, and by the laws themselves: the lever,
/// drag ½ρCAv² and weight times height (any mechanics text).</summary>
public class StrokeFiguresTests
{
    // Pivot of an easy stroke, mm above the throat (theory L5); its peak over its mean (Ho, Smith and O'Meara 2009: K4); height of a lift, strokes a day (K5).
    private const double PivotMm = 100, PeakOverMean = 2.06, LiftM = 0.35, StrokesADay = 6 * 60 * 45;

    // Fresh water of 15 °C: 999.1 kg/m³ in any table.
    private const double WaterKgM3 = 999.1;

    [Theory]
    [InlineData("beavertail", 0)]
    [InlineData("teardrop", 10)]
    [InlineData("ottertail", 0)]
    public void Forces_slip_and_lift_are_those_of_the_laws(string family, double bendDegrees)
    {
        var report = BuildSamples.Design(family, "black-cherry", bendDegrees);
        var stroke = report.Stroke;
        var places = report.Specification.Form.Places;
        var face = Strips(report.Outline.Pieces, places.ThroatMm);

        TestPaddles.AssertRelative(face.Area / 100, stroke.BladeAreaCm2, 1e-4, "area");
        TestPaddles.AssertRelative(places.BladeMm * places.BladeMm / face.Area, stroke.AspectRatio, 1e-4, "aspect");
        Assert.Equal(places.ThroatMm + face.Pressed, stroke.CentreOfPressureMm, 0.02);
        Assert.Equal(1.5, stroke.BoatSpeedMS);

        // 5.0 N per kg^(2/3) of a body of 75 kg.
        var peak = 5.0 * Math.Pow(75, 2.0 / 3);
        TestPaddles.AssertRelative(peak, stroke.ForceN, 1e-9, "peak");
        TestPaddles.AssertRelative(peak / PeakOverMean, stroke.MeanForceN, 1e-9, "mean");

        // The blade's force is square to it; along the straight shaft only its part across counts.
        var cos = Math.Cos(bendDegrees * Math.PI / 180);
        var moment = peak * (face.Pressed + 38 * cos); // 38 mm of shaft below the hand
        TestPaddles.AssertRelative(moment / 1000, stroke.LowerHandMomentNm, 1e-4, "moment");
        TestPaddles.AssertRelative(moment / 880, stroke.TopHandForceN, 1e-4, "top"); // hands 880 mm apart
        TestPaddles.AssertRelative(moment / 880 + peak * cos, stroke.LowerHandForceN, 1e-4, "lower");

        TestPaddles.AssertRelative(Slip(peak / PeakOverMean, stroke.DragCoefficient, face.Area), stroke.SlipSpeedMS, 1e-4, "slip");
        TestPaddles.AssertRelative(Slip(peak / PeakOverMean, 2.0, face.Area), stroke.SlipSpeedLowMS, 1e-4, "slip in the flume");
        Assert.Equal(2.0, stroke.DragCoefficientHigh);
        TestPaddles.AssertRelative(1.5 / (1.5 + stroke.SlipSpeedMS), stroke.FroudeEfficiency, 1e-12, "efficiency");
        TestPaddles.AssertRelative(1.5 / (1.5 + stroke.SlipSpeedLowMS), stroke.FroudeEfficiencyHigh, 1e-12, "efficiency in the flume");

        var lift = report.Finished.MassG / 1000 * 9.80665 * LiftM;
        TestPaddles.AssertRelative(lift, stroke.LiftEnergyJ, 1e-9, "lift");
        TestPaddles.AssertRelative(lift * StrokesADay / 1000, stroke.LiftEnergyPerDayKJ, 1e-9, "a day's lift");
        TestPaddles.AssertRelative(places.BladeMm * cos, stroke.ImmersionMm, 1e-12, "immersion");
    }

    [Fact]
    public void Every_family_is_scaled_to_the_same_area_and_pressed_as_its_own_strips_are()
    {
        const double BendDegrees = 8;
        var report = BuildSamples.Design("teardrop", "black-cherry", BendDegrees);
        var places = report.Specification.Form.Places;
        var (peak, cos) = (report.Stroke.ForceN, Math.Cos(BendDegrees * Math.PI / 180));
        Assert.Equal(BladeFamilies.All.Select(family => family.Id), report.Stroke.Families.Select(figures => figures.Family));
        foreach (var (family, figures) in BladeFamilies.All.Zip(report.Stroke.Families))
        {
            var usual = new BladeShape(family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
            CubicBezier[] pieces = [.. BladePlan.For(usual).Draw(0, 15)]; // a shaft 30 mm wide
            var scale = Math.Sqrt(report.Stroke.BladeAreaCm2 * 100 / Strips(pieces, 0).Area);
            var face = Strips(pieces, 0, scale);

            TestPaddles.AssertRelative(family.DefaultLengthMm * scale, figures.LengthMm, 1e-4, family.Id);
            TestPaddles.AssertRelative(family.DefaultWidthMm * scale, figures.WidthMm, 1e-4, family.Id);
            Assert.Equal(face.Pressed + 38, figures.ArmMm, 0.03);
            var top = peak * (face.Pressed + 38 * cos) / 880;
            TestPaddles.AssertRelative(top, figures.TopHandForceN, 1e-4, family.Id);
            TestPaddles.AssertRelative(top + peak * cos, figures.LowerHandForceN, 1e-4, family.Id);
            TestPaddles.AssertRelative(figures.LengthMm * cos, figures.ImmersionMm, 1e-9, family.Id);
            var aspect = figures.LengthMm * figures.LengthMm / (report.Stroke.BladeAreaCm2 * 100);
            Assert.Equal(1.10 + 0.02 * (aspect + 1 / aspect), figures.DragCoefficient, 1e-9); // theory H2, Hoerner
            var stretched = Strips(pieces, 0, places.BladeMm / family.DefaultLengthMm);
            TestPaddles.AssertRelative(peak * (stretched.Pressed + 38 * cos) / 880, figures.TopHandForceAtEqualLengthN, 1e-4, family.Id);
        }
    }

    private static double Slip(double forceN, double coefficient, double areaMm2) => Math.Sqrt(forceN / (0.5 * WaterKgM3 * coefficient * areaMm2 / 1e6));

    // Area, and how far below the throat the pressure of a blade turning about the pivot acts: plain strips between points of the drawn edge, stretched
    // along by a factor. Only the area of the unstretched edge means one.
    private static (double Area, double Pressed) Strips(ReadOnlySpan<CubicBezier> pieces, double throatMm, double along = 1)
    {
        const int Steps = 4000;
        double area = 0, force = 0, moment = 0;
        foreach (var piece in pieces)
        {
            if (piece.X0 < throatMm - 1e-6) continue;
            for (var i = 0; i < Steps; i++)
            {
                double a = (double)i / Steps, b = (double)(i + 1) / Steps;
                var strip = along * (piece.X(b) - piece.X(a)) * (piece.Y(a) + piece.Y(b));
                var below = along * ((piece.X(a) + piece.X(b)) / 2 - throatMm);
                var speed = below + PivotMm;
                area += strip;
                force += strip * speed * speed;
                moment += strip * speed * speed * below;
            }
        }

        return (area, moment / force);
    }
}
