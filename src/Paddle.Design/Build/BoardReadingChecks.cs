using System.Globalization;
using System.Runtime.CompilerServices;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Looks at a board's readings: which corrections matter, and what cannot be right.</summary>
internal static class BoardReadingChecks
{
    // Balsa, the lightest wood sold, begins here (from memory).
    private const double LightestKgM3 = 100;
    // Well below where paddle wood begins to take a set (common practice, no source).
    private const double MostStressMPa = 15;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

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

    internal static IReadOnlyList<CodedNote> Corrections(BoardReading reading, WoodSpecies species)
    {
        var ratio = BoardTest.ModulusOverShearModulus(species);
        switch (reading.Stiffness)
        {
            case SagReading sag:
                var shear = ElasticConstants.ShearShareOfSag(ratio, sag.SpanMm / reading.ThicknessMm);
                var modulus = SagFormula.TrueModulusMPa(sag.LoadN, sag.SpanMm, reading.WidthMm, reading.ThicknessMm, sag.SagMm, ratio);
                var own = SagFormula.OwnWeightSagMm(
                    reading.MassG, reading.LengthMm, sag.SpanMm, reading.WidthMm, reading.ThicknessMm, modulus);
                return
                [
                    Note("shear-taken-out", Plain,
                        $"Shear makes {100 * shear / (1 + shear):F1} % of the sag at a span of {sag.SpanMm / reading.ThicknessMm:F0} "
                        + $"depths: the plain beam formula's modulus times {1 + shear:F3} is the true "
                        + $"modulus{(shear < 0.01 ? ", though it hardly matters here" : "")}."),
                    Note("own-weight", Plain,
                        $"The board's own weight sags it by {own:F2} mm before the load is on. The sag asked for is the difference with "
                        + $"and without the load, so that needs no correction; had the total been read, it would be "
                        + $"{100 * own / sag.SagMm:F0} % off."),
                    Basis(),
                ];
            case TapReading:
                var thick = TapFormula.ThickBarFactor(reading.ThicknessMm / reading.LengthMm, ratio);
                return
                [
                    Note("thick-bar", Plain,
                        $"Shear and rotation lower the tone of a bar this thick: the plain beam formula's modulus times {thick:F3} is the "
                        + $"true modulus{(thick < 1.01 ? ", though it hardly matters here" : "")}."),
                    Note("own-weight", Plain,
                        $"Its own weight does not change the tone of a bar held at its two quiet places, 0.224 of the length from each end."),
                    Basis(),
                ];
            default:
                return [];
        }
    }

    private static CodedNote Basis() => Note("basis", Plain,
        $"A design asks for the apparent modulus, the one that books print: that of a span of 14 depths with its shear sag in it, the true "
        + $"modulus over {ElasticConstants.TrueOverApparent:F2}.");

