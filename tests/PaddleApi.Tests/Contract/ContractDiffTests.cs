using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace PaddleApi.Tests.Contract;

/// <summary>What callers build on is taken away from them only with notice.</summary>
public sealed class ContractDiffTests
{
    private const string ReleaseCommand = "RELEASE_OPENAPI=1 dotnet test tests/PaddleApi.Tests --filter ContractDiff";

    private const string Request = "/components/schemas/ThingRequest/properties";
    private const string Answer = "/components/schemas/Thing/properties";
    private const string Operation = "/paths/~1things~1{id}/post";

    // Single quotes stand for double ones.
    private const string Before = """
        { 'info': { 'version': '1.2.0' },
          'paths': { '/things/{id}': { 'post': {
            'operationId': 'makeThing',
            'parameters': [{ 'name': 'units', 'in': 'query', 'schema': { 'type': 'string', 'enum': ['metric', 'inch'] } }],
            'requestBody': { 'content': { 'application/json': { 'schema': { '$ref': '#/components/schemas/ThingRequest' } } } },
            'responses': {
              '200': { '$ref': '#/components/responses/Made' },
              '422': { 'content': { 'application/problem+json': { 'schema': { 'type': 'object' } } } } } } } },
          'components': {
            'responses': { 'Made': {
              'headers': { 'ETag': { 'required': true, 'schema': { 'type': 'string' } } },
              'content': { 'application/json': { 'schema': { '$ref': '#/components/schemas/Thing' } }, 'text/csv': { 'schema': { 'type': 'string' } } } } },
            'schemas': {
              'ThingRequest': { 'type': 'object', 'additionalProperties': false, 'required': ['name'], 'properties': {
                'name': { 'type': 'string', 'maxLength': 80 },
                'wood': { 'type': ['null', 'string'], 'enum': ['ash', 'cherry', null] },
                'widthMm': { 'type': ['null', 'number'], 'minimum': 10, 'maximum': 20, 'x-unit': 'mm' },
                'part': { 'oneOf': [{ 'type': 'null' }, { '$ref': '#/components/schemas/Part' }] },
                'parts': { 'type': 'array', 'maxItems': 4, 'items': { '$ref': '#/components/schemas/Part' } } } },
              'Part': { 'type': 'object', 'required': ['count'], 'properties': { 'count': { 'type': 'integer' } } },
              'Thing': { 'type': 'object', 'required': ['massG', 'faults'], 'properties': {
                'massG': { 'type': 'number', 'x-unit': 'g' },
                'note': { 'type': ['null', 'string'] },
                'inner': { '$ref': '#/components/schemas/Thing' },
                'faults': { 'type': 'object', 'additionalProperties': { 'type': 'array', 'items': { 'type': 'string' } } } } } } } }
        """;

    private static readonly JsonSerializerOptions Written = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Every request with strips was refused by the release that takes one-piece alone: what is stated of them since can break nobody. Holds no
    // longer once a release takes laminated paddles.
    private static readonly string[] NeverTaken =
    [
        "/components/schemas/ConstructionRequest/properties/strips", "/components/schemas/StripRequest/properties/species",
        "/components/schemas/StripRequest/properties/widthMm",
    ];

    private static bool RefusesStrips(ApiDescription released) =>
        released.Root["components"]!["schemas"]!["ConstructionRequest"]!["properties"]!["kind"]!["enum"]!.AsArray().All(kind => kind?.GetValue<string>() != "laminated");

    [Fact]
    public void What_breaks_since_the_last_release_is_announced()
    {
        if (Environment.GetEnvironmentVariable("RELEASE_OPENAPI") == "1") File.WriteAllText(Committed.ReleasedPath, Promised(File.ReadAllText(Committed.FilePath)));
        var released = new ApiDescription(File.ReadAllText(Committed.ReleasedPath));

        BreakingChange[] changes = [.. ContractDiff.Breaking(released, ApiFactory.Description).Where(change => !(NeverTaken.Contains(change.Place) && RefusesStrips(released)))];
        var unannounced = ContractDiff.Unannounced(changes, File.ReadAllText(Committed.ChangelogPath));

        Assert.True(
            unannounced.Count == 0,
            "Callers of the last release would break. Take it back, or name the pointer (or the operation and the member) in the newest section of "
            + $"docs/changelog.md; after a release, {ReleaseCommand} keeps the new contract as the one to compare with.\n{string.Join('\n', unannounced)}");
        Assert.True(changes.Length == 0 || Major(ApiFactory.Description) > Major(released), "A breaking change raises the first number of the contract's version.");
    }

