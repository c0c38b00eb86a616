using Microsoft.Extensions.Primitives;
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
    /// <param name="design">The design; its own units are the default.</param>
    /// <param name="code">Its code.</param>
    /// <returns>The context to draw in, or the problem to answer with.</returns>
    public static (DrawingContext? Context, ProblemResult? Problem) Read(IQueryCollection query, IDesignFile file, ResolvedDesign design, string code)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentNullException.ThrowIfNull(file);
        var context = Default(design, code);
        var faults = new List<(string Place, Fault Fault)>();
        foreach (var (name, values) in query)
        {
            switch (name)
            {
                case Units:
                    context = context with { Units = Choose(name, values, Names.Units, faults) ?? context.Units };
                    break;
                case Paper when file.DependsOnPaper:
                    context = context with { Paper = Choose(name, values, Names.Papers, faults) ?? context.Paper };
                    break;
                default:
                    faults.Add(Unknown(name, file));
                    break;
            }
        }

        return faults.Count == 0 ? (context, null) : (null, Refusal(faults));
    }

    /// <summary>What a drawing needs to know beside the design when nothing is asked for.</summary>
    /// <param name="design">The design.</param>
    /// <param name="code">Its code.</param>
    public static DrawingContext Default(ResolvedDesign design, string code)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new(design.Request.Label ?? Unnamed, design.Units, EngineVersion.Text, code);
    }

    private static T? Choose<T>(string name, StringValues values, NameTable<T> names, List<(string Place, Fault Fault)> faults)
        where T : struct, Enum
    {
        string[] allowed = [.. names.Names];
        if (values.Count == 1 && names.Find(values[0] ?? "") is { } choice) return choice;
        faults.Add(Place(name, values.Count == 1
            ? new($"{name} is one of {string.Join(", ", allowed)}.", FaultValue.Show(values[0]), Allowed: allowed)
            : new($"{name} is given {values.Count} times; once is enough.", Allowed: allowed)));
        return null;
    }

    private static (string Place, Fault Fault) Unknown(string name, IDesignFile file)
    {
        string[] known = file.DependsOnPaper ? [Units, Paper] : [Units];
        return Place(FaultValue.Shorten(name), new($"{file.FileName} knows no such parameter; it knows {string.Join(" and ", known)}.", Allowed: known));
    }

    private static (string Place, Fault Fault) Place(string name, Fault fault) => ($"?{name}", fault);

    private static ProblemResult Refusal(List<(string Place, Fault Fault)> faults) => new(
        ProblemKinds.InvalidQuery,
        $"At {faults[0].Place}: {faults[0].Fault.Reason}",
        faults.GroupBy(one => one.Place, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => (IReadOnlyList<Fault>)[.. group.Select(one => one.Fault)], StringComparer.Ordinal));
}
