using System.Globalization;
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
    private static readonly JsonElement Answer = JsonDocument.Parse(Text).RootElement;

    [Fact]
    public void Every_number_is_printed_as_far_as_its_unit_says()
    {
        var (mass, strength) = (Answer.GetProperty("mass"), Answer.GetProperty("strength"));
        Assert.Equal(Math.Round(Hire.Report.Mass.TotalG, 1), mass.GetProperty("totalG").GetDouble());
        Assert.Equal(Math.Round(Hire.Report.Finished.CentreOfMassMm, 2), mass.GetProperty("finishedCentreOfMassMm").GetDouble());
        Assert.Equal(Math.Round(Hire.Report.Strength.Governing.SafetyFactor, 3), strength.GetProperty("minimumSafetyFactor").GetDouble());
        Assert.Equal(
            Hire.Report.Strength.Cases.Select(result => double.Parse(result.StressMPa.ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)),
            strength.GetProperty("cases").EnumerateArray().Select(result => result.GetProperty("stressMPa").GetDouble()));
    }

    [Fact]
    public void Every_station_is_written_to_a_hundredth_of_a_millimetre()
    {
        var stations = Answer.GetProperty("stations").Deserialize<DesignStation[]>(StrictJson.Options)!;
        var solid = Hire.Report.Stations;

        Assert.Equal(solid.Count, stations.Length);
        for (var i = 0; i < stations.Length; i++)
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
        var links = Answer.GetProperty("links").Deserialize<DesignLinks>(StrictJson.Options)!;
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
