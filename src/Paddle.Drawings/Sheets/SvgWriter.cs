using System.Text;
using System.Xml;

namespace Paddle.Drawings.Sheets;

/// <summary>Writes a sheet as SVG at true scale: width and height in millimetres, the view box in the same numbers.</summary>
/// <remarks>One user unit is one millimetre (CSS: 1 in = 2.54 cm = 96 px); never sized in pixels, which older tools took as 90 to the inch.</remarks>
internal static class SvgWriter
{
    private const string Svg = "http://www.w3.org/2000/svg";
    private const int Scale = 1000;
    private const string Faces = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', sans-serif";

    /// <summary>The sheet as SVG text.</summary>
    /// <param name="style">A style sheet to put inside, or null; it must name no other resource.</param>
    /// <param name="scalable">For a picture that is not to scale: its size is given in plain units, and a page may show it in any.</param>
    public static string Write(Sheet sheet, string? style = null, bool scalable = false)
    {
        var text = new StringBuilder();
        var settings = new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = " ", NewLineChars = "\n" };
        using (var xml = XmlWriter.Create(text, settings))
        {
            xml.WriteStartElement("svg", Svg);
            var unit = scalable ? "" : "mm";
            xml.WriteAttributeString("width", Number(sheet.WidthMm) + unit);
            xml.WriteAttributeString("height", Number(sheet.HeightMm) + unit);
            xml.WriteAttributeString("viewBox", $"0 0 {Number(sheet.WidthMm)} {Number(sheet.HeightMm)}");
            xml.WriteAttributeString("role", "img");
            xml.WriteAttributeString("aria-labelledby", $"{sheet.Name}-title {sheet.Name}-desc");
            xml.WriteAttributeString("font-family", Faces);
            WriteNamed(xml, sheet.Name, "title", sheet.Title);
            WriteNamed(xml, sheet.Name, "desc", sheet.Description);
            if (style is not null) xml.WriteElementString("style", Svg, style);
            WritePaper(xml, sheet);
            WriteItems(xml, sheet.Items);
            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    /// <summary>A number to 0.001 mm, the same in every culture.</summary>
    public static string Number(double value) => Decimals.Text(value, Scale);

    private static void WriteNamed(XmlWriter xml, string sheet, string name, string text)
    {
        xml.WriteStartElement(name, Svg);
        xml.WriteAttributeString("id", $"{sheet}-{name}");
        xml.WriteString(text);
        xml.WriteEndElement();
    }

    private static void WritePaper(XmlWriter xml, Sheet sheet)
    {
        xml.WriteStartElement("rect", Svg);
        xml.WriteAttributeString("class", "paper");
        xml.WriteAttributeString("width", Number(sheet.WidthMm));
        xml.WriteAttributeString("height", Number(sheet.HeightMm));
        xml.WriteAttributeString("fill", "#fff");
        xml.WriteEndElement();
    }

    // Neighbours that share layer and line type share a group, so that a drawing program shows them as one.
    private static void WriteItems(XmlWriter xml, IReadOnlyList<SheetItem> items)
    {
        for (var i = 0; i < items.Count;)
        {
            var kind = Kind(items[i]);
            xml.WriteStartElement("g", Svg);
            WriteGroupStyle(xml, items[i]);
            for (; i < items.Count && Kind(items[i]) == kind; i++)
            {
                if (items[i] is PathItem path) WritePath(xml, path);
                else WriteText(xml, (TextItem)items[i]);
            }

            xml.WriteEndElement();
        }
    }

    private static (Layer Layer, LineKind? Line, Fill Fill, string? Css) Kind(SheetItem item) => item switch
    {
        PathItem path => (path.Layer, path.Line, path.Fill, path.Css),
        TextItem text => (text.Layer, null, Fill.None, text.Css),
        _ => (item.Layer, null, Fill.None, null),
    };

    private static void WriteGroupStyle(XmlWriter xml, SheetItem item)
    {
        var css = item.Layer.ToString().ToLowerInvariant();
        if (item is PathItem path)
        {
            var style = LineStyle.Of(path.Line);
            xml.WriteAttributeString("class", path.Css is null ? $"{css} line" : $"{css} line {path.Css}");
            xml.WriteAttributeString("fill", path.Fill switch { Fill.Wood => "#f6efe2", Fill.Ink => "#000", _ => "none" });
            xml.WriteAttributeString("stroke", "#000");
            xml.WriteAttributeString("stroke-width", Number(style.WidthMm));
            xml.WriteAttributeString("stroke-linecap", style.DashesMm.Count > 0 ? "butt" : "round");
            xml.WriteAttributeString("stroke-linejoin", "round");
            if (style.DashesMm.Count > 0) xml.WriteAttributeString("stroke-dasharray", string.Join(' ', style.DashesMm.Select(Number)));
            return;
        }

        var text = (TextItem)item;
        xml.WriteAttributeString("class", text.Css is { } own ? $"{css} text {own}" : $"{css} text");
        xml.WriteAttributeString("fill", "#000");
        if (!text.HasHalo) return;

        // The name of a mark stands clear of the lines that it crosses.
        xml.WriteAttributeString("stroke", "#fff");
        xml.WriteAttributeString("stroke-width", "1.2");
        xml.WriteAttributeString("paint-order", "stroke");
    }

    private static void WritePath(XmlWriter xml, PathItem item)
    {
        xml.WriteStartElement("path", Svg);
        if (item.Id is not null) xml.WriteAttributeString("id", item.Id);
        xml.WriteAttributeString("d", PathData(item.Path));
        xml.WriteEndElement();
    }

    private static string PathData(SheetPath path)
    {
        var data = new StringBuilder();
        foreach (var step in path.Steps)
        {
            if (data.Length > 0) data.Append(' ');
            data.Append(step.Kind switch { StepKind.Move => 'M', StepKind.Line => 'L', StepKind.Cubic => 'C', _ => 'Z' });
            if (step.Kind == StepKind.Close) continue;
            if (step.Kind == StepKind.Cubic)
            {
                Add(data, step.A).Append(' ');
                Add(data, step.B).Append(' ');
            }

            Add(data, step.End);
        }

        return data.ToString();
    }

    private static StringBuilder Add(StringBuilder data, Point point) => data.AppendDecimal(point.X, Scale).Append(' ').AppendDecimal(point.Y, Scale);

    private static void WriteText(XmlWriter xml, TextItem item)
    {
        xml.WriteStartElement("text", Svg);
        xml.WriteAttributeString("x", Number(item.At.X));
        xml.WriteAttributeString("y", Number(item.At.Y));
        xml.WriteAttributeString("font-size", Number(item.HeightMm / Lettering.CapitalShare));
        if (item.Anchor != Anchor.Start) xml.WriteAttributeString("text-anchor", item.Anchor == Anchor.Middle ? "middle" : "end");
        if (item.Strong) xml.WriteAttributeString("font-weight", "bold");
        if (item.TurnDegrees != 0)
            xml.WriteAttributeString("transform", $"rotate({Number(item.TurnDegrees)} {Number(item.At.X)} {Number(item.At.Y)})");
        xml.WriteString(item.Text);
        xml.WriteEndElement();
    }
}
