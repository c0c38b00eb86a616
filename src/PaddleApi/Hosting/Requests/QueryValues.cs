using System.Globalization;
using System.Text.RegularExpressions;
using Paddle.Design;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// Reads the values of a query as strictly as those of a body: one value a parameter, and numbers as JSON writes them. The platform would
/// read 4,0 as forty and join two values into one, and wood is cut to these.
/// </summary>
internal sealed partial class QueryValues(IQueryCollection query)
{
    private readonly List<(string Place, Fault Fault)> faults = [];

    /// <summary>What is wrong with the values asked for so far, each under <c>?</c> and its parameter.</summary>
    public IReadOnlyList<(string Place, Fault Fault)> Faults => faults;

    /// <summary>A number; null where none is given or it cannot be read.</summary>
    public double? Number(string name)
    {
        if (One(name, null) is not { } text) return null;
        if (!JsonNumber().IsMatch(text)) return Refuse(name, "A number is expected, written as in JSON: 33.3, with no comma, space or unit.", text);
        var value = double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

        // Adding zero turns the negative zero into plain zero.
        return double.IsFinite(value) ? value + 0.0 : Refuse(name, "This number is too large.", text);
    }

    /// <summary>A text; null where none is given.</summary>
    public string? Text(string name) => One(name, null);

    /// <summary>One of the names of an enumeration; null where none is given or it is none of them.</summary>
    /// <param name="of">Those of the enumeration that are taken; all of them when left out.</param>
    public T? Choice<T>(string name, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        var allowed = of is null ? Names.All<T>() : [.. of.Select(Names.Of)];
        if (One(name, allowed) is not { } text) return null;
        if (allowed.Contains(text)) return Names.Find<T>(text);
        faults.Add(($"?{name}", new($"This is one of {string.Join(", ", allowed)}.", FaultValue.Show(text), Allowed: allowed)));
        return null;
    }

    private string? One(string name, IReadOnlyList<string>? allowed)
    {
        var values = query[name];
        if (values.Count <= 1) return values.Count == 0 ? null : values[0] ?? "";
        faults.Add(($"?{name}", new("This is given more than once; once is enough.", Allowed: allowed, Code: RefusalCodes.GivenTwice)));
        return null;
    }

    private double? Refuse(string name, string reason, string text)
    {
        faults.Add(($"?{name}", new(reason, FaultValue.Show(text))));
        return null;
    }

    // RFC 8259, 6.
    [GeneratedRegex(@"\A-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][+-]?[0-9]+)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex JsonNumber();
}
