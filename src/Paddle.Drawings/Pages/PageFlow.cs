using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Pages;

/// <summary>Lays blocks out on sheets of one size, for a PDF. What stays together goes to the next sheet whole, if one holds it.</summary>
/// <param name="scale">Of the lettering.</param>
internal sealed class PageFlow(double width, double height, double scale)
{
    private const double LeadingShare = 1.22;
    private const double CellPad = 0.9;
    private const double GapMm = 3;

    // A piece that no page's end cuts; one that heads the next stays with it, and a row of a table brings its headings to a new page.
    private sealed record Strip(Sheet Sheet, bool IsHead = false, Sheet? Repeated = null);

    private double Em => 2.9 * scale;

    private double SmallEm => 2.45 * scale;

    private double FiguresEm => 2.3 * scale;

    /// <summary>The blocks on no more sheets than are wanted, if lettering of at least seven tenths of the usual size allows it.</summary>
    public static IReadOnlyList<Sheet> Pages(IReadOnlyList<Block> blocks, double width, double height, int most)
    {
        for (var scale = 1.0; ; scale -= 0.04)
        {
            var flow = new PageFlow(width, height, scale);
            var pages = flow.Paged([.. blocks.SelectMany(block => flow.Layout(block, width))]);
            if (pages.Count <= most || scale < 0.72) return pages;
        }
    }

    private List<Sheet> Paged(List<Strip> strips)
    {
        var pages = new List<Sheet>();
        var (page, y) = (new Sketch(), 0.0);
        void Place(Sheet sheet)
        {
            page.Add(sheet, 0, y);
            y += sheet.HeightMm;
        }

        for (var i = 0; i < strips.Count;)
        {
            var end = i;
            while (end < strips.Count - 1 && strips[end].IsHead) end++;
            if (y > 0 && y + strips[i..(end + 1)].Sum(strip => strip.Sheet.HeightMm) > height)
            {
                pages.Add(page.Finish("page", "", "", width, height));
                (page, y) = (new(), 0);
                if (strips[i].Repeated is { } head) Place(head);
            }

            for (; i <= end; i++) Place(strips[i].Sheet);
        }

        pages.Add(page.Finish("page", "", "", width, height));
        return pages;
    }

    private IEnumerable<Strip> Layout(Block block, double room) => block switch
    {
        Heading heading => [new(Titled(heading, room), IsHead: true)],
        Paragraph words => [new(Framed(words, room))],
        Lines list => list.Items.Select(item => new Strip(Item(item, list.Look, room))),
        Table table => Rows(table, room),
        Picture picture => [new(picture.Sheet)],
        Together part => Held(part, room),
        _ => throw new ArgumentOutOfRangeException(nameof(block)),
    };

    private List<Strip> Held(Together part, double room)
    {
        List<Strip> strips = [.. part.Blocks.SelectMany(block => Layout(block, room))];
        if (part.Beside is { } picture)
        {
            var sketch = new Sketch();
            sketch.Add(picture, 0, 0);
            var left = picture.WidthMm + GapMm;
            var words = Joined(part.Words!.SelectMany(block => Layout(block, room - left)), room - left);
            sketch.Add(words, left, 0);
            strips.Add(new(sketch.Finish("beside", "", "", room, Math.Max(picture.HeightMm, words.HeightMm))));
        }

        var whole = Joined(strips, room);
        if (part.Look == Look.Notice) whole = Boxed(whole, room);
        return whole.HeightMm <= height ? [new(whole)] : strips;
    }

    private static Sheet Joined(IEnumerable<Strip> strips, double room)
    {
        var (sketch, y) = (new Sketch(), 0.0);
        foreach (var strip in strips)
        {
            sketch.Add(strip.Sheet, 0, y);
            y += strip.Sheet.HeightMm;
        }

        return sketch.Finish("part", "", "", room, y);
    }

    // In a double frame, clear of the last line.
    private static Sheet Boxed(Sheet sheet, double room)
    {
        var sketch = new Sketch();
        sketch.Add(sheet, 0, 0);
        foreach (var inset in (double[])[0, 0.8])
            sketch.Path(SheetPath.Rectangle(inset - 2, inset, room + 4 - 2 * inset, sheet.HeightMm + 2 - 2 * inset), LineKind.Visible, Layer.Text);
        return sketch.Finish("boxed", "", "", room, sheet.HeightMm + 4);
    }

    private Sheet Titled(Heading heading, double room)
    {
        var (em, above) = heading.Level == 1 ? (5.2, 0.0) : (3.7 * scale, 2.4);
        var sketch = new Sketch();
        var y = Text(sketch, heading.Words, 0, above, room, em, strong: true);
        if (heading.Level == 2) sketch.Line(0, y + 0.3, room, y + 0.3, LineKind.Visible, Layer.Text);
        return sketch.Finish("heading", "", "", room, y + (heading.Level == 2 ? 1.6 : 0.2));
    }

    private Sheet Framed(Paragraph words, double room)
    {
        var sketch = new Sketch();
        var em = words.Look == Look.Small ? SmallEm : Em;
        var isHeavy = words.Look is Look.Stop or Look.Notice;
        if (words.Look is not (Look.Expect or Look.Stop or Look.Notice))
            return sketch.Finish("words", "", "", room, Text(sketch, words.Words, 0, 0, room, em, false) + 1);
        const double Pad = 1.4;
        var y = Text(sketch, words.Words, Pad + 0.4, 1.2, room - 2 * Pad - 0.8, em, isHeavy) + 1;
        sketch.Path(SheetPath.Rectangle(0.3, 0.3, room - 0.6, y - 0.3), isHeavy ? LineKind.Visible : LineKind.Narrow, Layer.Text);
        if (words.Look == Look.Notice) sketch.Path(SheetPath.Rectangle(0.9, 0.9, room - 1.8, y - 1.5), LineKind.Narrow, Layer.Text);
        return sketch.Finish("framed", "", "", room, y + 1);
    }

