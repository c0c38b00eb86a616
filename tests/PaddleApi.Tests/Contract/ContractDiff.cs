using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace PaddleApi.Tests.Contract;

/// <summary>A change that a caller who was right before may notice.</summary>
/// <param name="Operation">Id of the operation.</param>
/// <param name="Place">JSON Pointer of the place: in the released description, or in the new one for what was added.</param>
/// <param name="What">What changed.</param>
public sealed record BreakingChange(string Operation, string Place, string What)
{
    public override string ToString() => $"{Place} ({Operation}): {What}";

    /// <summary>Whether a line names the pointer, or the operation and the member.</summary>
    public bool IsAnnouncedBy(string line) => Names(line, Place) || (Names(line, Operation) && Names(line, Place.Split('/')[^1]));

    private static bool Names(string line, string name) => Regex.IsMatch(line, $@"(?<![\w/]){Regex.Escape(name)}(?![\w/])", RegexOptions.CultureInvariant);
}

/// <summary>
/// What breaks between two descriptions, read as plain JSON. No library for .NET compares descriptions of OpenAPI 3.1 in a test: those at hand
/// read 3.0, or are programs of their own.
/// </summary>
public static class ContractDiff
{
    private const string Schemas = "/components/schemas";

    /// <summary>The breaking changes, each once, in order of their places.</summary>
    public static IReadOnlyList<BreakingChange> Breaking(ApiDescription released, ApiDescription built)
    {
        var found = new List<BreakingChange>();
        foreach (var before in released.Operations)
        {
            var place = $"/paths/{before.Template.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}/{before.Method.ToLowerInvariant()}";
            if (built.Operations.FirstOrDefault(one => one.Method == before.Method && one.Template == before.Template) is { } after)
                new Comparison(released.Root, built.Root, before.Id, found).Operations(place, before, after);
            else
                found.Add(new(before.Id, place, "the operation is gone"));
        }

        return [.. found.DistinctBy(change => (change.Place, change.What)).OrderBy(change => change.Place, StringComparer.Ordinal)];
    }

    /// <summary>The changes that no line of the newest section of a changelog announces.</summary>
    public static IReadOnlyList<BreakingChange> Unannounced(IReadOnlyList<BreakingChange> changes, string changelog)
    {
        var newest = ("\n" + changelog).Split("\n## ").ElementAtOrDefault(1)?.Split('\n') ?? [];
        return [.. changes.Where(change => !newest.Any(change.IsAnnouncedBy))];
    }

    private sealed class Comparison(JsonObject released, JsonObject built, string id, List<BreakingChange> found)
    {
        private readonly HashSet<(string, string, bool)> seen = [];

        public void Operations(string place, ApiOperation before, ApiOperation after)
        {
            if (before.Id != after.Id) Break(place + "/operationId", $"it is called {after.Id}");
            Parameters(place + "/parameters", before.Node["parameters"]?.AsArray() ?? [], after.Node["parameters"]?.AsArray() ?? []);
            var (body, newBody) = (before.Node["requestBody"], after.Node["requestBody"]);
            if (body is null && IsTrue(newBody, "required")) Break(place + "/requestBody", "a body is required");
            else if (body is not null && newBody is null) Break(place + "/requestBody", "no body is taken");
            else if (body is not null && !IsTrue(body, "required") && IsTrue(newBody, "required")) Break(place + "/requestBody", "the body is required");
            Content(place + "/requestBody", body, newBody, isRequest: true);
            foreach (var (status, response) in before.Responses)
            {
                var at = $"{place}/responses/{status}";
                if (after.Responses[status] is not { } now)
                {
                    Break(at, "the response is gone");
                    continue;
                }

                foreach (var (header, described) in response!["headers"]?.AsObject() ?? [])
                {
                    if (now["headers"]?[header] is not { } kept) Break($"{at}/headers/{header}", "the header is gone");
                    else if (IsTrue(described, "required") && !IsTrue(kept, "required")) Break($"{at}/headers/{header}", "the header may be absent");
                }

                Content(at, response, now, isRequest: false);
            }
        }

        private void Parameters(string place, JsonArray before, JsonArray after)
        {
            static string Key(JsonNode? parameter) => $"{parameter!["in"]}/{parameter["name"]}";
            foreach (var parameter in before)
            {
                var at = $"{place}/{parameter!["name"]}";
                var now = after.FirstOrDefault(one => Key(one) == Key(parameter));
                if (now is null)
                {
                    Break(at, "the parameter is gone");
                    continue;
                }

                if (!IsTrue(parameter, "required") && IsTrue(now, "required")) Break(at, "the parameter is required");
                Schema(at + "/schema", parameter["schema"], now["schema"], isRequest: true);
            }

            foreach (var parameter in after.Where(one => IsTrue(one, "required") && before.All(old => Key(old) != Key(one))))
                Break($"{place}/{parameter!["name"]}", "a parameter is required that was not there");
        }

        private void Content(string place, JsonNode? before, JsonNode? after, bool isRequest)
        {
            foreach (var (mediaType, content) in before?["content"]?.AsObject() ?? [])
            {
                var at = $"{place}/content/{mediaType.Replace("/", "~1", StringComparison.Ordinal)}";
                if (after?["content"]?[mediaType] is not { } now) Break(at, "the media type is gone");
                else Schema(at + "/schema", content!["schema"], now["schema"], isRequest);
            }
        }

