using System.Text.RegularExpressions;

namespace Paddle.Design.Tests.House;

/// <summary>Holds the shape of the house: arrows run one way, every cited equation exists, the image is built as CI builds.</summary>
public partial class HouseTests
{
    // The order in which a step may use the ones before it. Fitting names places along the paddle with Outline's records and asks for the strength of a duty.
    private static readonly string[] Steps =
        ["Units", "Water", "Outline", "Solid", "Finishing", "Wood", "Boards", "Strength", "Fitting", "Stroke", "Balance", "Laminating", "Checks", "Build", "Request", "Layout", "Comparison", "Uncertainty", "Copying"];

    public static TheoryData<string> StepNames => [.. Steps];

    [Theory]
    [MemberData(nameof(StepNames))]
    public void A_step_uses_only_the_steps_before_it(string step)
    {
        var later = Steps[(Array.IndexOf(Steps, step) + 1)..];
        foreach (var file in Repository.Sources($"src/Paddle.Design/{step}"))
        {
            var used = UsedSteps().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value);
            Assert.Empty(used.Intersect(later).Select(name => $"{Path.GetFileName(file)} uses {name}"));
        }
    }

    [Theory]
    [InlineData("Contracts", "Validation", "Hosting", "Endpoints")]
    [InlineData("Validation", "Hosting", "Endpoints")]
    [InlineData("Hosting", "Endpoints")]
    public void A_folder_of_the_service_uses_only_those_before_it(string folder, params string[] later)
    {
        foreach (var file in Repository.Sources($"src/PaddleApi/{folder}"))
        {
            var text = File.ReadAllText(file);
            Assert.Empty(later.Where(name => Regex.IsMatch(text, $@"(?:PaddleApi\.|[ (<]){name}\.[A-Z]")).Select(name => $"{Path.GetFileName(file)} uses {name}"));
        }
    }

    // Within them as well; what lies in no folder of its own serves all.
    public static TheoryData<string, string[]> Orders => new()
    {
        { "Hosting", ["Work", "Telemetry", "Json", "Problems", "Describing", "Caching", "Requests", "Browsers", "Callers", "Health", "Batches", "OpenApi"] },
        { "Endpoints", ["Designs/Files", "Designs", "Fittings", "Boards", "Builds", "Checks", "Comparisons", "Copies", "TradeOffs", "Uncertainties", "Page", "Batches"] },
    };

    [Theory]
    [MemberData(nameof(Orders))]
    public void Within_a_folder_of_the_service_arrows_run_one_way(string folder, string[] order)
    {
        var root = Path.Combine(Repository.Root, "src/PaddleApi", folder);
        Assert.Empty(Directory.EnumerateDirectories(root).Select(Path.GetFileName).Except(order));
        var files = order.SelectMany((part, at) => Directory.EnumerateFiles(Path.Combine(root, part), "*.cs").Select(file => (File: file, At: at)));
        Assert.All(files, one => Assert.Empty(
            Used(File.ReadAllText(one.File), $"PaddleApi.{folder}.").Where(used => Array.IndexOf(order, used.Replace('.', '/')) > one.At)
                .Select(used => $"{Path.GetFileName(one.File)} uses {used}")));
    }

    private static IEnumerable<string> Used(string text, string within) =>
        Regex.Matches(text, $@"^using {Regex.Escape(within)}([\w.]+);", RegexOptions.Multiline).Select(match => match.Groups[1].Value);

    [Fact]
    public void Every_folder_of_the_computation_is_a_step_in_the_order()
    {
        var folders = Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src/Paddle.Design")).Select(Path.GetFileName);
        Assert.Empty(folders.Except(Steps).Except(["bin", "obj"]));
    }

    [Theory]
    [InlineData("src/Paddle.Design", "Paddle.Drawings", "PaddleApi", "Microsoft.AspNetCore", "System.Net.Http")]
    [InlineData("src/Paddle.Drawings", "PaddleApi", "Microsoft.AspNetCore", "System.Net.Http")]
    public void Arrows_run_one_way(string project, params string[] forbidden)
    {
        foreach (var file in Repository.Sources(project))
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain(forbidden, name => text.Contains($"using {name}", StringComparison.Ordinal));
        }

        // A project may let a later one see into it; it may not use it.
        var used = Repository.Read($"{project}/{Path.GetFileName(project)}.csproj").Split('\n').Where(line => line.Contains("Reference", StringComparison.Ordinal));
        Assert.All(used, line => Assert.DoesNotContain(forbidden, name => line.Contains(name, StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_equation_that_the_code_cites_is_on_the_theory_page()
    {
        var written = TheoryRows().Matches(Repository.Read("docs/theory.md")).Select(match => match.Groups[1].Value).ToHashSet();
        var cited = Repository.Sources("src").SelectMany(file => Citations(File.ReadAllText(file))).ToHashSet();
        Assert.True(cited.Count > 60, "The code cites its equations.");
        Assert.Empty(cited.Except(written).Order());
    }

    [Theory]
    [InlineData("src/Paddle.Design")]
    [InlineData("src/Paddle.Drawings")]
    public void No_braces_stand_round_a_single_line(string project)
    {
        foreach (var file in Repository.Sources(project))
        {
            var braced = BracedLines().Matches(File.ReadAllText(file)).Where(match => match.Groups[1].Length + match.Groups[2].Length < 140);
            Assert.Empty(braced.Select(match => $"{Path.GetFileName(file)}: {match.Groups[1].Value.Trim()}"));
        }
    }

    [Fact]
    public void The_image_is_built_by_commands_that_CI_runs()
    {
        var ci = Repository.Read(".ci/run");
        var commands = Repository.Read("Dockerfile").Split('\n').Where(line => line.StartsWith("RUN ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(commands);
        Assert.All(commands, line => Assert.Contains(line["RUN ".Length..].Trim(), ci, StringComparison.Ordinal));
    }

    [Fact]
    public void CI_runs_the_test_command_of_the_readme()
    {
        Assert.Contains("\ndotnet test\n", Repository.Read("README.md"), StringComparison.Ordinal);
        Assert.Contains("\ndotnet test ", Repository.Read(".ci/run"), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Citations(string text)
    {
        foreach (Match match in TheoryCitations().Matches(text))
        {
            var letter = match.Groups[1].Value;
            var first = int.Parse(match.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture);
            var last = match.Groups[3].Success ? int.Parse(match.Groups[3].Value, System.Globalization.CultureInfo.InvariantCulture) : first;
            for (var number = first; number <= last; number++) yield return $"{letter}{number}";
        }
    }

    [GeneratedRegex(@"^( *if \(.*\))\n *\{\n *((?!foreach)[^\n{}]+;)\n *\}\n(?! *else)", RegexOptions.Multiline)]
    private static partial Regex BracedLines();

    [GeneratedRegex(@"Paddle\.Design\.([A-Z][a-z]+)")]
    private static partial Regex UsedSteps();

    [GeneratedRegex(@"[Tt]heory ([A-Z])([0-9]+)(?:–[A-Z]?([0-9]+))?")]
    private static partial Regex TheoryCitations();

    [GeneratedRegex(@"^\| ([A-Z][0-9]+) \|", RegexOptions.Multiline)]
    private static partial Regex TheoryRows();
}
