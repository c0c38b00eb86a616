using System.Globalization;
using System.Text;
using PdfSharp.Pdf;

namespace Paddle.Drawings.Sheets;

/// <summary>Page content of a PDF in millimetres from the top left corner; lettering is drawn as strokes, so no font is needed.</summary>
/// <remarks>Path operators of ISO 32000 (m, l, c, h, re, S, B, w, d, J, j, G, W n, q, Q, cm), from memory. Written directly: through the
/// drawing layer of the PDF library the same pages took ten times as long, and it joined open figures of one path.</remarks>
internal sealed class PdfInk
{
    private readonly StringBuilder content = new();
    private readonly double pageHeightMm;
    private (double Width, string Dashes, int Cap) pen;

    // A usual face runs to nine tenths of the width that lettering is laid out with.
    private const double UsualShare = 0.9;
    private const string FontName = "F1";

    /// <summary>Resources of a page: the face of the unseen words, one that every reader has (ISO 32000-1, 9.6.2.2, from memory).</summary>
    public static PdfDictionary Resources(PdfDocument document)
    {
        var font = new PdfDictionary(document);
        font.Elements.SetName("/Type", "/Font");
        font.Elements.SetName("/Subtype", "/Type1");
        font.Elements.SetName("/BaseFont", "/Helvetica");
        font.Elements.SetName("/Encoding", "/WinAnsiEncoding");
        var fonts = new PdfDictionary(document);
        fonts.Elements.SetObject("/" + FontName, font);
        var resources = new PdfDictionary(document);
        resources.Elements.SetObject("/Font", fonts);
        return resources;
    }

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
        content.Append("q ").Append(Pair(new(window.Left, window.Bottom))).Append(' ')
            .Append(CultureInfo.InvariantCulture, $"{Number(window.Right - window.Left)} {Number(window.Bottom - window.Top)} re W n\n");
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
        SetPen(style.WidthMm, dashed ? $"[{string.Join(' ', style.DashesMm.Select(Number))}]" : "[]", dashed ? 0 : 1);
        Trace(path);
        content.Append(item.Fill == Fill.Ink ? "B\n" : "S\n");
    }

    private void PaintText(TextItem item, Point by, Window? window)
    {
        // Strokes are dear: a line of lettering that ends short of the window is left before it is drawn.
        var reach = Lettering.WidthMm(item.Text, item.HeightMm) + item.HeightMm;
        var at = item.At + by;
        if (window is { } w && (at.X + reach < w.Left || at.X - reach > w.Right || at.Y + reach < w.Top || at.Y - reach > w.Bottom)) return;

        // The sheet was laid out for any face a reader may have; the strokes run a little narrower.
        var width = StrokeAlphabet.WidthMm(item.Text, item.HeightMm);
        var shift = item.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
        var (sin, cos) = Math.SinCos(item.TurnDegrees * Math.PI / 180);
        Point Put(Point p) => new(at.X + (p.X + shift) * cos - p.Y * sin, at.Y + (p.X + shift) * sin + p.Y * cos);
        var strokes = StrokeAlphabet.Strokes(item.Text, item.HeightMm).Map(Put);
        if (strokes.Steps.Count == 0 || (window is { } shown && !shown.MayShow(strokes))) return;
        if (item.HasHalo)
        {
            SetPen(0.35 * item.HeightMm, "[]", 1);
            content.Append("1 G\n");
            Trace(strokes);
            content.Append("S 0 G\n");
        }

        SetPen(item.HeightMm * (item.Strong ? 0.14 : 0.09), "[]", 1);
        Trace(strokes);
        content.Append("S\n");
        WriteUnseen(item, Put(default), sin, cos, width);
    }

    // Text rendering mode 3 shows nothing (ISO 32000-1, 9.3.6, from memory); Tz stretches the unseen words to the drawn ones' width.
    private void WriteUnseen(TextItem item, Point at, double sin, double cos, double width)
    {
        var stretch = 100 * width / (UsualShare * Lettering.WidthMm(item.Text, item.HeightMm));
        content.Append(CultureInfo.InvariantCulture, $"BT 3 Tr /{FontName} {Number(item.HeightMm / Lettering.CapitalShare)} Tf {Number(stretch)} Tz ")
            .Append(CultureInfo.InvariantCulture, $"{Number(cos)} {Number(-sin)} {Number(sin)} {Number(cos)} {Pair(at)} Tm ")
            .Append('<').Append(Convert.ToHexString(WinAnsi.Bytes(item.Text))).Append("> Tj ET\n");
    }

    private void SetPen(double width, string dashes, int cap)
    {
        if (pen == (width, dashes, cap)) return;
        pen = (width, dashes, cap);
        content.Append(CultureInfo.InvariantCulture, $"{Number(width)} w {dashes} 0 d {cap} J\n");
    }

    private void Trace(SheetPath path)
    {
        foreach (var step in path.Steps)
        {
            switch (step.Kind)
            {
                case StepKind.Move:
                    content.Append(Pair(step.End)).Append(" m\n");
                    break;
                case StepKind.Line:
                    content.Append(Pair(step.End)).Append(" l\n");
                    break;
                case StepKind.Cubic:
                    content.Append(Pair(step.A)).Append(' ').Append(Pair(step.B)).Append(' ').Append(Pair(step.End)).Append(" c\n");
                    break;
                default:
                    content.Append("h\n");
                    break;
            }
        }
    }

    private string Pair(Point point) => $"{Number(point.X)} {Number(pageHeightMm - point.Y)}";

    private static string Number(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);
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

/// <summary>Text in the single-byte code that PDF calls WinAnsiEncoding: Latin letters and the drafting signs used here.</summary>
/// <remarks>ISO 32000-1, annex D, from memory: ASCII and Latin-1 at their own places, some signs of typography between 128 and 159.</remarks>
internal static class WinAnsi
{
    private static readonly Dictionary<char, byte> Signs = new()
    {
        ['€'] = 0x80,
        ['‚'] = 0x82,
        ['„'] = 0x84,
        ['…'] = 0x85,
        ['Š'] = 0x8A,
        ['Œ'] = 0x8C,
        ['Ž'] = 0x8E,
        ['‘'] = 0x91,
        ['’'] = 0x92,
        ['“'] = 0x93,
        ['”'] = 0x94,
        ['•'] = 0x95,
        ['–'] = 0x96,
        ['—'] = 0x97,
        ['š'] = 0x9A,
        ['œ'] = 0x9C,
        ['ž'] = 0x9E,
        ['Ÿ'] = 0x9F,
        ['−'] = 0x2D,
    };

    /// <summary>The bytes; a question mark for each letter that the code does not have.</summary>
    public static byte[] Bytes(string text) => [.. text.EnumerateRunes().Select(rune => rune.IsBmp ? Byte((char)rune.Value) : (byte)'?')];

    private static byte Byte(char letter) => letter is >= ' ' and <= '~' or >= '\u00A0' and <= '\u00FF' ? (byte)letter : Signs.GetValueOrDefault(letter, (byte)'?');
}
