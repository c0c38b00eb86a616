using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Drawings;
using PaddleApi.Contracts.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>An address for every file that a design can be had as: they follow from the list of files.</summary>
internal static class DesignFileEndpoints
{
    private const string Common = " It needs no account, any cache may keep it, and it is computed from its address alone.";

    /// <summary>Maps the endpoints.</summary>
    public static void MapFiles(this IEndpointRouteBuilder designs, Func<RouteHandlerBuilder, RouteHandlerBuilder> describeCode)
    {
        foreach (var file in DesignFiles.All)
        {
            var endpoint = designs.MapMethods($"/{{designCode}}/{file.FileName}", Routes.Reading, (string designCode, HttpContext context) =>
                DesignFileAnswer.For(file, designCode, context, DesignService.Evaluate));
            describeCode(endpoint)
                .Describe(DesignFileNames.Operation(file), file.Description, About(file))
                .Query(DesignFileQuery.Units, "Units to letter in; the design's own when left out.", "inch", Names.All<DrawingUnits>())
                .Offers(file.MediaType)
                .WithMetadata(new DownloadMark())
                .Produces<string>(StatusCodes.Status200OK, file.MediaType)
                .Produces<string>(StatusCodes.Status206PartialContent, file.MediaType)
                .Refuses(ProblemKinds.InvalidValues)
                .Refuses(ProblemKinds.RangeNotSatisfiable);
            if (file.IsHeavy) endpoint.Refuses(ProblemKinds.Busy);
            if (file.DependsOnPaper)
            {
                endpoint.Query(
                    DesignFileQuery.Paper, "Paper to print on at true scale; a4 when left out. A roll is one sheet.", "letter", Names.All<PaperSize>());
            }
        }

        designs.MapMethods("/{designCode}/{fileName}", Routes.Reading, (string fileName) => NoSuchFile(fileName)).ExcludeFromDescription();
    }

    private static string About(IDesignFile file) =>
        $"{file.Description} {(file.MediaType == MediaTypes.Svg ? "The address is fit for an img tag." : "The address is fit for a link.")}{Common}";

    private static ProblemResult NoSuchFile(string fileName) => new(
        ProblemKinds.NotFound,
        $"A design has no file '{FaultValue.Shorten(fileName)}'. It has {string.Join(", ", DesignFiles.All.Select(file => file.FileName))}.");
}
