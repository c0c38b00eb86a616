using System.Globalization;
using System.Text;
using Paddle.Design.Tests.House;

namespace Paddle.Design.Tests.Validation;

/// <summary>Keeps docs/validation.md what the code computes: every row is checked here and the page is rendered from the rows.</summary>
public class ValidationPageTests
{
    private const string Update = "UPDATE_VALIDATION=1 dotnet test tests/Paddle.Design.Tests --filter ValidationPage";

    public static TheoryData<string> Rows => [.. OutsideFigures.All.Select(row => row.What)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Agrees_with_the_outside_figure(string what)
    {
        var row = OutsideFigures.All.Single(row => row.What == what);
        Assert.True(
            Math.Abs(row.DifferencePercent) <= row.TolerancePercent,
            $"{row.What}: ours {row.Ours}, outside {row.Outside} {row.Unit}, {row.DifferencePercent:0.000} % apart");
    }

    [Fact]
    public void The_page_is_up_to_date()
    {
        var page = Render();
        var path = Path.Combine(Repository.Root, "docs", "validation.md");
        if (Environment.GetEnvironmentVariable("UPDATE_VALIDATION") == "1") File.WriteAllText(path, page);
        Assert.True(File.Exists(path) && File.ReadAllText(path) == page, $"docs/validation.md is not what the code computes. Look at it, then: {Update}");
    }

    private static string Render()
    {
        var text = new StringBuilder();
        text.Append(
            """
            # Validation

            What the service computes, held against something outside the project, and how close it comes. This page is rendered from
            the checks themselves by a test; it fails when a figure moves. To look at a change and accept it:

            ```
            UPDATE_VALIDATION=1 dotnet test tests/Paddle.Design.Tests --filter ValidationPage
            ```

            Where a source could not be read again it says *from memory*; a fact of the trade says *common practice, no source*.

            """);
        foreach (var topic in OutsideFigures.All.GroupBy(row => row.Topic))
        {
            text.Append("\n## ").Append(topic.Key).Append("\n\n| what | outside | ours | apart, % | allowed, % | source |\n| --- | ---: | ---: | ---: | ---: | --- |\n");
            foreach (var row in topic)
            {
                text.Append("| ").Append(row.What).Append(" | ").Append(Figure(row.Outside)).Append(' ').Append(row.Unit)
                    .Append(" | ").Append(Figure(row.Ours)).Append(' ').Append(row.Unit)
                    .Append(" | ").Append(Apart(row.DifferencePercent))
                    .Append(" | ").Append(row.TolerancePercent.ToString("0.###", CultureInfo.InvariantCulture))
                    .Append(" | ").Append(row.Source).Append(" |\n");
            }
        }

        text.Append(PracticeTable.Render());
        FiniteElementPage.Append(text);
        return text.ToString().Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    // Five figures: enough to see a difference, not so many that the last bit of a processor shows.
    private static string Figure(double value) => double.Parse(value.ToString("G5", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        .ToString("0.##########", CultureInfo.InvariantCulture);

    private static string Apart(double percent) => Math.Abs(percent) < 0.005 ? "0.00" : percent.ToString("0.00", CultureInfo.InvariantCulture);
}
