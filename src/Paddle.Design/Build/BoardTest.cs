using System.Globalization;
using MathNet.Numerics.Distributions;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>How stiffness was read: a sag or a tap.</summary>
internal abstract record StiffnessReading;

/// <summary>The board laid flat on two supports with a weight at mid-span.</summary>
/// <param name="SpanMm">Between the supports, mm.</param>
/// <param name="LoadN">The weight, N (1 kg weighs 9.81 N).</param>
/// <param name="SagMm">How far the middle goes down when the weight is put on, mm.</param>
internal sealed record SagReading(double SpanMm, double LoadN, double SagMm) : StiffnessReading;

/// <summary>The board held at 0.224 of its length from each end and tapped on the face.</summary>
/// <param name="FrequencyHz">Lowest tone, Hz.</param>
internal sealed record TapReading(double FrequencyHz) : StiffnessReading;

/// <summary>Standard uncertainties of the readings; the defaults are what a tape, a caliper, a kitchen scale and a phone give.</summary>
/// <param name="SagMm">Sag, mm.</param>
/// <remarks>Defaults: common practice, no source.</remarks>
internal sealed record ReadingErrors(
    double LengthMm = 1, double WidthMm = 0.3, double ThicknessMm = 0.1, double MassG = 1, double SpanMm = 1, double LoadPercent = 0.5,
    double SagMm = 0.1, double FrequencyHz = 0.5, double MoisturePercent = 1);

/// <summary>A board as read.</summary>
/// <param name="Stiffness">Sag or tap, or null for density alone.</param>
/// <param name="Errors">Reading errors, or null for the defaults.</param>
internal sealed record BoardReading(
    string Species, double MoisturePercent, double LengthMm, double WidthMm, double ThicknessMm, double MassG,
    StiffnessReading? Stiffness, ReadingErrors? Errors = null);

/// <summary>A property of the board beside its species; the name of the member that holds it says the unit.</summary>
/// <param name="Value">At the board's own moisture.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the value, from those of the readings.</param>
/// <param name="At12Percent">At 12 % moisture.</param>
/// <param name="ZScore">Standard deviations above the species' published mean at 12 %.</param>
/// <param name="Compared">The same in words.</param>
internal sealed record BoardFigure(double Value, double StandardUncertainty, double At12Percent, double ZScore, string Compared);

/// <summary>Stiffness of a board, each modulus under its own name.</summary>
/// <param name="PlainBeamModulusMPa">
/// What the plain beam formula makes of the reading: the shear of this very span and thickness (of a tapped bar, shear and rotation)
/// is still in it, so that it compares with no other modulus. MPa.
/// </param>
/// <param name="PlainBeamUncertaintyMPa">Its standard uncertainty, MPa.</param>
/// <param name="TrueOverPlainBeam">What it is multiplied by to take that out.</param>
/// <param name="ModulusMPa">True modulus along the grain, shear taken out.</param>
/// <param name="ApparentModulusMPa">
/// Apparent modulus on the basis of the books, a span of 14 depths with its shear in: the value that a design asks for.
/// </param>
internal sealed record BoardStiffness(
    double PlainBeamModulusMPa, double PlainBeamUncertaintyMPa, double TrueOverPlainBeam, BoardFigure ModulusMPa,
    BoardFigure ApparentModulusMPa);

/// <summary>A remark to a maker under a name that does not change.</summary>
/// <param name="Code">Its name: lower-case words joined by hyphens.</param>
/// <param name="Text">The remark.</param>
public sealed record CodedNote(string Code, string Text);

