namespace Paddle.Design.Wood;

/// <summary>Stock or a species that is refused.</summary>
/// <param name="Id">Its name in a request.</param>
/// <param name="Reason">Why it is refused.</param>
/// <param name="Source">Where the reason comes from.</param>
internal sealed record RefusedWood(string Id, string Reason, string Source);

/// <summary>Limits on the stick itself, stock that is refused, and cautions that go with any wood.</summary>
internal static class WoodSafety
{
    /// <summary>Grain steeper than this is warned of: 1 in 20.</summary>
    /// <remarks>Choice of this service, from maple and birch ball bats at 3 degrees, 1:19 (from memory), and 94 % of straight-grained
    /// strength left but 90 % of impact strength (USDA Wood Handbook table 5-12, from memory).</remarks>
    public const double WarnSlopeOfGrain = 1.0 / 20.0;

    /// <summary>Grain steeper than this is refused: 1 in 12.</summary>
    /// <remarks>Choice of this service. Aircraft spars and ladder rungs stop at 1:15 (FAA AC 43.13-1B table 1-1; Pennsylvania Code title
    /// 34, 21.23), rungs at 1:12 only when 15 % stronger than needed, which the safety factor here more than covers.</remarks>
    public const double RefuseSlopeOfGrain = 1.0 / 12.0;

    /// <summary>Source of the two slope limits, for a report.</summary>
    public const string SlopeOfGrainSource =
        "FAA AC 43.13-1B table 1-1 (1:15 for aircraft wood) and Pennsylvania Code title 34, 21.23 (ladder rungs 1:15, or 1:12 when "
        + "15 % stronger than needed); the limits 1:20 and 1:12 are this service's choice between them";

    /// <summary>Driest wood a design may state, percent: a heated room in winter, 30 % humidity, brings wood to about 6 %.</summary>
    public const double MinimumMoisturePercent = 6.0;
    /// <summary>Wettest wood a design may state, percent: above it fungi grow and the stick is not fit to shape or glue.</summary>
    public const double MaximumMoisturePercent = 20.0;

    /// <summary>Source of the moisture range, for a report.</summary>
    public const string MoistureRangeSource =
        "20 %: fungal growth above it, FAA AC 43.13-1B p. 1-14; 6 %: equilibrium at 30 % humidity and 21 degrees C, USDA Wood "
        + "Handbook FPL-GTR-282 equation 4-5. Strength is taken at the stated moisture; for a blade that is left wet state 16 to 20 %";

    /// <summary>The one treatment that is accepted: none.</summary>
    public const string NoTreatment = "none";
    private const string Memory = "from memory";

    /// <summary>Treated or unknown stock that is refused, with reasons.</summary>
    public static IReadOnlyList<RefusedWood> RefusedTreatments { get; } = Array.AsReadOnly<RefusedWood>(
    [
        new("preservative-treated",
            "Preservatives may hold arsenic, chromium VI, copper or pentachlorophenol. You would breathe the dust and grip the wood "
            + "wet for hours, offcuts must not be burned, and treated wood is often wet, incised or brittle and glues badly.",
            Memory),
        new("creosoted",
            "Creosote burns the skin and is a probable human carcinogen (IARC 2A); it also sweats through any finish.",
            Memory),
        new("railway-sleeper", "Sleepers are creosoted or otherwise treated, and hold grit and steel.", Memory),
        new("utility-pole", "Poles are treated with creosote, pentachlorophenol or arsenic salts.", Memory),
        new("painted-salvage", "Old paint may hold lead, and it hides knots, checks and decay.", Memory),
        new("unknown-salvage",
            "What was put into it and what it has borne are unknown: it may be treated, and a compression failure from an old "
            + "overload does not show.",
            Memory),
        new("pallet", "Pallets may be fumigated with methyl bromide (mark MB) or soaked in whatever they carried.", Memory),
        new("fire-retardant-treated",
            "Fire-retardant salts lower strength, draw water and corrode skin and tools.",
            "loss of strength: USDA Wood Handbook FPL-GTR-282 chapter 5, read in a public transcription; the rest from memory"),
        new("thermally-modified",
            "Heat treatment makes wood brittle; the strengths in this table no longer hold.",
            "lasting loss of strength after heating above about 100 degrees C: USDA Wood Handbook FPL-GTR-282 chapter 5, read in a "
            + "public transcription"),
        new("spalted",
            "Spalting is the start of decay: strength is lost unevenly, and the fungus makes the dust a worse sensitiser.",
            "woodturners' wood toxicity chart (1990), read in copies (secondary); loss of strength common practice, no source"),
    ]);