    [Theory]
    [InlineData("'/things/{id}'", "'/thing/{id}'", Operation)]
    [InlineData("'post'", "'put'", Operation)]
    [InlineData("'makeThing'", "'createThing'", Operation + "/operationId")]
    [InlineData("'name': 'units'", "'name': 'unit'", Operation + "/parameters/units")]
    [InlineData("'in': 'query',", "'in': 'query', 'required': true,", Operation + "/parameters/units")]
    [InlineData("['metric', 'inch']", "['metric']", Operation + "/parameters/units/schema")]
    [InlineData("'parameters': [", "'parameters': [{ 'name': 'paper', 'in': 'query', 'required': true },", Operation + "/parameters/paper")]
    [InlineData("'requestBody': {", "'requestBody': { 'required': true,", Operation + "/requestBody")]
    [InlineData("'422'", "'400'", Operation + "/responses/422")]
    [InlineData("'ETag'", "'Etag-2'", Operation + "/responses/200/headers/ETag")]
    [InlineData("'ETag': { 'required': true", "'ETag': { 'required': false", Operation + "/responses/200/headers/ETag")]
    [InlineData("'text/csv'", "'text/plain'", Operation + "/responses/200/content/text~1csv")]
    [InlineData("'required': ['name']", "'required': ['name', 'wood']", Request + "/wood")]
    [InlineData("'required': ['name'], 'properties': {", "'required': ['name', 'age'], 'properties': { 'age': { 'type': 'number' },", Request + "/age")]
    [InlineData("'widthMm'", "'breadthMm'", Request + "/widthMm")]
    [InlineData("'name': { 'type': 'string'", "'name': { 'type': 'number'", Request + "/name")]
    [InlineData("'maxLength': 80", "'maxLength': 60", Request + "/name")]
    [InlineData("'maxLength': 80", "'maxLength': 80, 'pattern': '^a$'", Request + "/name")]
    [InlineData("'ash', 'cherry', null", "'ash', null", Request + "/wood")]
    [InlineData("'maxLength': 80", "'maxLength': 80, 'enum': ['a', 'b']", Request + "/name")]
    [InlineData("'minimum': 10", "'minimum': 11", Request + "/widthMm")]
    [InlineData("'maximum': 20", "'maximum': 19.5", Request + "/widthMm")]
    [InlineData("'maxLength': 80", "'maxLength': 80, 'minLength': 1", Request + "/name")]
    [InlineData("'x-unit': 'mm'", "'x-unit': 'cm'", Request + "/widthMm")]
    [InlineData(", 'x-unit': 'mm'", "", Request + "/widthMm")]
    [InlineData("'maxLength': 80", "'maxLength': 80, 'format': 'date'", Request + "/name")]
    [InlineData("'type': ['null', 'number']", "'type': 'number'", Request + "/widthMm")]
    [InlineData("{ 'oneOf': [{ 'type': 'null' }, { '$ref': '#/components/schemas/Part' }] }", "{ '$ref': '#/components/schemas/Part' }", Request + "/part")]
    [InlineData("'maxItems': 4", "'maxItems': 3", Request + "/parts")]
    [InlineData("'type': 'integer'", "'type': 'string'", "/components/schemas/Part/properties/count")]
    [InlineData("'massG': {", "'weightG': {", Answer + "/massG")]
    [InlineData("'massG': { 'type': 'number'", "'massG': { 'type': ['null', 'number']", Answer + "/massG")]
    [InlineData("['massG', 'faults']", "['faults']", Answer + "/massG")]
    [InlineData("'type': 'number', 'x-unit': 'g'", "'type': 'string', 'x-unit': 'g'", Answer + "/massG")]
    [InlineData("'type': 'number', 'x-unit': 'g'", "'type': 'number', 'x-unit': 'kg'", Answer + "/massG")]
    [InlineData("'items': { 'type': 'string' }", "'items': { 'type': 'boolean' }", Answer + "/faults/additionalProperties/items")]
    public void A_breaking_change_is_found_at_its_place(string old, string changed, string place)
    {
        var change = Assert.Single(Changes(old, changed));

        Assert.Equal(("makeThing", place), (change.Operation, change.Place));
    }

