using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Pages;

/// <summary>What a printed page is made of, in reading order; <see cref="HtmlWriter"/> and <see cref="PageFlow"/> write the same.</summary>
internal abstract record Block;

/// <summary>A heading: 1 is the title, which a page of HTML writes itself.</summary>
internal sealed record Heading(int Level, string Words) : Block;

internal sealed record Paragraph(string Words, Look Look = Look.Plain) : Block;

/// <summary>A list; with <see cref="Look.Check"/> each line has a box to tick.</summary>
internal sealed record Lines(IReadOnlyList<string> Items, Look Look = Look.Plain) : Block;

/// <summary>A table with one row of headings, which repeats on every page that it runs over.</summary>
internal sealed record Table(string Caption, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows, Look Look = Look.Plain) : Block;

/// <summary>A picture in millimetres of the page.</summary>
internal sealed record Picture(Sheet Sheet) : Block;

/// <summary>Blocks that stay on one page; a picture stands beside the words that follow the headings and notices.</summary>
internal sealed record Together(IReadOnlyList<Block> Blocks, Look Look = Look.Plain, Sheet? Beside = null, IReadOnlyList<Block>? Words = null) : Block;

/// <summary>How a block looks.</summary>
internal enum Look
{
    Plain,
    /// <summary>In a thin frame.</summary>
    Expect,
    /// <summary>Heavy, in a heavy frame.</summary>
    Stop,
    /// <summary>In a double frame, heavy.</summary>
    Notice,
    /// <summary>Small print.</summary>
    Small,
    /// <summary>With boxes to tick.</summary>
    Check,
    /// <summary>Small figures, one below the other.</summary>
    Figures,
    /// <summary>With room to write.</summary>
    Room,
}
