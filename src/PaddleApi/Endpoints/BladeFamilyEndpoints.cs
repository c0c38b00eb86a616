using Microsoft.AspNetCore.Http.HttpResults;
using Paddle.Design;
using Paddle.Design.Outline;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Blades;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints;

/// <summary>The blade families, their sizes and what water each is for.</summary>
internal static class BladeFamilyEndpoints
{
    private const string Address = "/v1/blade-families";

    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapBladeFamilies(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(Address).WithTags("Blade families").Offers(MediaTypes.Json).HasFixedContent();
        group.MapMethods("/", Routes.Reading, List)
            .Describe("listBladeFamilies", "The blade families that can be drawn",
                "Every blade shape known by name, what water it is for, and its sizes when a design gives none.")
            .ResponseExample("families", "All families", () => ListAnswer());
        group.MapMethods("/{id}", Routes.Reading, Get)
            .Describe("getBladeFamily", "One blade family",
                "Everything known about one blade family: its default sizes, those usual in the trade, what its curve can carry, and the source.")
            .Parameter("id", "Id of the family: lower-case words joined by hyphens, as in the list.", static () => "ottertail")
            .ResponseExample("ottertail", "Ottertail", () => Detail(BladeFamilies.Find("ottertail")!))
            .Refuses(ProblemKinds.NotFound);
        return group;
    }

    private static Ok<BladeFamilyList> List() => TypedResults.Ok(ListAnswer());

    private static Results<Ok<BladeFamilyDetail>, ProblemResult> Get(string id) => BladeFamilies.Find(id) is { } family
        ? TypedResults.Ok(Detail(family))
        : new ProblemResult(
            ProblemKinds.NotFound,
            $"There is no blade family '{FaultValue.Shorten(id)}' here. There are: {string.Join(", ", BladeFamilies.All.Select(one => one.Id))}.");

    private static BladeFamilyList ListAnswer() => new(
        EngineVersion.Text,
        [.. BladeFamilies.All.Select(family => new BladeFamilySummary(
            family.Id, family.Name, family.Water, Defaults(family), $"{Address}/{family.Id}"))]);

    private static BladeFamilyDetail Detail(BladeFamily family) => new(
        EngineVersion.Text,
        family.Id,
        family.Name,
        family.Water,
        family.Tail,
        Defaults(family),
        new BladeUsualSizes(Range(family.UsualLengthMm), Range(family.UsualWidthMm)),
        new BladeCurveLimits(Range(family.WidestAtLimits), Range(family.FullnessLimits)),
        family.Source);

    private static BladeDefaults Defaults(BladeFamily family) =>
        new(family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness);

    private static ValueRange Range(Paddle.Design.Outline.Range range) => new(range.Min, range.Max);
}
