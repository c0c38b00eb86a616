using System.Collections.Concurrent;

namespace PaddleApi.Tests.Contract;

/// <summary>Which documented answers have been seen in this run.</summary>
public static class Coverage
{
    private static readonly ConcurrentDictionary<string, int> Seen = new(StringComparer.Ordinal);

    public static void Saw(ApiOperation operation, string status) => Seen.AddOrUpdate(Key(operation, status), 1, (_, count) => count + 1);

    /// <summary>The documented answers that no test has received. What stands under "default" is what nobody foresees.</summary>
    public static IReadOnlyList<string> Unseen(ApiDescription description) =>
    [
        .. from operation in description.Operations
           from response in operation.Responses
           where response.Key != "default" && !Seen.ContainsKey(Key(operation, response.Key))
           select Key(operation, response.Key),
    ];

    private static string Key(ApiOperation operation, string status) => $"{operation} -> {status}";
}
