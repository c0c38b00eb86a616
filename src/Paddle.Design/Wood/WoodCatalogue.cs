using System.Collections.Frozen;
using Paddle.Design.Wood.Species;

namespace Paddle.Design.Wood;

/// <summary>The woods a paddle can be designed in.</summary>
internal static class WoodCatalogue
{
    private static readonly FrozenDictionary<string, WoodSpecies> ById = Load(
        [.. NorthAmericanHardwoods.All, .. NorthAmericanSoftwoods.All, .. EuropeanHardwoods.All]);

    /// <summary>Every species, sorted by id.</summary>
    public static IReadOnlyList<WoodSpecies> All { get; } =
        Array.AsReadOnly([.. ById.Values.OrderBy(species => species.Id, StringComparer.Ordinal)]);

    /// <summary>The species with an id, or null. Ids are compared exactly.</summary>
    /// <param name="id">Identifier, such as <c>white-ash</c>.</param>
    /// <returns>The species, or null when the catalogue has none of that id.</returns>
    public static WoodSpecies? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>The ids nearest to one that was not found, nearest first: for an error message that helps.</summary>
    /// <param name="count">How many to return at most.</param>
    /// <returns>Up to <paramref name="count"/> ids.</returns>
    public static IReadOnlyList<string> NearestIds(string wrong, int count = 3) =>
        NearestNames.Rank(All.Select(species => species.Id), wrong, count);

    /// <summary>Checks every row and indexes them by id.</summary>
    /// <exception cref="InvalidOperationException">A row is malformed or an id occurs twice.</exception>
    internal static FrozenDictionary<string, WoodSpecies> Load(IReadOnlyList<SpeciesEntry> entries)
    {
        var byId = new Dictionary<string, WoodSpecies>(entries.Count, StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            if (!byId.TryAdd(entry.Id, entry.ToSpecies()))
                throw new InvalidOperationException($"Wood species table: the id '{entry.Id}' occurs twice.");
        }

        return byId.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
