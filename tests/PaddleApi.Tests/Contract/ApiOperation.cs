using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PaddleApi.Tests.Contract;

/// <summary>One operation of the description.</summary>
public sealed partial class ApiOperation(string method, string template, JsonObject node)
{
    private readonly Regex pattern = new($"^{Braces().Replace(template.TrimEnd('/'), "(?<$1>[^/]+)")}$", RegexOptions.CultureInvariant);

    public string Method { get; } = method;

    public string Template { get; } = template;

    public JsonObject Node { get; } = node;

    public string Id => Node["operationId"]?.GetValue<string>() ?? $"{Method} {Template}";

    public JsonObject Responses => Node["responses"]!.AsObject();

    public IReadOnlyList<string> ParameterNames => [.. Braces().Matches(Template).Select(match => match.Groups[1].Value)];

    /// <summary>Whether it takes a JSON value; batches, which take one a line, have tests of their own.</summary>
    public bool HasBody => Node["requestBody"]?["content"]?["application/json"] is not null;

    /// <summary>Whether it takes a JSON value a line.</summary>
    public bool IsBatch => Node["requestBody"]?["content"]?["application/x-ndjson"] is not null;

    /// <summary>A body that works; null where it takes none.</summary>
    public HttpContent? Example() =>
        HasBody ? new StringContent(RequestExamples.First().Value, Encoding.UTF8, "application/json")
        : IsBatch ? new StringContent("{}\n", new MediaTypeHeaderValue("application/x-ndjson"))
        : null;

    public bool Documents(int status) => Responses.ContainsKey(status.ToString(System.Globalization.CultureInfo.InvariantCulture));

    public bool Matches(string path) => pattern.IsMatch(path);

    /// <summary>The path with each parameter's example in it; query parameters that have an example and are required follow.</summary>
    public string ExamplePath() => Fill(parameter => parameter["example"]?.ToString()
        ?? throw new InvalidOperationException($"{Id}: the parameter {parameter["name"]} has no example"));

    /// <summary>Every query parameter.</summary>
    public IReadOnlyList<string> QueryNames =>
    [
        .. from parameter in Node["parameters"]?.AsArray() ?? []
           where parameter["in"]!.GetValue<string>() == "query"
           select parameter["name"]!.GetValue<string>(),
    ];

    /// <summary>The optional query parameters that take one of a few names.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Choices => (Node["parameters"]?.AsArray() ?? [])
        .Where(parameter => parameter!["in"]!.GetValue<string>() == "query" && parameter["schema"]?["enum"] is not null)
        .ToDictionary(
            parameter => parameter!["name"]!.GetValue<string>(),
            parameter => (IReadOnlyList<string>)[.. parameter!["schema"]!["enum"]!.AsArray().Select(name => name!.GetValue<string>())]);

    /// <summary>The path with something in place of each path parameter that cannot exist.</summary>
    public string AbsentPath() => Fill(_ => "no-such-thing");

    /// <summary>The request bodies shown, by name.</summary>
    public IReadOnlyDictionary<string, string> RequestExamples => Node["requestBody"]?["content"]?["application/json"]?["examples"]?.AsObject()
        .ToDictionary(example => example.Key, example => example.Value!["value"]!.ToJsonString()) ?? [];

    public override string ToString() => $"{Method} {Template}";

    private string Fill(Func<JsonNode, string> value)
    {
        var path = Template;
        var query = new List<string>();
        foreach (var parameter in Node["parameters"]?.AsArray() ?? [])
        {
            var name = parameter!["name"]!.GetValue<string>();
            switch (parameter["in"]!.GetValue<string>())
            {
                case "path":
                    path = path.Replace($"{{{name}}}", Uri.EscapeDataString(value(parameter)), StringComparison.Ordinal);
                    break;
                case "query" when parameter["required"]?.GetValue<bool>() == true:
                    query.Add($"{name}={Uri.EscapeDataString(value(parameter))}");
                    break;
            }
        }

        return query.Count == 0 ? path : $"{path}?{string.Join('&', query)}";
    }

    [GeneratedRegex(@"\{(\w+)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Braces();
}
