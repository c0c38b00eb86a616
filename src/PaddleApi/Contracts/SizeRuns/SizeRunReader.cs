using System.Globalization;
using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Contracts.SizeRuns;

/// <summary>Turns the request of the contract into the engine's, and the engine's places back into the contract's.</summary>
internal static class SizeRunReader
{
    private const string EngineGroups = "/population";

    /// <summary>The engine's request.</summary>
    /// <param name="request">A request, valid or not; the engine's own checks follow.</param>
    public static Paddle.Design.Fitting.SizeRunRequest Read(SizeRunRequest request)
    {
        var usual = new Paddle.Design.Fitting.SizeRunRequest(request.Sizes);
        return usual with
        {
            StepMm = request.StepMm ?? usual.StepMm,
            Customers = Customers(request.Customers),
            Groups = request is { Population: null, Groups: null } ? null : [.. GroupsOf(request).Select(named => named.Group)],
            FleetCount = request.FleetCount,
            ShortestStockMm = request.ShortestStockMm,
            LongestStockMm = request.LongestStockMm,
            BladeLengthMm = request.BladeLengthMm ?? usual.BladeLengthMm,
            FreeboardMm = request.FreeboardMm ?? usual.FreeboardMm,
            Units = DrawingRequest.Read(request.Drawing?.Units),
        };
    }

    /// <summary>A refusal of the engine with its place named as the contract names it: the engine knows one list of groups only.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="request">The request refused.</param>
    public static InputRefusal InContract(InputRefusal refusal, SizeRunRequest request)
    {
        if (!refusal.JsonPointer.StartsWith(EngineGroups, StringComparison.Ordinal)) return refusal;
        var parts = refusal.JsonPointer.Split('/');
        if (parts.Length < 3) return refusal with { JsonPointer = request.Population is null ? "/groups" : EngineGroups };
        var place = GroupsOf(request).ElementAt(int.Parse(parts[2], CultureInfo.InvariantCulture)).Place;

        // A share of men stands in its member; a group has members of its own.
        var isMember = place.StartsWith(EngineGroups, StringComparison.Ordinal);
        return refusal with { JsonPointer = isMember ? place : $"{place}/{parts[3]}" };
    }

    private static Customer[]? Customers(IReadOnlyList<CustomerRequest>? given)
    {
        if (given is null) return null;
        var customers = new Customer[given.Count];
        for (var i = 0; i < customers.Length; i++) customers[i] = new(given[i].OverallLengthMm, given[i].HandSpacingMm, given[i].StatureMm);
        return customers;
    }

    private static IEnumerable<(string Place, CustomerGroup Group)> GroupsOf(SizeRunRequest request)
    {
        if (request.Population?.Men is { } men) yield return (EngineGroups + "/men", CustomerGroup.Men(men));
        if (request.Population?.Women is { } women) yield return (EngineGroups + "/women", CustomerGroup.Women(women));
        var own = request.Groups ?? [];
        for (var i = 0; i < own.Count; i++)
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"/groups/{i}");
            yield return (place, new(place, own[i].Share, own[i].MeanMm, own[i].StandardDeviationMm, own[i].Quantity ?? CustomerQuantity.HandSpacing));
        }
    }
}
