using System.Text;
using System.Text.Json.Serialization;
using Paddle.Design.Fitting;
using Paddle.Design.Layout;
using Paddle.Drawings;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Boards;

/// <summary>The answer to an order for boards.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="Layout">The layout, whose members stand beside the version.</param>
internal sealed record BoardLayoutResponse([property: JsonPropertyOrder(-1)] string EngineVersion, [property: JsonIgnore] BoardLayout Layout) : BoardLayout(Layout);

/// <summary>Paddles cut out of the boards in the rack, or out of the boards that a shop offers.</summary>
internal static class BoardLayoutEndpoints
{
    private const string Unnamed = "Boards";
    private const string Svg = MediaTypes.Svg;
    private static readonly string[] Offered = [MediaTypes.Json, Svg];

    /// <summary>Maps the endpoints.</summary>
    public static void MapBoardLayouts(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/v1/board-layouts", isShopping: false).Describe("createBoardLayout", "Which paddle out of which board?",
            "Lays paddles out on the boards in the rack by their true outlines, head to tail where that saves wood: as many of the required ones "
            + "as can be, then the optional ones, on the least area of board. Every outline keeps its distance from the others, from defects and "
            + "from the board's edges, and lies along the board, since grain decides strength. A paddle glued up of strips is laid out strip by strip, each on a board of its wood. What finds no place is answered with what stopped it and "
            + "the smallest board that would do. Ask for image/svg+xml to have every board drawn to chalk from.")
            .RequestExample("rack", "Two sizes of a hire fleet out of three boards, one with a knot", static () => BoardExamples.Rack)
            .ResponseExample("rack", "Where they lie", static () => new BoardLayoutResponse(EngineVersion.Text, Lay(BoardExamples.Rack, false)));
        Map(routes, "/v1/shopping-lists", isShopping: true).Describe("createShoppingList", "Which boards to buy?",
            "The cheapest boards, of those that a shop offers, that an order comes out of, and where each paddle lies on them. Boards without a "
            + "count may be bought as often as they are needed; every board has a price.")
            .RequestExample("fleet", "Boards for a hire fleet", static () => BoardExamples.Shop)
            .ResponseExample("fleet", "What to buy", static () => new BoardLayoutResponse(EngineVersion.Text, Lay(BoardExamples.Shop, true)));
    }

    private static RouteHandlerBuilder Map(IEndpointRouteBuilder routes, string path, bool isShopping) =>
        routes.MapPost(path, (BoardLayoutRequest request, HttpContext context) => Answer(request, isShopping, context))
            .WithTags("Boards")
            .Offers(Offered)
            .NeedsScope(Scopes.Workshop)
            .Validate<BoardLayoutRequest>()
            .Produces<BoardLayoutResponse>(StatusCodes.Status200OK, MediaTypes.Json, Svg)
            .Refuses(ProblemKinds.Busy);

    private static IResult Answer(BoardLayoutRequest request, bool isShopping, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var unpriced = isShopping ? request.Boards!.Select((board, k) => (board, k)).Where(one => one.board.PriceEach is null).ToList() : [];
        if (unpriced.Count > 0)
        {
            return Validated.Refusal([.. unpriced.Select(one => (JsonPointers.Append("/boards", one.k) + "/priceEach",
                new Fault("A shop's board has a price, or the cheapest cannot be told.", Code: RefusalCodes.Missing)))]);
        }

        return new Gated(() =>
        {
            var cancellation = context.RequestAborted;
            var (designs, faults) = GivenDesigns.Make(request.Paddles!, "/paddles", cancellation);
            if (faults.Count > 0) return Validated.Refusal(faults);
            var order = LayoutOrderReader.Read(request, [.. designs.Select(design => design.Report)], isShopping);
            if (LayoutReasons.LeastThicknessMm(order) is { } least) return Validated.Refusal(TooThin(request, least));
            var layout = LayoutReport.Of(order, LayoutOrderReader.Units(request), cancellation);
            return wanted == Svg
                ? TypedResults.Text(BoardLayoutSvg.Write(order, layout, Drawing(request), request.Drawing?.Scale == "fit"), Svg, Encoding.UTF8)
                : TypedResults.Ok(new BoardLayoutResponse(EngineVersion.Text, layout));
        });
    }

    // A rack of which no board holds any of the paddles is a slip of a figure; one thin board among others is not.
    private static List<(string Place, Fault Fault)> TooThin(BoardLayoutRequest request, double leastMm) => [.. request.Boards!.Select((board, k) => (
        JsonPointers.Append("/boards", k) + "/thicknessMm",
        new Fault("Every board is thinner than every paddle of its wood with what is planed off. State wood.boardThicknessMm to have paddles that they hold.",
            board.ThicknessMm, Math.Ceiling(10 * leastMm) / 10, Unit: "mm", Code: RefusalCodes.BeyondBoard)))];

    private static BoardLayout Lay(BoardLayoutRequest request, bool isShopping) => LayoutReport.Of(
        LayoutOrderReader.Read(request, [.. GivenDesigns.Make(request.Paddles!, "/paddles", default).Designs.Select(design => design.Report)], isShopping), LayoutOrderReader.Units(request));

    private static DrawingContext Drawing(BoardLayoutRequest request) => new(
        string.IsNullOrWhiteSpace(request.Label) ? Unnamed : request.Label, LayoutOrderReader.Units(request), EngineVersion.Text);
}
