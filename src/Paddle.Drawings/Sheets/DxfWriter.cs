using System.Globalization;
using System.Text;

namespace Paddle.Drawings.Sheets;

/// <summary>Writes a sheet as a DXF drawing of the oldest common kind, which every CAD program and cutter reads.</summary>
/// <remarks>Release 12 (AC1009): POLYLINE, TEXT, layers and line types only; curves are flattened. $INSUNITS 4 = mm belongs to later
/// headers and is skipped by old readers. Group codes and entities from memory of the vendor's DXF reference.</remarks>
internal static class DxfWriter
{
    /// <summary>Most that a chord stands off its curve, mm.</summary>
    public const double ChordToleranceMm = 0.05;

    private static readonly (Layer Layer, string Name, int Colour, string LineType)[] Layers =
    [
        (Layer.Outline, "OUTLINE", 7, "CONTINUOUS"),
        (Layer.HalfTemplate, "HALF_TEMPLATE", 5, "CONTINUOUS"),
        (Layer.Sections, "SECTIONS", 3, "CONTINUOUS"),
        (Layer.Gauge, "GAUGE_LINES", 4, "CONTINUOUS"),
        (Layer.Centre, "CENTER", 1, "CENTER"),
        (Layer.Stations, "STATIONS", 8, "CONTINUOUS"),
        (Layer.Marks, "MARKS", 6, "CONTINUOUS"),
        (Layer.Blank, "BLANK", 9, "PHANTOM"),
        (Layer.Calibration, "CALIBRATION", 2, "CONTINUOUS"),
        (Layer.Text, "TEXT", 7, "CONTINUOUS"),
    ];

    /// <summary>Writes the sheet; its y, which runs down, is turned to run up from the given line.</summary>
    /// <param name="originX">x of the sheet that becomes 0, mm.</param>
    /// <param name="originY">y of the sheet that becomes 0, mm.</param>
    public static void Write(Sheet sheet, double originX, double originY, Stream output)
    {
        var dxf = new Groups();
        Point Put(Point p) => new(p.X - originX, originY - p.Y);
        var chains = sheet.Items.OfType<PathItem>()
            .SelectMany(item => Flatten.Chains(item.Path.Map(Put), ChordToleranceMm).Select(chain => (item.Layer, chain.Points, chain.Closed)))
            .ToArray();
        Point least = new(double.PositiveInfinity, double.PositiveInfinity), most = -1 * least;
        foreach (var (_, points, _) in chains)
        {
            foreach (var point in points)
            {
                least = new(Math.Min(least.X, point.X), Math.Min(least.Y, point.Y));
                most = new(Math.Max(most.X, point.X), Math.Max(most.Y, point.Y));
            }
        }

        WriteHeader(dxf, least, most);
        WriteTables(dxf);
        dxf.Add(0, "SECTION").Add(2, "ENTITIES");
        foreach (var (layer, points, closed) in chains) WriteChain(dxf, NameOf(layer), points, closed);
        foreach (var text in sheet.Items.OfType<TextItem>()) WriteText(dxf, text, Put(text.At));
        dxf.Add(0, "ENDSEC").Add(0, "EOF");
        dxf.CopyTo(output);
    }

    /// <summary>Name of a layer in the drawing.</summary>
    public static string NameOf(Layer layer) => Array.Find(Layers, entry => entry.Layer == layer).Name;

    /// <summary>Text of one line in plain ASCII: drafting signs by their usual stand-ins, others as the escape \U+XXXX that CAD programs read.</summary>
    public static string Ascii(string text)
    {
        var ascii = new StringBuilder(text.Length);
        foreach (var character in Lettering.Safe(text))
        {
            if (character is >= ' ' and <= '~') ascii.Append(character);
            else ascii.Append(StandIn(character));
        }

        return ascii.ToString();
    }

    private static string StandIn(char character) => character switch
    {
        '·' or '–' => "-",
        '×' => "x",
        '…' => "...",
        '°' => "%%d",
        '²' => "2",
        '³' => "3",
        _ => string.Create(CultureInfo.InvariantCulture, $"\\U+{(int)character:X4}"),
    };

