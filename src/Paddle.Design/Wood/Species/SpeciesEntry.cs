using System.Text.RegularExpressions;

namespace Paddle.Design.Wood.Species;

/// <summary>One row of the species table as it is written down: each figure with its source. <see cref="ToSpecies"/> checks the row and
/// turns it into the public record, so that a slip in the table stops the service at start, not a paddle on the water. To add a species:
/// write one more entry in a file beside this one; the catalogue finds it in that file's <c>All</c>.</summary>
internal sealed partial record SpeciesEntry
{
    public required string Id { get; init; }
    public required string CommonName { get; init; }
    public required string BotanicalName { get; init; }
    public required bool IsSoftwood { get; init; }
    public required Figure SpecificGravity12 { get; init; }
    public Figure? SpecificGravityGreen { get; init; }
    public required Figure ModulusOfElasticity12MPa { get; init; }
    public Figure? ModulusOfElasticityGreenMPa { get; init; }
    public required Figure ModulusOfRupture12MPa { get; init; }
    public Figure? ModulusOfRuptureGreenMPa { get; init; }
    public required Figure CompressionParallel12MPa { get; init; }
    public Figure? CompressionParallelGreenMPa { get; init; }
    public Figure? ShearParallel12MPa { get; init; }
    public Figure? TensionPerpendicular12MPa { get; init; }
    public Figure? TensionPerpendicularGreenMPa { get; init; }
    public Figure? CrossGrainDefault12MPa { get; init; }
    public Figure? CrossGrainDefaultGreenMPa { get; init; }
    public Figure MpPercent { get; init; } = new(25, SourceText.Table513Other);
    public required Figure ShrinkageTangentialPercent { get; init; }
    public required Figure ShrinkageRadialPercent { get; init; }
    public Figure? ShrinkageVolumetricPercent { get; init; }
    public Figure? SideHardness12N { get; init; }
    public Figure? TangentialModulusRatio { get; init; }
    public Figure? ShearModulusRatioLR { get; init; }
    public Figure? ShearModulusRatioLT { get; init; }
    public required DecayResistance DecayResistance { get; init; }
    public required Suitability Suitability { get; init; }
    public required string SuitabilityReason { get; init; }
    public IReadOnlyList<SourcedText> SafetyNotes { get; init; } = [];
    public bool WeakSource { get; init; }

