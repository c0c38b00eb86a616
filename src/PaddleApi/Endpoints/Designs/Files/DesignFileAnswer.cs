using Paddle.Design;
using Paddle.Design.Request;
using Paddle.Drawings;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>From the address of a file to its answer.</summary>
internal static class DesignFileAnswer
{
    /// <summary>
    /// The answer: a problem when code or query cannot be used, 304 when the caller holds the file, else the file. The tag comes from the
    /// address alone, so nothing is computed for who holds the file already.
    /// </summary>
    /// <param name="evaluate">Computes the design when it is needed.</param>
    public static IResult For(IDesignFile file, string code, HttpContext context, Func<ResolvedDesign, string, ComputedDesign> evaluate)
    {
        var (request, problem) = DesignService.Decode(code);
        if (problem is not null) return problem;
        var (drawing, refusal) = DesignFileQuery.Read(context.Request.Query, file, request!, code);
        if (refusal is not null) return refusal;
        return DesignService.Answer(context, request!, Tag(file, drawing!), Vary(file), design =>
        {
            IResult Make() => DesignFileResult.Make(file, evaluate(design, code).Report, drawing!, context.RequestAborted);
            return file.IsHeavy ? new Gated(Make) : Make();
        });
    }

    // The parts that decide the bytes; the engine's build is in every tag. Asking for what is the default anyway gives the same tag.
    private static string Tag(IDesignFile file, DrawingContext drawing) => EntityTags.Of(
        drawing.DesignCode!,
        file.FileName,
        file.Version,
        Names.Of(drawing.Units),
        file.DependsOnPaper ? Names.Of(drawing.Paper) : "");

    // Not Accept: there is one media type here, and a cache that kept a copy for every browser's own list would hardly ever find one.
    private static string? Vary(IDesignFile file) => Compression.Shrinks(file.MediaType) ? "Accept-Encoding" : null;
}
