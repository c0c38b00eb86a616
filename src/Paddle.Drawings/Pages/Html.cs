using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace Paddle.Drawings.Pages;

/// <summary>Pieces of a page as text. Only <see cref="Escape"/> turns words into markup, and every piece that takes words calls it; the
/// rest take markup made here.</summary>
internal static class Html
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>Words as markup: nothing in them is taken for a tag.</summary>
    public static string Escape(string words) => Encoder.Encode(words);

    public static string Paragraph(string words, string? css = null) => $"<p{Class(css)}>{Escape(words)}</p>\n";

    /// <summary>A heading of level 2 or 3.</summary>
    public static string Heading(int level, string words) => $"<h{level}>{Escape(words)}</h{level}>\n";

    /// <summary>A list of words; nothing for none.</summary>
    public static string List(IEnumerable<string> items, string? css = null)
    {
        var lines = string.Concat(items.Select(item => $"<li>{Escape(item)}</li>\n"));
        return lines.Length == 0 ? "" : $"<ul{Class(css)}>\n{lines}</ul>\n";
    }

    /// <summary>A table of words with one row of headings that repeats on every printed page.</summary>
    public static string Table(string caption, IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows, string? css = null)
    {
        var head = string.Concat(headings.Select(heading => $"<th scope=\"col\">{Escape(heading)}</th>"));
        var body = string.Concat(rows.Select(row => $"<tr>{string.Concat(row.Select(cell => $"<td>{Escape(cell)}</td>"))}</tr>\n"));
        return $"<table{Class(css)}>\n<caption>{Escape(caption)}</caption>\n<thead><tr>{head}</tr></thead>\n<tbody>\n{body}</tbody>\n</table>\n";
    }

    /// <summary>Markup held together where a page ends, as far as it fits on one.</summary>
    public static string Section(string markup, string? css = null) => $"<section{Class(css)}>\n{markup}</section>\n";

    private static string Class(string? css) => css is null ? "" : $" class=\"{css}\"";
}
