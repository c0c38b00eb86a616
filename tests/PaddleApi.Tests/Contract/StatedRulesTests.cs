using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FluentValidation;
using Microsoft.Extensions.DependencyInjection;
using Paddle.Design.Copying;
using Paddle.Design.Fitting;
using Paddle.Design.Layout;
using Paddle.Design.Request;
using PaddleApi.Contracts.Boards;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Checks;
using PaddleApi.Contracts.Comparisons;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Json;
using PaddleApi.Validation;

namespace PaddleApi.Tests.Contract;

/// <summary>
/// Holds the description of every body against the rules that it is refused by, member by member: what the one states the other enforces,
/// and the other way round.
/// </summary>
[Collection(HttpTests.Name)]
public sealed class StatedRulesTests(ApiFixture api)
{
    private const string NoSuchName = "no-such-name";

    /// <summary>Members whose range depends on another member: the description states the widest.</summary>
    private static readonly HashSet<string> Narrowed =
        ["/blade/widestAt", "/blade/fullness", "/grip/widthMm", "/grip/lengthMm", "/shaft/thicknessMm", "/shaft/upperThicknessMm", "/grip/thicknessMm", "/groups/0/meanMm", "/groups/1/meanMm", "/groups/2/meanMm"];

    /// <summary>Refusals of several members together; no one of them is required by itself.</summary>
    private static readonly HashSet<string> OfSeveral =
        [RefusalCodes.NoWayToHandSpacing, RefusalCodes.CustomersOrGroups, RefusalCodes.OneFigureEach, RefusalCodes.NoStrips, RefusalCodes.TooFewReadings, "sag-or-tap", "two-wishes"];

    /// <summary>Where a board is given its wood may be left out of the design, and no other is taken, though a design by itself states it.</summary>
    private static readonly HashSet<string> TakenFromBoard = ["/design/wood", "/design/wood/species"];

    private static readonly Dictionary<string, Func<IServiceProvider, string, IReadOnlyList<(string Place, Fault Fault)>>> Rules = new()
    {
        ["DesignRequest"] = (services, json) => Faults<DesignRequest>(services, json),
        ["ComparisonRequest"] = (services, json) => Faults<ComparisonRequest>(services, json, request => GivenFaults(request.Designs, "/designs")),
        ["DesignCheckRequest"] = (services, json) => Faults<DesignCheckRequest>(services, json, request => GivenFaults(request.Cases, "/cases")),
        ["BoardTestRequest"] = (services, json) => Faults<BoardTestRequest>(services, json),
        ["BoardLayoutRequest"] = (services, json) => Faults<BoardLayoutRequest>(services, json, request => GivenFaults(request.Paddles, "/paddles")),
        ["TradeOffRequest"] = (services, json) => Faults<Contracts.TradeOffs.TradeOffRequest>(services, json, DesignFaults),
        ["UncertaintyRequest"] = (services, json) => Faults<Contracts.Uncertainties.UncertaintyRequest>(services, json, DesignFaults),
        ["CopyRequest"] = (services, json) => Faults<CopyRequest>(services, json),
        ["BoardFitRequest"] = (services, json) => Faults<BoardFitRequest>(services, json),
        ["BalanceCorrectionRequest"] = (services, json) => Faults<BalanceCorrectionRequest>(services, json),
        ["FittingRequest"] = (services, json) => Faults<FittingRequest>(services, json),
        ["SizeRunRequest"] = (services, json) => Faults<SizeRunRequest>(services, json, EngineFaults),
    };

