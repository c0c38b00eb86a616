using System.Text.Json;
using Paddle.Design;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Hosting.Telemetry;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Endpoints.Designs;

/// <summary>A design computed, with the code by which it can be had again.</summary>
internal sealed record ComputedDesign(ResolvedDesign Resolved, DesignReport Report, string Code)
{
    /// <summary>The answer of the contract.</summary>
    public DesignResponse ToResponse(PathString pathBase) =>
        DesignResponse.Of(Resolved, Report, Code, DesignAddresses.Links(pathBase, Code));

    /// <summary>The answer as it is served, for who reads single figures out of it by JSON Pointer.</summary>
    public JsonElement ToJson() => JsonSerializer.SerializeToElement(ToResponse(default), StrictJson.Options);
}

/// <summary>The one way from a request or a code to a design; every address that answers with designs or drawings takes it.</summary>
internal static class DesignService
{
    private static readonly DesignRequestValidator Rules = new();

    /// <summary>Solves a request that its validator has passed.</summary>
    public static ComputedDesign Compute(DesignRequest request, CancellationToken cancellation = default)
    {
        var resolved = request.Complete();
        using var step = ServiceTraces.Begin("solve");
        var report = PaddleDesigner.Design(resolved.Specification, cancellation);
        step?.SetTag("outcome", report.Outcome.Word);
        return new(resolved, report, DesignCodes.Encode(resolved.Pin(report.Sizes)));
    }

    /// <summary>Evaluates the design of a code that <see cref="Read"/> has passed; nothing is left to solve.</summary>
    public static ComputedDesign Evaluate(ResolvedDesign resolved, string code)
    {
        using var step = ServiceTraces.Begin("evaluate");
        var report = PaddleDesigner.Design(resolved.Specification);
        step?.SetTag("outcome", report.Outcome.Word);
        return new(resolved, report, code);
    }

    /// <summary>Reads a design code.</summary>
    /// <returns>The design with every size pinned, or the problem to answer with.</returns>
    public static (ResolvedDesign? Design, ProblemResult? Problem) Read(string code)
    {
        var (request, problem) = Decode(code);
        return problem is null ? Check(request!) : (null, problem);
    }

    /// <summary>Unpacks a design code; the values in it are as yet anybody's.</summary>
    /// <returns>The request in the code, or the problem to answer with.</returns>
    public static (DesignRequest? Request, ProblemResult? Problem) Decode(string code)
    {
        using var step = ServiceTraces.Begin("read");
        var decoded = DesignCodes.Decode(code);
        return decoded.Fault is { } fault ? (null, new(ProblemKinds.InvalidDesignCode, Explain(fault))) : (decoded.Request, null);
    }

    /// <summary>Checks a request that came out of a code.</summary>
    /// <returns>The design with every size pinned, or the problem to answer with.</returns>
    public static (ResolvedDesign? Design, ProblemResult? Problem) Check(DesignRequest request)
    {
        var outcome = Rules.Check(request);
        if (!outcome.IsValid)
        {
            return (null, new(
                ProblemKinds.InvalidDesignCode,
                "The design code holds values that no design of this service has; it was not made here.",
                Validated.Refusal(outcome.Errors).Errors));
        }

        var resolved = request.Complete();
        return resolved.Specification.Pinned.ToVector().Contains(null)
            ? (null, new(ProblemKinds.InvalidDesignCode, "The design code leaves sizes open; it was not made here. Send the request to POST /v1/designs."))
            : (resolved, null);
    }

    /// <summary>
    /// Answers from a code that has been unpacked. Who names the very answer in If-None-Match got it here and is told 304 before anything
    /// is checked or computed; for anybody else the values are checked first.
    /// </summary>
    /// <param name="vary">The request's headers that choose among answers; null for none.</param>
    public static IResult Answer(HttpContext context, DesignRequest request, string tag, string? vary, Func<ResolvedDesign, IResult> answer)
    {
        ResolvedDesign? design = null;
        if (!EntityTags.IsNamed(context.Request, tag))
        {
            (design, var problem) = Check(request);
            if (problem is not null) return problem;
        }

        return FixedContent.Stamp(context, tag, vary) ? TypedResults.StatusCode(StatusCodes.Status304NotModified) : answer(design!);
    }

    private static string Explain(DesignCodeFault fault) => fault switch
    {
        DesignCodeFault.TooLong => $"The design code is longer than {DesignCodes.MostCharacters} characters, which is more than any design needs.",
        DesignCodeFault.ForeignVersion => $"The design code does not begin with {DesignCodes.Prefix}, the version that is read here.",
        DesignCodeFault.NotBase64Url =>
            "The design code holds characters other than letters, digits, - and _ (base64url without padding).",
        DesignCodeFault.CutShort => "The design code is cut short, or characters were added to it: copy all of it and no more.",
        DesignCodeFault.TooBig => $"The design code unpacks to more than {DesignCodes.MostTextBytes} bytes, which is more than any design needs.",
        DesignCodeFault.Damaged => "The design code is damaged: characters were changed, lost or added on the way.",
        _ => $"The design code unpacks to something that is no design of version {DesignCodes.Prefix}.",
    };
}
