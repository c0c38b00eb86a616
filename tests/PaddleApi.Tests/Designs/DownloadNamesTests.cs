using System.Net.Http.Headers;
using Paddle.Drawings;
using PaddleApi.Endpoints.Designs.Files;

namespace PaddleApi.Tests.Designs;

public sealed class DownloadNamesTests
{
    [Theory]
    [InlineData("Heron Lake hire fleet, size M", "heron-lake-hire-fleet-size-m-outline.svg", "Heron Lake hire fleet, size M outline.svg")]
    [InlineData("Tante Éloïse 5′", "tante-lo-se-5-outline.svg", "Tante Éloïse 5′ outline.svg")]
    [InlineData("櫂", "paddle-outline.svg", "櫂 outline.svg")]
    [InlineData("", "paddle-outline.svg", "Paddle outline.svg")]
    [InlineData("../../etc/passwd", "etc-passwd-outline.svg", "etc-passwd outline.svg")]
    [InlineData("a\"; filename=\"b.exe", "a-filename-b-exe-outline.svg", "a-- filename=-b.exe outline.svg")]
    [InlineData("a\r\nSet-Cookie: b=c", "a-set-cookie-b-c-outline.svg", "a--Set-Cookie- b=c outline.svg")]
    [InlineData("gpj\u202Eexe", "gpj-exe-outline.svg", "gpj-exe outline.svg")]
    public void A_file_is_named_after_the_label_and_nothing_in_it_breaks_out(string label, string plain, string full)
    {
        var header = DownloadNames.Disposition(DesignFiles.Find("outline.svg")!, label);

        Assert.True(header.All(letter => letter is >= ' ' and <= '~'), header);
        var read = ContentDispositionHeaderValue.Parse(header);
        Assert.Equal("inline", read.DispositionType);
        Assert.Equal(plain, read.FileName!.Trim('"'));
        Assert.Equal(full, read.FileNameStar);
        Assert.Equal(2, read.Parameters.Count);
    }

    [Fact]
    public void Pictures_and_prints_open_and_files_for_programs_are_saved() => Assert.Equal(
        ["offsets.csv", "solid.stl", "template.dxf"],
        DesignFiles.All.Where(file => DownloadNames.Disposition(file, "x").StartsWith("attachment;", StringComparison.Ordinal))
            .Select(file => file.FileName).Order(StringComparer.Ordinal));
}