    /// <summary>The examples, and a blade by offsets, which none of them shows.</summary>
    public static TheoryData<string, string> Bodies
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var operation in Committed.Description.Operations.Where(operation => operation.HasBody))
                foreach (var body in operation.RequestExamples.Values) data.Add(operation.Id, body);
            data.Add("createDesign", """
                { "handSpacingMm": 880, "wood": { "species": "white-ash" }, "blade": { "offsets": [
                  { "xMm": 0, "halfBreadthMm": 15 }, { "xMm": 200, "halfBreadthMm": 60 }, { "xMm": 420, "halfBreadthMm": 72 }, { "xMm": 640, "halfBreadthMm": 0 } ] } }
                """);
            foreach (var customer in (string[])["\"overallLengthMm\": 1500", "\"statureMm\": 1750", "\"handSpacingMm\": 880"])
                data.Add("createSizeRun", $$"""{ "sizes": 1, "customers": [{ {{customer}} }] }""");
            return data;
        }
    }

    [Theory, MemberData(nameof(Bodies))]
    public void The_description_states_what_the_rules_enforce(string id, string body)
    {
        var operation = ApiFactory.Description.Operations.Single(one => one.Id == id);
        var schema = operation.Node["requestBody"]!["content"]!["application/json"]!["schema"]!;
        var walk = new Comparison(Rules[Name(schema)], api.Factory.Services, JsonNode.Parse(body)!.AsObject());

        walk.Members("", Resolve(schema));

        Assert.True(walk.Compared > 3, "Nothing was compared.");
        Assert.Empty(walk.Differences);
    }

    [Theory]
    [InlineData("")]
    [InlineData("p2qlMqoZgKAAB")]
    [InlineData("p1qlMqoZgKAAB=")]
    [InlineData("p1qlMqoZ gKAAB")]
    [InlineData("p1")]
    public void A_code_against_the_stated_pattern_is_no_code(string code)
    {
        var stated = Resolve(ApiFactory.Description.Operations.Single(operation => operation.Id == "correctBalance")
            .Node["requestBody"]!["content"]!["application/json"]!["schema"]!)["properties"]!["designCode"]!;

        Assert.DoesNotMatch(stated["pattern"]!.GetValue<string>(), code);
        Assert.Matches(stated["pattern"]!.GetValue<string>(), Paddle());
        Assert.NotNull(DesignCodes.Decode(code).Fault);
        Assert.Equal(DesignCodeFault.TooLong, DesignCodes.Decode("p1" + new string('a', stated["maxLength"]!.GetValue<int>() - 1)).Fault);
        Assert.NotEqual(DesignCodeFault.TooLong, DesignCodes.Decode("p1" + new string('a', stated["maxLength"]!.GetValue<int>() - 2)).Fault);

        static string Paddle() => ApiFactory.Description.Operations.Single(operation => operation.Id == "getDesign").Node["parameters"]![0]!["example"]!.GetValue<string>();
    }

    // The engine itself looks through the customers of a size run, after the rules.
    private static IEnumerable<(string Place, Fault Fault)> EngineFaults(SizeRunRequest request) =>
        SizeRunChecks.Check(request).Select(refusal => (refusal.JsonPointer, new Fault(refusal.Message, refusal.Value, refusal.Low, refusal.High, Code: refusal.Code)));

    // Designs in a larger body are looked through where they are made.
    private static IEnumerable<(string Place, Fault Fault)> GivenFaults(IReadOnlyList<IGivesDesign>? given, string list) =>
        given is not null && given.All(one => one is { DesignCode: not null } or { Design: not null }) ? GivenDesigns.Make(given, list, default).Faults : [];

    private static IEnumerable<(string Place, Fault Fault)> DesignFaults(Contracts.TradeOffs.TradeOffRequest request) =>
        request is { Base: not null, Vary: [_, ..] vary } && vary.All(input => input is { Pointer: not null, Values: not null }) ? Endpoints.TradeOffs.TradeOffStudy.Of(request, default).Faults : [];

    private static IEnumerable<(string Place, Fault Fault)> DesignFaults(Contracts.Uncertainties.UncertaintyRequest request) =>
        request is { DesignCode: not null } or { Design: not null } ? GivenDesigns.Make(request, "", default).Faults : [];

    private static IReadOnlyList<(string Place, Fault Fault)> Faults<T>(
        IServiceProvider services, string json, Func<T, IEnumerable<(string Place, Fault Fault)>>? more = null)
        where T : class
    {
        try
        {
            var request = JsonSerializer.Deserialize<T>(json, StrictJson.Options)!;
            var own = services.GetRequiredService<IValidator<T>>().Validate(request).Errors.Select(failure =>
                (JsonPointers.FromPropertyPath(failure.PropertyName), failure.CustomState as Fault ?? new Fault(failure.ErrorMessage)));
            return [.. own, .. more?.Invoke(request) ?? []];
        }
        catch (JsonException fault)
        {
            // The reader itself refuses names and gaps that the types have no room for.
            var place = Regex.Replace(fault.Path?.TrimStart('$') ?? "", @"[.\[]", "/").Replace("]", "", StringComparison.Ordinal);
            var missing = Regex.Match(fault.Message, "missing required properties including: '([^']+)'");
            return [(missing.Success ? $"{place}/{missing.Groups[1].Value}" : place, new Fault(fault.Message, Code: RefusalCodes.UnknownName))];
        }
    }

    private static string Name(JsonNode schema) => schema["$ref"]!.GetValue<string>().Split('/')[^1];

    // The schema itself, without "or null" and references.
    private static JsonObject Resolve(JsonNode schema)
    {
        var own = (schema["oneOf"]?.AsArray().Single(choice => choice!["$ref"] is not null) ?? schema).AsObject();
        return own["$ref"] is null ? own : ApiFactory.Description.Root["components"]!["schemas"]![Name(own)]!.AsObject();
    }

    private sealed class Comparison(Func<IServiceProvider, string, IReadOnlyList<(string Place, Fault Fault)>> rules, IServiceProvider services, JsonObject body)
    {
        public int Compared { get; private set; }

        public List<string> Differences { get; } = [];

        public void Members(string at, JsonObject schema)
        {
            // Items of a list may be plain values.
            foreach (var (name, member) in schema["properties"]?.AsObject() ?? [])
            {
                var (place, own) = ($"{at}/{name}", Resolve(member!));
                if (own["type"] is null) continue; // JSON of any form
                var type = own["type"] is JsonArray several ? several.Select(one => one!.GetValue<string>()).Single(one => one != "null") : own["type"]!.GetValue<string>();
                Compared++;
                Required(place, schema["required"]?.AsArray().Any(one => one!.GetValue<string>() == name) == true);
                if (type is "number" or "integer") Range(place, own, type == "integer" ? int.MaxValue : 1e12);
                else if (type == "string") Text(place, own);
                else if (type == "array" && Find(place) is JsonArray list) Members($"{place}/{list.Count - 1}", Resolve(own["items"]!));
                else if (type == "object" && Find(place) is not null) Members(place, own);
            }
        }

        private void Required(string place, bool isStated)
        {
            var refused = Refused(place, null, below: true).Where(fault => isStated || !OfSeveral.Contains(fault.Code)).ToList();
            if (isStated != refused.Count > 0 && !TakenFromBoard.Contains(place))
                Differences.Add($"{place}: stated {(isStated ? "" : "not ")}to be required, and without it: {string.Join("; ", refused.Select(fault => fault.Reason))}");
        }

        private void Range(string place, JsonObject schema, double far)
        {
            if (Refused(place, 1).Any(IsGivenOtherwise) || Refused(place[..place.LastIndexOf('/')], place, 1).Any(fault => fault.Code == RefusalCodes.OneFigureEach)) return;
            Bound(place, schema["minimum"]?.GetValue<double>(), [.. Refused(place, -far).Select(fault => fault.Min).OfType<double>()], (a, b) => a <= b);
            Bound(place, schema["maximum"]?.GetValue<double>(), [.. Refused(place, far).Select(fault => fault.Max).OfType<double>()], (a, b) => a >= b);
        }

        private void Bound(string place, double? stated, IReadOnlyList<double> enforced, Func<double, double, bool> isAsWide)
        {
            var agrees = stated is { } bound
                ? enforced.Count > 0 && (Narrowed.Contains(place) ? enforced.All(one => isAsWide(bound, one)) : enforced.Contains(bound))
                : enforced.Count == 0;
            if (!agrees) Differences.Add($"{place}: stated {stated}, enforced {string.Join(", ", enforced)}");
        }

        private void Text(string place, JsonObject schema)
        {
            if (TakenFromBoard.Contains(place)) return;
            var names = schema["enum"]?.AsArray().Select(name => name?.GetValue<string>()).OfType<string>().ToList();
            var refused = Refused(place, NoSuchName).Where(fault => names is not null || fault.Allowed is not null || fault.Code == RefusalCodes.UnknownName).ToList();
            if (names is null != (refused.Count == 0)) Differences.Add($"{place}: names {(names is null ? "are enforced and not stated" : "are stated and not enforced")}");
            foreach (var fault in refused.Where(fault => fault.Allowed is not null))
            {
                // Of many names only the nearest are told.
                if (!fault.Allowed!.All(names!.Contains)) Differences.Add($"{place}: {string.Join(", ", fault.Allowed!)} are allowed and not stated");
            }

            foreach (var name in (names ?? []).Where(name => Refused(place, name).Any(fault => !IsGivenOtherwise(fault)))) Differences.Add($"{place}: {name} is stated and refused");
            if (schema["maxLength"]?.GetValue<int>() is { } longest && schema["pattern"] is null
                && (Refused(place, new string('a', longest)).Count > 0 || Refused(place, new string('a', longest + 1)).Count == 0))
            {
                Differences.Add($"{place}: stated to have up to {longest} letters");
            }
        }

        // Where an example says a thing one way, the other way is refused whatever it says.
        private static bool IsGivenOtherwise(Fault fault) => fault.Code == RefusalCodes.GivenTwice;

        private List<Fault> Refused(string place, JsonNode? value, bool below = false) => Refused(place, place, value, below);

        // The faults at one place when another has been given a value; null takes it away.
        private List<Fault> Refused(string at, string place, JsonNode? value, bool below = false)
        {
            var changed = body.DeepClone().AsObject();
            var parts = place.Split('/')[1..];
            var holder = parts[..^1].Aggregate((JsonNode)changed, (node, part) => node is JsonArray list ? list[int.Parse(part, null)]! : node[part]!);
            if (value is null) holder.AsObject().Remove(parts[^1]);
            else holder[parts[^1]] = value;
            return [.. rules(services, changed.ToJsonString())
                .Where(fault => fault.Place == at || (below && fault.Place.StartsWith(at + "/", StringComparison.Ordinal)))
                .Select(fault => fault.Fault)];
        }

        private JsonNode? Find(string place) =>
            place.Split('/')[1..].Aggregate((JsonNode?)body, (at, part) => at is JsonArray list ? list[int.Parse(part, null)] : at?[part]);
    }
}
