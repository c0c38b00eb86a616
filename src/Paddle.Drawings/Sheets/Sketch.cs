namespace Paddle.Drawings.Sheets;

/// <summary>Collects the items of a sheet while a view draws it.</summary>
internal sealed class Sketch
{
    private readonly List<SheetItem> items = [];

    public Sketch Path(SheetPath path, LineKind line, Layer layer, Fill fill = Fill.None, string? id = null, string? css = null)
    {
        items.Add(new PathItem(path, line, layer, fill, id, css));
        return this;
    }

    public Sketch Line(double x0, double y0, double x1, double y1, LineKind line, Layer layer, string? css = null) =>
        Path(SheetPath.Line(x0, y0, x1, y1), line, layer, css: css);

    public Sketch Text(
        string text, double x, double y, double height, Anchor anchor = Anchor.Start, Layer layer = Layer.Text, double turn = 0,
        bool strong = false, string? css = null)
    {
        items.Add(new TextItem(Lettering.Safe(text), new(x, y), height, anchor, layer, turn, strong, css));
        return this;
    }

    /// <summary>Lettering about a middle, smaller where its room is less.</summary>
    public Sketch Fitted(string text, double x, double y, double height, double room, Layer layer = Layer.Text, bool strong = false) =>
        Text(text, x, y, Lettering.FitHeightMm(text, height, room), Anchor.Middle, layer, strong: strong);

    /// <summary>Adds another sheet's items, moved.</summary>
    public void Add(Sheet sheet, double right, double down)
    {
        Point by = new(right, down);
        foreach (var item in sheet.Items)
        {
            items.Add(item switch
            {
                PathItem path => path with { Path = path.Path.Map(p => p + by) },
                TextItem text => text with { At = text.At + by },
                _ => item,
            });
        }
    }

    public Sheet Finish(string name, string title, string description, double width, double height) =>
        new(name, Lettering.Safe(title), Lettering.Safe(description), width, height, items);
}
