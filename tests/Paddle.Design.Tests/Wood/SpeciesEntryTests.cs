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
        Fails(Row(note: new SourcedText("Dusty.", "")), "safety note");
        Fails(Row() with { CommonName = " " }, "its common name is blank");
        Fails(Row() with { BotanicalName = "" }, "its botanical name is blank");
        Fails(Row() with { SuitabilityReason = "" }, "its suitability has no reason");
        Fails(Row() with { ShrinkageVolumetricPercent = Row().ShrinkageTangentialPercent }, "volumetric shrinkage must exceed tangential");
        Fails(Row() with { SpecificGravityGreen = Row().SpecificGravity12 }, "specific gravity at 12 % must exceed green");
        Fails(Row() with { ModulusOfElasticityGreenMPa = Row().ModulusOfElasticity12MPa }, "modulus of elasticity at 12 % must exceed green");
        Fails(Row() with { CompressionParallelGreenMPa = Row().CompressionParallel12MPa }, "compression at 12 % must exceed green");
        Fails(Row() with { ShearModulusRatioLR = new(0.5, Source) }, "elastic ratio");
        Fails(Row() with { ShearModulusRatioLT = new(0.5, Source) }, "elastic ratio");
        Fails(Row() with { TangentialModulusRatio = new(0.5, Source) }, "elastic ratio");
        Assert.Equal(0.49, (Row() with { ShearModulusRatioLT = new(0.49, Source) }).ToSpecies().ShearModulusRatioLT);
    }

    [Fact]
    public void Every_figure_is_listed_with_its_name_unit_and_source()
    {
        // 25 %: Wood Handbook table 5-13, woods without a figure of their own.
        var row = Row() with { ShrinkageVolumetricPercent = new(13.5, Source), SideHardness12N = new(4200, Source), ShearParallel12MPa = new(11.7, Source) };
        (string Name, Figure? Figure, string Unit)[] all =
        [
            ("specific gravity at 12 %", row.SpecificGravity12, "1"), ("specific gravity, green", row.SpecificGravityGreen, "1"),
            ("modulus of elasticity at 12 %, apparent", row.ModulusOfElasticity12MPa, "MPa"),
            ("modulus of elasticity, green, apparent", row.ModulusOfElasticityGreenMPa, "MPa"),
            ("modulus of rupture at 12 %", row.ModulusOfRupture12MPa, "MPa"), ("modulus of rupture, green", row.ModulusOfRuptureGreenMPa, "MPa"),
            ("compression parallel to grain at 12 %", row.CompressionParallel12MPa, "MPa"),
            ("compression parallel to grain, green", row.CompressionParallelGreenMPa, "MPa"),
            ("shear parallel to grain at 12 %", row.ShearParallel12MPa, "MPa"),
            ("tension perpendicular to grain at 12 %", row.TensionPerpendicular12MPa, "MPa"),
            ("tension perpendicular to grain, green", row.TensionPerpendicularGreenMPa, "MPa"),
            ("tension perpendicular to grain at 12 %, default", row.CrossGrainDefault12MPa, "MPa"),
            ("tension perpendicular to grain, green, default", row.CrossGrainDefaultGreenMPa, "MPa"),
            ("intersection moisture Mp", row.MpPercent, "%"), ("tangential shrinkage, green to ovendry", row.ShrinkageTangentialPercent, "%"),
            ("radial shrinkage, green to ovendry", row.ShrinkageRadialPercent, "%"),
            ("volumetric shrinkage, green to ovendry", row.ShrinkageVolumetricPercent, "%"), ("side hardness at 12 %", row.SideHardness12N, "N"),
            ("ET/EL", row.TangentialModulusRatio, "1"), ("GLR/EL", row.ShearModulusRatioLR, "1"), ("GLT/EL", row.ShearModulusRatioLT, "1"),
        ];
        Assert.Equal(
            all.Where(one => one.Figure is not null).Select(one => new FigureSource(one.Name, one.Figure!.Value.Value, one.Unit, one.Figure.Value.Source)),
            row.ToSpecies().Sources);
        var bare = WoodCatalogue.Find("european-ash")!; // defaults across the grain, and no Mp of its own
        Assert.Equal(25, bare.MpPercent);
        Assert.Contains(bare.Sources, figure => figure is { Name: "tension perpendicular to grain at 12 %, default", Unit: "MPa" });
        Assert.Contains(bare.Sources, figure => figure is { Name: "tension perpendicular to grain, green, default", Unit: "MPa" });
        var whole = WoodCatalogue.Find("black-cherry")!;
        string[] named = ["ET/EL", "GLR/EL", "GLT/EL", "side hardness at 12 %"];
        Assert.All(named, name => Assert.Contains(whole.Sources, figure => figure.Name == name));
    }

    [Theory]
    [InlineData("cherry", "black-cherry")] // a word of it
    [InlineData("Sitka Spruse", "sitka-spruce")] // a letter for another
    [InlineData("ashh", "white-ash")] // one letter too many of a word
    [InlineData("wite_ash", "white-ash")] // one left out
    [InlineData("maple-suger", "sugar-maple")]
    public void The_nearest_name_is_what_was_meant(string wrong, string meant) =>
        Assert.Equal(meant, NearestNames.Rank(["black-cherry", "sitka-spruce", "white-ash", "sugar-maple", "butternut"], wrong, 2)[0]);

    [Theory]
    [InlineData("kitten", "sitting", "kittens")] // the textbook's three slips, against one
    [InlineData("sunday", "saturday", "sundays")]
    public void Slips_are_counted_as_in_the_textbook(string wrong, string three, string one)
    {
        // Levenshtein's distances: kitten to sitting 3, Sunday to Saturday 3 (any text on the distance).
        Assert.Equal([one, three], NearestNames.Rank([three, one], wrong, 2));
        Assert.Equal([$"{three[..1]}zzz{three[1..]}", $"{three[..1]}zzzz{three[1..]}"], NearestNames.Rank([$"{three[..1]}zzzz{three[1..]}", $"{three[..1]}zzz{three[1..]}"], three, 5));
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
        SourcedText? note = null,
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
