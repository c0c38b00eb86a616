using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Build;

public class BalanceCorrectionTests
{
    private static readonly BuildSheet Sheet = BuildSheet.For(BuildSamples.Cherry);

    public static TheoryData<BuildStage, double> Readings
    {
        get
        {
            var data = new TheoryData<BuildStage, double>();
            foreach (var stage in (BuildStage[])[BuildStage.BladePlaned, BuildStage.GripCut, BuildStage.Sanded, BuildStage.Finished])
            {
                foreach (var off in (double[])[-12, -6, 0, 12, 28]) data.Add(stage, off);
            }

            return data;
        }
    }

    [Fact]
    public void Shares_of_the_zones_add_up_to_one_below_the_grip()
    {
        foreach (var pattern in StationGrid.Fine.Patterns)
        {
            var sum = CorrectionZones.All.Sum(zone => CorrectionZones.Share(zone, pattern));
            if (pattern.Segment.Zone != Zone.Grip) Assert.Equal(1, sum, 12);
            Assert.InRange(sum, 0, 1 + 1e-12);
        }
    }

    [Theory]
    [InlineData(0.93)]
    [InlineData(1.0)]
    [InlineData(1.09)]
    public void As_predicted_but_for_density_it_finds_the_density_and_leaves_the_wood_alone(double ratio)
    {
        var stage = Sheet.Stages[(int)BuildStage.GripCut];
        var result = BalanceCorrection.Solve(
            BuildSamples.Cherry, new(BuildStage.GripCut, stage.MassG.Value * ratio, stage.BalanceMm.Value, MassErrorG: 0.5), new(Confidence: 0.5));
        var outlook = Believed(result);
        Assert.Equal(CorrectionStatus.OnPlan, result.Status);
        Assert.Equal(BuildSamples.Cherry.Specification.Wood.DensityKgM3 * ratio, outlook.Explanation.DensityKgM3, 0.5);
        Assert.False(outlook.Explanation.UnevenNeeded);
        Assert.Empty(result.Removals);
        Assert.True(outlook.Achievable);
        var finish = BuildSamples.Cherry.Finished.Load;
        var wood = BuildSamples.Cherry.Mass;
        Assert.Equal(wood.TotalG * ratio + finish.MassG, outlook.Finished.MassG, 1.0);
        Assert.Equal(
            (wood.TotalG * ratio * wood.CentreOfMassMm + finish.FirstGmm) / (wood.TotalG * ratio + finish.MassG), outlook.Finished.BalanceMm, 0.2);
    }

    [Theory]
    [MemberData(nameof(Readings))]
    public void The_corrected_paddle_is_in_tolerance_and_no_weaker_than_asked(BuildStage stage, double off)
    {
        var report = BuildSamples.Cherry;
        var sheet = Sheet.Stages[(int)stage];
        var result = BalanceCorrection.Solve(report, new(stage, sheet.MassG.Value, sheet.BalanceMm.Value + off, MeasuredAgain: true));
        var outlook = Believed(result);
        Assert.Equal(Math.Abs(off) > 4, outlook.Explanation.UnevenNeeded);
        Assert.Equal(off == 0, result.Status == CorrectionStatus.OnPlan && outlook.IsToPlan);
        Assert.True(outlook.Corrected.ChanceInTolerance >= outlook.Finished.ChanceInTolerance - 1e-9);
        Assert.True(outlook.Corrected.Weakest.SafetyFactor >= report.Specification.Aims.MinimumSafetyFactor - 1e-6);
        Assert.All(result.Removals, removal => Assert.True(removal.MassG > 0 && removal.ThicknessMm is >= 0.2 and <= RemovalLimits.MostMm + 1e-9));
        Assert.All(result.Removals, removal => Assert.Equal(Math.Round(removal.ThicknessMm, 1), removal.ThicknessMm, 9));
        Assert.Equal(outlook.Finished.MassG - result.Removals.Sum(removal => removal.MassG), outlook.Corrected.MassG, 0.1);
        if (outlook.Achievable) Assert.InRange(outlook.Corrected.BalanceMm - result.AimMm, -12 - 1e-6, 12 + 1e-6);
        else Assert.NotNull(outlook.LeastBad);
    }

    [Fact]
    public void What_the_cut_does_is_what_the_real_solid_weighs()
    {
        // What the cut takes away must be what the planned solid loses when the cut is planed into it.
        var report = BuildSamples.Cherry;
        var sheet = Sheet.Stages[^1];
        var result = BalanceCorrection.Solve(report, new(BuildStage.Finished, sheet.MassG.Value, sheet.BalanceMm.Value - 9, BalanceErrorMm: 1));
        Assert.NotEmpty(result.Removals);
        var fine = PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
        double[] cut =
        [
            .. fine.Grid.Patterns.ToArray().Select(
                pattern => result.Removals.Sum(removal => removal.ThicknessMm * CorrectionZones.Share(removal.Zone, pattern))),
        ];
        var density = report.Specification.Wood.DensityKgM3;
        var (before, after) = (MassProperties.Of(fine, density), MassProperties.Of(fine.Thinned(cut), density));
        var outlook = Believed(result);
        Assert.Equal(after.TotalG / before.TotalG, outlook.Corrected.MassG / outlook.Finished.MassG, 0.002);
        Assert.Equal(after.CentreOfMassMm - before.CentreOfMassMm, outlook.Corrected.BalanceMm - outlook.Finished.BalanceMm, 0.25);
    }

