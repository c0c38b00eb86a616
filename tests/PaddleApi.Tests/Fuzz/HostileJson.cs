using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace PaddleApi.Tests.Fuzz;

/// <summary>Bodies that are nearly right, and bodies that are not: an example with a few members spoilt by what their schema does not say.</summary>
/// <param name="description">The description of the service.</param>
internal sealed class HostileJson(JsonObject description)
{
    private const string Mark = "@@";

    // What stands in place of a value, as it stands in the text.
    private static readonly string[] Anything =
    [
        "null", "true", "false", "0", "-0", "-1", "1", "0.5", "1e-400", "1e308", "-1e308", "1e309", "1e999999999", "5e-324", "2147483648", "-9223372036854775809",
        "01", "+1", "1.", ".5", "0x10", "NaN", "Infinity", "1,5", "\"\"", "\" \"", "\"1\"", "\"NaN\"", "\"white-ash\"", "\"ottertail\"", "\"\\ud800\"", "\"\\udc00x\"",
        "\"\\u0000\"", "\"\\u202e\"", "\"\\ud83d\\udef6\\u200d\\ud83d\\udef6\"", "\"<script>\"", "\"';--\"", "\"../../x\"", "\"%00\"", "\"\\x\"", "\"\n\"", "'a'", "[]", "{}",
        "[[]]", "[null]", "[{}]", "[0]", "[1e308,1e308]", "{\"\":0}", "{\"x\":1}", "{\"$ref\":\"#\"}", "{\"__proto__\":{}}", "/**/1", "1}", "]", "", ",", "nul", "undefined",
    ];

    private static readonly string[] Names = ["", "x", "label ", "Label", "handSpacingMM", "$type", "__proto__", "\\u0000", "\\ud800", "\\u0077ood", "constructor"];

    private readonly JsonObject schemas = description["components"]!["schemas"]!.AsObject();

    /// <summary>A body for an operation.</summary>
    /// <param name="random">The chance that decides.</param>
    /// <param name="operation">The operation's node of the description.</param>
    public byte[] Body(Random random, JsonObject operation)
    {
        var content = operation["requestBody"]!["content"]!["application/json"]!;
        var examples = content["examples"]!.AsObject();
        var example = examples.ElementAt(random.Next(examples.Count)).Value!["value"]!.DeepClone();
        return random.Next(20) switch
        {
            < 11 => Encoding.UTF8.GetBytes(Spoilt(random, example, content["schema"]!, random.Next(4) == 0 ? 3 : 1)),
            < 13 => Encoding.UTF8.GetBytes(Twice(random, example.ToJsonString())),
            < 16 => Damaged(random, Encoding.UTF8.GetBytes(example.ToJsonString())),
            16 => Encoding.UTF8.GetBytes(Deep(random)),
            17 => Encoding.UTF8.GetBytes(Wide(random)),
            18 => Encoding.UTF8.GetBytes(Anything[random.Next(Anything.Length)]),
            _ => [.. Bytes(random, random.Next(200))],
        };
    }

