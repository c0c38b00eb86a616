using System.Text.Json;
using System.Text.Json.Nodes;

namespace PaddleApi.Tests.Contract;

[Collection(HttpTests.Name)]
public sealed class OpenApiDocumentTests(ApiFixture api)
{
    private const string UpdateCommand = "UPDATE_OPENAPI=1 dotnet test tests/PaddleApi.Tests --filter OpenApiDocument";

    [Fact]
    public async Task The_committed_description_is_the_one_the_code_writes()
    {
        var written = await api.Client.GetStringAsync(ApiFactory.DescriptionPath) + "\n";
        if (Environment.GetEnvironmentVariable("UPDATE_OPENAPI") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Committed.FilePath)!);
            await File.WriteAllTextAsync(Committed.FilePath, written);
        }

        var committed = File.Exists(Committed.FilePath) ? await File.ReadAllTextAsync(Committed.FilePath) : "";

        Assert.True(
            Promise(committed) == Promise(written),
            $"The contract has changed. If that is meant, update its file and look at the difference:\n{UpdateCommand}");
    }

    // What callers build on. The figures inside examples of answers move with the engine; other tests hold them to their schemas, and the
    // design codes in a committed file that is older than the engine must still be read.
    private static string Promise(string description)
    {
        if (description.Length == 0)
        {
            return "";
        }

        var root = JsonNode.Parse(description)!;
        var operations = root["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject()).Select(operation => operation.Value!).ToList();
        JsonObject Shared(string kind) => root["components"]![kind]?.AsObject() ?? [];
        foreach (var parameter in operations.SelectMany(operation => operation["parameters"]?.AsArray() ?? []).Concat(Shared("parameters").Select(part => part.Value)))
        {
            parameter!.AsObject().Remove("example");
        }

        foreach (var example in operations.SelectMany(operation => operation["responses"]!.AsObject()).Concat(Shared("responses"))
            .SelectMany(response => response.Value!["content"]?.AsObject() ?? [])
            .SelectMany(content => content.Value!["examples"]?.AsObject() ?? []).Concat(Shared("examples")))
        {
            example.Value!.AsObject().Remove("value");
        }

        return root.ToJsonString();
    }

    [Theory]
    [InlineData("responses")]
    [InlineData("headers")]
    [InlineData("parameters")]
    [InlineData("examples")]
    public async Task Nothing_is_said_twice(string kind)
    {
        var written = JsonNode.Parse(await api.Client.GetStringAsync(ApiFactory.DescriptionPath))!;
        var parts = new List<(string Where, string Text)>();
        Collect(written, "");

        Assert.NotEmpty(written["components"]![kind]!.AsObject());
        Assert.Empty(parts.GroupBy(part => part.Text).Where(alike => alike.Count() > 1).Select(alike => string.Join(" = ", alike.Select(part => part.Where))));

        void Collect(JsonNode? node, string where)
        {
            if (node is JsonArray list)
            {
                foreach (var item in list) Collect(item, where);
            }
            else if (node is JsonObject members)
            {
                foreach (var (name, value) in members)
                {
                    if (name == kind && value is JsonObject or JsonArray)
                    {
                        parts.AddRange((value is JsonArray items ? items : value.AsObject().Select(part => part.Value))
                            .Where(part => part is JsonObject && part["$ref"] is null).Select(part => ($"{where}/{name}", part!.ToJsonString())));
                    }

                    // What stands inside an example is data.
                    if (name != "value") Collect(value, $"{where}/{name}");
                }
            }
        }
    }

    [Fact]
    public void It_is_OpenAPI_3_1() => Assert.StartsWith("3.1.", ApiFactory.Description.Root["openapi"]!.GetValue<string>(), StringComparison.Ordinal);

    [Fact]
    public void Every_operation_says_what_it_does()
    {
        var operations = ApiFactory.Description.Operations;

        Assert.All(operations, operation => Assert.All(
            ["operationId", "summary", "description"],
            member => Assert.False(string.IsNullOrWhiteSpace(operation.Node[member]?.GetValue<string>()), $"{operation}: no {member}")));
        Assert.All(operations, operation => Assert.Single(operation.Node["tags"]!.AsArray()));
        Assert.Equal(operations.Count, operations.Select(operation => operation.Id).Distinct().Count());
    }

    /// <summary>
    /// Format registry of the OpenAPI Initiative (from memory): <c>binary</c> is any sequence of octets, text included. Without it clients that are
    /// generated read a drawing as JSON.
    /// </summary>
    [Theory]
    [InlineData("image/svg+xml")]
    [InlineData("text/csv")]
    [InlineData("text/html")]
    [InlineData("image/vnd.dxf")]
    [InlineData("application/pdf")]
    [InlineData("application/xml")]
    [InlineData("application/x-ndjson")]
    [InlineData("model/stl")]
    public void A_file_is_described_as_bytes(string mediaType)
    {
        var schemas = ApiFactory.Description.Operations
            .SelectMany(operation => operation.Responses.Select(response => response.Value).Append(operation.Node["requestBody"]))
            .Select(holder => holder?["content"]?[mediaType]?["schema"]).OfType<JsonNode>().ToList();

        Assert.NotEmpty(schemas);
        Assert.All(schemas, schema => Assert.Equal(("string", "binary"), (schema["type"]?.GetValue<string>(), schema["format"]?.GetValue<string>())));
    }

    [Fact]
    public void A_fault_always_has_a_code() =>
        Assert.Contains("code", ApiFactory.Description.Root["components"]!["schemas"]!["Fault"]!["required"]!.AsArray().Select(name => name!.GetValue<string>()));

    [Fact]
    public void Every_tag_is_described() => Assert.All(
        ApiFactory.Description.Root["tags"]!.AsArray(),
        tag => Assert.False(string.IsNullOrWhiteSpace(tag!["description"]?.GetValue<string>()), $"The tag {tag["name"]} has no description"));

    /// <summary>A member that is a schema of its own and nothing more is described there.</summary>
    [Fact]
    public void Every_parameter_and_every_member_is_described()
    {
        var missing = ApiFactory.Description.Operations.SelectMany(operation => (operation.Node["parameters"]?.AsArray() ?? [])
                .Where(parameter => parameter!["description"] is null || parameter["example"] is null)
                .Select(parameter => $"{operation} {parameter!["name"]}"))
            .Concat(ApiFactory.Description.Root["components"]!["schemas"]!.AsObject().SelectMany(schema =>
                (schema.Value!["properties"]?.AsObject() ?? []).Where(member => member.Value!["description"] is null && member.Value["$ref"] is null)
                    .Select(member => $"{schema.Key}.{member.Key}").Concat(schema.Value["description"] is null ? [schema.Key] : [])));

        Assert.Empty(missing);
    }

    [Fact]
    public void Every_body_has_an_example_and_every_example_fits_its_schema()
    {
        var faults = new List<string>();
        foreach (var operation in ApiFactory.Description.Operations)
        {
            foreach (var (status, response) in operation.Responses)
            {
                Check(response!, $"{operation} -> {status}", faults);
            }

            if (operation.HasBody)
            {
                Check(operation.Node["requestBody"]!, $"{operation} request", faults);
            }
        }

        Assert.Empty(faults);
    }

    private static void Check(JsonNode holder, string where, List<string> faults)
    {
        foreach (var (mediaType, content) in holder["content"]?.AsObject() ?? [])
        {
            if (!mediaType.EndsWith("json", StringComparison.Ordinal) || (mediaType == "application/x-ndjson" && !where.EndsWith("request", StringComparison.Ordinal)))
            {
                continue;
            }

            var examples = content!["examples"]?.AsObject() ?? [];
            if (examples.Count == 0)
            {
                faults.Add($"{where} {mediaType}: no example");
            }

            foreach (var (name, example) in examples)
            {
                using var value = JsonDocument.Parse(example!["value"]!.ToJsonString());
                var fault = ApiFactory.Description.Faults(content["schema"]!, value.RootElement);
                if (fault.Length > 0)
                {
                    faults.Add($"{where} {mediaType} {name}: {fault}");
                }
            }
        }
    }
}