    /// <summary>Checks the row and returns the species.</summary>
    /// <exception cref="InvalidOperationException">The row is malformed; the message names the species and the fault.</exception>
    public WoodSpecies ToSpecies()
    {
        Require(IdPattern().IsMatch(Id), "its id must be lower-case words joined by hyphens");
        Require(!string.IsNullOrWhiteSpace(CommonName), "its common name is blank");
        Require(!string.IsNullOrWhiteSpace(BotanicalName), "its botanical name is blank");
        Require(!string.IsNullOrWhiteSpace(SuitabilityReason), "its suitability has no reason");
        foreach (var note in SafetyNotes)
        {
            Require(!string.IsNullOrWhiteSpace(note.Text) && !string.IsNullOrWhiteSpace(note.Source),
                "a safety note lacks its text or its source");
        }

        var sources = new List<FigureSource>();
        double Take(string name, string unit, Figure figure)
        {
            Require(double.IsFinite(figure.Value) && figure.Value > 0,
                $"{name} is {figure.Value}; it must be a finite number above 0");
            Require(!string.IsNullOrWhiteSpace(figure.Source), $"{name} has no source");
            sources.Add(new FigureSource(name, figure.Value, unit, figure.Source));
            return figure.Value;
        }

        double? TakeIfAny(string name, string unit, Figure? figure) => figure is { } known ? Take(name, unit, known) : null;

        var species = new WoodSpecies
        {
            Id = Id,
            CommonName = CommonName,
            BotanicalName = BotanicalName,
            IsSoftwood = IsSoftwood,
            SpecificGravity12 = Take("specific gravity at 12 %", "1", SpecificGravity12),
            SpecificGravityGreen = TakeIfAny("specific gravity, green", "1", SpecificGravityGreen),
            ModulusOfElasticity12MPa = Take("modulus of elasticity at 12 %, apparent", "MPa", ModulusOfElasticity12MPa),
            ModulusOfElasticityGreenMPa = TakeIfAny("modulus of elasticity, green, apparent", "MPa", ModulusOfElasticityGreenMPa),
            ModulusOfRupture12MPa = Take("modulus of rupture at 12 %", "MPa", ModulusOfRupture12MPa),
            ModulusOfRuptureGreenMPa = TakeIfAny("modulus of rupture, green", "MPa", ModulusOfRuptureGreenMPa),
            CompressionParallel12MPa = Take("compression parallel to grain at 12 %", "MPa", CompressionParallel12MPa),
            CompressionParallelGreenMPa = TakeIfAny("compression parallel to grain, green", "MPa", CompressionParallelGreenMPa),
            ShearParallel12MPa = TakeIfAny("shear parallel to grain at 12 %", "MPa", ShearParallel12MPa),
            TensionPerpendicular12MPa = TakeIfAny("tension perpendicular to grain at 12 %", "MPa", TensionPerpendicular12MPa),
            TensionPerpendicularGreenMPa = TakeIfAny("tension perpendicular to grain, green", "MPa", TensionPerpendicularGreenMPa),
            CrossGrainDefault12MPa = TakeIfAny("tension perpendicular to grain at 12 %, default", "MPa", CrossGrainDefault12MPa),
            CrossGrainDefaultGreenMPa = TakeIfAny("tension perpendicular to grain, green, default", "MPa", CrossGrainDefaultGreenMPa),
            MpPercent = Take("intersection moisture Mp", "%", MpPercent),
            ShrinkageTangentialPercent = Take("tangential shrinkage, green to ovendry", "%", ShrinkageTangentialPercent),
            ShrinkageRadialPercent = Take("radial shrinkage, green to ovendry", "%", ShrinkageRadialPercent),
            ShrinkageVolumetricPercent = TakeIfAny("volumetric shrinkage, green to ovendry", "%", ShrinkageVolumetricPercent),
            SideHardness12N = TakeIfAny("side hardness at 12 %", "N", SideHardness12N),
            TangentialModulusRatio = TakeIfAny("ET/EL", "1", TangentialModulusRatio),
            ShearModulusRatioLR = TakeIfAny("GLR/EL", "1", ShearModulusRatioLR),
            ShearModulusRatioLT = TakeIfAny("GLT/EL", "1", ShearModulusRatioLT),
            DecayResistance = DecayResistance,
            Suitability = Suitability,
            SuitabilityReason = SuitabilityReason,
            SafetyNotes = SafetyNotes,
            WeakSource = WeakSource,
            Sources = sources.AsReadOnly(),
        };
        RequireSense(species);
        return species;
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$", RegexOptions.CultureInvariant)]
    private static partial Regex IdPattern();

    // Relations that hold for wood of any kind: a typing slip nearly always breaks one of them.
    private void RequireSense(WoodSpecies s)
    {
        Require(s.SpecificGravity12 is > 0.1 and < 1.4, "specific gravity at 12 % is outside 0.1 to 1.4");
        Require(s.MpPercent is > 12 and < 35, "intersection moisture Mp is outside 12 to 35 %");
        Require(s.ShrinkageTangentialPercent > s.ShrinkageRadialPercent, "tangential shrinkage must exceed radial");
        Require(!(s.ShrinkageVolumetricPercent <= s.ShrinkageTangentialPercent), "volumetric shrinkage must exceed tangential");
        Require(!(s.SpecificGravityGreen >= s.SpecificGravity12), "specific gravity at 12 % must exceed green");
        Require(!(s.ModulusOfRuptureGreenMPa >= s.ModulusOfRupture12MPa), "modulus of rupture at 12 % must exceed green");
        Require(!(s.ModulusOfElasticityGreenMPa >= s.ModulusOfElasticity12MPa), "modulus of elasticity at 12 % must exceed green");
        Require(!(s.CompressionParallelGreenMPa >= s.CompressionParallel12MPa), "compression at 12 % must exceed green");
        Require(s.TensionPerpendicular12MPa.HasValue != s.CrossGrainDefault12MPa.HasValue,
            "tension perpendicular at 12 % needs either a published figure or a default, and not both");
        var green = (s.ModulusOfRuptureGreenMPa.HasValue ? 1 : 0) + (s.ModulusOfElasticityGreenMPa.HasValue ? 1 : 0)
            + (s.CompressionParallelGreenMPa.HasValue ? 1 : 0);
        Require(green is 0 or 3, "green rupture, elasticity and compression must be given all together or not at all");
        Require(!(s.TangentialModulusRatio >= 0.5) && !(s.ShearModulusRatioLR >= 0.5) && !(s.ShearModulusRatioLT >= 0.5),
            "an elastic ratio is 0.5 or more");
    }

    private void Require(bool holds, string fault)
    {
        if (!holds) throw new InvalidOperationException($"Wood species table, row '{Id}': {fault}.");
    }
}

/// <summary>A figure and where it was read. A table of species is written in these so that no figure can lack a source.</summary>
/// <param name="Value">The figure in the unit its place in <see cref="SpeciesEntry"/> names.</param>
internal readonly record struct Figure(double Value, string Source)
{
    /// <summary>1 lbf/in2 in MPa: 4.4482216152605 N over (25.4 mm)^2, exact by definition of both units.</summary>
    private const double MPaPerPsi = 4.4482216152605 / (25.4 * 25.4);

    /// <summary>A strength printed in lbf/in2, in MPa to 0.01 MPa; the table prints to 10 lbf/in2, which is 0.07 MPa.</summary>
    public static Figure FromPsi(double poundsPerSquareInch, string source) =>
        new(Math.Round(poundsPerSquareInch * MPaPerPsi, 2), source);
}
