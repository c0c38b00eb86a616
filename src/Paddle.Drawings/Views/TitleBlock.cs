using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The ruled block with a design's key figures, and the heading of a sheet.</summary>
internal static class TitleBlock
{
    private const double ColumnMm = 200;
    private const double RowMm = 18;
    /// <summary>Height of the heading, mm.</summary>
    public const double HeadingMm = 26;

    /// <summary>Draws the owner's label over what the sheet shows.</summary>
    public static void Heading(Sketch sketch, string label, string what, double x, double y, double width, bool small = false)
    {
        var safe = Lettering.Safe(label);
        sketch.Text(safe, x, y + 11, Lettering.FitHeightMm(safe, small ? Lettering.Heading : Lettering.Title, width), strong: true);
        sketch.Text(what, x, y + 21, Lettering.FitHeightMm(what, small ? Lettering.Note : Lettering.Figure, width));
    }

    /// <summary>How high the block is in a given width, mm.</summary>
    public static double HeightMm(int count, double width) => Rows(count, width) * RowMm + 12;

    /// <summary>Draws the block, the small print last.</summary>
    public static void Draw(Sketch sketch, IReadOnlyList<KeyFigure> figures, string origin, double x, double y, double width)
    {
        int rows = Rows(figures.Count, width), columns = (figures.Count + rows - 1) / rows;
        var column = width / columns;
        sketch.Line(x, y, x + width, y, LineKind.Visible, Layer.Text);
        for (var i = 0; i < figures.Count; i++)
        {
            double left = x + i % columns * column, top = y + i / columns * RowMm;
            sketch.Text(figures[i].Name, left + 1.5, top + 6, Lettering.FitHeightMm(figures[i].Name, Lettering.Note, column - 4));
            sketch.Text(figures[i].Value, left + 1.5, top + 15.5, Lettering.FitHeightMm(figures[i].Value, Lettering.Heading, column - 4));
            if (i % columns > 0) sketch.Line(left, top + 1.5, left, top + RowMm - 1.5, LineKind.Fine, Layer.Text);
        }

        var foot = y + rows * RowMm + 1.5;
        sketch.Line(x, foot, x + width, foot, LineKind.Narrow, Layer.Text);
        sketch.Text(origin, x + 1.5, foot + 6.5, Lettering.FitHeightMm(origin, Lettering.Note, width - 4));
    }

    private static int Columns(double width) => Math.Max(1, (int)(width / ColumnMm));

    private static int Rows(int count, double width) => (count + Columns(width) - 1) / Columns(width);
}
