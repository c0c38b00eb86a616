using Paddle.Design.Strength;
using Paddle.Design.Tests.Build;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

/// <summary>The curves that are drawn say what the check found, and what statics says at places where it is easily said.</summary>
public class StrengthCurvesTests
{
    [Theory]
    [InlineData("beavertail", 0)]
    [InlineData("teardrop", 10)]
    public void Stress_and_strength_meet_the_check_where_it_looked(string family, double bendDegrees)
    {
        var report = BuildSamples.Design(family, "black-cherry", bendDegrees);
        var curves = Curves(report);
        Assert.Equal(report.Strength.Cases.Where(found => found.Case.BendsAlongTheGrain).Select(found => found.Case), curves.Cases.Select(curve => curve.Case));
        foreach (var curve in curves.Cases)
        {
            var found = report.Strength.Cases.Single(one => one.Case == curve.Case);
            var at = curves.XsMm.ToList().IndexOf(found.AtMm);
            TestPaddles.AssertRelative(found.StressMPa, curve.StressesMPa[at], 1e-9, found.Id);
            TestPaddles.AssertRelative(found.StrengthMPa, curve.StrengthsMPa[at], 1e-9, found.Id);
            TestPaddles.AssertRelative(found.MaxStressMPa, curve.StressesMPa.Max(), 1e-9, found.Id);

            // Nowhere else is more of the strength used.
            Assert.True(curve.StressesMPa.Zip(curve.StrengthsMPa, (stress, strength) => stress / strength).Max() <= 1 / found.SafetyFactor + 1e-9);
        }
    }

    [Theory]
    [InlineData("beavertail", 0)]
    [InlineData("teardrop", 10)]
    public void Moments_are_force_times_arm_in_newton_metres(string family, double bendDegrees)
    {
        var report = BuildSamples.Design(family, "black-cherry", bendDegrees);
        var places = report.Specification.Form.Places;
        var curves = Curves(report);
        var touring = curves.Cases.Single(curve => curve.Case.Id == "touring-stroke");
        double At(double x) => ElasticCurve.At([.. curves.XsMm], [.. touring.MomentsNm], x);
        var (force, below) = (touring.Case.ForceN, report.Stroke.CentreOfPressureMm - places.ThroatMm);
        var cos = Math.Cos(bendDegrees * Math.PI / 180);
        TestPaddles.AssertRelative(force * below / 1000, At(places.ThroatMm), 1e-4, "throat");
        TestPaddles.AssertRelative(force * (below + 38 * cos) / 1000, At(places.LowerHandMm), 1e-4, "lower hand");
        TestPaddles.AssertRelative(At(places.LowerHandMm) / 2, At((places.LowerHandMm + places.TopHandMm) / 2), 1e-6, "half way up");
        Assert.Equal(0, At(places.TopHandMm), 0.005); // no station lies at the hand: a chord over the corner
        Assert.Equal(0, touring.MomentsNm[0]);
        Assert.Equal(0, touring.MomentsNm[^1], 1e-6);
    }

    [Fact]
    public void The_bench_curve_rests_on_both_hands_and_hangs_where_the_bench_says()
    {
        var report = BuildSamples.Cherry;
        var places = report.Specification.Form.Places;
        var curves = Curves(report);
        double At(double x) => ElasticCurve.At([.. curves.XsMm], [.. curves.BenchDeflectionsMm], x);
        Assert.Equal(0, At(places.TopHandMm), 1e-9);
        Assert.Equal(0, At(places.LowerHandMm), 1e-9);

        // Bending alone, summed another way: shear adds under a twenty-fifth.
        Assert.InRange(At(report.Stroke.CentreOfPressureMm) / report.Flex.BenchFlexMm, 0.96, 1.001);
        Assert.InRange(At(places.OverallMm) / report.Flex.TipDeflectionMm, 0.96, 1.005);
        Assert.True(At((places.TopHandMm + places.LowerHandMm) / 2) < 0); // between the hands it bows the other way
    }

    // Figures that a caller reads in a case's source are those it is computed with.
    [Theory]
    [InlineData(Duty.Touring, "5.0", "0.40", "14.0", "2.5")]
    [InlineData(Duty.Expedition, "5.0", "0.40", "16.3", "3.0")]
    [InlineData(Duty.Racing, "7.9", "0.33", "21.1", "3.0")]
    public void A_source_names_the_figures_it_stands_for(Duty duty, string touring, string share, string hard, string braceMS)
    {
        var loads = Loads.For(duty, 75, 70000);
        var rule = DutyRule.Of(duty);
        string Source(string id) => loads.Cases.Single(loadCase => loadCase.Id == id).Source;
        static string Written(double value, string format) => value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(
            (touring, share, hard, braceMS),
            (Written(rule.TouringN, "0.0"), Written(rule.FatigueShare, "0.00"), Written(rule.HardN, "0.0"), Written(rule.BraceSpeedMS, "0.0")));
        Assert.StartsWith($"{touring} N per kg^(2/3)", Source("touring-stroke"), StringComparison.Ordinal);
        Assert.Contains($"{share} of static strength", Source("touring-stroke"), StringComparison.Ordinal);
        Assert.StartsWith($"{hard} N per kg^(2/3)", Source("hard-stroke"), StringComparison.Ordinal);
        Assert.Contains($"what water gives at {braceMS} m/s if less (drag coefficient 1.2)", Source("brace"), StringComparison.Ordinal);
        Assert.Contains("no measured bracing force was found", Source("brace"), StringComparison.Ordinal);
        Assert.Contains("with 125 N sideways at 75 kg: engineering assumption, no published figure found", Source("push-off"), StringComparison.Ordinal);
        Assert.Contains("three-dimensional finite elements", Source("edge-press"), StringComparison.Ordinal);
        Assert.All(
            loads.Cases.Where(loadCase => loadCase.Id != "touring-stroke"),
            loadCase => Assert.EndsWith("; 1.10 on strength for its duration: EN 1995-1-1, instantaneous, in the ICE Manual table 19.9", loadCase.Source, StringComparison.Ordinal));
    }

    private static StrengthCurves Curves(DesignReport report) =>
        StrengthCurves.Of(report.Stations, report.Strength, report.Specification.Loads, report.Specification.Wood);
}