    [Fact]
    public void Thickness_readings_tell_thick_wood_from_dense_wood()
    {
        var report = BuildSamples.Cherry;
        var stage = Sheet.Stages[(int)BuildStage.BladeRoughed];
        var fine = PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
        var solid = StageSolid.Of(fine, Sheet.Blank, BuildStage.BladeRoughed, OutlineSaw.BandSaw);

        // The blade's lower third 0.5 mm thick: weighed, balanced and calipered.
        var shares = solid.Nodes.Select(node => CorrectionZones.Share(CorrectionZone.BladeLowerThird, node.Pattern)).ToArray();
        double mass = 0, first = 0;
        for (var i = 0; i < shares.Length; i++)
        {
            var node = solid.Nodes[i];
            var grams = node.WeightMm * (node.Section.AreaMm2 + 0.5 * shares[i] * node.Section.AreaPerThickness)
                * report.Specification.Wood.DensityKgM3 * 1e-6;
            (mass, first) = (mass + grams, first + grams * node.AlongMm);
        }

        var readings = stage.Stations.Select(station => new ThicknessReading(
            station.XMm,
            station.ThicknessMm + 0.5 * CorrectionZones.Share(
                CorrectionZone.BladeLowerThird, StageEstimate.PatternAt(report.Specification.Form, station.XMm)))).ToArray();
        var calipered = BalanceCorrection.Solve(report, new(BuildStage.BladeRoughed, mass, first / mass, readings));
        var blind = BalanceCorrection.Solve(report, new(BuildStage.BladeRoughed, mass, first / mass));
        Assert.Equal(0.5, Believed(calipered).Explanation.ThicknessErrorsMm[(int)CorrectionZone.BladeLowerThird], 0.1);
        Assert.True(Math.Abs(Believed(calipered).Explanation.EndToEndPercent) < Math.Abs(Believed(blind).Explanation.EndToEndPercent));
        Assert.Equal(report.Specification.Wood.DensityKgM3, Believed(calipered).Explanation.DensityKgM3, 3.0);
    }

    [Theory]
    [InlineData(-40)]
    [InlineData(38)]
    public void When_wood_would_have_to_be_added_it_says_so_with_the_least_bad_choices(double off)
    {
        var report = BuildSamples.Design("beavertail", "black-cherry", toleranceMm: 3);
        var stage = BuildSheet.For(report).Stages[^1];
        var result = BalanceCorrection.Solve(
            report, new(BuildStage.Finished, stage.MassG.Value, stage.BalanceMm.Value + off, MeasuredAgain: true));
        var outlook = Believed(result);
        Assert.False(outlook.Achievable);
        var choices = outlook.LeastBad!;
        Assert.Equal(outlook.Corrected.BalanceMm - result.AimMm, choices.AcceptOffsetMm, 9);
        Assert.Equal(choices.AcceptOffsetMm, choices.MoveLowerHandMm, 9);

        // The grams put at their place bring the balance to the aim: statics.
        var places = report.Specification.Form.Places;
        var (grams, at) = off < 0 ? (choices.AddAtTipG!.Value, places.OverallMm - 30) : (choices.AddAtGripG!.Value, places.TopHandMm);
        var balance = (outlook.Corrected.MassG * outlook.Corrected.BalanceMm + grams * at) / (outlook.Corrected.MassG + grams);
        Assert.Equal(result.AimMm, balance, 1e-6);
    }

    [Fact]
    public void The_finish_still_to_come_can_be_counted()
    {
        var stage = Sheet.Stages[(int)BuildStage.Sanded];
        var reading = new BalanceReading(BuildStage.Sanded, stage.MassG.Value, stage.BalanceMm.Value);
        var bare = BalanceCorrection.Solve(BuildSamples.Cherry, reading, new(Confidence: 0.5, CountFinish: false));
        var varnished = BalanceCorrection.Solve(BuildSamples.Cherry, reading, new(Confidence: 0.5, CountFinish: true));
        Assert.Equal(Sheet.WithFinish.ShiftMm, Believed(varnished).Finished.BalanceMm - Believed(bare).Finished.BalanceMm, 0.1);
        Assert.Equal(Sheet.WithFinish.MassG - BuildSamples.Cherry.Mass.TotalG, Believed(varnished).Finished.MassG - Believed(bare).Finished.MassG, 1e-6);
    }

