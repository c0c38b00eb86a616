using System.Globalization;
using Paddle.Design.Laminating;

namespace Paddle.Design.Checks;

/// <summary>What a glued-up paddle is held against beside the rest, and what can hurt in gluing it.</summary>
internal static class LaminateChecks
{
    private const string Practice = "common practice, no source";
    private const string SwellingSource = "Wood Handbook eq. 13-2 with tangential shrinkage, an upper estimate: wood creeps; the limit is half the strength across the grain, " + Practice;

    internal static IEnumerable<DesignCheck> Of(LaminateReport report)
    {
        if (report.Shear is { } shear)
        {
            var holds = shear.Margin >= 1;
            yield return new(
                "construction.glue-line", holds ? CheckStatus.Pass : CheckStatus.Fail, shear.SafetyFactor, shear.LeastFactor, "",
                holds ? "The wood beside the glue lines holds; a sound joint is as strong as the wood."
                    : "The wood beside a glue line shears: move the line further out, or take a wood stronger in shear.",
                "theory J7-J9: flow from the change of the outline, followed against three-dimensional finite elements, held against shear along the grain and twice the tension across it (EN 1995-1-1, 6.1.7, from memory)");
        }

        var mismatch = report.Swelling;
        yield return new(
            "construction.swelling", mismatch.IsRisky ? CheckStatus.Warn : CheckStatus.Pass, mismatch.StressMPa,
            SwellingMismatch.WarnShare * mismatch.StrengthMPa, "MPa",
            mismatch.IsRisky
                ? $"Across 4 % of moisture {Name(mismatch.Species)} and {Name(mismatch.OtherSpecies)} swell so differently that the joint or the wood beside it may open: "
                    + "glue them at the moisture they will be used at, rings the same way, and keep the finish sound."
                : "Across 4 % of moisture the woods swell alike enough.",
            SwellingSource);
        foreach (var check in GluedOn(report)) yield return check;
        if (report.SidesDifferPercent > LaminateReport.MostSidesDifferPercent)
        {
            yield return new(
                "construction.symmetry", CheckStatus.Warn, report.SidesDifferPercent, LaminateReport.MostSidesDifferPercent, "percent",
                "One side is stiffer than the other: it will warp with the weather, flex sideways and twist in the stroke. Lay the strips alike on both sides.",
                "transformed section at the widest place; the limit is " + Practice);
        }
    }

    private static IEnumerable<DesignCheck> GluedOn(LaminateReport report)
    {
        if (report.Facing is not { } facing) yield break;
        yield return Part(
            "construction.facing", facing.Governing, "Sheets, the strips under them and the glue between bear their stresses.",
            "Sheets on the faces, the strips under them or the glue between are overstressed: take thinner sheets or a less stiff wood.",
            "theory J12-J13: transformed section, each wood at its own outermost fibre; shear VQ/(Ib)");
        yield return Swelling(
            "construction.facing-swelling", facing.Mismatch,
            "Sheets and strips swell so differently that the sheets may check or lift: glue them at the moisture they will be used at, and keep the finish sound.");
    }

    private static DesignCheck Part(string id, PartStress part, string holds, string fails, string source) => new(
        id, part.Margin >= 1 ? CheckStatus.Pass : CheckStatus.Fail, part.SafetyFactor, part.LeastFactor, "", part.Margin >= 1 ? holds : fails, source);

    private static DesignCheck Swelling(string id, SwellingMismatch mismatch, string risky) => new(
        id, mismatch.IsRisky ? CheckStatus.Warn : CheckStatus.Pass, mismatch.StressMPa, SwellingMismatch.WarnShare * mismatch.StrengthMPa, "MPa",
        mismatch.IsRisky ? risky : "Across 4 % of moisture the woods swell alike enough.", SwellingSource);

    /// <summary>Cautions of every wood in it, each once, of the glue, and of a piece across the tip.</summary>
    internal static IReadOnlyList<Caution> Cautions(LaminateReport report) =>
    [
        .. report.Laminate.SpeciesIds.SelectMany(Checks.Cautions.For).DistinctBy(caution => (caution.Id, caution.Text)),
        new("adhesive", report.Laminate.Adhesive.Caution, report.Laminate.Adhesive.CautionSource),
        .. report.TipPiece?.Bending is { } tip ? [TipPiece(tip)] : Array.Empty<Caution>(),
    ];

    private static Caution TipPiece(PartStress tip) => new(
        "tip-piece",
        string.Create(CultureInfo.InvariantCulture, $"A piece across the tip takes wear, not leverage: 19 in 20 bear {100 * Math.Min(1, tip.SafetyFactor):0} % of the push-off reckoned with before they break across their grain. ")
            + "Along its grain it hardly swells and holds the blade's width: its joint may open in wet and dry. Keep it short, let a spline into end grain, glue it with thickened epoxy at the moisture "
            + "it will be used at, and look at it before each trip; it is there to be replaced.",
        "theory J11, strength across the grain, 5th percentile; the rest " + Practice);

    private static string Name(string species) => species.Replace('-', ' ');
}