    /// <summary>Text with bytes changed, lost, added or moved.</summary>
    /// <param name="random">The chance that decides.</param>
    /// <param name="text">The text.</param>
    public static byte[] Damaged(Random random, byte[] text)
    {
        var bytes = text.ToList();
        for (var times = 1 + random.Next(4); times > 0 && bytes.Count > 0; times--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(6))
            {
                case 0: bytes[at] = (byte)random.Next(256); break;
                case 1: bytes[at] ^= (byte)(1 << random.Next(8)); break;
                case 2: bytes.RemoveAt(at); break;
                case 3: bytes.Insert(at, (byte)random.Next(256)); break;
                case 4: bytes.RemoveRange(at, bytes.Count - at); break;
                default: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(bytes.Count - at, 1 + random.Next(40)))); break;
            }
        }

        return [.. bytes];
    }

    private string Spoilt(Random random, JsonNode example, JsonNode schema, int times)
    {
        var fragments = new List<string>();
        for (; times > 0; times--)
        {
            var (node, its) = Descend(random, example, Resolve(schema));
            if (node is JsonArray list)
            {
                list.Insert(random.Next(list.Count + 1), Hold(fragments, Fragment(random, null)));
                continue;
            }

            if (node is not JsonObject members) continue;
            var known = its?["properties"]?.AsObject();
            var isKnown = known is { Count: > 0 } && random.Next(8) > 0;
            var (name, rule) = isKnown ? Pick(random, known!) : (Names[random.Next(Names.Length)], null);
            if (name.Contains('\\', StringComparison.Ordinal)) members[$"{Mark}n{name[1..]}"] = 1;
            else members[name] = Hold(fragments, Fragment(random, rule));
        }

        var text = example.ToJsonString().Replace($"{Mark}n", "\\", StringComparison.Ordinal);
        for (var i = fragments.Count - 1; i >= 0; i--) text = text.Replace($"\"{Mark}{i}\"", fragments[i], StringComparison.Ordinal);
        return text;
    }

    private static (string Name, JsonNode? Rule) Pick(Random random, JsonObject known)
    {
        var (name, rule) = known.ElementAt(random.Next(known.Count));
        return (name, rule);
    }

    private static JsonValue Hold(List<string> fragments, string fragment)
    {
        fragments.Add(fragment);
        return JsonValue.Create(string.Create(CultureInfo.InvariantCulture, $"{Mark}{fragments.Count - 1}"))!;
    }

    // Down into the example and its schema together, for as long as chance likes.
    private (JsonNode Node, JsonNode? Schema) Descend(Random random, JsonNode node, JsonNode? schema)
    {
        while (random.Next(3) > 0)
        {
            if (node is JsonObject members)
            {
                var below = members.Where(member => member.Value is JsonObject or JsonArray).ToList();
                if (below.Count == 0) break;
                var (name, value) = below[random.Next(below.Count)];
                (node, schema) = (value!, Resolve(schema?["properties"]?[name]));
            }
            else if (node is JsonArray { Count: > 0 } list && list[random.Next(list.Count)] is JsonObject or JsonArray)
            {
                var inner = list.FirstOrDefault(one => one is JsonObject or JsonArray);
                if (inner is null) break;
                (node, schema) = (inner, Resolve(schema?["items"]));
            }
            else
            {
                break;
            }
        }

        return (node, schema);
    }

    private JsonNode? Resolve(JsonNode? schema)
    {
        if (schema?["oneOf"] is JsonArray choices) schema = choices.FirstOrDefault(choice => choice!["$ref"] is not null) ?? schema;
        return schema?["$ref"] is { } reference ? schemas[reference.GetValue<string>().Split('/')[^1]] : schema;
    }

    // About the limits that the schema states, or anything at all.
    private string Fragment(Random random, JsonNode? rule)
    {
        rule = Resolve(rule) ?? rule;
        if (random.Next(5) == 0) return Anything[random.Next(Anything.Length)];
        double? low = rule?["minimum"]?.GetValue<double>(), high = rule?["maximum"]?.GetValue<double>();
        if (low is not null || high is not null)
        {
            var (from, to) = (low ?? -1e6, high ?? 1e6);
            var value = random.Next(7) switch
            {
                0 => from,
                1 => to,
                2 => Math.BitDecrement(from),
                3 => Math.BitIncrement(to),
                4 => from - (to - from),
                5 => -to,
                _ => from + random.NextDouble() * (to - from),
            };
            return value.ToString("R", CultureInfo.InvariantCulture);
        }

        if (rule?["enum"] is JsonArray names)
        {
            var name = names[random.Next(names.Count)]?.ToString() ?? "";
            return random.Next(3) switch { 0 => $"\"{name}\"", 1 => $"\"{name.ToUpperInvariant()}\"", _ => $"\"{name} \"" };
        }

        return random.Next(4) switch
        {
            0 => $"\"{new string('é', random.Next(300))}\"",
            1 => $"[{string.Join(',', Enumerable.Repeat("{}", random.Next(300)))}]",
            2 => (random.NextDouble() * Math.Pow(10, random.Next(-20, 20))).ToString("R", CultureInfo.InvariantCulture),
            _ => Anything[random.Next(Anything.Length)],
        };
    }

    private static string Twice(Random random, string text)
    {
        var ends = Enumerable.Range(0, text.Length).Where(i => text[i] == ',').ToList();
        if (ends.Count == 0) return text + text;
        var at = ends[random.Next(ends.Count)];
        var from = text.LastIndexOfAny(['{', '[', ','], at - 1);
        return text.Insert(at, $",{text[(from + 1)..at]}");
    }

    private static string Deep(Random random)
    {
        var depth = 1 + random.Next(3000);
        var (open, close) = random.Next(3) switch { 0 => ("[", "]"), 1 => ("{\"blade\":", "}"), _ => ("{\"a\":[", "]}") };
        var closed = string.Concat(Enumerable.Repeat(close, random.Next(2) == 0 ? depth : random.Next(depth)));
        return string.Concat(Enumerable.Repeat(open, depth)) + "1" + closed;
    }

    private static string Wide(Random random)
    {
        var count = random.Next(2000);
        return random.Next(3) switch
        {
            0 => $"{{{string.Join(',', Enumerable.Range(0, count).Select(i => $"\"m{i}\":{i}"))}}}",
            1 => $"[{string.Join(',', Enumerable.Range(0, count))}]",
            _ => $"{{\"{new string('n', count)}\":\"{new string('v', count)}\"}}",
        };
    }

    private static IEnumerable<byte> Bytes(Random random, int count) => Enumerable.Range(0, count).Select(_ => (byte)random.Next(256));
}
