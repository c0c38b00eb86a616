using System.Collections.ObjectModel;
using System.Runtime.CompilerServices;

namespace Paddle.Design.Wood;

/// <summary>The source lines of <see cref="WoodInUse"/>. They depend only on the species and on what was measured, and a solver resolves
/// wood often, so the four sets of a species are worded once.</summary>
internal static class WoodInUseSources
{
    private static readonly ConditionalWeakTable<WoodSpecies, IReadOnlyList<string>[]> Worded = [];

    /// <summary>The source lines of a species in use.</summary>
    public static IReadOnlyList<string> For(WoodSpecies species, bool densityMeasured, bool modulusMeasured) =>
        Worded.GetValue(species, static s => [Word(s, false, false), Word(s, true, false), Word(s, false, true), Word(s, true, true)])
            [(densityMeasured ? 1 : 0) + (modulusMeasured ? 2 : 0)];

    private static ReadOnlyCollection<string> Word(WoodSpecies species, bool densityMeasured, bool modulusMeasured)
    {
        const string Measured = "measured by the maker, at the stated moisture";
        var moistureRule = species.ModulusOfRuptureGreenMPa.HasValue
            ? "to the stated moisture by USDA Wood Handbook FPL-GTR-282 equation 5-3"
            : "to the stated moisture by the ANC-18 percent rule with a typical rate, no green value being published";
        var bendingGrain = "slope of grain by the Hankinson form, USDA Wood Handbook equation 5-2, n = 2, from memory";
        var variation = "USDA Wood Handbook table 5-6, quoted in a public small-craft material survey";
        var across = species.TensionPerpendicular12MPa.HasValue
            ? Of(species, "tension perpendicular to grain at 12 %")
            : Of(species, "tension perpendicular to grain at 12 %, default");
        var shear = species is { ShearModulusRatioLR: not null, ShearModulusRatioLT: not null }
            ? "mean of GLR/EL and GLT/EL, " + Of(species, "GLR/EL")
            : "EL/16, common practice, no ratio being published for both planes";
        return Array.AsReadOnly<string>(
        [
            "density: " + (densityMeasured
                ? Measured
                : Of(species, "specific gravity at 12 %")
                    + "; to the stated moisture by USDA Wood Handbook FPL-GTR-282 equations 4-9, 4-11 and 4-14"),
            "modulus, apparent: " + (modulusMeasured
                ? Measured
                : $"{Of(species, "modulus of elasticity at 12 %, apparent")}; {moistureRule}; {bendingGrain}, q = 0.08"),
            "modulus, true: 1.10 times the apparent, USDA Wood Handbook table 5-3, footnote c",
            "shear modulus: " + shear,
            $"bending strength: {Of(species, "modulus of rupture at 12 %")}; {moistureRule}; {bendingGrain}, q = 0.04; "
                + $"5th percentile with a coefficient of variation of 16 %, {variation}",
            $"compression strength: {Of(species, "compression parallel to grain at 12 %")}; {moistureRule}; {bendingGrain}, q = 0.40; "
                + $"5th percentile with a coefficient of variation of 18 %, {variation}",
            $"cross-grain strength: {across}; equation 5-3 does not hold across the grain, so a straight line from 12 % to a lower "
                + "green value and level otherwise; 5th percentile with a coefficient of variation of 25 %, from memory",
            "fatigue fraction: 0.40 for one-way bending, USDA Wood Handbook chapter 5, from memory",
        ]);
    }

    private static string Of(WoodSpecies species, string figure)
    {
        foreach (var sourced in species.Sources)
        {
            if (sourced.Name == figure) return sourced.Source;
        }

        return "no source stated";
    }
}

/// <summary>Where one figure was read.</summary>
/// <param name="Name">What the figure is.</param>
/// <param name="Value">The figure, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Its unit: MPa, N, %, or 1 for a plain ratio.</param>
/// <param name="Source">Where it was read; it says so when the figure is from memory or a default.</param>
internal sealed record FigureSource(string Name, double Value, string Unit, string Source);
