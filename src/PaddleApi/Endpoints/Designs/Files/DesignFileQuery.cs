using Paddle.Drawings;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>
/// The query of a file's address. What is unknown is refused, as in a body: <c>?unit=inch</c> must not come back lettered in millimetres.
/// </summary>
public static class DesignFileQuery
{
    /// <summary>Units to letter in.</summary>
    public const string Units = "units";

    /// <summary>Paper to print on.</summary>
    public const string Paper = "paper";

    /// <summary>What a drawing is called whose owner gave it no name.</summary>
    public const string Unnamed = "Paddle";

    /// <summary>Reads the query into what the drawing needs to know beside the design.</summary>
    /// <param name="query">The query.</param>
    /// <param name="file">The file asked for.</param>
    /// <param name="request">The request in the code; its own units are the default.</param>
    /// <param name="code">The code.</param>
    /// <returns>The context to draw in, or the problem to answer with.</returns>
    public static (DrawingContext? Context, ProblemResult? Problem) Read(IQueryCollection query, IDesignFile file, DesignRequest request, string code)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentNullException.ThrowIfNull(file);
        string[] known = file.DependsOnPaper ? [Units, Paper] : [Units];
        if (query.Keys.FirstOrDefault(name => !known.Contains(name, StringComparer.Ordinal)) is { } unknown)
        {
            return (null, new(
                ProblemKinds.BadRequest, $"The query knows no '{FaultValue.Shorten(unknown)}'; it knows {string.Join(", ", known)}."));
        }

        var faults = new List<(string Place, Fault Fault)>();
        var usual = Default(request, code);
        var context = usual with
        {
            Units = Choose(query, Units, Names.Units, faults) ?? usual.Units,
            Paper = Choose(query, Paper, Names.Papers, faults) ?? usual.Paper,
        };
        return faults.Count == 0 ? (context, null) : (null, Validated.Refusal(faults));
    }

    /// <summary>What a drawing needs to know beside the design when nothing is asked for.</summary>
    /// <param name="request">The request in the design's code.</param>
    /// <param name="code">The code.</param>
    public static DrawingContext Default(DesignRequest request, string code)
    {
        ArgumentNullException.ThrowIfNull(request);
        var units = request.Drawing?.Units is { } name ? Names.Units.Find(name) : null;
        return new(request.Label ?? Unnamed, units ?? default, EngineVersion.Text, code);
    }

    private static T? Choose<T>(IQueryCollection query, string name, NameTable<T> names, List<(string Place, Fault Fault)> faults)
        where T : struct, Enum
    {
        var values = query[name];
        if (values.Count == 0) return null;
        if (values.Count == 1 && names.Find(values[0] ?? "") is { } choice) return choice;
        string[] allowed = [.. names.Names];
        faults.Add(($"?{name}", values.Count == 1
            ? new($"This is one of {string.Join(", ", allowed)}.", FaultValue.Show(values[0]), Allowed: allowed)
            : new("This is given more than once; once is enough.", Allowed: allowed)));
        return null;
    }
}
