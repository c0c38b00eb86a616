using System.Text.Json;
using Paddle.Drawings;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Tests.Designs;

public sealed class DesignResponseTests
{
    private static readonly ComputedDesign Hire = DesignService.Compute(DesignExamples.HirePaddle);
    private static readonly string Text = JsonSerializer.Serialize(Hire.ToResponse("/mounted"), StrictJson.Options);

    [Fact]
    public void An_answer_read_and_written_again_is_the_same() =>
        Assert.Equal(Text, JsonSerializer.Serialize(JsonSerializer.Deserialize<DesignResponse>(Text, StrictJson.Options), StrictJson.Options));

    [Fact]
    public void Every_station_is_written_to_a_hundredth_of_a_millimetre()
    {
        var stations = JsonSerializer.Deserialize<DesignResponse>(Text, StrictJson.Options)!.Stations;
        var solid = Hire.Report.Stations;

        Assert.Equal(solid.Count, stations.Count);
        for (var i = 0; i < stations.Count; i++)
        {
            var moments = solid.Grid.Patterns[i].Moments;
            Assert.Equal(solid.X[i], stations[i].XMm, 0.00501);
            Assert.Equal(solid.HalfWidth[i], stations[i].HalfWidthMm, 0.00501);
            Assert.Equal(solid.HalfThickness[i], stations[i].HalfThicknessMm, 0.00501);
            Assert.Equal(solid.EdgeHalfThickness[i], stations[i].EdgeHalfThicknessMm, 0.00501);
            Assert.Equal(solid.CentreOffsetMm(i), stations[i].CentreOffsetMm, 0.00501);
            Assert.Equal(moments.P, stations[i].CrownExponent, 0.0000501);
            Assert.Equal(moments.R, stations[i].CrownPower, 0.0000501);
        }
    }

    [Fact]
    public void Links_lead_through_the_path_that_the_service_is_mounted_on()
    {
        var links = JsonSerializer.Deserialize<DesignResponse>(Text, StrictJson.Options)!.Links;
        Assert.Equal($"/mounted/v1/designs/{Hire.Code}", links.Self);
        Assert.Equal($"{links.Self}/build", links.Build);
        Assert.Equal($"{links.Self}/build-sheet.html", links.BuildSheet);
        Assert.Equal($"{links.Self}/build-sheet.pdf", links.BuildSheetPdf);
        Assert.Equal(DesignFiles.All.Select(file => $"{links.Self}/{file.FileName}"), links.Files.Select(file => file.Value));
    }

    [Fact]
    public void An_answer_holds_no_negative_zero_and_nothing_that_is_no_number()
    {
        Assert.DoesNotMatch(@":-0(?![.\d])", Text);
        Assert.DoesNotContain("NaN", Text, StringComparison.Ordinal);
        Assert.DoesNotContain(":null", Text, StringComparison.Ordinal);
    }
}
