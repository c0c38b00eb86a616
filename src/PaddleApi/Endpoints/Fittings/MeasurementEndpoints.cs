using Microsoft.AspNetCore.Http.HttpResults;
using Paddle.Design.Fitting;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Fittings;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Fittings;

/// <summary>How to take the measurements that a fitting asks for.</summary>
internal static class MeasurementEndpoints
{
    private static readonly MeasurementList All = new(EngineVersion.Text, MeasurementCatalogue.All);

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapMeasurements(this IEndpointRouteBuilder routes) => routes
        .MapMethods("/v1/measurements", Routes.Reading, List)
        .WithTags("Fittings")
        .Offers(MediaTypes.Json)
        .HasFixedContent()
        .Describe("listMeasurements", "How to measure at home",
            "Every measurement that a fitting takes: what to do step by step, its typical error, the values accepted and why, and what it decides.")
        .ResponseExample("measurements", "All measurements", static () => All);

    private static Ok<MeasurementList> List() => TypedResults.Ok(All);
}
