using Paddle.Design.Layout;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation.Boards;

namespace PaddleApi.Endpoints.Boards;

/// <summary>The best paddle that a board allows.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="Count">How many come out of the board: as many as were wished, or fewer, or none.</param>
/// <param name="Changes">What the board changed of what was asked.</param>
/// <param name="Reasons">Why fewer come out of it than wished; empty where all do.</param>
/// <param name="Design">The design, as <c>/v1/designs</c> answers it; null where the board holds none.</param>
/// <param name="Layout">Where the paddles lie on the board, or their strips of its wood; null where it holds none.</param>
/// <param name="ToBuy">Strips of other woods than the board's, of a paddle that is glued up; empty of one piece.</param>
internal sealed record BoardFitResponse(
    string EngineVersion, int Count, IReadOnlyList<BoardFitChange> Changes, IReadOnlyList<string> Reasons, DesignResponse? Design, BoardLayout? Layout,
    IReadOnlyList<StripToBuy> ToBuy);

/// <summary>From a board to the best paddle out of it.</summary>
internal static class BoardFitEndpoints
{
    private static readonly BoardFitRequest Pair = new()
    {
        Board = new() { Id = "8 in board", LengthMm = 1676, WidthMm = 203, ThicknessMm = 28.6, Species = "white-ash" },
        Design = new() { HandSpacingMm = 840, Wood = new() { Species = "white-ash" } },
        Count = 2,
    };

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapBoardFits(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/board-fits", Answer)
        .WithTags("Boards")
        .Describe("createBoardFit", "Which paddle does this board allow?",
            "The paddle wished for, as nearly as a board holds it, once or several times side by side: within its thickness, its length, and blade "
            + "beside shaft within its width. The blade is made narrower, and longer where its length was left open, to keep its area. The answer "
            + "says what the board changed, and holds the design and the layout. Of a paddle glued up of strips, those of the board's wood are laid on it, "
            + "the outermost giving way with the blade, and those of other woods are listed to be bought.")
        .RequestExample("pair", "Two paddles out of one narrow board", static () => Pair)
        .ResponseExample("pair", "The pair", static () => Respond(Pair, default, default) with { Design = null })
        .Offers(MediaTypes.Json)
        .NeedsScope(Scopes.Workshop)
        .Validate<BoardFitRequest>()
        .Produces<BoardFitResponse>()
        .Refuses(ProblemKinds.Busy);

    private static Gated Answer(BoardFitRequest request, HttpContext context) =>
        new(() => TypedResults.Ok(Respond(request, context.Request.PathBase, context.RequestAborted)));

    private static BoardFitResponse Respond(BoardFitRequest request, PathString pathBase, CancellationToken cancellation)
    {
        var fit = BoardFit.Find(BoardFitValidator.OfBoard(request), request.Count ?? 1, LayoutOrderReader.Read(request), cancellation);
        return new(EngineVersion.Text, fit.Count, fit.Changes, fit.Reasons, Design(fit)?.ToResponse(pathBase), fit.Layout, fit.ToBuy);
    }

    private static ComputedDesign? Design(BoardFit fit)
    {
        if (fit.Request?.Complete() is not { } resolved) return null;
        return new(resolved, fit.Report!, DesignCodes.Encode(resolved.Pin(fit.Report!.Sizes)));
    }
}
