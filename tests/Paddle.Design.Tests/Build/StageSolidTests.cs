using MathNet.Numerics.Integration;
using Paddle.Design.Build;
using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Build;

public class StageSolidTests
{
    public static TheoryData<string, string, double, GripStyle, GripFaces> Designs => new()
    {
        { "beavertail", "black-cherry", 0, GripStyle.Pear, GripFaces.Matching },
        { "ottertail", "sitka-spruce", 0, GripStyle.Palm, GripFaces.OneSided },
        { "teardrop", "american-basswood", 12, GripStyle.T, GripFaces.Matching },
        { "voyageur", "white-ash", 0, GripStyle.Pear, GripFaces.OneSided },
        { "sugar-island", "sugar-maple", 0, GripStyle.Palm, GripFaces.Matching },
    };

    [Theory]
    [MemberData(nameof(Designs))]
    public void Stage_masses_fall_strictly_down_to_the_design_s_wood_and_the_finish_comes_on_top(
        string family, string species, double bend, GripStyle grip, GripFaces faces)
    {
        var report = BuildSamples.Design(family, species, bend, grip, faces);
        foreach (var options in (BuildOptions[])[new(), new(Saw: OutlineSaw.Jigsaw), new(BoardThicknessMm: 2 * report.Stations.HalfThickness.Max())])
        {
            var stages = BuildSheet.For(report, options).Stages;
            Assert.Equal(11, stages.Count);
            for (var i = 1; i < stages.Count - 1; i++)
                Assert.True(stages[i].MassG.Value < stages[i - 1].MassG.Value - 0.5, $"{stages[i].Id} does not weigh less than {stages[i - 1].Id}");
            var (sanded, finished) = (stages[(int)BuildStage.Sanded], stages[^1]);
            Assert.Equal(report.Mass.TotalG, sanded.MassG.Value, 1e-9 * report.Mass.TotalG);
            Assert.Equal(report.Mass.CentreOfMassMm, sanded.BalanceMm.Value, 1e-7);
            Assert.Equal("finished", finished.Id);
            Assert.Equal(report.Finished.MassG, finished.MassG.Value, 1e-9);
            Assert.Equal(report.Finished.CentreOfMassMm, finished.BalanceMm.Value, 1e-9);
            Assert.True(finished.MassG.Value > sanded.MassG.Value + 10);
        }
    }

    [Fact]
    public void The_blank_weighs_its_length_times_width_times_thickness()
    {
        var sheet = BuildSheet.For(BuildSamples.Cherry);
        var blank = sheet.Blank;
        var density = BuildSamples.Cherry.Specification.Wood.DensityKgM3;
        Assert.Equal(blank.LengthMm * blank.WidthMm * blank.ThicknessMm * density * 1e-6, sheet.Stages[0].MassG.Value, 1e-6);
        Assert.Equal(blank.LengthMm / 2 - blank.EndTrimMm, sheet.Stages[0].BalanceMm.Value, 1e-6);
    }

    [Theory]
    [InlineData(OutlineSaw.BandSaw, 2.0)]
    [InlineData(OutlineSaw.Jigsaw, 3.0)]
    public void A_sawn_outline_has_the_area_of_the_parallel_curve(OutlineSaw saw, double allowance)
    {
        // Steiner's formula: area + allowance times perimeter + pi allowance², for a curve that bends less than the allowance.
        var report = BuildSamples.Cherry;
        var fine = PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(report.Stations, false, saw);
        var solid = StageSolid.Of(fine, blank, BuildStage.Sawn, saw);
        var perimeter = 0.0;
        foreach (var piece in report.Outline.Pieces)
        {
            var p = piece;
            perimeter += 2 * GaussLegendreRule.Integrate(s => Math.Sqrt(p.DX(s) * p.DX(s) + p.DY(s) * p.DY(s)), 0, 1, 32);
        }

        var expected = report.Outline.AreaMm2() + allowance * perimeter + Math.PI * allowance * allowance;
        Assert.Equal(1, solid.VolumeMm3 / blank.ThicknessMm / expected, 1e-3);
    }

