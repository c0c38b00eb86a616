using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Options;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Checks;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Checks;

/// <summary>A catalogue of designs held against what was agreed: the step of a build that notices when a paddle moves.</summary>
internal static class DesignCheckEndpoints
{
    private const string Unnamed = "Designs";
    private const string Xml = "application/xml";

    private static readonly string[] Offered = [MediaTypes.Json, Xml];

    private static DesignCheckRequest Catalogue => DocumentedExample.Read<DesignCheckRequest>("catalogue.json");

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapDesignChecks(this IEndpointRouteBuilder routes)
    {
        var limits = routes.ServiceProvider.GetRequiredService<IOptions<ServiceLimits>>().Value;
        return routes.MapPost("/v1/design-checks", Check)
            .WithTags("Designs")
            .WithMetadata(new RequestSizeLimitAttribute(limits.MaxSizeRunBodyBytes))
            .Describe("checkDesigns", "Has any paddle moved?",
                "Makes every design of a catalogue and holds its report against what is expected of single figures, or against a report that was "
                + "approved. The answer is 200 when all could be looked at, and failed counts the designs that moved. Ask for application/xml "
                + "to have the outcome as JUnit's XML, which build servers show. A catalogue of which a design cannot be made is refused (422).")
            .RequestExample("fleet", "Two paddles of a hire fleet: figures of one, the approved report of the other", static () => Catalogue)
            .ResponseExample("fleet", "How they came out", static () => Outcome(Catalogue, [.. Catalogue.Cases!.Select(one => DesignService.Compute(one.Design!))]))
            .Offers(Offered)
            .NeedsScope(Scopes.Design)
            .Validate<DesignCheckRequest>()
            .HasHeavyBody()
            .Produces<DesignCheckResponse>(StatusCodes.Status200OK, MediaTypes.Json, Xml);
    }

    private static IResult Check(DesignCheckRequest request, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var (designs, faults) = GivenDesigns.Make(request.Cases!, "/cases", context.RequestAborted);
        if (faults.Count > 0) return Validated.Refusal(faults);
        var outcome = Outcome(request, designs);
        return wanted == Xml
            ? TypedResults.Bytes(JUnitXml.Write(string.IsNullOrWhiteSpace(request.Label) ? Unnamed : request.Label, outcome), $"{Xml}; charset=utf-8")
            : TypedResults.Ok(outcome);
    }

    private static DesignCheckResponse Outcome(DesignCheckRequest request, IReadOnlyList<ComputedDesign> designs)
    {
        CheckedDesign[] cases = [.. request.Cases!.Zip(designs, (one, design) => Outcome(one, design, request.Tolerances))];
        var passed = cases.Count(one => one.Passed);
        return new(EngineVersion.Text, passed, cases.Length - passed, cases);
    }

    private static CheckedDesign Outcome(CheckedDesignRequest one, ComputedDesign design, ToleranceRequest? tolerances)
    {
        var report = design.ToJson();
        CheckedExpectation[] expectations = [.. (one.Expect ?? []).Select(expected => Expectation.Check(expected, report))];
        var approval = one.Approved is { } approved ? Approval.Check(approved, report, tolerances) : null;
        return new(one.Id!, expectations.All(each => each.Passed) && approval is not { Moved: > 0 }, design.Code, expectations, approval);
    }
}
