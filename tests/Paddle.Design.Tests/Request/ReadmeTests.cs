using Paddle.Design.Request;
using Paddle.Design.Tests.House;

namespace Paddle.Design.Tests.Request;

public sealed class ReadmeTests
{
    // The lines below are those of the project's own page.
    [Fact]
    public void Three_lines_design_a_paddle()
    {
        var request = new DesignRequest { HandSpacingMm = 889, Wood = new() { Species = "black-cherry" } };
        var report = PaddleDesigner.Design(request);
        Console.WriteLine($"{report.Finished.MassG:0} g, {report.Balance.OffsetMm:0} mm off the lower hand");

        Assert.True(report.Outcome.IsMet);
        Assert.InRange(report.Finished.MassG, 560, 720);
        var shown = Repository.Read("src/Paddle.Design/README.md").Split('\n').SkipWhile(line => line != "```csharp").Skip(1).TakeWhile(line => line != "```").ToList();
        var here = Repository.Read("tests/Paddle.Design.Tests/Request/ReadmeTests.cs");
        Assert.Equal(3, shown.Count);
        Assert.All(shown, line => Assert.Contains(line, here, StringComparison.Ordinal));
    }
}
