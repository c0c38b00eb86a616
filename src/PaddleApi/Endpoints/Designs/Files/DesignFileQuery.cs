using Paddle.Design.Request;
using Paddle.Design.Units;
using Paddle.Drawings;
using PaddleApi.Contracts;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>The query of a file's address; its endpoint names the parameters, and others are refused.</summary>
internal static class DesignFileQuery
{
    /// <summary>Units to letter in.</summary>
    public const string Units = "units";

    /// <summary>Paper to print on.</summary>
    public const string Paper = "paper";

    /// <summary>What a drawing is called whose owner gave it no name.</summary>
    public const string Unnamed = "Paddle";

    /// <summary>Reads the query into what the drawing needs to know beside the design.</summary>
    /// <param name="request">The request in the code; its own units are the default.</param>
    /// <returns>The context to draw in, or the problem to answer with.</returns>
    public static (DrawingContext? Context, ProblemResult? Problem) Read(IQueryCollection query, IDesignFile file, DesignRequest request, string code)
    {
        var values = new QueryValues(query);
        var usual = Default(request, code);
        var context = usual with
        {
            Units = values.Choice<DrawingUnits>(Units) ?? usual.Units,
            Paper = file.DependsOnPaper ? values.Choice<PaperSize>(Paper) ?? usual.Paper : usual.Paper,
        };
        return values.Faults.Count == 0 ? (context, null) : (null, Validated.Refusal(values.Faults));
    }

    /// <summary>What a drawing needs to know beside the design when nothing is asked for.</summary>
    public static DrawingContext Default(DesignRequest request, string code) =>
        new(request.Label ?? Unnamed, DrawingRequest.Read(request.Drawing?.Units), EngineVersion.Text, code);
}
