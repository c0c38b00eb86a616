using PdfSharp.Drawing;

namespace Paddle.Drawings.Sheets;

/// <summary>Paints a sheet's items on a PDF page that counts in millimetres; lettering is drawn as strokes, so no font is needed.</summary>
internal static class PdfPainter
{
    /// <summary>Paints a sheet with its top left corner at a place of the page.</summary>
    public static void Paint(XGraphics page, Sheet sheet, double left, double top)
    {
        Point by = new(left, top);
        foreach (var item in sheet.Items)
        {
            if (item is PathItem path) PaintPath(page, path, by);
            else PaintText(page, (TextItem)item, by);
        }
    }

    private static void PaintPath(XGraphics page, PathItem item, Point by)
    {
        var style = LineStyle.Of(item.Line);
        var pen = new XPen(XColors.Black, style.WidthMm) { LineJoin = XLineJoin.Round };
        if (style.DashesMm.Count > 0) pen.DashPattern = [.. style.DashesMm.Select(dash => dash / style.WidthMm)];
        else pen.LineCap = XLineCap.Round;
        foreach (var figure in Figures(item.Path.Map(p => p + by)))
        {
            if (item.Fill == Fill.Ink) page.DrawPath(pen, XBrushes.Black, figure);
            else page.DrawPath(pen, figure);
        }
    }

    private static void PaintText(XGraphics page, TextItem item, Point by)
    {
        // The sheet was laid out for any face a reader may have; the strokes run a little narrower.
        var width = StrokeAlphabet.WidthMm(item.Text, item.HeightMm);
        var shift = item.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
        var (sin, cos) = Math.SinCos(item.TurnDegrees * Math.PI / 180);
        Point Put(Point p) => new(item.At.X + by.X + (p.X + shift) * cos - p.Y * sin, item.At.Y + by.Y + (p.X + shift) * sin + p.Y * cos);
        var strokes = StrokeAlphabet.Strokes(item.Text, item.HeightMm).Map(Put);
        if (strokes.Steps.Count == 0) return;
        var pen = new XPen(XColors.Black, item.HeightMm * (item.Strong ? 0.14 : 0.09)) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Round };
        foreach (var figure in Figures(strokes)) page.DrawPath(pen, figure);
    }

    // The library joins an open figure to the next one of the same path, so each gets a path of its own.
    private static List<XGraphicsPath> Figures(SheetPath path)
    {
        var figures = new List<XGraphicsPath>();
        XGraphicsPath drawn = new();
        var last = default(Point);
        foreach (var step in path.Steps)
        {
            switch (step.Kind)
            {
                case StepKind.Move:
                    figures.Add(drawn = new());
                    break;
                case StepKind.Line:
                    drawn.AddLine(last.X, last.Y, step.End.X, step.End.Y);
                    break;
                case StepKind.Cubic:
                    drawn.AddBezier(last.X, last.Y, step.A.X, step.A.Y, step.B.X, step.B.Y, step.End.X, step.End.Y);
                    break;
                default:
                    drawn.CloseFigure();
                    break;
            }

            last = step.End;
        }

        return figures;
    }
}
