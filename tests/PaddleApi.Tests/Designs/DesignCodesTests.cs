using System.Buffers.Text;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using FsCheck.Xunit;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Tests.Designs;

public sealed class DesignCodesTests
{
    private static readonly ComputedDesign Hire = DesignService.Compute(DesignExamples.HirePaddle);

    [Fact]
    public void A_usual_code_is_short_enough_for_a_label_and_fits_a_url()
    {
        Assert.InRange(Hire.Code.Length, 100, 350);
        Assert.Matches("^p1[A-Za-z0-9_-]+$", Hire.Code);
    }

    [Fact]
    public void A_code_holds_the_whole_design_with_every_size_pinned()
    {
        var decoded = DesignCodes.Decode(Hire.Code);

        Assert.Null(decoded.Fault);
        Assert.Equal(Json(Hire.Resolved.Pin(Hire.Report.Sizes)), Json(decoded.Request!));
        Assert.DoesNotContain(null, decoded.Request!.Complete().Specification.Pinned.ToVector());
    }

    [Theory]
    [InlineData("")]
    [InlineData("/label=\"Grün & <b>'schnell'</b> \\\"日本\\\" \\uD83D\\uDEF6\"")]
    [InlineData("/handSpacingMm=812.7; /freeboardMm=0.1; /blade/lengthMm=633.3")]
    [InlineData("/blade/family=\"teardrop\"; /shaft/bendDegrees=12; /grip/style=\"t\"; /grip/faces=\"one-sided\"")]
    [InlineData("/wood/measuredDensityKgM3=601.5; /wood/measuredModulusMPa=11111; /aims/maximumMassG=800; /aims/benchFlexMm={\"min\":5,\"max\":20}")]
    [InlineData("/blade/offsets=" + Requests.Offsets)]
    [InlineData("/construction=" + Requests.Wings)]
    [InlineData("/construction={\"kind\":\"laminated\",\"isMirrored\":false,\"adhesive\":\"polyurethane\",\"strips\":[{\"species\":\"black-cherry\",\"widthMm\":60.5},{\"widthMm\":30},{\"widthMm\":70}]}")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"widthMm\":60}],\"tipPiece\":{\"species\":\"sugar-maple\",\"lengthMm\":25},\"facing\":{\"species\":\"black-cherry\",\"thicknessMm\":0.7}}")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"widthMm\":60}],\"facing\":{\"species\":\"black-cherry\",\"thicknessMm\":0.7}}")]
    public void A_code_evaluates_to_the_very_report_it_was_made_from(string changes)
    {
        var solved = DesignService.Compute(Requests.Read(Requests.With(changes)));

        var (design, problem) = DesignService.Read(solved.Code);
        Assert.Null(problem);
        var again = DesignService.Evaluate(design!, solved.Code);

        Assert.Equal(solved.Report.Sizes, again.Report.Sizes);
        Assert.Equal(solved.Report.Mass, again.Report.Mass);
        Assert.Equal(solved.Report.Flex, again.Report.Flex);
        Assert.Equal(solved.Report.Strength.Cases, again.Report.Strength.Cases);
        Assert.Equal(solved.Report.Stations.HalfWidth, again.Report.Stations.HalfWidth);
        Assert.Equal(solved.Report.Stations.HalfThickness, again.Report.Stations.HalfThickness);
        Assert.Equal(solved.Resolved.Request.Label, design!.Request.Label);
        Assert.Equal(solved.Code, DesignCodes.Encode(design.Pin(again.Report.Sizes)));
    }

    [Theory]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":880}""")]
    [InlineData("""{"handSpacingMm":8.8e2,"freeboardMm":38.000,"wood":{"treatment":"none","species":"white-ash","moisturePercent":12}}""")]
    [InlineData("""{"overallLengthMm":1558,"label":"","wood":{"species":"white-ash"},"blade":{"family":"ottertail","fullness":0.74},"shaft":{"bendDegrees":-0.0}}""")]
    [InlineData("""{"handSpacingMm":880,"freeboardMm":38,"overallLengthMm":1558,"blade":{},"shaft":{},"grip":{"style":"pear"},"wood":{"species":"white-ash"},"construction":{},"aims":{"benchFlexMm":{}},"loads":{},"drawing":{"units":"metric"}}""")]
    public void The_same_design_has_the_same_code_however_it_was_asked_for(string json) =>
        Assert.Equal(DesignService.Compute(Requests.Read(Requests.Least)).Code, DesignService.Compute(Requests.Read(json)).Code);

    [Theory]
    [InlineData("/label=\"x\"")]
    [InlineData("/freeboardMm=38.1")]
    [InlineData("/drawing/units=\"inch\"")]
    [InlineData("/grip/faces=\"one-sided\"")]
    [InlineData("/aims/maximumMassG=2500")]
    [InlineData("/loads/pushOffSideN=125.1")]
    public void Another_design_has_another_code(string change) =>
        Assert.NotEqual(
            DesignService.Compute(Requests.Read(Requests.Least)).Code, DesignService.Compute(Requests.Read(Requests.With(change))).Code);

    [Theory]
    [InlineData("", DesignCodeFault.ForeignVersion)]
    [InlineData("p2AAAAAAAA", DesignCodeFault.ForeignVersion)]
    [InlineData("P1AAAAAAAA", DesignCodeFault.ForeignVersion)]
    [InlineData("p1", DesignCodeFault.CutShort)]
    [InlineData("p1AAAA", DesignCodeFault.CutShort)]
    [InlineData("p1A", DesignCodeFault.CutShort)]
    [InlineData("p1AAAAAAAAAA==", DesignCodeFault.NotBase64Url)]
    [InlineData("p1AAAA AAAAAA", DesignCodeFault.NotBase64Url)]
    [InlineData("p1AAAA+AAA/AA", DesignCodeFault.NotBase64Url)]
    [InlineData("p1AAAAéAAAAAA", DesignCodeFault.NotBase64Url)]
    public void Codes_that_are_none_say_why(string code, DesignCodeFault fault) => Assert.Equal(new(null, fault), DesignCodes.Decode(code));

    [Fact]
    public void A_code_longer_than_any_design_is_not_read() =>
        Assert.Equal(DesignCodeFault.TooLong, DesignCodes.Decode("p1" + new string('A', DesignCodes.MostCharacters)).Fault);

    [Fact]
    public void A_code_cut_anywhere_is_refused()
    {
        for (var length = 0; length < Hire.Code.Length; length++)
            Assert.NotNull(DesignCodes.Decode(Hire.Code[..length]).Fault);
    }

    [Fact]
    public void A_code_with_any_letter_changed_is_refused()
    {
        for (var place = 0; place < Hire.Code.Length; place++)
        {
            var letters = Hire.Code.ToCharArray();
            letters[place] = letters[place] == 'k' ? 'q' : 'k';
            Assert.NotNull(DesignCodes.Decode(new string(letters)).Fault);
        }
    }

    [Fact]
    public void A_code_with_letters_added_is_refused()
    {
        foreach (var tail in (string[])["A", "AA", "AAA", "AAAA", "AAAAAAAA", "_"]) Assert.NotNull(DesignCodes.Decode(Hire.Code + tail).Fault);
    }

    [Fact]
    public void A_code_that_swells_is_stopped()
    {
        var code = Pack(Encoding.UTF8.GetBytes("[" + new string(' ', 8 << 20) + "]"));
        Assert.InRange(code.Length, 1, DesignCodes.MostCharacters);
        Assert.Equal(DesignCodeFault.TooBig, DesignCodes.Decode(code).Fault);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("[880")]
    [InlineData("[880]]")]
    [InlineData("[880] [1]")]
    [InlineData("[\"880\"]")]
    [InlineData("[[880]]")]
    [InlineData("[880,38,1588,7]")]
    [InlineData("[880,38,1588,true]")]
    [InlineData("[880,38,1588,\"\\ud800\"]")]
    [InlineData("[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,[1]]")]
    [InlineData("[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,[[1,2]]]")]
    [InlineData("[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,7]")]
    public void A_good_wrapping_round_something_else_is_no_design(string text) =>
        Assert.Equal(DesignCodeFault.NotADesign, DesignCodes.Decode(Pack(Encoding.UTF8.GetBytes(text))).Fault);

    [Fact]
    public void Bytes_that_are_no_text_are_no_design() =>
        Assert.Equal(DesignCodeFault.NotADesign, DesignCodes.Decode(Pack([.. "[880,38,1588,\""u8, 0xFF, 0xFE, .. "\"]"u8])).Fault);

    [Theory]
    [InlineData("[]")]
    [InlineData("[1e999]")]
    [InlineData("[880,38,1588,\"ottertail\",650,148,0.36,0.72,1e300]")]
    public void A_code_with_values_of_no_paddle_is_refused_before_any_work(string text)
    {
        var (design, problem) = DesignService.Read(Pack(Encoding.UTF8.GetBytes(text)));
        Assert.Null(design);
        Assert.Equal(400, problem!.StatusCode);
        Assert.NotEmpty(problem.Errors!);
    }

    [Fact]
    public void A_code_that_leaves_sizes_open_is_refused_as_it_would_need_solving()
    {
        var (design, problem) = DesignService.Read(DesignCodes.Encode(Hire.Resolved.Request));
        Assert.Null(design);
        Assert.Contains("leaves sizes open", problem!.Detail, StringComparison.Ordinal);
    }

    [Property(MaxTest = 500)]
    public void Letters_at_random_are_refused_without_a_fault_of_the_service(byte[] bytes) =>
        Assert.NotNull(DesignCodes.Decode("p1" + Base64Url.EncodeToString(bytes)).Fault);

    private static string Json(DesignRequest request) => JsonSerializer.Serialize(request, StrictJson.Options);

    // The layout written down a second time: check bytes, then the packed text.
    private static string Pack(byte[] text)
    {
        var packed = new byte[3 + BrotliEncoder.GetMaxCompressedLength(text.Length)];
        SHA256.HashData(text).AsSpan(0, 3).CopyTo(packed);
        Assert.True(BrotliEncoder.TryCompress(text, packed.AsSpan(3), out var length, 11, 22));
        return "p1" + Base64Url.EncodeToString(packed.AsSpan(0, 3 + length));
    }
}
