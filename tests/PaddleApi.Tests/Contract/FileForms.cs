using System.Buffers.Binary;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace PaddleApi.Tests.Contract;

/// <summary>Whether bytes are what their media type says, as far as a format shows on its face.</summary>
public static class FileForms
{
    /// <summary>What is wrong, or null. Media types that are not files of a design are left to others.</summary>
    public static string? Fault(string mediaType, byte[] bytes) => mediaType switch
    {
        "image/svg+xml" => Svg(bytes),
        "application/pdf" => !bytes.AsSpan().StartsWith("%PDF-"u8) ? "no header" : bytes.AsSpan(^10..).IndexOf("%%EOF"u8) < 0 ? "no end" : null,
        "image/vnd.dxf" => Encoding.ASCII.GetString(bytes).TrimEnd().EndsWith("EOF", StringComparison.Ordinal) ? null : "no end",
        "model/stl" => bytes.Length == 84 + 50L * BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(80))
            ? null
            : "the count of facets is not that of the bytes",
        "text/csv" => Csv(Encoding.UTF8.GetString(bytes)),
        _ => null,
    };

    private static string? Svg(byte[] bytes)
    {
        try
        {
            var root = XDocument.Load(new MemoryStream(bytes)).Root!;
            var active = root.DescendantsAndSelf().FirstOrDefault(element => element.Name.LocalName is "script" or "foreignObject" or "image" or "use"
                || element.Attributes().Any(attribute =>
                    attribute.Name.LocalName == "href" || attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
            return root.Name.LocalName != "svg" ? "another root" : active is not null ? $"it holds {active.Name.LocalName}, which runs or fetches" : null;
        }
        catch (XmlException fault)
        {
            return fault.Message;
        }
    }

    private static string? Csv(string text)
    {
        var rows = text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        return rows.Length < 2 ? "no rows"
            : rows.Select(row => row.Count(letter => letter == ',')).Distinct().Count() > 1 ? "rows of unlike lengths" : null;
    }
}
