using Paddle.Design.Build;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Laminating;

public class GluedUpBuildTests
{
    // The stages weigh the strips: sanded to its sizes the paddle has the report's mass and balance, summed apart from the report.
    [Fact]
    public void Stages_weigh_the_strips()
    {
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings, TestPaddles.UsualSizes));
        var sheet = BuildSheet.For(report);
        var sanded = sheet.Stages.Single(stage => stage.Stage == BuildStage.Sanded);
        TestPaddles.AssertRelative(report.Mass.TotalG, sanded.MassG.Value, 2e-3);
        Assert.Equal(report.Mass.CentreOfMassMm, sanded.BalanceMm.Value, 1.0);
        Assert.True(sheet.Stages.Zip(sheet.Stages.Skip(1)).Take(sheet.Stages.Count - 2).All(pair => pair.First.MassG.Value >= pair.Second.MassG.Value), "wood only goes");
        Assert.Contains(sheet.GlueUp, line => line.StartsWith("2 of western redcedar, for the blade", StringComparison.Ordinal));
        Assert.Empty(BuildSheet.For(PaddleDesigner.Design(LaminatedDesignTests.Asked(null, TestPaddles.UsualSizes))).GlueUp);
    }

    // Planed down where it is thick, a glued-up paddle keeps the sums of its strips.
    [Fact]
    public void A_thinned_paddle_is_summed_by_its_strips()
    {
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings, TestPaddles.UsualSizes));
        var removed = new double[report.Stations.Count];
        Array.Fill(removed, 1);
        var thinned = report.Stations.Thinned(removed);
        var i = Array.FindIndex(thinned.X, x => x > report.Specification.Form.Places.ThroatMm + 300);
        var section = report.Stations.Section(i) with { HalfThicknessMm = report.Stations.HalfThickness[i] - 0.5 };
        var layup = report.Specification.Form.Strips!;
        TestPaddles.AssertRelative(layup.MassShare(section) * section.AreaMm2, thinned.MassArea[i], 1e-12);
        Assert.True(thinned.MassArea[i] < 0.9 * thinned.Area[i], "cedar wings weigh less than ash");
        Assert.True(thinned.FlatSecondMoment[i] < section.FlatSecondMomentMm4);
    }
}