    private static void WriteHeader(Groups dxf, Point least, Point most)
    {
        dxf.Add(0, "SECTION").Add(2, "HEADER");
        dxf.Add(9, "$ACADVER").Add(1, "AC1009");
        dxf.Add(9, "$INSUNITS").Add(70, 4);
        dxf.Add(9, "$MEASUREMENT").Add(70, 1);
        dxf.Add(9, "$LUNITS").Add(70, 2);
        dxf.Add(9, "$EXTMIN").Add(10, least.X).Add(20, least.Y).Add(30, 0.0);
        dxf.Add(9, "$EXTMAX").Add(10, most.X).Add(20, most.Y).Add(30, 0.0);
        dxf.Add(0, "ENDSEC");
    }

    private static void WriteTables(Groups dxf)
    {
        dxf.Add(0, "SECTION").Add(2, "TABLES");
        dxf.Add(0, "TABLE").Add(2, "LTYPE").Add(70, 3);
        LineType(dxf, "CONTINUOUS", "Solid line", []);
        LineType(dxf, "CENTER", "Long dash, dot", [6, -0.75, 0.125, -0.75]);
        LineType(dxf, "PHANTOM", "Long dash, two dots", [6, -0.75, 0.125, -0.75, 0.125, -0.75]);
        dxf.Add(0, "ENDTAB");
        dxf.Add(0, "TABLE").Add(2, "LAYER").Add(70, Layers.Length);
        foreach (var (_, name, colour, lineType) in Layers)
            dxf.Add(0, "LAYER").Add(2, name).Add(70, 0).Add(62, colour).Add(6, lineType);
        dxf.Add(0, "ENDTAB");
        dxf.Add(0, "TABLE").Add(2, "STYLE").Add(70, 1);
        dxf.Add(0, "STYLE").Add(2, "STANDARD").Add(70, 0).Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 5.0).Add(3, "txt").Add(4, "");
        dxf.Add(0, "ENDTAB").Add(0, "ENDSEC");
    }

    private static void LineType(Groups dxf, string name, string description, double[] dashes)
    {
        dxf.Add(0, "LTYPE").Add(2, name).Add(70, 0).Add(3, description).Add(72, 65).Add(73, dashes.Length).Add(40, dashes.Sum(Math.Abs));
        foreach (var dash in dashes) dxf.Add(49, dash);
    }

    private static void WriteChain(Groups dxf, string layer, List<Point> points, bool closed)
    {
        dxf.Add(0, "POLYLINE").Add(8, layer).Add(66, 1).Add(70, closed ? 1 : 0).Add(10, 0.0).Add(20, 0.0).Add(30, 0.0);
        foreach (var point in points) dxf.Add(0, "VERTEX").Add(8, layer).Add(10, point.X).Add(20, point.Y).Add(30, 0.0);
        dxf.Add(0, "SEQEND").Add(8, layer);
    }

    private static void WriteText(Groups dxf, TextItem item, Point at)
    {
        var text = Ascii(item.Text);
        if (text.Length == 0) return;
        dxf.Add(0, "TEXT").Add(8, NameOf(item.Layer)).Add(10, at.X).Add(20, at.Y).Add(30, 0.0).Add(40, item.HeightMm).Add(1, text);
        if (item.TurnDegrees != 0) dxf.Add(50, -item.TurnDegrees);
        if (item.Anchor != Anchor.Start)
            dxf.Add(72, item.Anchor == Anchor.Middle ? 1 : 2).Add(11, at.X).Add(21, at.Y).Add(31, 0.0);
    }

    /// <summary>Pairs of group code and value, each on its own line.</summary>
    private sealed class Groups
    {
        private readonly StringBuilder text = new();

        public Groups Add(int code, string value)
        {
            Code(code).Append(value).Append("\r\n");
            return this;
        }

        public Groups Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

        public Groups Add(int code, double value)
        {
            Code(code).AppendDecimal(value, 10_000, isReal: true).Append("\r\n");
            return this;
        }

        // Right-aligned in three places, as old readers want it.
        private static readonly string[] Codes = [.. Enumerable.Range(0, 100).Select(code => string.Create(CultureInfo.InvariantCulture, $"{code,3}\r\n"))];

        private StringBuilder Code(int code) => text.Append(Codes[code]);

        // Piece by piece: the whole is too long for memory that is soon given back.
        public void CopyTo(Stream output)
        {
            Span<byte> ascii = stackalloc byte[1024];
            foreach (var piece in text.GetChunks())
            {
                for (var rest = piece.Span; rest.Length > 0; rest = rest[Math.Min(rest.Length, ascii.Length)..])
                    output.Write(ascii[..Encoding.ASCII.GetBytes(rest[..Math.Min(rest.Length, ascii.Length)], ascii)]);
            }
        }
    }
}
