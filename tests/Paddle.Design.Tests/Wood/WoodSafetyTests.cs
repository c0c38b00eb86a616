using Paddle.Design.Request;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class WoodSafetyTests
{
    [Theory]
    [InlineData(0, "accept")]
    [InlineData(1.0 / 25, "accept")]
    [InlineData(0.05, "accept")] // 1:20 itself
    [InlineData(0.051, "warn")]
    [InlineData(1.0 / 15, "warn")]
    [InlineData(1.0 / 12, "warn")] // 1:12 itself
    [InlineData(1.0 / 12 + 1e-10, "warn")] // 1:12 written out
    [InlineData(0.0834, "refuse")]
    [InlineData(0.1, "refuse")]
    [InlineData(double.NaN, "refuse")]
    public void Slope_of_grain(double slope, string verdict) => Assert.Equal(
        verdict,
        !Bounds.Of<WoodRequest>(nameof(WoodRequest.SlopeOfGrain)).Holds(slope) ? "refuse" : slope > WoodSafety.WarnSlopeOfGrain ? "warn" : "accept");

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
            .Concat(WoodSafety.RefusedTreatments.Concat(WoodSafety.RefusedSpecies).Select(r => new SourcedText(r.Reason, r.Source)));
        Assert.All(notes, note =>
        {
            Assert.EndsWith(".", note.Text, StringComparison.Ordinal);
            Assert.False(string.IsNullOrWhiteSpace(note.Source));
        });
    }
}
