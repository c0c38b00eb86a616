using System.Globalization;
using System.Text;

namespace Paddle.Drawings.Sheets;

/// <summary>Page content of a PDF in millimetres from the top left corner; lettering is set in <see cref="Helvetica"/>, so a reader finds, marks and speaks it.</summary>
/// <remarks>Operators of ISO 32000 (m, l, c, h, re, S, B, f, w, d, J, j, g, rg, W n, q, Q, cm, BT, Tf, Tm, Tj, TJ, Ts, ET), from memory. Written directly: through the
/// drawing layer of the PDF library the same pages took ten times as long, and it joined open figures of one path.</remarks>
internal sealed class PdfInk
{
    private readonly StringBuilder content = new();
    private const string WoodColour = "0.965 0.937 0.886";
    private const string Hex = "0123456789ABCDEF";
    private readonly double pageHeightMm;
    private (double Width, string Dashes, int Cap) pen;

    /// <summary>Begins a page.</summary>
    public PdfInk(double pageHeightMm)
    {
        const double PointsPerMm = 72 / 25.4;
        this.pageHeightMm = pageHeightMm;
        content.Append(CultureInfo.InvariantCulture, $"{PointsPerMm:0.########} 0 0 {PointsPerMm:0.########} 0 0 cm 1 j\n");
    }

    /// <summary>The content's bytes.</summary>
    public byte[] ToBytes() => Encoding.ASCII.GetBytes(content.ToString());

    /// <summary>Paints a sheet with its top left corner at a place of the page.</summary>
    public void Paint(Sheet sheet, double left, double top)
    {
        Point by = new(left, top);
        foreach (var item in sheet.Items)
        {
            if (item is PathItem path) PaintPath(path, by, null);
            else PaintText((TextItem)item, by, null);
        }
    }

    /// <summary>Paints what a window shows of a sheet; what lies outside it is left out.</summary>
    public void PaintWindow(Sheet sheet, double left, double top, Window window)
    {
        content.Append("q ");
        Put(window.Left, pageHeightMm - window.Bottom, window.Right - window.Left, window.Bottom - window.Top).Append("re W n\n");
        pen = default;
        Point by = new(left, top);
        foreach (var item in sheet.Items)
        {
            if (item is PathItem path) PaintPath(path, by, window);
            else PaintText((TextItem)item, by, window);
        }

        content.Append("Q\n");
        pen = default;
    }

    private void PaintPath(PathItem item, Point by, Window? window)
    {
        var path = item.Path.Map(p => p + by);
        if (window is { } w && !w.MayShow(path)) return;
        var style = LineStyle.Of(item.Line);
        var dashed = style.DashesMm.Count > 0;
        SetPen(style.WidthMm, dashed ? $"[{string.Join(' ', style.DashesMm.Select(SvgWriter.Number))}]" : "[]", dashed ? 0 : 1);
        Trace(path);
        content.Append(item.Fill switch { Fill.None => "S\n", Fill.Ink => "B\n", _ => $"{WoodColour} rg B 0 g\n" });
    }

    private void PaintText(TextItem item, Point by, Window? window)
    {
        var size = item.HeightMm / Lettering.CapitalShare;
        var width = Helvetica.WidthMm(item.Text, item.HeightMm, item.Strong);
        var (at, turn) = (item.At + by, item.TurnDegrees * Math.PI / 180);
        Point along = new(Math.Cos(turn), Math.Sin(turn)), up = new(along.Y, -along.X);
        var start = at + (item.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width }) * along;
        var frame = SheetPath.Polyline(
            ((Point[])[new(0, -0.3), new(0, 1), new(1, 1), new(1, -0.3)]).Select(corner => start + corner.X * width * along + corner.Y * item.HeightMm * up), closed: true);
        if (width <= 0 || (window is { } shown && !shown.MayShow(frame))) return;
        if (item.HasHalo)
        {
            content.Append("1 g\n");
            Trace(frame);
            content.Append("f 0 g\n");
        }

        // What is copied or heard where a letter is pieced together or lacking (ISO 32000-1, 14.9.4, from memory).
        var isWhole = Helvetica.Reads(item.Text);
        if (!isWhole) content.Append("/Span <</ActualText <FEFF").Append(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(item.Text))).Append(">>> BDC\n");
        content.Append("BT /").Append(Helvetica.Name(item.Strong)).Append(' ');
        Put(size).Append("Tf ");
        Put(along.X, -along.Y, along.Y, along.X, start.X, pageHeightMm - start.Y).Append("Tm <");
        foreach (var (code, accent, lift) in Helvetica.Letters(item.Text))
        {
            content.Append(Hex[code >> 4]).Append(Hex[code & 15]);
            if (accent == 0) continue;
            int letter = Helvetica.Width(code, item.Strong), mark = Helvetica.Width(accent, item.Strong);
            content.Append(CultureInfo.InvariantCulture, $"> Tj {Math.Round(size * lift / 1000, 3)} Ts [{(letter + mark) / 2.0} <{accent:X2}> {(mark - letter) / 2.0}] TJ 0 Ts <");
        }

        content.Append("> Tj ET\n");
        if (!isWhole) content.Append("EMC\n");
    }

    private void SetPen(double width, string dashes, int cap)
    {
        if (pen == (width, dashes, cap)) return;
        pen = (width, dashes, cap);
        content.Append(CultureInfo.InvariantCulture, $"{width} w {dashes} 0 d {cap} J\n");
    }

    private void Trace(SheetPath path)
    {
        foreach (var step in path.Steps)
        {
            switch (step.Kind)
            {
                case StepKind.Move:
                    Put(step.End).Append("m\n");
                    break;
                case StepKind.Line:
                    Put(step.End).Append("l\n");
                    break;
                case StepKind.Cubic:
                    Put(step.A);
                    Put(step.B);
                    Put(step.End).Append("c\n");
                    break;
                default:
                    content.Append("h\n");
                    break;
            }
        }
    }

    private StringBuilder Put(Point point) => Put(point.X, pageHeightMm - point.Y);

    private StringBuilder Put(params ReadOnlySpan<double> values)
    {
        foreach (var value in values) content.AppendDecimal(value, 1000).Append(' ');
        return content;
    }
}

/// <summary>A rectangle of a page, mm.</summary>
internal readonly record struct Window(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether a path may show in it: a path lies within the box of its ends and handles.</summary>
    public bool MayShow(SheetPath path)
    {
        const double LineMm = 1;
        double left = double.PositiveInfinity, top = left, right = double.NegativeInfinity, bottom = right;
        void Take(Point p)
        {
            left = Math.Min(left, p.X);
            right = Math.Max(right, p.X);
            top = Math.Min(top, p.Y);
            bottom = Math.Max(bottom, p.Y);
        }

        foreach (var step in path.Steps)
        {
            Take(step.End);
            if (step.Kind != StepKind.Cubic) continue;
            Take(step.A);
            Take(step.B);
        }

        return right > Left - LineMm && left < Right + LineMm && bottom > Top - LineMm && top < Bottom + LineMm;
    }
}