    [Fact]
    public void A_paddle_planed_too_thin_is_seen_to_be_weak()
    {
        var stage = Sheet.Stages[(int)BuildStage.Sanded];
        var readings = stage.Stations.Select(station => new ThicknessReading(station.XMm, Math.Max(1, station.ThicknessMm - 1))).ToArray();
        var result = BalanceCorrection.Solve(
            BuildSamples.Cherry, new(BuildStage.Sanded, stage.MassG.Value * 0.95, stage.BalanceMm.Value - 6, readings, MeasuredAgain: true));
        Assert.True(Believed(result).Corrected.Weakest.Margin < 1);
    }

    [Fact]
    public void Readings_that_cannot_be_are_refused()
    {
        var report = BuildSamples.Cherry;
        Assert.Throws<ArgumentOutOfRangeException>(() => BalanceCorrection.Solve(report, new(BuildStage.Sanded, -1, 900)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BalanceCorrection.Solve(report, new(BuildStage.Sanded, 800, 9000)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => BalanceCorrection.Solve(report, new(BuildStage.Sanded, 800, 900, [new(5000, 10)])));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => BalanceCorrection.Solve(report, new(BuildStage.Sanded, 800, 900), new(Confidence: 1)));
    }

    [Fact]
    public void Aims_at_the_throat_work_as_well()
    {
        var report = BuildSamples.Design("voyageur", "white-ash", balanceAt: BalanceAim.Throat);
        var stage = BuildSheet.For(report).Stages[^1];
        var result = BalanceCorrection.Solve(report, new(BuildStage.Finished, stage.MassG.Value, stage.BalanceMm.Value));
        Assert.Equal(report.Specification.Form.Places.ThroatMm, result.AimMm, 9);
    }

    [Fact]
    public void Any_plausible_reading_of_any_design_gives_a_sound_answer()
    {
        var random = new Random(5);
        var doubted = 0;
        (string Family, string Species, double Bend, GripFaces Faces)[] designs =
        [
            ("teardrop", "american-basswood", 12, GripFaces.Matching), ("square-tip", "white-ash", 0, GripFaces.OneSided),
            ("sturgeon-nose", "western-redcedar", 0, GripFaces.Matching),
        ];
        foreach (var (family, species, bend, faces) in designs)
        {
            var report = BuildSamples.Design(family, species, bend, faces: faces);
            var stages = BuildSheet.For(report).Stages;
            for (var k = 0; k < 60; k++)
            {
                var stage = stages[random.Next(stages.Count)];
                var readings = stage.Stations.Where(_ => random.Next(4) == 0)
                    .Select(s => new ThicknessReading(s.XMm, Math.Max(0.5, s.ThicknessMm + 0.4 * RealPaddle.Normal(random)))).ToArray();
                var result = BalanceCorrection.Solve(report, new(
                    stage.Stage,
                    stage.MassG.Value * (1 + 0.15 * RealPaddle.Normal(random)),
                    stage.BalanceMm.Value + 20 * RealPaddle.Normal(random),
                    readings));
                Assert.Equal(result.Status == CorrectionStatus.MeasureAgain, result.Outlook is null);
                Assert.Equal(result.Status == CorrectionStatus.Cut, result.Removals.Count > 0);
                if (result.Outlook is not { Corrected: { } corrected } outlook)
                {
                    Assert.NotNull(result.Doubt);
                    doubted++;
                    continue;
                }

                Assert.True(double.IsFinite(corrected.BalanceMm) && double.IsFinite(corrected.Weakest.SafetyFactor));
                Assert.True(Math.Abs(corrected.BalanceMm - result.AimMm) <= Math.Max(12, Math.Abs(outlook.Finished.BalanceMm - result.AimMm)) + 1e-6);
                Assert.Equal(outlook.Achievable, outlook.LeastBad is null);
            }
        }

        Assert.InRange(doubted, 20, 160);
    }

    [Fact]
    public void A_flex_limit_holds_after_the_cut()
    {
        var report = BuildSamples.Cherry;
        var aims = report.Specification.Aims with { MostBenchFlexMm = report.Flex.BenchFlexMm + 0.003 };
        var limited = report with { Specification = report.Specification with { Aims = aims } };
        var stage = Sheet.Stages[^1];
        var reading = new BalanceReading(BuildStage.Finished, stage.MassG.Value, stage.BalanceMm.Value + 24, MeasuredAgain: true);
        var free = BalanceCorrection.Solve(report, reading);
        var held = BalanceCorrection.Solve(limited, reading);
        Assert.True(Believed(free).Corrected.BenchFlexMm > aims.MostBenchFlexMm);
        Assert.True(Believed(held).Corrected.BenchFlexMm <= aims.MostBenchFlexMm + 1e-6);
    }

    private static Outlook Believed(BalanceCorrection correction)
    {
        Assert.NotEqual(CorrectionStatus.MeasureAgain, correction.Status);
        return correction.Outlook!;
    }
}
