using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Reads the summaries of enumeration members, which the generator of descriptions leaves out.</summary>
internal static partial class XmlSummaries
{
    private static readonly ConcurrentDictionary<string, Dictionary<string, string>> ByAssembly = new(StringComparer.Ordinal);

    /// <summary>Summary of an enumeration's member; empty when its assembly came without its documentation.</summary>
    public static string OfField(Type enumeration, string member) => ByAssembly
        .GetOrAdd(enumeration.Assembly.GetName().Name!, Load)
        .GetValueOrDefault($"F:{enumeration.FullName}.{member}", "");

    private static Dictionary<string, string> Load(string assembly)
    {
        var file = Path.Combine(AppContext.BaseDirectory, assembly + ".xml");
        return !File.Exists(file) ? [] : XDocument.Load(file).Descendants("member")
            .Where(member => member.Attribute("name")!.Value.StartsWith("F:", StringComparison.Ordinal))
            .ToDictionary(member => member.Attribute("name")!.Value, member => Breaks().Replace(member.Element("summary")?.Value.Trim() ?? "", " "));
    }

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Breaks();
}