    [Fact]
    public void Shaft_sections_have_the_polygons_areas_round_the_allowed_sizes()
    {
        var report = BuildSamples.Cherry;
        var fine = PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(report.Stations, false, OutlineSaw.BandSaw);
        var at = fine.Grid.LowerHandPlace;
        double width = report.Sizes.ShaftWidthMm, thickness = report.Sizes.ShaftThicknessMm;

        double Area(BuildStage stage)
        {
            var solid = StageSolid.Of(fine, blank, stage, OutlineSaw.BandSaw);
            return solid.Nodes[solid.FirstPlace + at].Section.AreaMm2;
        }

        Assert.Equal(0.8284271 * (width + 1) * (thickness + 1), Area(BuildStage.ShaftEightSided), 1e-3);
        Assert.Equal(0.7956494 * (width + 0.6) * (thickness + 0.6), Area(BuildStage.ShaftSixteenSided), 1e-3);
        Assert.Equal(Math.PI / 4 * (width + 0.6) * (thickness + 0.6), Area(BuildStage.ShaftRounded), 1e-3);
        Assert.Equal(blank.ThicknessMm * (width + 1), Area(BuildStage.EdgeLined), 1e-3);
    }

    [Fact]
    public void The_caliper_reads_the_design_when_finished_and_the_allowance_before()
    {
        var report = BuildSamples.Cherry;
        var sheet = BuildSheet.For(report);
        var finished = sheet.Stages[^1].Stations;
        var planed = sheet.Stages[(int)BuildStage.BladePlaned].Stations;
        foreach (var station in finished)
        {
            var solidAt = Array.FindIndex(report.Stations.X, x => Math.Abs(x - station.XMm) < 1e-6);
            if (solidAt < 0) continue;
            Assert.Equal(2 * report.Stations.HalfThickness[solidAt], station.ThicknessMm, 1e-9);
            Assert.Equal(report.Stations.HalfWidth[solidAt], station.HalfBreadthMm, 1e-6);
        }

        Assert.Equal(finished, sheet.Stages[(int)BuildStage.Sanded].Stations);

        var throat = report.Specification.Form.Places.ThroatMm;
        var quarter = throat + 0.25 * report.Specification.Form.Places.BladeMm;
        foreach (var station in planed.Where(station => station.XMm > quarter))
            Assert.Equal(finished[station.Number - 1].ThicknessMm + 1.0, station.ThicknessMm, 1e-9);
        Assert.All(planed.Where(station => station.XMm < throat), station => Assert.Equal(sheet.Blank.ThicknessMm, station.ThicknessMm, 1e-9));
    }

    [Fact]
    public void The_next_move_leads_from_each_stage_to_the_next()
    {
        var sheet = BuildSheet.For(BuildSamples.Cherry);
        for (var i = 0; i + 1 < sheet.Stages.Count; i++)
        {
            var (now, next) = (sheet.Stages[i], sheet.Stages[i + 1]);
            Assert.Equal(next.BalanceMm.Value - now.BalanceMm.Value, now.NextMoveMm, 1e-9);
            if (Math.Abs(now.NextMoveMm) >= 0.5) Assert.Contains(now.NextMoveMm > 0 ? "towards the tip" : "towards the grip", now.NextMove);
        }

        Assert.Equal(sheet.WithFinish.ShiftMm, sheet.Stages[(int)BuildStage.Sanded].NextMoveMm, 1e-7);
        Assert.True(sheet.WithFinish.ShiftMm > 0);
        Assert.Equal(0, sheet.Stages[^1].NextMoveMm);
    }

