using Microsoft.AspNetCore.Http.HttpResults;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Woods;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints;

/// <summary>The woods and where each figure comes from.</summary>
internal static class WoodEndpoints
{
    private const string Address = "/v1/woods";

    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapWoods(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(Address).WithTags("Woods").Offers(MediaTypes.Json).HasFixedContent();
        group.MapMethods("/", Routes.Reading, List)
            .Describe("listWoods", "The woods a paddle can be designed in",
                "Every wood with its main figures and a judgement for paddles, and what holds for any wood: limits on moisture and grain, "
                + "knots, dust, and stock that is refused.")
            .ResponseExample("woods", "All woods", () => WoodAnswers.List(Address));
        group.MapMethods("/{id}", Routes.Reading, Get)
            .Describe("getWood", "One wood",
                "Everything known about one wood: each figure with its source, its suitability for a paddle, and cautions on its dust.")
            .Parameter("id", "Id of the wood: lower-case words joined by hyphens, as in the list.", static () => "white-ash")
            .ResponseExample("white-ash", "White ash", () => WoodAnswers.Detail(WoodCatalogue.Find("white-ash")!))
            .Refuses(ProblemKinds.NotFound);
        return group;
    }

    private static Ok<WoodList> List() => TypedResults.Ok(WoodAnswers.List(Address));

    private static Results<Ok<WoodDetail>, ProblemResult> Get(string id) => WoodCatalogue.Find(id) is { } species
        ? TypedResults.Ok(WoodAnswers.Detail(species))
        : new ProblemResult(ProblemKinds.NotFound, Absence(id));

    private static string Absence(string id)
    {
        if (WoodSafety.RefusalOfSpecies(id) is { } refused)
        {
            return $"No paddle is designed in '{refused.Id}': {refused.Reason}";
        }

        var asked = FaultValue.Shorten(id);
        return $"There is no wood '{asked}' here. The nearest: {string.Join(", ", WoodCatalogue.NearestIds(asked))}. All are listed at {Address}.";
    }
}
