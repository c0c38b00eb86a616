using Microsoft.AspNetCore.Http.HttpResults;
using PaddleApi.Contracts.Boards;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Boards;

/// <summary>A board judged by its own weight and stiffness.</summary>
internal static class BoardTestEndpoints
{
    /// <summary>Maps the endpoint.</summary>
    public static RouteGroupBuilder MapBoardTests(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/board-tests").WithTags("Boards");
        group.MapPost("/", Test)
            .Describe("testBoard", "Test a board",
                "Density from size and mass, stiffness from a sag between two supports or the tone of a tap, each with its uncertainty and beside "
                + "the species' published mean and spread. The modulus is given three times, each under its own name: plainBeamModulusMPa as the "
                + "plain beam formula has it, modulusMPa with shear taken out (the true one), apparentModulusMPa on the books' basis of a span of "
                + "14 depths. The member wood is ready to paste into a design request: its measuredModulusMPa is the apparent one.")
            .RequestExample("sag", "A board for the Heron Lake hire fleet, sagged", static () => Sagged)
            .RequestExample("tap", "Another board of the fleet, tapped, its scale coarser than usual", static () => Tapped)
            .ResponseExample("sag", "A board for the Heron Lake hire fleet, sagged", () => BoardTestAnswers.Answer(Sagged))
            .Offers(MediaTypes.Json)
            .NeedsScope(Scopes.Workshop)
            .Validate<BoardTestRequest>();
        return group;
    }

    private static readonly BoardTestRequest Sagged = new()
    {
        Species = "white-ash",
        MoisturePercent = 11,
        LengthMm = 1700,
        WidthMm = 160,
        ThicknessMm = 27,
        MassG = 5320,
        Sag = new() { SpanMm = 1600, LoadN = 98.1, SagMm = 2.3 },
    };

    private static readonly BoardTestRequest Tapped = new()
    {
        Species = "sitka-spruce",
        MoisturePercent = 12,
        LengthMm = 1650,
        WidthMm = 150,
        ThicknessMm = 32,
        MassG = 3180,
        Tap = new() { FrequencyHz = 62 },
        ReadingErrors = new() { MassG = 5 },
    };

    private static Ok<BoardTestResponse> Test(BoardTestRequest request) => TypedResults.Ok(BoardTestAnswers.Answer(request));
}
