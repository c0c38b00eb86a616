namespace Paddle.Design.Wood.Species;

/// <summary>The sources of the species table, worded once. "Read in" names what was actually read, never more.</summary>
internal static class SourceText
{
    /// <summary>The 12 % rows in metric.</summary>
    public const string Table53Dry =
        "USDA Wood Handbook FPL-GTR-190 (2010), table 5-3a, 12 % row, read in a public extraction";

    /// <summary>The green rows in metric.</summary>
    public const string Table53Green =
        "USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a, green row, read in a public transcription";

    /// <summary>12 % values printed in metric in the later edition.</summary>
    public const string Table53Dry2021 =
        "USDA Wood Handbook FPL-GTR-282 (2021), table 5-3a, 12 % row, read in a public transcription";

    /// <summary>Green values printed in inch-pound units.</summary>
    public const string Table53GreenPsi =
        "USDA Wood Handbook FPL-GTR-282 (2021), table 5-3b, green row in lbf/in2, read in a public transcription and converted";

    /// <summary>12 % values printed in inch-pound units.</summary>
    public const string Table53DryPsi =
        "USDA Wood Handbook FPL-GTR-282 (2021), table 5-3b, 12 % row in lbf/in2, read in a public transcription and converted";

    /// <summary>Green values of northern white cedar.</summary>
    public const string Table53GreenDataPage = "USDA Wood Handbook table 5-3a, green row, read on a Wood Handbook data page";

    /// <summary>Green values of western redcedar.</summary>
    public const string Table53Green2010 =
        "USDA Wood Handbook FPL-GTR-190 (2010), table 5-3a, green row, read in a public transcription";

    /// <summary>Shrinkage read as page text.</summary>
    public const string Table43 = "USDA Wood Handbook FPL-GTR-190 (2010), table 4-3, read as page text";

    /// <summary>Shrinkage read in the later edition.</summary>
    public const string Table43Of2021 = "USDA Wood Handbook FPL-GTR-282 (2021), table 4-3, read in a public transcription";

    /// <summary>Shrinkage not read.</summary>
    public const string Table43Memory = "USDA Wood Handbook, table 4-3, from memory";

    /// <summary>Shrinkage from the trade.</summary>
    public const string TradeShrinkage = "a timber-trade page, read";

    /// <summary>Intersection moisture printed for the species.</summary>
    public const string Table513 = "USDA Wood Handbook FPL-GTR-282 (2021), table 5-13, read in a public transcription";

    /// <summary>Intersection moisture of every species the table does not list.</summary>
    public const string Table513Other =
        "USDA Wood Handbook FPL-GTR-282 (2021), table 5-13, its value for species not listed, read in a public transcription";

    /// <summary>Elastic ratios read.</summary>
    public const string Table51 = "USDA Wood Handbook, table 5-1, elastic ratios at about 12 %, read on a Wood Handbook data page";

    /// <summary>Elastic ratios not read.</summary>
    public const string Table51Memory = "USDA Wood Handbook, table 5-1, elastic ratios at about 12 %, from memory";

    public const string TwoTradePages = "WEAK SOURCE: mean of two timber-trade pages, read; not a Wood Handbook species";

    public const string OneTradePage = "WEAK SOURCE: one timber-trade page, read; not a Wood Handbook species";

    /// <summary>The chart of toxic woods.</summary>
    public const string ToxicityChart = "woodturners' wood toxicity chart (1990) and its sources, read in copies (secondary)";

    /// <summary>Cancer classes of wood dusts.</summary>
    public const string Acgih = "ACGIH classification, read on a wood-dust data page";
}
