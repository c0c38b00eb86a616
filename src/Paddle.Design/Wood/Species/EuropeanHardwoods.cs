using static Paddle.Design.Wood.Species.SourceText;

namespace Paddle.Design.Wood.Species;

/// <summary>European hardwoods. Not in the Wood Handbook: their figures come from trade pages, hence the weak-source mark.</summary>
internal static class EuropeanHardwoods
{
    /// <summary>The rows of this file.</summary>
    public static IReadOnlyList<SpeciesEntry> All { get; } =
    [
        new()
        {
            Id = "european-ash",
            CommonName = "European ash",
            BotanicalName = "Fraxinus excelsior",
            IsSoftwood = false,
            SpecificGravity12 = new(0.63, TwoTradePages + "; density 702 kg/m3 at 12 % over 1120"),
            ModulusOfElasticity12MPa = new(13100, TwoTradePages),
            ModulusOfRupture12MPa = new(113, TwoTradePages),
            CompressionParallel12MPa = new(51.5, TwoTradePages),
            CrossGrainDefault12MPa =
                Figure.FromPsi(700, "default: lowest published of the American ashes (black and green ash, 700 lbf/in2 at 12 %; "
                    + "black ash 490 green), USDA Wood Handbook FPL-GTR-282 table 5-3b, read in a public transcription"),
            CrossGrainDefaultGreenMPa =
                Figure.FromPsi(490, "default: lowest published of the American ashes (black and green ash, 700 lbf/in2 at 12 %; "
                    + "black ash 490 green), USDA Wood Handbook FPL-GTR-282 table 5-3b, read in a public transcription"),
            ShrinkageTangentialPercent = new(8.0, TwoTradePages),
            ShrinkageRadialPercent = new(5.0, TwoTradePages),
            DecayResistance = DecayResistance.SlightOrNone,
            Suitability = Suitability.Usable,
            SuitabilityReason = "As white ash by trade reputation, but its figures here come from trade pages only: test your own board.",
            WeakSource = true,
        },
        new()
        {
            Id = "european-beech",
            CommonName = "European beech",
            BotanicalName = "Fagus sylvatica",
            IsSoftwood = false,
            SpecificGravity12 = new(0.65, OneTradePage + "; density 730 kg/m3 at 12 % over 1120"),
            ModulusOfElasticity12MPa = new(14700, OneTradePage),
            ModulusOfRupture12MPa = new(118, OneTradePage),
            CompressionParallel12MPa = new(61.0, OneTradePage),
            CrossGrainDefault12MPa =
                Figure.FromPsi(1010, "default: American beech, the one beech published (1010 lbf/in2 at 12 %, 720 green), USDA Wood "
                    + "Handbook FPL-GTR-282 table 5-3b, read in a public transcription"),
            CrossGrainDefaultGreenMPa =
                Figure.FromPsi(720, "default: American beech, the one beech published (1010 lbf/in2 at 12 %, 720 green), USDA Wood "
                    + "Handbook FPL-GTR-282 table 5-3b, read in a public transcription"),
            ShrinkageTangentialPercent = new(11.8, "from memory; not a Wood Handbook species"),
            ShrinkageRadialPercent = new(5.8, "from memory; not a Wood Handbook species"),
            ShrinkageVolumetricPercent = new(17.9, "from memory; not a Wood Handbook species"),
            DecayResistance = DecayResistance.SlightOrNone,
            Suitability = Suitability.Caution,
            SuitabilityReason =
                "Strong, but heavy, not durable and moves more than any other wood here; its figures come from trade pages only.",
            SafetyNotes =
            [
                new("Dust is a listed sensitiser (skin, eyes or airways).", ToxicityChart),
                new("Beech dust is classed a confirmed human carcinogen (A1).", Acgih),
            ],
            WeakSource = true,
        },
    ];
}
