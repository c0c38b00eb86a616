using PaddleApi.Contracts.Problems;

namespace PaddleApi.Hosting.Problems;

/// <summary>Every kind of problem this service answers with. To add one: add it here; its page and its schema follow.</summary>
internal static class ProblemKinds
{
    /// <summary>The path below which the kinds are explained.</summary>
    public const string Root = "/problems/";

    /// <summary>The body is not the JSON that was asked for.</summary>
    public static ProblemKind MalformedJson { get; } = Kind("malformed-json", "The JSON cannot be read", 400,
        "The body is not well-formed JSON, or a member is unknown, missing, given twice or of the wrong kind.",
        "Correct the places named in errors. Names are case-sensitive; unknown members are refused so that a slip is never ignored.");

    /// <summary>The request cannot be understood for another reason.</summary>
    public static ProblemKind BadRequest { get; } = Kind("bad-request", "The request cannot be understood", 400,
        "A part of the request other than its JSON body cannot be read, such as a parameter of the query that the address does not know.",
        "Compare the request with the description at /docs.");

    /// <summary>The design code cannot be read.</summary>
    public static ProblemKind InvalidDesignCode { get; } = Kind("invalid-design-code", "The design code cannot be read", 400,
        "The code in the path is not one that this service wrote, or it was changed on the way.",
        "Copy the whole member designCode of an answer, or send the request to POST /v1/designs again.");

    /// <summary>A key is missing or unknown.</summary>
    public static ProblemKind NoKey { get; } = Kind("no-key", "A key is missing or not known", 401,
        "Whoever runs this service lets only those who bring a key ask for this, or the key that was brought is not known.",
        "Send the key that you were given: Authorization: Bearer and the key. Reading needs none.");

    /// <summary>The key is for other things.</summary>
    public static ProblemKind KeyNotEnough { get; } = Kind("key-not-enough", "The key is for other things", 403,
        "The key is known, but is not for what this address does.",
        "Ask whoever runs the service for a key of the scope that the header WWW-Authenticate names.");

    /// <summary>Nothing lives at this address.</summary>
    public static ProblemKind NotFound { get; } = Kind("not-found", "There is nothing here", 404,
        "No resource has this address or this id.",
        "Check the spelling; the detail names the nearest ids where there are any.");

    /// <summary>The address exists but not for this method.</summary>
    public static ProblemKind MethodNotAllowed { get; } = Kind("method-not-allowed", "The method is not allowed here", 405,
        "The address exists, but not for this HTTP method.",
        "Use one of the methods in the header Allow.");

    /// <summary>None of the asked media types is on offer.</summary>
    public static ProblemKind NotAcceptable { get; } = Kind("not-acceptable", "None of the asked media types is on offer", 406,
        "The header Accept leaves out every media type this address can answer with.",
        "Ask for one of the media types named in the detail, or leave the header out.");

    /// <summary>The body did not come in time.</summary>
    public static ProblemKind SlowBody { get; } = Kind("slow-body", "The body did not come in time", 408,
        "The body of the request came more slowly than the service waits for.",
        "Send the request again, over a better line if there is one; the body of every address but size runs is a few kilobytes.");

    /// <summary>The body is too large.</summary>
    public static ProblemKind TooLarge { get; } = Kind("payload-too-large", "The body is too large", 413,
        "The body is larger than anything this address needs.",
        "Send less; the detail names the limit.");

    /// <summary>The body is not of a media type that is read here.</summary>
    public static ProblemKind UnsupportedMediaType { get; } = Kind("unsupported-media-type", "The body's media type is not read here", 415,
        "Bodies are read as application/json in UTF-8, and not unpacked.",
        "Send plain JSON and say so in the header Content-Type.");

    /// <summary>The asked range lies outside the file.</summary>
    public static ProblemKind RangeNotSatisfiable { get; } = Kind("range-not-satisfiable", "The asked range is not in the file", 416,
        "The header Range asks for bytes that the file does not have.",
        "The header Content-Range says how many bytes there are; ask within them, or for the whole file.");

    /// <summary>Values out of range or at odds with each other.</summary>
    public static ProblemKind InvalidValues { get; } = Kind("invalid-values", "Some values cannot be used", 422,
        "The request is well formed, but values are out of range or at odds with each other.",
        "Correct the places named in errors; each says the value, the allowed range, its unit and why.");

    /// <summary>The caller asks too often.</summary>
    public static ProblemKind TooManyRequests { get; } = Kind("too-many-requests", "Too many requests", 429,
        "This caller has sent more requests in this minute than whoever runs the service allows.",
        "Wait as many seconds as the header Retry-After says. The header RateLimit says what is left before it comes to that.");

    /// <summary>Something broke inside.</summary>
    public static ProblemKind Internal { get; } = Kind("internal-error", "Something broke inside the service", 500,
        "The service met a fault of its own.",
        "Try again later; if it happens again, report the request id.");

    /// <summary>All places for solving are taken.</summary>
    public static ProblemKind Busy { get; } = Kind("busy", "The service is busy", 503,
        "So many designs or files are being made that this one would have to wait longer than the service lets a caller wait.",
        "Wait as many seconds as the header Retry-After says, then send the same request again.");

    /// <summary>The service has started but is not ready.</summary>
    public static ProblemKind NotReady { get; } = Kind("not-ready", "The service is not ready yet", 503,
        "The service has started but has not finished its trial design.",
        "Wait as many seconds as the header Retry-After says, then ask again.");

    /// <summary>The work took too long.</summary>
    public static ProblemKind Timeout { get; } = Kind("timeout", "The work took too long", 504,
        "The request was given up because it took longer than the service allows.",
        "Ask for less at once, or try again later.");

    /// <summary>All kinds, in order of status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        MalformedJson, BadRequest, InvalidDesignCode, NoKey, KeyNotEnough, NotFound, MethodNotAllowed, NotAcceptable, SlowBody, TooLarge, UnsupportedMediaType,
        RangeNotSatisfiable, InvalidValues, TooManyRequests, Internal, Busy, NotReady, Timeout,
    ];

    /// <summary>The kind that stands for a bare status.</summary>
    /// <param name="status">HTTP status of 400 or above.</param>
    /// <returns>The kind of that status, or the general one of its class.</returns>
    public static ProblemKind OfStatus(int status) => status switch
    {
        400 => BadRequest,
        401 => NoKey,
        403 => KeyNotEnough,
        404 => NotFound,
        405 => MethodNotAllowed,
        406 => NotAcceptable,
        408 => SlowBody,
        413 => TooLarge,
        415 => UnsupportedMediaType,
        416 => RangeNotSatisfiable,
        422 => InvalidValues,
        429 => TooManyRequests,
        503 => Busy,
        504 => Timeout,
        < 500 => BadRequest,
        _ => Internal,
    };

    private static ProblemKind Kind(string slug, string title, int status, string meaning, string remedy) =>
        new(Root + slug, title, status, meaning, remedy);
}