/// <summary>What a board's own readings say of it.</summary>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="Stiffness">Moduli, MPa; null without sag or tap.</param>
/// <param name="Corrections">Which corrections were made and how much each mattered.</param>
/// <param name="Warnings">What looks wrong.</param>
internal sealed record BoardTest(
    BoardFigure DensityKgM3, BoardStiffness? Stiffness, IReadOnlyList<CodedNote> Corrections, IReadOnlyList<CodedNote> Warnings)
{
    /// <summary>z beyond which species or readings look wrong: one board in eighty lies further out by chance.</summary>
    public const double OddZ = 2.5;

    /// <summary>Density and modulus of a board with uncertainty, beside the species' published mean and spread.</summary>
    /// <exception cref="ArgumentException">The species is not in the catalogue.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is not above 0, the span is longer than the board, or the moisture lies
    /// outside 0 to 40 %.</exception>
    public static BoardTest Evaluate(BoardReading reading)
    {
        var species = WoodCatalogue.Find(reading.Species)
            ?? throw new ArgumentException($"The wood '{reading.Species}' is not in the catalogue.", nameof(reading));
        BoardReadingChecks.Require(reading);
        var errors = reading.Errors ?? new();
        var density = Density(reading, species, errors);
        var stiffness = reading.Stiffness is null ? null : Stiff(reading, species, errors);
        return new(
            density, stiffness, BoardReadingChecks.Corrections(reading, species),
            BoardReadingChecks.Warnings(reading, errors, density, stiffness));
    }

    /// <summary>E/G of a species: theory W20.</summary>
    internal static double ModulusOverShearModulus(WoodSpecies species) => 1 / ElasticConstants.ShearModulusMPa(species, 1);

    private static BoardFigure Density(BoardReading reading, WoodSpecies species, ReadingErrors errors)
    {
        // g over mm³ is 1e6 kg/m³.
        static double Rho(double[] r) => 1e6 * r[3] / (r[0] * r[1] * r[2]);
        double[] readings = [reading.LengthMm, reading.WidthMm, reading.ThicknessMm, reading.MassG];
        var value = Rho(readings);
        var mean = WoodDensity.KgM3(species, 12);
        return Compare(
            value,
            Propagation.StandardUncertainty(Rho, readings, [errors.LengthMm, errors.WidthMm, errors.ThicknessMm, errors.MassG]),
            value * mean / WoodDensity.KgM3(species, reading.MoisturePercent),
            mean,
            Scatter.SpecificGravityVariation,
            "heavier",
            "lighter");
    }

    private static BoardStiffness Stiff(BoardReading reading, WoodSpecies species, ReadingErrors errors)
    {
        var ratio = ModulusOverShearModulus(species);
        var (_, values, uncertainties) = StiffnessReadings(reading, errors);
        Func<double[], double> plain = reading.Stiffness is SagReading
            ? r => SagFormula.PlainBeamModulusMPa(r[0], r[1], r[2], r[3], r[4])
            : r => TapFormula.PlainBeamModulusMPa(r[0], r[1], r[2], r[3], r[4]);
        Func<double[], double> full = reading.Stiffness is SagReading
            ? r => SagFormula.TrueModulusMPa(r[0], r[1], r[2], r[3], r[4], ratio)
            : r => TapFormula.TrueModulusMPa(r[0], r[1], r[2], r[3], r[4], ratio);
        var (plainBeam, plainDoubt) = Propagated(plain, values, uncertainties);
        var (modulus, doubt) = Propagated(full, values, uncertainties);

        // Theory W18 ties the two to each other in a design as well, so that this board's own true modulus comes back out of it.
        var at12 = species.ModulusOfElasticity12MPa / MoistureAdjustment.ModulusOfElasticityMPa(species, reading.MoisturePercent);
        BoardFigure Beside(double trueOver) => Compare(
            modulus / trueOver,
            doubt / trueOver,
            modulus / trueOver * at12,
            species.ModulusOfElasticity12MPa * ElasticConstants.TrueOverApparent / trueOver,
            Scatter.ElasticityVariation,
            "stiffer",
            "softer");
        return new(plainBeam, plainDoubt, modulus / plainBeam, Beside(1), Beside(ElasticConstants.TrueOverApparent));
    }

    /// <summary>The readings that a modulus comes from, in the order of the formulas, with their uncertainties.</summary>
    internal static (string[] Names, double[] Values, double[] Uncertainties) StiffnessReadings(BoardReading reading, ReadingErrors errors) =>
        reading.Stiffness switch
        {
            SagReading sag => (
                ["load", "span", "width", "thickness", "sag"],
                [sag.LoadN, sag.SpanMm, reading.WidthMm, reading.ThicknessMm, sag.SagMm],
                [sag.LoadN * errors.LoadPercent / 100, errors.SpanMm, errors.WidthMm, errors.ThicknessMm, errors.SagMm]),
            TapReading tap => (
                ["tone", "mass", "length", "width", "thickness"],
                [tap.FrequencyHz, reading.MassG, reading.LengthMm, reading.WidthMm, reading.ThicknessMm],
                [errors.FrequencyHz, errors.MassG, errors.LengthMm, errors.WidthMm, errors.ThicknessMm]),
            _ => throw new ArgumentException("Stiffness must be read by sag or by tap.", nameof(reading)),
        };

    private static (double Value, double Uncertainty) Propagated(Func<double[], double> f, double[] readings, double[] uncertainties) =>
        (f(readings), Propagation.StandardUncertainty(f, readings, uncertainties));

    private static BoardFigure Compare(
        double value, double uncertainty, double at12, double mean, double variation, string more, string less)
    {
        var z = (at12 - mean) / (variation * mean); // theory M21
        return new(value, uncertainty, at12, z, InWords(Normal.CDF(0, 1, z), more, less));
    }

    private static string InWords(double below, string more, string less)
    {
        var (share, word) = below >= 0.5 ? (below, more) : (1 - below, less);
        var outOf = share > 0.995 ? (1000, "1000") : share > 0.95 ? (100, "100") : (10, "10");
        var count = Math.Min(outOf.Item1 - 1, (int)Math.Round(share * outOf.Item1));
        return string.Create(
            CultureInfo.InvariantCulture, $"This board is {word} than {count} of {outOf.Item2} of its species at the same moisture.");
    }
}

