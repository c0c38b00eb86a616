using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class WoodSafetyTests
{
    [Theory]
    [InlineData(0, GrainVerdict.Accept)]
    [InlineData(1.0 / 25, GrainVerdict.Accept)]
    [InlineData(0.05, GrainVerdict.Accept)] // 1:20 itself
    [InlineData(0.051, GrainVerdict.Warn)]
    [InlineData(1.0 / 15, GrainVerdict.Warn)]
    [InlineData(1.0 / 12, GrainVerdict.Warn)] // 1:12 itself
    [InlineData(0.0834, GrainVerdict.Refuse)]
    [InlineData(0.1, GrainVerdict.Refuse)]
    [InlineData(double.NaN, GrainVerdict.Refuse)]
    public void Slope_of_grain(double slope, GrainVerdict verdict) => Assert.Equal(verdict, WoodSafety.JudgeSlope(slope));

    [Fact] // limits lie either side of the 1:15 of FAA AC 43.13-1B table 1-1
    public void Limits_bracket_the_aircraft_rule()
    {
        Assert.True(WoodSafety.WarnSlopeOfGrain < 1.0 / 15);
        Assert.True(WoodSafety.RefuseSlopeOfGrain > 1.0 / 15);
    }

    [Fact] // the reason given for the dry limit: 30 % humidity at 21 C
    public void Dry_limit_is_a_heated_room_in_winter() =>
        Assert.Equal(WoodSafety.MinimumMoisturePercent, EquilibriumMoisture.Percent(21, 30), 0.5);

    [Fact]
    public void Untreated_stock_is_accepted() => Assert.Null(WoodSafety.RefusalOfTreatment("none"));

    [Theory]
    [InlineData("preservative-treated", "arsenic")]
    [InlineData("creosoted", "carcinogen")]
    [InlineData("painted-salvage", "lead")]
    [InlineData("unknown-salvage", "unknown")]
    [InlineData("bathed-in-starlight", "not known here")] // a treatment nobody listed
    [InlineData("None", "not known here")]
    [InlineData("", "not known here")]
    public void Other_stock_is_refused_with_its_reason(string treatment, string because)
    {
        var refusal = WoodSafety.RefusalOfTreatment(treatment);
        Assert.NotNull(refusal);
        Assert.Equal(treatment, refusal.Id);
        Assert.Contains(because, refusal.Reason, StringComparison.Ordinal);
        Assert.NotEmpty(refusal.Source);
    }

    [Theory]
    [InlineData("yew")]
    [InlineData("oleander")]
    [InlineData("laburnum")]
    [InlineData("manchineel")]
    [InlineData("poison-sumac")]
    public void Poisonous_woods_are_refused_and_not_in_the_catalogue(string id)
    {
        Assert.NotNull(WoodSafety.RefusalOfSpecies(id));
        Assert.Null(WoodCatalogue.Find(id));
    }

    [Fact]
    public void No_catalogue_species_is_refused() =>
        Assert.All(WoodCatalogue.All, species => Assert.Null(WoodSafety.RefusalOfSpecies(species.Id)));

    [Fact]
    public void Every_caution_has_text_and_source()
    {
        var notes = WoodSafety.DustCautions.Append(WoodSafety.KnotRule)
            .Concat(WoodCatalogue.All.SelectMany(s => s.SafetyNotes))
            .Concat(WoodSafety.RefusedTreatments.Concat(WoodSafety.RefusedSpecies).Select(r => new SafetyNote(r.Reason, r.Source)));
        Assert.All(notes, note =>
        {
            Assert.EndsWith(".", note.Text, StringComparison.Ordinal);
            Assert.False(string.IsNullOrWhiteSpace(note.Source));
        });
    }
}
