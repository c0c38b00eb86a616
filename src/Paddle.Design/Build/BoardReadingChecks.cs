using System.Globalization;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Looks at a board's readings: which corrections matter, and what cannot be right.</summary>
internal static class BoardReadingChecks
{
    internal static void Require(BoardReading reading)
    {
        Positive(reading.LengthMm, nameof(reading.LengthMm));
        Positive(reading.WidthMm, nameof(reading.WidthMm));
        Positive(reading.ThicknessMm, nameof(reading.ThicknessMm));
        Positive(reading.MassG, nameof(reading.MassG));
        if (!(reading.MoisturePercent is >= 0 and <= 40))
            throw new ArgumentOutOfRangeException(nameof(reading), reading.MoisturePercent, "Moisture must lie in 0 to 40 %.");
        switch (reading.Stiffness)
        {
            case SagReading sag:
                Positive(sag.SpanMm, nameof(sag.SpanMm));
                Positive(sag.LoadN, nameof(sag.LoadN));
                Positive(sag.SagMm, nameof(sag.SagMm));
                if (sag.SpanMm > reading.LengthMm)
                    throw new ArgumentOutOfRangeException(nameof(reading), sag.SpanMm, "The span must not be longer than the board.");
                break;
            case TapReading tap:
                Positive(tap.FrequencyHz, nameof(tap.FrequencyHz));
                break;
        }
    }

    private const string Basis =
        "The modulus is given on the book's basis, a span of 14 depths with the shear sag in it, which is what a design asks for.";

    internal static IReadOnlyList<string> Corrections(BoardReading reading, WoodSpecies species)
    {
        var ratio = BoardTest.ModulusOverShearModulus(species);
        switch (reading.Stiffness)
        {
            case SagReading sag:
                var shear = ElasticConstants.ShearShareOfSag(ratio, sag.SpanMm / reading.ThicknessMm);
                var modulus = SagFormula.TrueModulusMPa(
                    sag.LoadN, sag.SpanMm, reading.WidthMm, reading.ThicknessMm, sag.SagMm, ratio);
                var own = SagFormula.OwnWeightSagMm(
                    reading.MassG, reading.LengthMm, sag.SpanMm, reading.WidthMm, reading.ThicknessMm, modulus);
                return
                [
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Shear makes {100 * shear / (1 + shear):F1} % of the sag at a span of {sag.SpanMm / reading.ThicknessMm:F0} "
                        + $"depths: taken out{(shear < 0.01 ? ", though it hardly matters here" : "")}."),
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The board's own weight sags it by {own:F2} mm before the load is on. The sag asked for is the difference with "
                        + $"and without the load, so that needs no correction; had the total been read, it would be "
                        + $"{100 * own / sag.SagMm:F0} % off."),
                    Basis,
                ];
            case TapReading:
                var thick = TapFormula.ThickBarFactor(reading.ThicknessMm / reading.LengthMm, ratio);
                return
                [
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Shear and rotation lower the tone of a bar this thick: {100 * (thick - 1):F1} % put back on the "
                        + $"modulus{(thick < 1.01 ? ", though it hardly matters here" : "")}."),
                    "Its own weight does not change the tone of a bar held at its two quiet places, 0.224 of the length from each end.",
                    Basis,
                ];
            default:
                return [];
        }
    }

    internal static IReadOnlyList<string> Warnings(BoardReading reading, BoardProperty density, BoardProperty? modulus)
    {
        var warnings = new List<string>();
        Odd(warnings, density, "density", "the species, the moisture or a reading of mass or size may be wrong");
        if (modulus is not null)
            Odd(warnings, modulus, "modulus", "the species, or a reading of thickness, load, sag or tone may be wrong");

        var wall = 1000 * WoodDensity.CellWallSpecificGravity;
        if (density.Value > wall)
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"A density of {density.Value:F0} kg/m3 is impossible: the cell wall itself has {wall:F0}. Look at the units."));
        if (density.Value < 100) warnings.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"A density of {density.Value:F0} kg/m3 is below any wood for a paddle. Look at the units."));
        if (modulus is { } m && m.StandardUncertainty > 0.10 * m.Value)
        {
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The modulus is known to {100 * m.StandardUncertainty / m.Value:F0} % only: a longer span, a heavier load or "
                + $"finer readings would help."));
        }

        if (reading.Stiffness is SagReading sag)
        {
            if (sag.SagMm > sag.SpanMm / 50)
                warnings.Add("The sag is over a fiftieth of the span: the formula no longer holds; take a lighter load.");
            var stress = 1.5 * sag.LoadN * sag.SpanMm / (reading.WidthMm * reading.ThicknessMm * reading.ThicknessMm);
            if (stress > 15) warnings.Add(Text($"The load stresses the board to {stress:F0} MPa: take a lighter one."));
            if (sag.SpanMm < 10 * reading.ThicknessMm)
                warnings.Add("The span is under ten depths: shear and dents at the supports cloud the reading.");
            if (reading.WidthMm > sag.SpanMm / 3)
                warnings.Add("The board is wide for its span: it bends as a plate, and comes out too stiff.");
        }

        if (reading.Stiffness is TapReading && reading.LengthMm < 10 * reading.ThicknessMm)
            warnings.Add("The bar is under ten times as long as thick: the thick-bar correction is no longer exact.");
        if (reading.MoisturePercent > 20)
            warnings.Add("Wood over 20 % moisture is not ready for a paddle; the values at 12 % are carried far.");
        return warnings;
    }

    private static void Odd(List<string> warnings, BoardProperty property, string name, string reason)
    {
        if (Math.Abs(property.ZScore) > BoardTest.OddZ)
        {
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The {name} lies {Math.Abs(property.ZScore):F1} standard deviations {(property.ZScore > 0 ? "above" : "below")} "
                + $"the species' mean: {reason}."));
        }
    }

    private static void Positive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value)) throw new ArgumentOutOfRangeException(name, value, "Must be above 0.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