/// <summary>Modulus of a board from its sag between two supports under a weight at mid-span. Theory M18.</summary>
internal static class SagFormula
{
    /// <summary>Modulus by the plain beam formula, all of the sag laid to bending: <c>E = P L³/(48 I y)</c>, I = b h³/12. Source: beam
    /// tables, simply supported, centre load. Theory M18.</summary>
    /// <param name="loadN">P, N.</param>
    /// <param name="spanMm">L, mm.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="sagMm">y, mm: the difference with and without the load, so that the board's own weight drops out.</param>
    /// <returns>E of this span and thickness alone, MPa: neither the true modulus nor the book's apparent one.</returns>
    public static double PlainBeamModulusMPa(double loadN, double spanMm, double widthMm, double thicknessMm, double sagMm) =>
        loadN * Cube(spanMm) / (48 * SecondMomentMm4(widthMm, thicknessMm) * sagMm); // theory M18

    /// <summary>True modulus: the above times one plus the shear share of the sag (theory W19).</summary>
    /// <param name="loadN">P, N.</param>
    /// <param name="spanMm">L, mm.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="sagMm">y, mm.</param>
    /// <param name="modulusOverShearModulus">E/G of the wood.</param>
    public static double TrueModulusMPa(
        double loadN, double spanMm, double widthMm, double thicknessMm, double sagMm, double modulusOverShearModulus) =>
        PlainBeamModulusMPa(loadN, spanMm, widthMm, thicknessMm, sagMm)
        * (1 + ElasticConstants.ShearShareOfSag(modulusOverShearModulus, spanMm / thicknessMm)); // theory M18

    /// <summary>Sag of the board under its own weight at mid-span, overhanging ends lifting it: <c>5 w L⁴/(384 E I) - w a² L²/(16 E I)</c>.
    /// Source: beam tables. Theory M18.</summary>
    /// <param name="spanMm">L, mm; a is half of what reaches over.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="modulusMPa">E, MPa.</param>
    public static double OwnWeightSagMm(
        double massG, double lengthMm, double spanMm, double widthMm, double thicknessMm, double modulusMPa)
    {
        var w = massG * 1e-3 * 9.80665 / lengthMm; // N/mm
        double over = (lengthMm - spanMm) / 2, stiffness = modulusMPa * SecondMomentMm4(widthMm, thicknessMm);
        return (5 * w * Cube(spanMm) * spanMm / 384 - w * over * over * spanMm * spanMm / 16) / stiffness; // theory M18
    }

