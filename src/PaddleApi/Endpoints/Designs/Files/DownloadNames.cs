using System.Text;
using Microsoft.Net.Http.Headers;
using Paddle.Drawings;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>Names that files are saved under, made from a label that may hold anything (RFC 6266).</summary>
internal static class DownloadNames
{
    // Signs that some file system reads as part of a path, and those that a shell would read.
    private const string NoFileHas = "/\\:*?\"<>|%$`&;'";

    private static readonly string[] Shown = [".svg", ".pdf"];

    /// <summary>The header Content-Disposition: pictures and prints open where they are, files for programs are saved.</summary>
    /// <param name="label">The owner's name for the design.</param>
    /// <returns>A header with a plain ASCII name, and the label's own letters for whoever reads <c>filename*</c>.</returns>
    public static string Disposition(IDesignFile file, string label)
    {
        return new ContentDispositionHeaderValue(Shown.Contains(Path.GetExtension(file.FileName)) ? "inline" : "attachment")
        {
            FileName = $"{Slug(label)}-{file.FileName}",
            FileNameStar = $"{Readable(label)} {file.FileName}",
        }.ToString();
    }

    /// <summary>The label in lower-case ASCII letters, digits and single hyphens; <c>paddle</c> when that leaves nothing.</summary>
    private static string Slug(string label)
    {
        var slug = new StringBuilder(label.Length);
        foreach (var letter in label)
        {
            if (char.IsAsciiLetterOrDigit(letter)) slug.Append(char.ToLowerInvariant(letter));
            else if (slug.Length > 0 && slug[^1] != '-') slug.Append('-');
        }

        var trimmed = slug.ToString().TrimEnd('-');
        return trimmed.Length > 0 ? trimmed : "paddle";
    }

    /// <summary>The label without what a file system, a terminal or an eye could be misled by.</summary>
    private static string Readable(string label)
    {
        var name = new StringBuilder(label.Length);
        foreach (var (character, why) in LabelText.Read(label))
        {
            var misleads = why is not null || character == Rune.ReplacementChar
                || (character.IsBmp && NoFileHas.Contains((char)character.Value, StringComparison.Ordinal));
            name.Append(misleads ? "-" : character.ToString());
        }

        // A leading dot hides a file.
        var trimmed = name.ToString().Trim(' ', '.', '-');
        return trimmed.Length > 0 ? trimmed : "Paddle";
    }
}
