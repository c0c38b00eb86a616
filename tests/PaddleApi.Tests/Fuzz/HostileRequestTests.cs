using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using PaddleApi.Tests.Contract;
using Xunit.Abstractions;

namespace PaddleApi.Tests.Fuzz;

/// <summary>
/// Many requests made of the description by spoiling it: none may break the service, and each is answered with what was asked for or with a
/// whole problem. The chance is fixed, so that what fails once fails again: the message names the number of the request.
/// </summary>
[Collection(HttpTests.Name)]
public sealed class HostileRequestTests(ITestOutputHelper output) : IDisposable
{
    // Four ask at once and heavy work has one place: on a busy machine waiting for it is no fault, and hanging is.
    private readonly ApiFactory factory = new(new Dictionary<string, string> { ["Limits:MostWaitSeconds"] = "60", ["Limits:RequestTimeoutSeconds"] = "60" });

    private const int MostShown = 12;

    // Other chances and longer runs by hand: FUZZ_SEED=7 FUZZ_COUNT=1000000 dotnet test tests/PaddleApi.Tests --filter HostileRequest
    private static readonly int Seed = Setting("FUZZ_SEED", 20_261_126), Count = Setting("FUZZ_COUNT", Sweep.Of(6000, 20_000));

    public void Dispose() => factory.Dispose();

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public async Task Nothing_that_is_sent_breaks_the_service()
    {
        var requests = new HostileRequests(Seed);
        var faults = new ConcurrentQueue<string>();
        var statuses = new ConcurrentDictionary<int, int>();

        await Parallel.ForAsync(0, Count, new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, _) =>
        {
            var request = requests.Number(number);
            var (status, fault) = await AskAsync(request);
            statuses.AddOrUpdate(status, 1, (_, count) => count + 1);
            if (fault is not null) faults.Enqueue($"{number}: {fault}: {request}");
        });

        output.WriteLine(Summary(statuses));
        Assert.True(faults.IsEmpty, $"{faults.Count} of {Count}:\n{string.Join('\n', faults.Take(MostShown))}");

        // Requests that were all refused at one door would have tried nothing behind it.
        Assert.All([200, 400, 404, 405, 406, 415, 422], status => Assert.True(statuses.GetValueOrDefault(status) >= 20, $"{status}: {Summary(statuses)}"));
    }

    private async Task<(int Status, string? Fault)> AskAsync(HostileRequest request)
    {
        try
        {
            var context = await factory.Server.SendAsync(request.WriteTo);
            using var received = new MemoryStream();
            await context.Response.Body.CopyToAsync(received);
            return (context.Response.StatusCode, Fault(request, context.Response, received.ToArray()));
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return (0, $"no answer: {fault}");
        }
    }

    private static string? Fault(HostileRequest request, HttpResponse response, byte[] body)
    {
        var status = response.StatusCode;
        if (status >= 500) return $"{status} {Encoding.UTF8.GetString(body)}";
        if (!response.Headers.ContainsKey("X-Request-Id")) return $"{status} without an id";
        if (status < 400) return status is 200 or 204 or 206 or 304 ? null : $"{status}";
        if (request.Method == "HEAD") return null;
        if (response.ContentType?.StartsWith("application/problem+json", StringComparison.Ordinal) != true) return $"{status} as {response.ContentType}";
        return response.Headers.ContentEncoding.Count > 0 ? null : ProblemFault(response, body);
    }

    private static string? ProblemFault(HttpResponse response, byte[] body)
    {
        try
        {
            using var problem = JsonDocument.Parse(body);
            var root = problem.RootElement;
            return root.GetProperty("status").GetInt32() != response.StatusCode ? "the status is not that of the answer"
                : root.GetProperty("requestId").GetString() != response.Headers["X-Request-Id"] ? "the id is not that of the answer"
                : root.GetProperty("title").GetString()!.Length == 0 || root.GetProperty("detail").GetString()!.Length == 0 ? "it says nothing"
                : body.Length > 64 * 1024 ? $"it is {body.Length} bytes long"
                : root.GetProperty("detail").GetString()!.Contains("Exception", StringComparison.Ordinal) ? "it shows the inside"
                : null;
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return $"no whole problem ({fault.Message}): {Encoding.UTF8.GetString(body)}";
        }
    }

    private static int Setting(string name, int usual) =>
        Environment.GetEnvironmentVariable(name) is { Length: > 0 } given ? int.Parse(given, CultureInfo.InvariantCulture) : usual;

    private static string Summary(ConcurrentDictionary<int, int> statuses) =>
        string.Join(", ", statuses.OrderBy(pair => pair.Key).Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Value} of {pair.Key}")));
}
