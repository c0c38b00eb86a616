using System.Text.Encodings.Web;
using System.Text.Unicode;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Pages;

/// <summary>Writes blocks as HTML that is well-formed XML too. Only <see cref="Escape"/> turns words into markup.</summary>
internal static class HtmlWriter
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>A page that needs nothing else: no script, no reference to anything outside it.</summary>
    public static string Page(string title, string css, IEnumerable<Block> blocks, string? bodyClass) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width" />
        <title>{Escape(title)}</title>
        <style>{css}</style>
        </head>
        <body{Class(bodyClass)}>
        <h1>{Escape(title)}</h1>
        {All(blocks)}</body>
        </html>

        """.ReplaceLineEndings("\n");

    /// <summary>Words as markup: nothing in them is taken for a tag.</summary>
    public static string Escape(string words) => Encoder.Encode(words);

    private static string All(IEnumerable<Block> blocks) => string.Concat(blocks.Select(Write));

    private static string Write(Block block) => block switch
    {
        Heading heading => $"<h{heading.Level}>{Escape(heading.Words)}</h{heading.Level}>\n",
        Paragraph words => $"<p{Class(words.Look)}>{Escape(words.Words)}</p>\n",
        Lines list when list.Items.Count == 0 => "",
        Lines list => $"<ul{Class(list.Look)}>\n{string.Concat(list.Items.Select(item => $"<li>{Escape(item)}</li>\n"))}</ul>\n",
        Table table => Write(table),
        Picture picture => Wide(picture.Sheet.Title, SvgWriter.Write(picture.Sheet, scalable: true)),
        Together { Beside: { } picture } part =>
            $"<section{Class(part.Look)}>\n{All(part.Blocks)}<div class=\"beside\">\n{SvgWriter.Write(picture, scalable: true)}<div>\n{All(part.Words!)}</div>\n</div>\n</section>\n",
        Together part => $"<section{Class(part.Look)}>\n{All(part.Blocks)}</section>\n",
        _ => throw new ArgumentOutOfRangeException(nameof(block)),
    };

    // What is wider than a telephone moves within its own frame, by finger and by key.
    private static string Wide(string name, string markup) => $"<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"{Escape(name)}\">\n{markup}</div>\n";

    private static string Write(Table table)
    {
        var head = string.Concat(table.Headings.Select(heading => $"<th scope=\"col\">{Escape(heading)}</th>"));
        var body = string.Concat(table.Rows.Select(row => $"<tr>{string.Concat(row.Select((cell, i) => i == 0 ? $"<th scope=\"row\">{Escape(cell)}</th>" : $"<td>{Escape(cell)}</td>"))}</tr>\n"));
        return Wide(
            table.Caption, $"<table{Class(table.Look)}>\n<caption>{Escape(table.Caption)}</caption>\n<thead><tr>{head}</tr></thead>\n<tbody>\n{body}</tbody>\n</table>\n");
    }

    private static string Class(Look look) => Class(look == Look.Plain ? null : look.ToString().ToLowerInvariant());

    private static string Class(string? css) => css is null ? "" : $" class=\"{css}\"";
}