        private void Schema(string place, JsonNode? before, JsonNode? after, bool isRequest)
        {
            if (before is null || after is null)
            {
                if (before is not null || (after is not null && isRequest)) Break(place, after is null ? "nothing is said of it any more" : "it was free before");
                return;
            }

            var (old, oldNull, oldName) = Whole(released, before);
            var (now, newNull, newName) = Whole(built, after);
            if (oldName is not null && newName is not null && !seen.Add((oldName, newName, isRequest)))
            {
                if (isRequest ? oldNull && !newNull : newNull && !oldNull) Break(place, isRequest ? "null is refused" : "it may be null");
                return;
            }

            if (isRequest ? oldNull && !newNull : newNull && !oldNull) Break(place, isRequest ? "null is refused" : "it may be null");
            var at = oldName is null ? place : $"{Schemas}/{oldName}";
            Types(at, old, now, isRequest);
            foreach (var same in (string[])["format", "x-unit", "allOf", "anyOf", "oneOf", "const"])
            {
                // The unit of a number and that a file is bytes, where it was not stated before, is what held all along: nothing moves on the wire.
                if (old[same] is null && (same == "x-unit" || now[same]?.ToString() == "binary")) continue;
                if (old[same]?.ToJsonString() is var one && now[same]?.ToJsonString() is var other && one != other) Break(at, $"{same} was {one ?? "not stated"} and is {other ?? "not stated"}");
            }

            if (isRequest) Narrowing(at, old, now);
            Members(at, old, now, isRequest, newName is null ? place : $"{Schemas}/{newName}");
            if (old["items"] is not null || now["items"] is not null) Schema(at + "/items", old["items"], now["items"], isRequest);
            if (old["additionalProperties"] is JsonObject values) Schema(at + "/additionalProperties", values, now["additionalProperties"] as JsonObject, isRequest);
            else if (isRequest && !IsFalse(old) && IsFalse(now)) Break(at, "other members are refused");
        }

        private void Types(string at, JsonObject old, JsonObject now, bool isRequest)
        {
            var (before, after) = (TypesOf(old), TypesOf(now));
            var (narrow, wide) = isRequest ? (before, after) : (after, before);

            // Nothing stated is anything; a whole number is a number.
            var fits = wide.Count == 0 || (narrow.Count > 0 && narrow.All(type => wide.Contains(type) || (type == "integer" && wide.Contains("number"))));
            if (!fits) Break(at, $"the type was {string.Join(", ", before)} and is {string.Join(", ", after)}");
        }

        private void Narrowing(string at, JsonObject old, JsonObject now)
        {
            if (now["enum"] is JsonArray names)
            {
                static string? Text(JsonNode? name) => name?.ToJsonString();
                var gone = (old["enum"]?.AsArray() ?? []).Where(name => name is not null && !names.Select(Text).Contains(Text(name))).ToList();
                if (old["enum"] is null) Break(at, "only some names are taken");
                foreach (var name in gone) Break(at, $"the name {name} is no longer taken");
            }

            foreach (var (bound, isLower) in ((string, bool)[])
                [("minimum", true), ("minLength", true), ("minItems", true), ("maximum", false), ("maxLength", false), ("maxItems", false)])
            {
                var (was, becomes) = (old[bound]?.GetValue<double>(), now[bound]?.GetValue<double>());
                if (becomes is { } limit && (was is null || (isLower ? limit > was : limit < was))) Break(at, $"{bound} was {was?.ToString() ?? "not stated"} and is {limit}");
            }

            if (now["pattern"]?.GetValue<string>() is { } pattern && pattern != old["pattern"]?.GetValue<string>()) Break(at, $"the pattern is {pattern}");
        }

        private void Members(string at, JsonObject old, JsonObject now, bool isRequest, string newAt)
        {
            var (before, after) = (old["properties"]?.AsObject() ?? [], now["properties"]?.AsObject() ?? []);
            var (had, has) = (NamesOf(old["required"]), NamesOf(now["required"]));
            foreach (var (name, member) in before)
            {
                var place = $"{at}/properties/{name}";
                if (after[name] is not { } kept)
                {
                    Break(place, "the member is gone");
                    continue;
                }

                if (isRequest && has.Contains(name) && !had.Contains(name)) Break(place, "the member is required");
                if (!isRequest && had.Contains(name) && !has.Contains(name)) Break(place, "the member may be absent");
                Schema(place, member, kept, isRequest);
            }

            if (!isRequest) return;
            foreach (var name in has.Where(name => !before.ContainsKey(name))) Break($"{newAt}/properties/{name}", "a member is required that was not there");
        }

        private void Break(string place, string what) => found.Add(new(id, place, what));

        // The schema itself, whether null passes it too, and its name if it has one.
        private static (JsonObject Schema, bool IsNullable, string? Name) Whole(JsonObject root, JsonNode schema)
        {
            var isNullable = schema["type"] is JsonArray types && types.Any(type => type!.GetValue<string>() == "null");
            if (schema["oneOf"] is JsonArray choices && choices.Count == 2 && choices.FirstOrDefault(one => one!["type"]?.ToString() == "null") is { } none)
                (schema, isNullable) = (choices.First(one => one != none)!, true);
            if (schema["$ref"]?.GetValue<string>().Split('/')[^1] is not { } name) return (schema.AsObject(), isNullable, null);
            var (whole, isNullableToo, _) = Whole(root, root["components"]!["schemas"]![name]!);
            return (whole, isNullable || isNullableToo, name);
        }

        private static HashSet<string> TypesOf(JsonObject schema) =>
            schema["type"] is JsonArray several ? [.. several.Select(type => type!.GetValue<string>()).Where(type => type != "null")]
            : schema["type"] is { } one ? [one.GetValue<string>()] : [];

        private static HashSet<string> NamesOf(JsonNode? list) => [.. (list?.AsArray() ?? []).Select(name => name!.GetValue<string>())];

        private static bool IsTrue(JsonNode? node, string member) => node?[member]?.GetValue<bool>() == true;

        private static bool IsFalse(JsonObject schema) => schema["additionalProperties"] is JsonValue value && !value.GetValue<bool>();
    }
}