    internal static double SecondMomentMm4(double widthMm, double thicknessMm) => widthMm * Cube(thicknessMm) / 12;

    private static double Cube(double x) => x * x * x;
}

/// <summary>Modulus of a board from the tone that it gives when hung free and tapped across the face. Theory M19.</summary>
internal static class TapFormula
{
    /// <summary>First root of cos b cosh b = 1, the free bar's first bending mode. Source: any text on vibration.</summary>
    public const double FirstRoot = 4.730040744862704;

    /// <summary>Frequency of the first bending mode of a slender free bar: <c>f = b²/(2 pi) sqrt(E I/(m L³))</c>. Theory M19. Source:
    /// Euler-Bernoulli beam, any text on vibration.</summary>
    /// <param name="modulusMPa">E, MPa.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <returns>f, Hz.</returns>
    public static double SlenderFrequencyHz(double modulusMPa, double massG, double lengthMm, double widthMm, double thicknessMm)
    {
        // N mm² over kg mm³ is 1000 s⁻².
        var stiffness = modulusMPa * SagFormula.SecondMomentMm4(widthMm, thicknessMm);
        return FirstRoot * FirstRoot / (2 * Math.PI)
            * Math.Sqrt(1000 * stiffness / (massG * 1e-3 * lengthMm * lengthMm * lengthMm)); // theory M19
    }

    /// <summary>Factor by which shear and rotation lower f², so that the true modulus is the slender bar's times it: <c>1 + (h/L)²/12
    /// (49.48 + 12.30 k E/G)</c>, k = 1.2. Theory M20. Source: Goens' approximation to the Timoshenko beam, from memory; with E/G = 2 and k
    /// = 1.2 it gives the 6.585 (h/L)² of ASTM E1876 at a Poisson's ratio of 0 (from memory).</summary>
    /// <param name="thicknessOverLength">h/L.</param>
    /// <param name="modulusOverShearModulus">E/G.</param>
    public static double ThickBarFactor(double thicknessOverLength, double modulusOverShearModulus) =>
        1 + thicknessOverLength * thicknessOverLength / 12 * (49.48 + 12.30 * 1.2 * modulusOverShearModulus); // theory M20

    /// <summary>Modulus by the plain beam formula, shear and rotation left out. Theory M19.</summary>
    /// <param name="frequencyHz">f, Hz.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <returns>E, MPa.</returns>
    public static double PlainBeamModulusMPa(double frequencyHz, double massG, double lengthMm, double widthMm, double thicknessMm)
    {
        var ratio = frequencyHz / SlenderFrequencyHz(1, massG, lengthMm, widthMm, thicknessMm);
        return ratio * ratio;
    }

    /// <summary>True modulus of a free bar from its first frequency. Theory M19 and M20.</summary>
    /// <param name="frequencyHz">f, Hz.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <param name="modulusOverShearModulus">E/G.</param>
    /// <returns>E, MPa.</returns>
    public static double TrueModulusMPa(
        double frequencyHz, double massG, double lengthMm, double widthMm, double thicknessMm, double modulusOverShearModulus) =>
        PlainBeamModulusMPa(frequencyHz, massG, lengthMm, widthMm, thicknessMm)
        * ThickBarFactor(thicknessMm / lengthMm, modulusOverShearModulus);
}

/// <summary>Uncertainty of a result from those of its readings. Theory M17.</summary>
/// <remarks><c>u² = sum (df/dx_i u_i)²</c>, first order, independent readings. Source: law of propagation of uncertainty, ISO/IEC Guide
/// 98-3 (GUM), from memory. The derivatives are central differences over the readings' own uncertainties.</remarks>
internal static class Propagation
{
    internal static double StandardUncertainty(
        Func<double[], double> f, IReadOnlyList<double> readings, IReadOnlyList<double> uncertainties)
    {
        var square = 0.0;
        for (var i = 0; i < readings.Count; i++)
        {
            double[] up = [.. readings], down = [.. readings];
            up[i] += uncertainties[i];
            down[i] -= uncertainties[i];
            var change = (f(up) - f(down)) / 2;
            square += change * change;
        }

        return Math.Sqrt(square); // theory M17
    }
}
