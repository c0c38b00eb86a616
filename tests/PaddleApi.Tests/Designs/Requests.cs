using System.Text.Json;
using System.Text.Json.Nodes;
using Paddle.Design.Request;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Tests.Designs;

/// <summary>Design requests for tests: the least one, and changes to it by JSON Pointer.</summary>
internal static class Requests
{
    public const string Least = """{"handSpacingMm":880,"wood":{"species":"white-ash"}}""";

    /// <summary>A maker's own blade, 620 mm long and 150 mm wide.</summary>
    public const string Offsets =
        """[{"xMm":60,"halfBreadthMm":22},{"xMm":200,"halfBreadthMm":60},{"xMm":340,"halfBreadthMm":75},{"xMm":520,"halfBreadthMm":58},{"xMm":620,"halfBreadthMm":0}]""";

    /// <summary>Wings of redcedar on a shaft board.</summary>
    public const string Wings = """{"kind":"laminated","strips":[{"widthMm":36},{"species":"western-redcedar","widthMm":60}]}""";

    public static DesignRequest Read(string json) => JsonSerializer.Deserialize<DesignRequest>(json, StrictJson.Options)!;

    /// <summary>The least request with changes, such as <c>/blade/widthMm=60; /grip/style="t"</c>.</summary>
    public static string With(string changes)
    {
        var root = JsonNode.Parse(Least)!;
        foreach (var change in changes.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var (pointer, value) = (change[..change.IndexOf('=', StringComparison.Ordinal)], change[(change.IndexOf('=', StringComparison.Ordinal) + 1)..]);
            var parts = pointer[1..].Split('/');
            var at = root.AsObject();
            foreach (var part in parts[..^1]) at = (at[part] ??= new JsonObject()).AsObject();
            at[parts[^1]] = JsonNode.Parse(value);
        }

        return root.ToJsonString();
    }
}
