using Paddle.Design.Wood;
using Paddle.Design.Wood.Species;

namespace Paddle.Design.Tests.Wood;

public class SpeciesEntryTests
{
    private const string Source = "a made-up test row";

    [Fact]
    public void A_sound_row_loads() => Assert.Equal("test-wood", Row().ToSpecies().Id);

    [Fact]
    public void Psi_is_converted() => Assert.Equal(6.34, Figure.FromPsi(920, Source).Value, 1e-12); // 920 x 0.00689476 = 6.3432

    [Fact]
    public void Faults_stop_the_load_and_name_the_row_and_the_figure()
    {
        Fails(Row(id: "Test Wood"), "id must be");
        Fails(Row(specificGravity: new(double.NaN, Source)), "specific gravity at 12 % is NaN");
        Fails(Row(specificGravity: new(0.5, " ")), "specific gravity at 12 % has no source");
        Fails(Row(specificGravity: new(500, Source)), "outside 0.1 to 1.4");
        Fails(Row(rupture12: new(-80, Source)), "modulus of rupture at 12 % is -80");
        Fails(Row(rupture12: new(50, Source)), "modulus of rupture at 12 % must exceed green");
        Fails(Row(ruptureGreen: null), "all together or not at all");
        Fails(Row(tangential: new(3, Source)), "tangential shrinkage must exceed radial");
        Fails(Row(across: null), "either a published figure or a default");
        Fails(Row(acrossDefault: new(3, Source)), "either a published figure or a default");
        Fails(Row(mp: new(12, Source)), "intersection moisture");
        Fails(Row(ratio: new(0.6, Source)), "elastic ratio");
        Fails(Row(note: new SafetyNote("Dusty.", "")), "safety note");
    }

    [Fact]
    public void An_id_twice_stops_the_load()
    {
        var fault = Assert.Throws<InvalidOperationException>(() => WoodCatalogue.Load([Row(), Row()]));
        Assert.Contains("'test-wood' occurs twice", fault.Message, StringComparison.Ordinal);
    }

    private static void Fails(SpeciesEntry row, string fault)
    {
        var thrown = Assert.Throws<InvalidOperationException>(row.ToSpecies);
        Assert.Contains(fault, thrown.Message, StringComparison.Ordinal);
        Assert.Contains($"'{row.Id}'", thrown.Message, StringComparison.Ordinal);
    }

    private static SpeciesEntry Row(
        string id = "test-wood",
        Figure? specificGravity = null,
        Figure? rupture12 = null,
        Figure? tangential = null,
        Figure? mp = null,
        Figure? ratio = null,
        Figure? acrossDefault = null,
        SafetyNote? note = null,
        Optional ruptureGreen = default,
        Optional across = default) => new()
        {
            Id = id,
            CommonName = "Test wood",
            BotanicalName = "Lignum probandi",
            IsSoftwood = false,
            SpecificGravity12 = specificGravity ?? new(0.5, Source),
            ModulusOfElasticity12MPa = new(10000, Source),
            ModulusOfElasticityGreenMPa = new(9000, Source),
            ModulusOfRupture12MPa = rupture12 ?? new(85, Source),
            ModulusOfRuptureGreenMPa = ruptureGreen.Or(new(55, Source)),
            CompressionParallel12MPa = new(49, Source),
            CompressionParallelGreenMPa = new(24, Source),
            TensionPerpendicular12MPa = across.Or(new(4, Source)),
            CrossGrainDefault12MPa = acrossDefault,
            MpPercent = mp ?? new(25, Source),
            ShrinkageTangentialPercent = tangential ?? new(7, Source),
            ShrinkageRadialPercent = new(4, Source),
            TangentialModulusRatio = ratio,
            DecayResistance = DecayResistance.Moderate,
            Suitability = Suitability.Usable,
            SuitabilityReason = "For tests.",
            SafetyNotes = note is null ? [] : [note],
        };

    /// <summary>Tells "left out of the row" (null given) from "not mentioned by the test" (default).</summary>
    private readonly struct Optional
    {
        private bool Given { get; init; }

        private Figure? Value { get; init; }

        public static implicit operator Optional(Figure? value) => new() { Given = true, Value = value };

        public Figure? Or(Figure otherwise) => Given ? Value : otherwise;
    }
}