    private Sheet Item(string item, Look look, double room)
    {
        var sketch = new Sketch();
        var em = look == Look.Small ? SmallEm : Em;
        var indent = look == Look.Check ? 4.4 : 2.8;
        if (look == Look.Check) sketch.Path(SheetPath.Rectangle(0.3, 0.5, 2.4, 2.4), LineKind.Narrow, Layer.Text);
        else sketch.Text("•", 0.4, Baseline(em), em * Lettering.CapitalShare);
        return sketch.Finish("item", "", "", room, Text(sketch, item, indent, 0, room - indent, em, false) + 0.4);
    }

    private IEnumerable<Strip> Rows(Table table, double room)
    {
        var em = table.Look == Look.Figures ? FiguresEm : Em - 0.15;
        var columns = Columns(table, room, em);
        Sheet Row(IReadOnlyList<string> cells, bool isHead)
        {
            var (sketch, least) = (new Sketch(), table.Look == Look.Room && !isHead ? 8 : 0.0);
            var texts = cells.Select((cell, i) => Wrapped(cell, columns[i] - 2 * CellPad, em, isHead)).ToList();
            var tall = Math.Max(least, texts.Max(lines => lines.Count) * em * LeadingShare + (table.Look == Look.Figures ? 0.3 : 1.1));
            var x = 0.0;
            if (isHead) sketch.Path(SheetPath.Rectangle(0, 0, room, tall), LineKind.Fine, Layer.Text, Fill.Wood);
            for (var i = 0; i < texts.Count; i++)
            {
                var isRight = table.Look == Look.Figures && !isHead;
                for (var k = 0; k < texts[i].Count; k++)
                {
                    sketch.Text(
                        texts[i][k], isRight ? x + columns[i] - CellPad : x + CellPad, k * em * LeadingShare + 0.1 + Baseline(em), em * Lettering.CapitalShare,
                        isRight ? Anchor.End : Anchor.Start, strong: isHead);
                }

                sketch.Path(SheetPath.Rectangle(x, 0, columns[i], tall), LineKind.Fine, Layer.Text);
                x += columns[i];
            }

            return sketch.Finish("row", "", "", room, tall);
        }

        var (caption, head) = (new Sketch(), Row(table.Headings, isHead: true));
        yield return new(caption.Finish("caption", "", "", room, Text(caption, table.Caption, 0, 1, room, em, strong: true) + 0.6), IsHead: true);
        yield return new(head, IsHead: true);
        for (var i = 0; i < table.Rows.Count; i++) yield return new(Row(table.Rows[i], isHead: false), Repeated: head);
        yield return new(new Sketch().Finish("gap", "", "", room, 2));
    }

    // Every column at least as wide as its longest word; the rest goes to where lines would be broken.
    private static double[] Columns(Table table, double room, double em)
    {
        IReadOnlyList<string>[] rows = [table.Headings, .. table.Rows];
        double Wide(string text, int row) => Helvetica.WidthMm(text, em * Lettering.CapitalShare, strong: row == 0) + 2 * CellPad + 0.1;
        double[] least = [.. table.Headings.Select((_, i) => rows.Select((row, r) => (table.Look == Look.Figures && r > 0 ? [row[i]] : row[i].Split(' ')).Max(word => Wide(word, r))).Max())];
        double[] natural = [.. table.Headings.Select((_, i) => rows.Select((row, r) => table.Look == Look.Figures && r == 0 ? 0 : Wide(row[i], r)).Max())];
        if (table.Look == Look.Room) (natural[^1], natural[^2]) = (28, 28);
        double[] wanted = [.. least.Zip(natural, (a, b) => Math.Max(0, b - a))];
        var spare = room - least.Sum();
        var share = wanted.Sum() > 0 ? Math.Min(1, spare / wanted.Sum()) : 0;
        double[] columns = [.. least.Select((mm, i) => mm + share * wanted[i])];
        var left = (room - columns.Sum()) / columns.Length;
        return [.. columns.Select(mm => mm + left)];
    }

    // Returns the foot of the last line.
    private static double Text(Sketch sketch, string words, double x, double y, double room, double em, bool strong)
    {
        foreach (var line in Wrapped(words, room, em, strong))
        {
            sketch.Text(line, x, y + Baseline(em), em * Lettering.CapitalShare, strong: strong);
            y += em * LeadingShare;
        }

        return y;
    }

    private static double Baseline(double em) => 0.98 * em;

    // Broken between words, and within one that no line holds.
    private static List<string> Wrapped(string words, double room, double em, bool strong)
    {
        double Wide(string text) => Helvetica.WidthMm(text, em * Lettering.CapitalShare, strong);
        var (lines, line) = (new List<string>(), "");
        foreach (var whole in Lettering.Safe(words).Split(' '))
        {
            var word = whole;
            if (line.Length > 0 && Wide($"{line} {word}") <= room)
            {
                line = $"{line} {word}";
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            while (Wide(word) > room && word.Length > 1)
            {
                var cut = word.Length - 1;
                while (cut > 1 && Wide(word[..cut]) > room) cut--;
                lines.Add(word[..cut]);
                word = word[cut..];
            }

            line = word;
        }

        lines.Add(line);
        return lines;
    }
}