    /// <summary>Woods that are refused because the wood itself is poisonous, with reasons.</summary>
    public static IReadOnlyList<RefusedWood> RefusedSpecies { get; } = Array.AsReadOnly<RefusedWood>(
    [
        new("yew", "Poisonous: acts on the heart.", "woodturners' wood toxicity chart (1990), read in copies (secondary)"),
        new("oleander", "Poisonous: acts on the heart.", "woodturners' wood toxicity chart (1990), read in copies (secondary)"),
        new("laburnum", "Poisonous throughout.", Memory),
        new("manchineel", "Sap and dust blister skin and eyes.", Memory),
        new("poison-sumac", "Its oil brings on a severe rash, and smoke from it harms the lungs.", Memory),
    ]);

    public static IReadOnlyList<SourcedText> DustCautions { get; } = Array.AsReadOnly<SourcedText>(
    [
        new("Wood dust causes cancer of the nose and sinuses (IARC Group 1). Take it away at the tool, and wear a P2, FFP2 or N95 mask "
            + "or better; sanding is the dustiest step.",
            "IARC Monographs volumes 62 and 100C, the first read, the second quoted; controls from memory"),
        new("Eight-hour limits: 1 mg/m3 (NIOSH; ACGIH, western redcedar 0.5), 2 mg/m3 for hardwood in the EU, 3 mg/m3 for hardwood "
            + "and 5 mg/m3 for softwood in the UK. A mixture counts as hardwood.",
            "EU Directive 2017/2398 as described on several pages, UK limits on a trade safety page, ACGIH redcedar limit on a "
            + "hazard-map page, all read; NIOSH and ACGIH 1 mg/m3 from memory"),
        new("Wipe wet or use a vacuum; never sweep dry or blow dust about: fine dust in the air can also explode.",
            "from memory (NFPA 664 on explosion)"),
        new("Stop and see a doctor if breathing tightens or skin breaks out: once sensitised to a wood, you stay so.", Memory),
    ]);

    /// <summary>The rule on knots and other faults of the stick.</summary>
    public static SourcedText KnotRule { get; } = new(
        "No knot, pith, check, shake, pitch pocket, compression failure or reaction wood in the shaft, throat or grip neck. A sound pin "
        + "knot no bigger than a match head may stay in the outer third of the blade. Grain must run the full length: short grain at the throat is "
        + "where paddles break.",
        "Pennsylvania Code title 34, 21.23 for ladder rungs; the zones are this service's choice");

    /// <summary>Why stock of a treatment is refused; null for <c>none</c>. A treatment this list does not know is refused too: what is not
    /// known to be harmless is not put into somebody's hands.</summary>
    /// <returns>The refusal, or null when the stock is accepted.</returns>
    public static RefusedWood? RefusalOfTreatment(string treatment)
    {
        if (treatment == NoTreatment) return null;
        return Find(RefusedTreatments, treatment) ?? new RefusedWood(
            treatment,
            "This treatment is not known here, so its dust and its effect on strength are not either.",
            "common practice, no source");
    }

    /// <summary>Why a species is refused, or null when it is not one of the poisonous woods.</summary>
    /// <returns>The refusal, or null.</returns>
    public static RefusedWood? RefusalOfSpecies(string speciesId) => Find(RefusedSpecies, speciesId);

    private static RefusedWood? Find(IReadOnlyList<RefusedWood> list, string id)
    {
        foreach (var refused in list)
        {
            if (refused.Id == id) return refused;
        }

        return null;
    }
}