    internal static IReadOnlyList<CodedNote> Warnings(
        BoardReading reading, ReadingErrors errors, BoardFigure density, BoardStiffness? stiffness)
    {
        var warnings = new List<CodedNote>();
        var wall = 1000 * WoodDensity.CellWallSpecificGravity;
        if (density.Value > wall)
            warnings.Add(Note("density-impossible", Plain,
                $"A density of {density.Value:F0} kg/m3 is impossible: the cell wall itself has {wall:F0}. Look at the units."));
        else if (density.Value < LightestKgM3)
            warnings.Add(Note(
                "density-impossible", Plain, $"A density of {density.Value:F0} kg/m3 is below any wood for a paddle. Look at the units."));
        else
            Odd(warnings, "density-odd", density, "density", "the species, the moisture or a reading of mass or size may be wrong");
        if (stiffness is not null)
        {
            Odd(
                warnings, "modulus-odd", stiffness.ModulusMPa, "modulus",
                reading.Stiffness is SagReading
                    ? "the species, or a reading of thickness, load or sag, may be wrong"
                    : "the species, or a reading of thickness, mass or tone, may be wrong");
            Uncertain(warnings, reading, errors, stiffness.ModulusMPa);
        }

        if (reading.Stiffness is SagReading sag)
        {
            if (IsDeep(sag))
                warnings.Add(Note("sag-too-deep", Plain, $"The sag is over a fiftieth of the span: the formula no longer holds; take a lighter load."));
            else if (IsHeavy(reading, sag))
                warnings.Add(Note("load-too-heavy", Plain, $"The load stresses the board to {StressMPa(reading, sag):F0} MPa: take a lighter one."));
            if (sag.SpanMm < 10 * reading.ThicknessMm)
                warnings.Add(Note("span-too-short", Plain, $"The span is under ten depths: shear and dents at the supports cloud the reading."));
            if (reading.WidthMm > sag.SpanMm / 3)
                warnings.Add(Note("board-too-wide", Plain, $"The board is wide for its span: it bends as a plate, and comes out too stiff."));
        }

        if (reading.Stiffness is TapReading && reading.LengthMm < 10 * reading.ThicknessMm)
            warnings.Add(Note("bar-too-thick", Plain, $"The bar is under ten times as long as thick: the correction for a thick bar is no longer exact."));
        if (reading.MoisturePercent > 20)
            warnings.Add(Note("too-moist", Plain, $"Wood over 20 % moisture is not ready for a paddle; the values at 12 % are carried far."));
        return warnings;
    }

    private static bool IsDeep(SagReading sag) => sag.SagMm > sag.SpanMm / 50;

    private static double StressMPa(BoardReading reading, SagReading sag) =>
        1.5 * sag.LoadN * sag.SpanMm / (reading.WidthMm * reading.ThicknessMm * reading.ThicknessMm);

    private static bool IsHeavy(BoardReading reading, SagReading sag) => StressMPa(reading, sag) > MostStressMPa;

    // Names the reading that most of the doubt comes from, and asks for more sag only where the board bears it.
    private static void Uncertain(List<CodedNote> warnings, BoardReading reading, ReadingErrors errors, BoardFigure modulus)
    {
        if (modulus.StandardUncertainty <= 0.10 * modulus.Value) return;
        var (names, values, uncertainties) = BoardTest.StiffnessReadings(reading, errors);

        // The span and the thickness of a sag go in by the cube, those of a tap likewise, the tone by the square.
        double[] power = reading.Stiffness is SagReading ? [1, 3, 1, 3, 1] : [2, 1, 3, 1, 3];
        var worst = Enumerable.Range(0, names.Length).MaxBy(i => power[i] * uncertainties[i] / values[i]);
        var remedy = names[worst] == "sag" && reading.Stiffness is SagReading sag && !IsDeep(sag) && !IsHeavy(reading, sag)
            ? "a longer span or a heavier load, or a finer reading, would help"
            : "a finer reading would help";
        warnings.Add(Note("modulus-uncertain", Plain,
            $"The modulus is known to {100 * modulus.StandardUncertainty / modulus.Value:F0} % only, most of it from the "
            + $"{names[worst]}: {remedy}."));
    }

    private static void Odd(List<CodedNote> warnings, string code, BoardFigure property, string name, string reason)
    {
        if (Math.Abs(property.ZScore) > BoardTest.OddZ)
        {
            warnings.Add(Note(
                code, Plain,
                $"The {name} lies {Math.Abs(property.ZScore):F1} standard deviations {(property.ZScore > 0 ? "above" : "below")} "
                + $"the species' mean: {reason}."));
        }
    }

    private static void Positive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value)) throw new ArgumentOutOfRangeException(name, value, "Must be above 0.");
    }

    private static CodedNote Note(
        string code, CultureInfo culture, [InterpolatedStringHandlerArgument(nameof(culture))] ref DefaultInterpolatedStringHandler text) =>
        new(code, text.ToStringAndClear());
}
