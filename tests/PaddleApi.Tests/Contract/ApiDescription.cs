using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace PaddleApi.Tests.Contract;

/// <summary>The service's OpenAPI description, read as plain JSON so that it is judged by what it says and not by the code that wrote it.</summary>
public sealed class ApiDescription
{
    private const string Schemas = "#/components/schemas/";

    private readonly JsonObject definitions;
    private readonly ConcurrentDictionary<string, JsonSchema> schemas = new(StringComparer.Ordinal);

    public ApiDescription(string json)
    {
        Root = Resolved(JsonNode.Parse(json)!.AsObject());
        definitions = Local(Root["components"]!["schemas"]!).AsObject();
        Operations =
        [
            .. from path in Root["paths"]!.AsObject()
               from method in path.Value!.AsObject()
               select new ApiOperation(method.Key.ToUpperInvariant(), path.Key, method.Value!.AsObject()),
        ];
    }

    /// <summary>The description with every shared part in each place that refers to it; schemas alone keep their references, as they may be circular.</summary>
    public JsonObject Root { get; }

    public IReadOnlyList<ApiOperation> Operations { get; }

    /// <summary>The operation a request went to, and whether its path is known at all.</summary>
    public (ApiOperation? Operation, bool PathIsKnown) Match(string method, string path)
    {
        var wanted = method == "HEAD" ? "GET" : method;

        // Fixed paths come before patterns, as in routing.
        var candidates = Operations.Where(operation => operation.Matches(path)).OrderBy(operation => operation.ParameterNames.Count).ToList();
        return (candidates.FirstOrDefault(operation => operation.Method == wanted), candidates.Count > 0);
    }

    /// <summary>Faults of a value against a schema node of this description; empty when it fits.</summary>
    public string Faults(JsonNode schemaNode, JsonElement value)
    {
        var schema = schemas.GetOrAdd(schemaNode.ToJsonString(), _ =>
        {
            var own = Local(schemaNode).AsObject();
            own["$defs"] = definitions.DeepClone();
            return JsonSchema.FromText(own.ToJsonString());
        });
        var outcome = schema.Evaluate(value, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return outcome.IsValid ? "" : string.Join("; ", (outcome.Details ?? []).Where(detail => detail.Errors is { Count: > 0 })
            .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}")).DefaultIfEmpty("does not fit"));
    }

    private static JsonObject Resolved(JsonObject root)
    {
        Resolve(root);
        return root;

        void Resolve(JsonNode? node)
        {
            foreach (var (key, child) in Children(node))
            {
                if (child is JsonObject part && part["$ref"]?.GetValue<string>() is { } address && !address.StartsWith(Schemas, StringComparison.Ordinal))
                {
                    var target = address.Split('/').Skip(1).Aggregate((JsonNode)root, (at, name) => at[name]
                        ?? throw new InvalidOperationException($"{address} refers to nothing"));
                    var copy = target.DeepClone();
                    if (node is JsonArray list) list[(int)key] = copy;
                    else node![(string)key] = copy;
                    Resolve(copy);
                }
                else
                {
                    Resolve(child);
                }
            }
        }
    }

    private static List<(object Key, JsonNode? Value)> Children(JsonNode? node) => node switch
    {
        JsonObject members => [.. members.Select(member => ((object)member.Key, member.Value))],
        JsonArray list => [.. list.Select((item, index) => ((object)index, item))],
        _ => [],
    };

    // OpenAPI keeps schemas under components, plain JSON Schema under $defs; extensions mean nothing to a validator. Any other unknown
    // keyword makes the validator stop, and so it should: a mistyped keyword checks nothing.
    private static JsonNode Local(JsonNode node)
    {
        var copy = JsonNode.Parse(node.ToJsonString().Replace(Schemas, "#/$defs/", StringComparison.Ordinal))!;
        DropExtensions(copy);
        return copy;
    }

    private static void DropExtensions(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            list.ToList().ForEach(DropExtensions);
        }
        else if (node is JsonObject members)
        {
            foreach (var (name, value) in members.ToList())
            {
                if (name.StartsWith("x-", StringComparison.Ordinal))
                {
                    members.Remove(name);
                }

                DropExtensions(value);
            }
        }
    }
}
