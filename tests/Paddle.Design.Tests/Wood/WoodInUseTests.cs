using FsCheck.Xunit;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class WoodInUseTests
{
    [Fact] // white ash at 8 %, straight: eq. 5-3 example 119.47 MPa; factor 0.7368 of table 5-6; apparent modulus x 1.10
    public void White_ash_at_8_percent_straight_grained()
    {
        var ash = WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, 8, 0, null, null);
        Assert.Equal(119.47, ash.MeanBendingStrengthMPa, 0.006);
        Assert.Equal(119.47 * 0.7368, ash.BendingStrengthMPa, 0.01);
        Assert.Equal(12000 * Math.Pow(12000.0 / 9900, 4.0 / 12), ash.ApparentModulusMPa, 1e-6);
        Assert.Equal(ash.ApparentModulusMPa * 1.10, ash.ModulusMPa, 1e-9);
        Assert.Equal(ash.ModulusMPa * (0.109 + 0.077) / 2, ash.ShearModulusMPa, 1e-9);
        Assert.Equal(51.1 * Math.Pow(51.1 / 27.5, 4.0 / 12) * (1 - (1.6448536 * 0.18)), ash.CompressionStrengthMPa, 1e-5);
        Assert.Equal(6.5, ash.MeanCrossGrainStrengthMPa, 1e-12); // table 5-3a, not raised by drying
        Assert.Equal(6.5 * (1 - (1.6448536 * 0.25)), ash.CrossGrainStrengthMPa, 1e-6);
    }

    [Fact] // at 12 % and straight every book value is the printed one
    public void At_12_percent_the_table_is_untouched()
    {
        foreach (var species in WoodCatalogue.All)
        {
            var inUse = WoodInUse.Resolve(species, 12, 0, null, null);
            Assert.Equal(species.ModulusOfElasticity12MPa, inUse.ApparentModulusMPa, 1e-9);
            Assert.Equal(species.ModulusOfRupture12MPa, inUse.MeanBendingStrengthMPa, 1e-9);
            Assert.Equal(species.CrossGrainStrength12MPa, inUse.MeanCrossGrainStrengthMPa, 1e-9);
            Assert.Equal(species.SpecificGravity12 * 1120, inUse.DensityKgM3, 1e-9);
        }
    }

    [Fact] // Hankinson by hand at 1:10: rupture 0.808, elasticity 0.898
    public void Slope_of_grain_lowers_strength_and_stiffness()
    {
        var cherry = WoodCatalogue.Find("black-cherry")!;
        var inUse = WoodInUse.Resolve(cherry, 12, 0.1, null, null);
        Assert.Equal(85 * 0.808, inUse.MeanBendingStrengthMPa, 0.05);
        Assert.Equal(10300 * 0.898, inUse.ApparentModulusMPa, 6.0);
    }

    [Fact]
    public void Measured_values_replace_the_book_and_leave_strength_alone()
    {
        var cherry = WoodCatalogue.Find("black-cherry")!;
        var book = WoodInUse.Resolve(cherry, 9, 0.06, null, null);
        var measured = WoodInUse.Resolve(cherry, 9, 0.06, 601.5, 11250);
        Assert.Equal(601.5, measured.DensityKgM3);
        Assert.Equal(11250, measured.ApparentModulusMPa); // the board's own moisture and grain are in it already
        Assert.Equal(12375, measured.ModulusMPa, 1e-9);
        Assert.Equal(12375 * (0.147 + 0.097) / 2, measured.ShearModulusMPa, 1e-9);
        Assert.Equal(book.BendingStrengthMPa, measured.BendingStrengthMPa);
        Assert.Equal(book.CompressionStrengthMPa, measured.CompressionStrengthMPa);
        Assert.Equal(book.CrossGrainStrengthMPa, measured.CrossGrainStrengthMPa);
    }

    [Theory]
    [InlineData(null, null, 0)]
    [InlineData(600.0, null, 1)]
    [InlineData(null, 11000.0, 1)]
    [InlineData(600.0, 11000.0, 2)]
    public void Sources_say_what_the_maker_measured(double? densityKgM3, double? modulusMPa, int measured)
    {
        var sources = WoodInUse.Resolve(WoodCatalogue.Find("sugar-maple")!, 10, 0.04, densityKgM3, modulusMPa).Sources;
        Assert.Equal(8, sources.Count);
        Assert.Equal(measured, sources.Count(s => s.Contains("measured by the maker", StringComparison.Ordinal)));
        Assert.Equal(densityKgM3.HasValue, sources[0].Contains("measured", StringComparison.Ordinal));
        Assert.Equal(modulusMPa.HasValue, sources[1].Contains("measured", StringComparison.Ordinal));
        Assert.Contains(sources, s => s.Contains("lowest published of the maples", StringComparison.Ordinal));
    }

    [Fact]
    public void Sources_name_a_real_source_for_every_species()
    {
        foreach (var species in WoodCatalogue.All)
        {
            Assert.All(WoodInUse.Resolve(species, 10, 0.04, null, null).Sources, line =>
                Assert.DoesNotContain("no source stated", line, StringComparison.Ordinal));
        }

        var withoutGreen = WoodInUse.Resolve(WoodCatalogue.Find("european-ash")!, 10, 0, null, null);
        Assert.Contains("ANC-18", withoutGreen.Sources[4], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, 0, null, null)]
    [InlineData(41, 0, null, null)]
    [InlineData(double.NaN, 0, null, null)]
    [InlineData(12, -0.01, null, null)]
    [InlineData(12, 1.1, null, null)]
    [InlineData(12, double.NaN, null, null)]
    [InlineData(12, 0, 0.0, null)]
    [InlineData(12, 0, double.NaN, null)]
    [InlineData(12, 0, null, -5.0)]
    [InlineData(12, 0, null, double.PositiveInfinity)]
    public void Nonsense_is_refused(double moisturePercent, double slope, double? densityKgM3, double? modulusMPa) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, moisturePercent, slope, densityKgM3, modulusMPa));

    [Fact] // a solver resolves wood in its inner loop: one object a call, the source lines shared
    public void Resolving_makes_no_garbage_but_its_result()
    {
        var ash = WoodCatalogue.Find("white-ash")!;
        var first = WoodInUse.Resolve(ash, 10, 0.04, null, null);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var second = WoodInUse.Resolve(ash, 11, 0.03, null, null);
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Same(first.Sources, second.Sources);
        // Twelve numbers, two references and an object header are 128 bytes; a list or string more would pass 160.
        Assert.InRange(bytes, 100, 160);
    }

    [Property]
    public void Strength_falls_as_moisture_rises(ushort pick, ushort a, ushort b)
    {
        var (species, drier, wetter) = (Pick(pick), Span(Math.Min(a, b), 0, 40), Span(Math.Max(a, b), 0, 40));
        var (dry, wet) = (WoodInUse.Resolve(species, drier, 0.04, null, null), WoodInUse.Resolve(species, wetter, 0.04, null, null));
        var strictly = a != b && drier < species.MpPercent;
        Falls(dry.BendingStrengthMPa, wet.BendingStrengthMPa, strictly);
        Falls(dry.CompressionStrengthMPa, wet.CompressionStrengthMPa, strictly);
        Falls(dry.ModulusMPa, wet.ModulusMPa, strictly);
        Falls(dry.CrossGrainStrengthMPa, wet.CrossGrainStrengthMPa, strictly: false);
    }

    [Property]
    public void Strength_falls_as_the_grain_runs_out(ushort pick, ushort a, ushort b)
    {
        var (species, mild, steep) = (Pick(pick), Span(Math.Min(a, b), 0, 0.5), Span(Math.Max(a, b), 0, 0.5));
        var (straight, sloping) = (WoodInUse.Resolve(species, 10, mild, null, null), WoodInUse.Resolve(species, 10, steep, null, null));
        Falls(straight.BendingStrengthMPa, sloping.BendingStrengthMPa, a != b);
        Falls(straight.CompressionStrengthMPa, sloping.CompressionStrengthMPa, a != b);
        Falls(straight.ModulusMPa, sloping.ModulusMPa, a != b);
    }

    [Property]
    public void Density_rises_with_moisture(ushort pick, ushort a, ushort b)
    {
        var species = Pick(pick);
        var drier = WoodDensity.KgM3(species, Span(Math.Min(a, b), 0, 60));
        var wetter = WoodDensity.KgM3(species, Span(Math.Max(a, b), 0, 60));
        Falls(wetter, drier, a != b);
    }

    [Property]
    public void Percentiles_lie_below_the_mean_and_above_nothing(ushort pick, ushort moisture, ushort slope)
    {
        var wood = WoodInUse.Resolve(Pick(pick), Span(moisture, 0, 40), Span(slope, 0, 1), null, null);
        Assert.InRange(wood.BendingStrengthMPa, 0.73 * wood.MeanBendingStrengthMPa, 0.74 * wood.MeanBendingStrengthMPa);
        Assert.InRange(wood.CrossGrainStrengthMPa, 0.58 * wood.MeanCrossGrainStrengthMPa, 0.59 * wood.MeanCrossGrainStrengthMPa);
        Assert.True(wood.CompressionStrengthMPa > 0 && wood.ShearModulusMPa > 0 && wood.DensityKgM3 > 0);
        Assert.True(wood.ShearModulusMPa < wood.ModulusMPa && wood.ApparentModulusMPa < wood.ModulusMPa);
    }

    [Property]
    public void Moisture_adjustment_is_continuous_at_the_intersection_moisture(ushort pick)
    {
        var species = Pick(pick);
        var below = MoistureAdjustment.ModulusOfRuptureMPa(species, species.MpPercent - 1e-9);
        var at = MoistureAdjustment.ModulusOfRuptureMPa(species, species.MpPercent);
        Assert.Equal(at, below, 1e-6);
    }

    private static WoodSpecies Pick(ushort pick) => WoodCatalogue.All[pick % WoodCatalogue.All.Count];

    private static double Span(ushort share, double low, double high) => low + ((high - low) * share / ushort.MaxValue);

    private static void Falls(double higher, double lower, bool strictly) =>
        Assert.True(strictly ? lower < higher : lower <= higher, $"{lower} is not below {higher}");
}
