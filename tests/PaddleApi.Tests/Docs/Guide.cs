using System.Text.RegularExpressions;

namespace PaddleApi.Tests.Docs;

/// <summary>A fenced block of the guide.</summary>
/// <param name="Chapter">The heading it stands under.</param>
/// <param name="Language">What stands behind its fence.</param>
/// <param name="Text">What it holds.</param>
/// <param name="Start">Where its text begins in the guide.</param>
/// <param name="SaveAs">The file that the reader is told to save it as; null for none.</param>
internal sealed record GuideBlock(string Chapter, string Language, string Text, int Start, string? SaveAs);

/// <summary>The guide as a reader sees it: chapters with blocks to paste.</summary>
internal sealed partial class Guide
{
    /// <summary>Where a reader's service listens.</summary>
    public const string ReadersService = "http://localhost:5080";

    /// <summary>The chapter whose blocks come before those of every other.</summary>
    public const string Beginning = "Before you begin";

    public Guide(string text)
    {
        Text = text;
        Blocks = [.. Read(text)];
        Pictures = [.. Images().Matches(text).Select(match => match.Groups[1].Value)];
    }

    public string Text { get; }

    public IReadOnlyList<GuideBlock> Blocks { get; }

    /// <summary>Paths of the pictures it shows, relative to it.</summary>
    public IReadOnlyList<string> Pictures { get; }

    public IEnumerable<string> Chapters => Blocks.Select(block => block.Chapter).Distinct();

    private static IEnumerable<GuideBlock> Read(string text)
    {
        var chapter = "";
        foreach (Match match in Parts().Matches(text))
        {
            if (match.Groups["heading"].Success) chapter = match.Groups["heading"].Value;
            if (!match.Groups["text"].Success) continue;
            var before = text[..match.Index].TrimEnd();
            var told = SaveAs().Match(before[(before.LastIndexOf("\n\n", StringComparison.Ordinal) + 1)..]);
            yield return new(
                chapter, match.Groups["language"].Value, match.Groups["text"].Value, match.Groups["text"].Index, told.Success ? told.Groups[1].Value : null);
        }
    }

    // A heading ends with its line, a block does not.
    [GeneratedRegex(@"^## (?<heading>[^\n]+)$|^```(?<language>[a-z]*)\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Parts();

    [GeneratedRegex(@"[Ss]ave\s+this\s+as\s+`([a-z.-]+)`")]
    private static partial Regex SaveAs();

    [GeneratedRegex(@"^!\[[^\]]+\]\(([^)]+)\)$", RegexOptions.Multiline)]
    private static partial Regex Images();
}