    [Fact]
    public void Bands_follow_the_wood_s_variation()
    {
        const int Last = (int)BuildStage.Sanded;
        var book = BuildSheet.For(BuildSamples.Cherry).Stages[Last].MassG;
        Assert.Equal(0.1645, (book.High - book.Value) / book.Value, 0.01);

        // The finish's own spread, 30 % of some 40 g, adds as squares to the wood's hundred: next to nothing.
        var finished = BuildSheet.For(BuildSamples.Cherry).Stages[^1].MassG;
        var added = finished.Value - book.Value;
        Assert.Equal(Math.Sqrt(Math.Pow(book.High - book.Value, 2) + Math.Pow(0.3 * added, 2)), finished.High - finished.Value, 1e-6);

        var measured = BuildSheet.For(BuildSamples.Design("beavertail", "black-cherry", densityKgM3: 590)).Stages[Last].MassG;
        Assert.InRange((measured.High - measured.Value) / measured.Value, 0.0329, 0.06);
        foreach (var stage in BuildSheet.For(BuildSamples.Cherry).Stages)
        {
            Assert.True(stage.MassG.Low < stage.MassG.Value && stage.MassG.Value < stage.MassG.High);
            Assert.InRange(stage.BalanceMm.High - stage.BalanceMm.Value, 5, 30);
        }
    }

    [Fact]
    public void A_board_thinner_than_the_paddle_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BuildSheet.For(BuildSamples.Cherry, new(BoardThicknessMm: 25)));

    [Theory]
    [InlineData(GripFaces.Matching, 2)]
    [InlineData(GripFaces.OneSided, 1)]
    public void The_kerf_stops_at_the_thinnest_of_the_grip(GripFaces faces, int sawn)
    {
        var report = BuildSamples.Design("beavertail", "black-cherry", faces: faces);
        var sheet = BuildSheet.For(report);
        var kerf = sheet.Kerf;
        Assert.Equal(sawn, kerf.Faces);
        Assert.Equal(sheet.Blank.ThicknessMm, sawn * kerf.DepthMm + kerf.OtherFaceDepthMm + kerf.LeftMm, 1e-9);

        // What stays is the finished thickness there and 0.3 mm on each face.
        var form = report.Specification.Form;
        var solid = PaddleSolid.Shape(
            form, report.Sizes, report.Outline, StationGrid.Printed(form.Lengths, form.Blade.WidestAt, 1));
        var least = Enumerable.Range(0, solid.Count)
            .Where(i => solid.X[i] > 0.36 * report.Specification.Form.Grip.LengthMm && solid.X[i] <= report.Specification.Form.Grip.LengthMm)
            .Min(i => 2 * solid.HalfThickness[i]);
        Assert.Equal(least + 0.6, kerf.LeftMm, 0.02);
    }

    [Fact]
    public void Cautions_come_with_their_source_where_the_step_can_hurt()
    {
        var stages = BuildSheet.For(BuildSamples.Design("ottertail", "western-redcedar")).Stages;
        Assert.All(stages, stage => Assert.NotEmpty(stage.Cautions));
        Assert.All(stages.SelectMany(stage => stage.Cautions), caution => Assert.False(string.IsNullOrWhiteSpace(caution.Source)));
        string[] Ids(BuildStage stage) => [.. stages[(int)stage].Cautions.Select(caution => caution.Id)];
        Assert.Contains("saws", Ids(BuildStage.Sawn));
        Assert.Contains("power-plane", Ids(BuildStage.BladeRoughed));
        Assert.Contains("edge-tools", Ids(BuildStage.GripCut));
        Assert.Contains("western-redcedar-1", Ids(BuildStage.Sanded));
        Assert.Contains("wood-dust-1", Ids(BuildStage.Sanded));
        Assert.Contains("oily-rags", Ids(BuildStage.Finished));
        Assert.Contains("solvent", Ids(BuildStage.Finished));
        Assert.Contains("life-jacket", Ids(BuildStage.Finished));
        Assert.Contains("cold-water", Ids(BuildStage.Finished));
        Assert.Contains("NFPA", stages[^1].Cautions.Single(caution => caution.Id == "oily-rags").Source);
    }
}
