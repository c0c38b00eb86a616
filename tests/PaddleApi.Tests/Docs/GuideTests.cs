using System.Diagnostics;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Docs;

/// <summary>
/// A reader pastes the guide block by block: so does this test, in bash with curl and jq, against the service started as the guide starts it.
/// What a block prints must have the members that the guide shows, and each picture be the one shown. To write answers and pictures anew after
/// the engine moved: <c>UPDATE_GUIDE=1 dotnet test tests/PaddleApi.Tests --filter Guide</c>, then read what changed.
/// </summary>
public sealed partial class GuideTests(StartedService service) : IClassFixture<StartedService>
{
    private const string Command = "UPDATE_GUIDE=1 dotnet test tests/PaddleApi.Tests --filter Guide";

    private static readonly bool IsUpdate = Environment.GetEnvironmentVariable("UPDATE_GUIDE") == "1";
    private static readonly string FilePath = Path.Combine(Committed.Root(), "docs", "guide.md");
    private static readonly JsonSerializerOptions Written = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly Guide Shown = new(File.ReadAllText(FilePath));

    public static TheoryData<string> Chapters => [.. Shown.Chapters.Where(chapter => chapter.Length > 0 && chapter != Guide.Beginning)];

    [Fact]
    public void The_guide_starts_the_service_as_the_readme_does()
    {
        var start = Shown.Blocks[0];
        Assert.Equal(("console", StartedService.Command + "\n"), (start.Language, start.Text));
        Assert.Contains($"\n{StartedService.Command}\n", File.ReadAllText(Path.Combine(Committed.Root(), "README.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_block_is_of_a_kind_that_is_run()
    {
        Assert.True(Shown.Chapters.Count() > 6, "The guide has lost its chapters.");
        Assert.All(Shown.Blocks.Skip(1), block => Assert.Contains(block.Language, (string[])["bash", "json", "html"]));
        foreach (var (block, before) in Shown.Blocks.Skip(1).Zip(Shown.Blocks))
        {
            // Json is an answer to the block above it, or a file to save; html is run in a browser by the tests of the page.
            if (block.Language == "json" && block.SaveAs is null) Assert.Equal(("bash", block.Chapter), (before.Language, before.Chapter));
        }
    }

    [ShellTheory, MemberData(nameof(Chapters))]
    public async Task A_chapter_works_as_it_is_written(string chapter)
    {
        var folder = Directory.CreateTempSubdirectory("guide-").FullName;
        try
        {
            Block[] blocks = [.. Blocks(chapter)];
            foreach (var file in Shown.Blocks.Where(block => block.Chapter == chapter && block.SaveAs is not null))
                await File.WriteAllTextAsync(Path.Combine(folder, file.SaveAs!), Here(file.Text));

            var said = await RunAsync(blocks, folder);

            Assert.True(said.ExitCode == 0, $"{chapter}: {said.Error}");
            for (var k = 0; k < blocks.Length; k++)
            {
                if (blocks[k].Answer is { } answer) Compare(answer, await File.ReadAllTextAsync(Path.Combine(folder, $"said-{k}")));
            }

            foreach (var picture in Shown.Pictures.Where(picture => File.Exists(Path.Combine(folder, Path.GetFileName(picture)))))
                ComparePicture(picture, await File.ReadAllTextAsync(Path.Combine(folder, Path.GetFileName(picture))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Every_picture_is_drawn_by_a_block()
    {
        Assert.NotEmpty(Shown.Pictures);
        Assert.All(Shown.Pictures, picture => Assert.Contains(Shown.Blocks, block => block.Language == "bash" && block.Text.Contains(Path.GetFileName(picture), StringComparison.Ordinal)));
    }

    [ShellFact]
    public async Task The_pictures_of_the_readme_are_drawn_by_the_service()
    {
        // Its own command, and what it says to add for the outline.
        var readme = await File.ReadAllTextAsync(Path.Combine(Committed.Root(), "README.md"));
        var command = Curl().Match(readme).Value;
        Assert.Contains("`-H 'Accept: image/svg+xml'` for the outline", readme, StringComparison.Ordinal);
        var design = JsonNode.Parse(await PasteAsync(command))!;
        Assert.Equal("met", design["outcome"]!.GetValue<string>());
        ComparePicture("hire-paddle-outline.svg", await PasteAsync($"{command} -H 'Accept: image/svg+xml'"));
        var pictures = new Guide(readme).Pictures;
        Assert.Equal(["docs/guide/first-paddle.svg", "docs/hire-paddle-outline.svg"], pictures);
    }

    // As a reader pastes it, at the root of the repository.
    private async Task<string> PasteAsync(string command)
    {
        var here = command.Replace("localhost:5080", service.Address.Authority, StringComparison.Ordinal);
        using var shell = Process.Start(new ProcessStartInfo("bash", ["-c", $"{here} -sS --fail-with-body"]) { WorkingDirectory = Committed.Root(), RedirectStandardOutput = true })!;
        var said = await shell.StandardOutput.ReadToEndAsync();
        await shell.WaitForExitAsync();
        Assert.True(shell.ExitCode == 0, $"{here}: {said}");
        return said;
    }

    private sealed record Block(string Text, GuideBlock? Answer);

    // The blocks of the beginning, then the chapter's, each with the answer shown below it; what is saved is not run.
    private static IEnumerable<Block> Blocks(string chapter)
    {
        for (var k = 0; k < Shown.Blocks.Count; k++)
        {
            var block = Shown.Blocks[k];
            if (block.Language != "bash" || block.SaveAs is not null || (block.Chapter != chapter && block.Chapter != Guide.Beginning)) continue;
            var next = k + 1 < Shown.Blocks.Count ? Shown.Blocks[k + 1] : null;
            yield return new(block.Text, next is { Language: "json", SaveAs: null } ? next : null);
        }
    }

    private string Here(string text) => text.Replace(Guide.ReadersService, service.Address.ToString().TrimEnd('/'), StringComparison.Ordinal);

    private async Task<(int ExitCode, string Error)> RunAsync(IReadOnlyList<Block> blocks, string folder)
    {
        // One shell for all, as the reader has: what one block sets the next one knows.
        var script = new StringBuilder("set -euo pipefail\n");
        for (var k = 0; k < blocks.Count; k++) script.Append(null, $"{{\n{Here(blocks[k].Text)}}} > said-{k}\n");
        using var shell = Process.Start(new ProcessStartInfo("bash", ["-c", script.ToString()]) { WorkingDirectory = folder, RedirectStandardError = true, RedirectStandardOutput = true })!;
        var (error, output) = (shell.StandardError.ReadToEndAsync(), shell.StandardOutput.ReadToEndAsync());
        await shell.WaitForExitAsync();
        var refused = Directory.EnumerateFiles(folder, "*.json").Select(File.ReadAllText).FirstOrDefault(text => text.Contains("\"errors\"", StringComparison.Ordinal));
        return (shell.ExitCode, $"{await error}{await output}{refused}");
    }

    private static void Compare(GuideBlock shown, string said)
    {
        var real = JsonNode.Parse(said);
        if (IsUpdate)
        {
            Rewrite(shown, real!.ToJsonString(Written));
            return;
        }

        Assert.False(shown.Text.Contains("null", StringComparison.Ordinal), $"{shown.Chapter} asks for a member that the answer lacks.\n{shown.Text}");
        var differences = Differences("", JsonNode.Parse(shown.Text), real).ToList();
        Assert.True(differences.Count == 0, $"{shown.Chapter}: the guide shows another answer. If it should: {Command}\n{string.Join('\n', differences)}");
    }

    // Member by member: neither order nor layout counts.
    private static IEnumerable<string> Differences(string at, JsonNode? shown, JsonNode? real)
    {
        switch (shown, real)
        {
            case (JsonObject a, JsonObject b):
                foreach (var name in a.Select(member => member.Key).Union(b.Select(member => member.Key)))
                {
                    if (!a.ContainsKey(name) || !b.ContainsKey(name)) yield return $"{at}/{name} is only in {(a.ContainsKey(name) ? "the guide" : "the answer")}";
                    else foreach (var difference in Differences($"{at}/{name}", a[name], b[name])) yield return difference;
                }

                break;
            case (JsonArray a, JsonArray b) when a.Count == b.Count:
                for (var k = 0; k < a.Count; k++)
                    foreach (var difference in Differences($"{at}/{k}", a[k], b[k])) yield return difference;
                break;
            default:
                if (!JsonNode.DeepEquals(shown, real)) yield return $"{at}: shown {shown?.ToJsonString(Written)}, answered {real?.ToJsonString(Written)}";
                break;
        }
    }

    private static void Rewrite(GuideBlock shown, string real)
    {
        // The guide may have been rewritten above this block meanwhile: it is found again by its order.
        var place = Shown.Blocks.ToList().IndexOf(shown);
        var text = File.ReadAllText(FilePath);
        var now = new Guide(text).Blocks[place];
        File.WriteAllText(FilePath, $"{text[..now.Start]}{Folded(real)}\n{text[(now.Start + now.Text.Length)..]}");
    }

    // An object that fits a line stands on one.
    private static string Folded(string json)
    {
        for (var before = ""; before != json;)
        {
            before = json;
            json = Innermost().Replace(json, match => Line(match) is { Length: < 110 } line ? line : match.Value);
        }

        return json;

        static string Line(Match match)
        {
            var line = Regex.Replace(match.Value, @"\s*\n\s*", " ");
            return line.StartsWith('[') ? $"[{line[1..^1].Trim()}]" : line;
        }
    }

    private static void ComparePicture(string path, string drawn)
    {
        var file = Path.Combine(Committed.Root(), "docs", path);
        if (IsUpdate) File.WriteAllText(file, drawn);
        Assert.True(File.Exists(file) && File.ReadAllText(file).ReplaceLineEndings("\n") == drawn.ReplaceLineEndings("\n"), $"docs/{path} is not what the service draws now. If it should be: {Command}");
    }

    [GeneratedRegex(@"^curl .*$", RegexOptions.Multiline)]
    private static partial Regex Curl();

    [GeneratedRegex(@"[{\[][^{}\[\]]*\n[^{}\[\]]*[}\]]")]
    private static partial Regex Innermost();
}

/// <summary>The service, started as the guide and the readme start it, on a port that is free.</summary>
public sealed class StartedService : IAsyncLifetime
{
    public const string Command = "dotnet run --project src/PaddleApi";

    private Process? process;

    public Uri Address { get; private set; } = new(Guide.ReadersService);

    public async Task InitializeAsync()
    {
        if (Shell.WhyNot is not null) return;
        // As the tests were built: nothing is built again while they run.
        var built = AppContext.BaseDirectory.Split(Path.DirectorySeparatorChar).Contains("Release") ? "Release" : "Debug";
        string[] arguments = [.. Command.Split(' ').Skip(1), "--no-build", "-c", built, "--", "--urls", "http://127.0.0.1:0"];
        process = Process.Start(new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = Committed.Root(), RedirectStandardOutput = true })!;
        var said = new StringBuilder();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            said.AppendLine(line);
            if (Regex.Match(line, @"http://127\.0\.0\.1:\d+") is not { Success: true } found) continue;
            Address = new(found.Value);
            _ = process.StandardOutput.ReadToEndAsync(); // nobody reads its log, and it must not wait for one
            return;
        }

        throw new InvalidOperationException($"The service did not start: {said}");
    }

    public Task DisposeAsync()
    {
        process?.Kill(entireProcessTree: true);
        process?.Dispose();
        return Task.CompletedTask;
    }
}

/// <summary>A test that pastes into a shell; where the machine lacks a program it is skipped and says which.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ShellFactAttribute : FactAttribute
{
    public ShellFactAttribute() => Skip = Shell.WhyNot;
}

/// <summary>The same over a table of cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ShellTheoryAttribute : TheoryAttribute
{
    public ShellTheoryAttribute() => Skip = Shell.WhyNot;
}

/// <summary>What the guide asks of a reader's machine.</summary>
internal static class Shell
{
    private static readonly string[] Missing =
    [
        .. ((string[])["bash", "curl", "jq"]).Where(name => !(Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, name)))),
    ];

    /// <summary>Why no block can be run; null where they can.</summary>
    public static string? WhyNot => Missing.Length == 0 ? null : $"The guide's blocks need {string.Join(" and ", Missing)}, which this machine lacks.";
}
