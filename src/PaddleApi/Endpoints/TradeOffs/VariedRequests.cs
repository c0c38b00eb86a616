using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;
using PaddleApi.Contracts.TradeOffs;
using PaddleApi.Hosting.Json;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.TradeOffs;

/// <summary>One combination of the varied inputs.</summary>
/// <param name="Values">Which value of each input.</param>
/// <param name="Design">The request; null where it is refused.</param>
/// <param name="Faults">Why, by places in the request for a design.</param>
internal sealed record Combination(int[] Values, DesignRequest? Design, IReadOnlyList<(string Place, Fault Fault)> Faults);

/// <summary>Sets values into a request as a caller would write them: the text is changed, and read and checked like any other.</summary>
internal static class VariedRequests
{
    /// <summary>Every combination, the last input varying fastest; or what of the caller's document can be in none.</summary>
    /// <param name="request">A request that its validator has passed.</param>
    public static (IReadOnlyList<Combination> All, IReadOnlyList<(string Place, Fault Fault)> Faults) Of(TradeOffRequest request)
    {
        var (written, vary) = (JsonSerializer.SerializeToNode(request.Base, StrictJson.Options)!, request.Vary!);
        var faults = new List<(string Place, Fault Fault)>();
        foreach (var (k, input) in vary.Index())
            for (var j = 0; j < input.Values!.Count && faults.Count == 0; j++) faults.AddRange(Unreadable(written, input, k, j));
        if (faults.Count > 0) return ([], faults);

        var all = new List<Combination>();
        for (var number = 0; number < vary.Aggregate(1, (count, input) => count * input.Values!.Count); number++)
        {
            var (values, rest) = (new int[vary.Count], number);
            for (var k = vary.Count - 1; k >= 0; k--) (rest, values[k]) = Math.DivRem(rest, vary[k].Values!.Count);
            all.Add(Read(written, vary, values));
        }

        return (all, InNone(vary, all));
    }

    private static Combination Read(JsonNode written, IReadOnlyList<VariedInput> vary, int[] values)
    {
        var node = written.DeepClone();
        foreach (var (k, input) in vary.Index()) Set(node, input.Pointer!, input.Values![values[k]]);
        var design = node.Deserialize<DesignRequest>(StrictJson.Options)!;
        var faults = Designs.GivenDesigns.Faults(design, "");
        return new(values, faults.Count == 0 ? design : null, faults);
    }

    // A value that no combination can hold is a slip, as is a request of which nothing can be designed.
    private static List<(string Place, Fault Fault)> InNone(IReadOnlyList<VariedInput> vary, List<Combination> all)
    {
        var slips = new List<(string Place, Fault Fault)>();
        foreach (var (k, input) in vary.Index())
        {
            for (var j = 0; j < input.Values!.Count; j++)
            {
                var own = all.Where(one => one.Values[k] == j).Select(one => one.Faults.Where(fault => IsAt(fault.Place, input.Pointer!)).ToList()).ToList();
                if (own.TrueForAll(found => found.Count > 0)) slips.AddRange(own[0].Select(found => (ValuePlace(k, j), found.Fault)));
            }
        }

        if (slips.Count == 0 && all.All(one => one.Design is null))
            slips.Add(("/vary", new($"No combination can be designed. The first is refused at {all[0].Faults[0].Place}: {all[0].Faults[0].Fault.Reason}", Code: RefusalCodes.NotAccepted)));
        return slips;
    }

    // What the reader of requests says of one value alone.
    private static IEnumerable<(string Place, Fault Fault)> Unreadable(JsonNode written, VariedInput input, int k, int j)
    {
        var node = written.DeepClone();
        var pointerPlace = JsonPointers.Append("/vary", k) + "/pointer";
        if (!Set(node, input.Pointer!, input.Values![j])) return [(pointerPlace, NoSuchInput(input.Pointer!))];
        var body = Encoding.UTF8.GetBytes(node.ToJsonString());
        try
        {
            _ = JsonSerializer.Deserialize<DesignRequest>(body, StrictJson.Options);
            return [];
        }
        catch (JsonException)
        {
            // What is not where the pointer ends is wrong with the pointer.
            return JsonFaults.Find(body, typeof(DesignRequest), StrictJson.Options).Errors.SelectMany(
                at => at.Value, (at, fault) => (at.Key != input.Pointer || fault.Code == RefusalCodes.UnknownName ? pointerPlace : ValuePlace(k, j), fault));
        }
    }

    private static Fault NoSuchInput(string pointer) => new(
        "There is no such input: objects on the way are made where they are missing, items of a list are not.", FaultValue.Show(pointer), Code: RefusalCodes.UnknownName);

    private static bool Set(JsonNode node, string pointer, JsonElement value)
    {
        var names = pointer.Split('/').Skip(1).Select(JsonPointers.Unescape).ToList();
        for (var i = 0; i < names.Count; i++)
        {
            var isLast = i == names.Count - 1;
            if (node is JsonArray list && int.TryParse(names[i], out var at) && at >= 0 && at < list.Count)
            {
                if (isLast) list[at] = JsonNode.Parse(value.GetRawText());
                else node = list[at]!;
            }
            else if (node is JsonObject members)
            {
                if (isLast) members[names[i]] = JsonNode.Parse(value.GetRawText());
                else node = members[names[i]] ??= new JsonObject();
            }
            else
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsAt(string place, string pointer) => place == pointer || place.StartsWith(pointer + '/', StringComparison.Ordinal);

    private static string ValuePlace(int k, int j) => JsonPointers.Append(JsonPointers.Append("/vary", k) + "/values", j);
}
