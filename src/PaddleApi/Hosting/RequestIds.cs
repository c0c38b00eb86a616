using System.Text.RegularExpressions;

namespace PaddleApi.Hosting;

/// <summary>
/// Gives every request an id: the caller's own when it is fit to be logged, else a new one. It comes back in the header, in every
/// problem and in every log line.
/// </summary>
internal static partial class RequestIds
{
    /// <summary>Name of the header.</summary>
    public const string Header = "X-Request-Id";

    /// <summary>Places the ids in the pipeline; it must come first.</summary>
    public static IApplicationBuilder UseRequestIds(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var given = context.Request.Headers[Header].ToString();
        context.TraceIdentifier = Sane().IsMatch(given) ? given : Guid.CreateVersion7().ToString("N");

        // Set when the answer starts, since a handler of errors clears the headers set before.
        context.Response.OnStarting(() =>
        {
            context.Response.Headers[Header] = context.TraceIdentifier;
            return Task.CompletedTask;
        });
        return next(context);
    });

    // Letters, digits and a few marks: nothing that could break a log line or a header.
    [GeneratedRegex(@"\A[A-Za-z0-9._-]{1,64}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Sane();
}
