using Paddle.Design.Laminating;

namespace Paddle.Design.Checks;

/// <summary>What a glued-up paddle is held against beside the rest, and what can hurt in gluing it.</summary>
internal static class LaminateChecks
{
    private const string Practice = "common practice, no source";

    internal static IEnumerable<DesignCheck> Of(LaminateReport report)
    {
        if (report.Shear is { } shear)
        {
            var holds = shear.Margin >= 1;
            yield return new(
                "construction.glue-line", holds ? CheckStatus.Pass : CheckStatus.Fail, shear.SafetyFactor, shear.LeastFactor, "",
                holds ? "The wood beside the glue lines holds; a sound joint is as strong as the wood."
                    : "The wood beside a glue line shears: move the line further out, or take a wood stronger in shear.",
                "theory J7-J9: flow from the change of the outline, held against shear along the grain and twice the tension across it (EN 1995-1-1, 6.1.7, from memory)");
        }

        var mismatch = report.Mismatch;
        yield return new(
            "construction.swelling", mismatch.IsRisky ? CheckStatus.Warn : CheckStatus.Pass, mismatch.StressMPa,
            SwellingMismatch.WarnShare * mismatch.StrengthMPa, "MPa",
            mismatch.IsRisky
                ? $"Across 4 % of moisture {Name(mismatch.Species)} and {Name(mismatch.OtherSpecies)} swell so differently that the joint or the wood beside it may open: "
                    + "glue them at the moisture they will be used at, rings the same way, and keep the finish sound."
                : "Across 4 % of moisture the woods swell alike enough.",
            "Wood Handbook eq. 13-2 with tangential shrinkage, an upper estimate: wood creeps; the limit is half the strength across the grain, " + Practice);
        if (report.SidesDifferPercent > LaminateReport.MostSidesDifferPercent)
        {
            yield return new(
                "construction.symmetry", CheckStatus.Warn, report.SidesDifferPercent, LaminateReport.MostSidesDifferPercent, "percent",
                "One side is stiffer than the other: it will warp with the weather, flex sideways and twist in the stroke. Lay the strips alike on both sides.",
                "transformed section at the widest place; the limit is " + Practice);
        }
    }

    /// <summary>Cautions of every wood in it, each once, and of the glue.</summary>
    internal static IReadOnlyList<Caution> Cautions(Laminate laminate) =>
    [
        .. laminate.SpeciesIds.SelectMany(Checks.Cautions.For).DistinctBy(caution => (caution.Id, caution.Text)),
        new("adhesive", laminate.Adhesive.Caution, laminate.Adhesive.CautionSource),
    ];

    private static string Name(string species) => species.Replace('-', ' ');
}
