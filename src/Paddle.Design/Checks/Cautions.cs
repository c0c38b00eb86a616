using System.Collections.Concurrent;
using Paddle.Design.Wood;

namespace Paddle.Design.Checks;

/// <summary>What can hurt while making and using a paddle of a given wood.</summary>
internal static class Cautions
{
    private static readonly ConcurrentDictionary<string, IReadOnlyList<Caution>> BySpecies = new();

    private static readonly Caution[] ForEveryPaddle =
    [
        new(
            "design-aid",
            "This is a calculation, not a proof of strength. Load a new paddle on land before trusting it on the water, look for cracks, "
            + "dents and lifted grain before each trip, and carry a spare.",
            "common practice, no source"),
        new(
            "edge-tools",
            "Keep both hands behind the edge and the work clamped; a sharp tool is safer than a dull one. Follow the tool's own manual and "
            + "local rules, and let a licensed tradesperson do what you are not trained for.",
            "hand-tool booklets for worker safety, read; the rest common practice, no source"),
        new(
            "saws",
            "Use the guard, riving knife and push sticks; wear eye protection marked Z87+ or EN 166 and hearing protection. Nearly all who "
            + "are hurt at table saws are the operators, mostly their fingers.",
            "29 CFR 1910.213 and 1910.133 in summaries; CPSC investigation guideline for table saws, July 2004"),
        new(
            "oily-rags",
            "Rags, pads and sanding dust wet with drying oil or oil varnish heat by themselves and can catch fire within hours. Spread "
            + "them singly outdoors to harden, or keep them under water in a closed metal can; never in a heap or a bin.",
            "NFPA, Evarts, November 2011 (14,070 fires a year from spontaneous heating, US, 2005-2009)"),
        new(
            "solvent",
            "Thinner vapour makes you dizzy and can burn: ventilate, no flame or heater; a dust mask does not stop vapour.",
            "OSHA chemical data on mineral spirits, read; the last from memory"),
        new(
            "life-jacket",
            "Wear a fastened life jacket on the water: of drowned boaters with known use, more than four in five wore none.",
            "US Coast Guard, Recreational Boating Statistics 2019 and 2021, quoted"),
        new(
            "cold-water",
            "Dress for the water, not the air. In cold water you have about 1 minute to control your breathing, 10 minutes of useful "
            + "movement and 1 hour before the cold takes consciousness.",
            "\"1-10-1\" as taught by Canadian and US boating-safety agencies, read"),
    ];

    /// <summary>The cautions for a wood, most urgent for the maker first.</summary>
    /// <param name="speciesId">Id of a species of <see cref="WoodCatalogue"/>.</param>
    public static IReadOnlyList<Caution> For(string speciesId) => BySpecies.GetOrAdd(speciesId, static id =>
    {
        var cautions = new List<Caution>(ForEveryPaddle);
        for (var i = 0; i < WoodSafety.DustCautions.Count; i++)
            cautions.Add(new($"wood-dust-{i + 1}", WoodSafety.DustCautions[i].Text, WoodSafety.DustCautions[i].Source));
        cautions.Add(new("stock", WoodSafety.KnotRule.Text, WoodSafety.KnotRule.Source));
        if (WoodCatalogue.Find(id) is { } species)
        {
            for (var i = 0; i < species.SafetyNotes.Count; i++)
                cautions.Add(new($"{id}-{i + 1}", species.SafetyNotes[i].Text, species.SafetyNotes[i].Source));
        }

        return cautions.AsReadOnly();
    });
}