    [Theory]
    [InlineData("'makeThing',", "'makeThing', 'summary': 'Makes a thing',")]
    [InlineData("'parameters': [", "'parameters': [{ 'name': 'paper', 'in': 'query' },")]
    [InlineData("['metric', 'inch']", "['metric', 'inch', 'chi']")]
    [InlineData("'422': {", "'429': {}, '422': {")]
    [InlineData("'ash', 'cherry', null", "'ash', 'cherry', 'oak', null")]
    [InlineData("'name': { 'type': 'string'", "'age': { 'type': 'number' }, 'name': { 'type': 'string'")]
    [InlineData("'maxLength': 80", "'maxLength': 81")]
    [InlineData("'minimum': 10, ", "")]
    [InlineData("'maximum': 20", "'maximum': 21")]
    [InlineData("'required': ['name']", "'required': []")]
    [InlineData("'name': { 'type': 'string'", "'name': { 'type': ['null', 'string']")]
    [InlineData("'note': {", "'advice': { 'type': 'string' }, 'note': {")]
    [InlineData("'note': { 'type': ['null', 'string'] }", "'note': { 'type': 'string' }")]
    [InlineData("'massG': { 'type': 'number'", "'massG': { 'type': 'integer'")]
    [InlineData("'ETag': {", "'Age': { 'required': true }, 'ETag': {")]
    [InlineData("'text/csv'", "'text/plain': { 'schema': { 'type': 'string' } }, 'text/csv'")]
    [InlineData("'text/csv': { 'schema': { 'type': 'string'", "'text/csv': { 'schema': { 'type': 'string', 'format': 'binary'")]
    [InlineData("'type': 'integer'", "'type': 'integer', 'x-unit': 'mm'")]
    public void What_is_added_or_loosened_breaks_nothing(string old, string changed) => Assert.Empty(Changes(old, changed));

    [Fact]
    public void A_part_under_another_name_is_the_same_part() => Assert.Empty(Changes("Part'", "Piece'"));

    [Theory]
    [InlineData("Gone: `/components/schemas/Thing/properties/massG`.", true)]
    [InlineData("`makeThing` no longer answers `massG`.", true)]
    [InlineData("`makeThing` answers less.", false)]
    [InlineData("`massG` is gone.", false)]
    [InlineData("Gone: `/components/schemas/Thing/properties/massGrams`.", false)]
    [InlineData("`remakeThing` no longer answers `massG`.", false)]
    public void Only_a_line_of_the_newest_section_announces(string line, bool isAnnounced)
    {
        var changes = Changes("'massG': {", "'weightG': {");

        Assert.Equal(isAnnounced ? 0 : 1, ContractDiff.Unannounced(changes, $"# What moved\n\n## 0.2.0\n\n{line}\n\n## 0.1.0\n\nMore.\n").Count);
        Assert.Single(ContractDiff.Unannounced(changes, $"# What moved\n\n## 0.2.0\n\nMore.\n\n## 0.1.0\n\n{line}\n"));
    }

    private static IReadOnlyList<BreakingChange> Changes(string old, string changed)
    {
        Assert.Contains(old, Before, StringComparison.Ordinal);
        return ContractDiff.Breaking(Read(Before), Read(Before.Replace(old, changed, StringComparison.Ordinal)));
    }

    private static ApiDescription Read(string text) => new(text.Replace('\'', '"'));

    private static int Major(ApiDescription description) => Version.Parse(description.Root["info"]!["version"]!.GetValue<string>()).Major;

    // Words and examples promise nothing; without them the file is half as long.
    private static string Promised(string committed)
    {
        var root = JsonNode.Parse(committed)!;
        Drop(root, isNamed: false);
        return root.ToJsonString(Written) + "\n";
    }

    // Under properties, and in other maps of names, a member may be called as a keyword is.
    private static void Drop(JsonNode? node, bool isNamed)
    {
        foreach (var item in node as JsonArray ?? []) Drop(item, isNamed: false);
        foreach (var (name, value) in (node as JsonObject ?? []).ToList())
        {
            if (!isNamed && name is "description" or "summary" or "example" or "examples" or "tags" or "servers" or "security") node!.AsObject().Remove(name);
            else Drop(value, !isNamed && name is "properties" or "schemas" or "responses" or "headers" or "content" or "paths");
        }
    }
}
