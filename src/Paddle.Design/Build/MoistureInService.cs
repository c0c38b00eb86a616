using System.Text.Json.Serialization;
using Paddle.Design.Finishing;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>How one size changes between shop and water, for both ways that the growth rings can lie.</summary>
/// <param name="Id">Which size.</param>
/// <param name="BuiltMm">As built, mm.</param>
/// <param name="FlatSawnChangeMm">Change if the rings lie along the face, mm; negative when it shrinks.</param>
/// <param name="QuarterSawnChangeMm">Change if the rings stand square to the face, mm; negative when it shrinks.</param>
internal sealed record SizeChange(string Id, double BuiltMm, double FlatSawnChangeMm, double QuarterSawnChangeMm);

/// <summary>The paddle, shaped to size at the moisture of the design's wood, at the moisture it is used at. Theory M16.</summary>
/// <param name="BuiltMoisturePercent">Moisture of the design's wood, at which it is shaped, percent of ovendry mass.</param>
/// <param name="MoisturePercent">Moisture in use, as stated or as wood comes to in the stated climate, percent of ovendry mass.</param>
/// <param name="BladePercent">Moisture of the blade in use.</param>
/// <param name="Sizes">What shrinks or swells and by how much (Wood Handbook equation 13-2 and table 4-3).</param>
/// <param name="BareWood">Mass and balance of the bare wood in use; the shift is from the paddle as designed.</param>
/// <param name="Notes">What it means.</param>
internal sealed record MoistureInService(
    double BuiltMoisturePercent, double MoisturePercent, [property: JsonIgnore] double BladePercent, IReadOnlyList<SizeChange> Sizes, Laden BareWood,
    IReadOnlyList<string> Notes)
{
    /// <summary>Moisture that wood comes to in a climate: <see cref="EquilibriumMoisture"/>.</summary>
    /// <param name="temperatureC">Air, degrees C.</param>
    public static double FromClimate(double temperatureC, double relativeHumidityPercent) =>
        EquilibriumMoisture.Percent(temperatureC, relativeHumidityPercent);

    /// <summary>Works out sizes, mass and balance in use.</summary>
    /// <param name="report">The design; its density holds at its own moisture.</param>
    /// <param name="builtPercent">Moisture when it was shaped to size, percent, 0 to 40.</param>
    /// <param name="usedPercent">Moisture in use, percent, 0 to 40.</param>
    /// <param name="bladePercent">Moisture of the blade in use where it is wetter, percent; null for the same.</param>
    /// <exception cref="ArgumentOutOfRangeException">A moisture outside 0 to 40 %.</exception>
    /// <exception cref="ArgumentException">The wood is not in the catalogue.</exception>
    /// <remarks>The ovendry wood stays: <c>m2 = m1 (1 + M2/100)/(1 + M1/100)</c>. Along the grain wood moves 0.1-0.2 % from green to
    /// ovendry (Wood Handbook p. 4-5, quoted): a balance point is not moved by that.</remarks>
    public static MoistureInService For(DesignReport report, double builtPercent, double usedPercent, double? bladePercent = null)
    {
        var blade = bladePercent ?? usedPercent;
        Require(builtPercent, nameof(builtPercent));
        Require(usedPercent, nameof(usedPercent));
        Require(blade, nameof(bladePercent));

        var wood = report.Specification.Wood;
        var species = WoodCatalogue.Find(wood.Species)
            ?? throw new ArgumentException($"No shrinkage is known for '{wood.Species}'.", nameof(report));
        var (form, sizes) = (report.Specification.Form, report.Sizes);

        SizeChange Width(string id, double mm, double to) => Change(species, id, mm, builtPercent, to, isWidth: true);
        SizeChange Thickness(string id, double mm, double to) => Change(species, id, mm, builtPercent, to, isWidth: false);
        return new(
            builtPercent,
            usedPercent,
            blade,
            [
                Width("blade.widthMm", form.Blade.WidthMm, blade),
                Thickness("blade.middleThicknessMm", sizes.MiddleThicknessMm, blade),
                Thickness("blade.edgeThicknessMm", sizes.EdgeThicknessMm, blade),
                Width("shaft.widthMm", sizes.ShaftWidthMm, usedPercent),
                Thickness("shaft.thicknessMm", sizes.ShaftThicknessMm, usedPercent),
                Thickness("grip.thicknessMm", sizes.GripThicknessMm, usedPercent),
            ],
            InUse(report, AsBuiltKgM3(species, wood, builtPercent), builtPercent, usedPercent, blade),
            Advice(builtPercent, usedPercent, blade));
    }

    private static SizeChange Change(WoodSpecies species, string id, double mm, double from, double to, bool isWidth)
    {
        var tangential = Shrinkage.ChangeMm(mm, species.ShrinkageTangentialPercent, from, to);
        var radial = Shrinkage.ChangeMm(mm, species.ShrinkageRadialPercent, from, to);
        return isWidth ? new(id, mm, tangential, radial) : new(id, mm, radial, tangential);
    }

    // Shaped to the designed sizes at another moisture than the design's, the same wood is a little denser or lighter.
    private static double AsBuiltKgM3(WoodSpecies species, WoodInUse wood, double builtPercent) =>
        wood.DensityKgM3 * WoodDensity.KgM3(species, builtPercent) / WoodDensity.KgM3(species, wood.MoisturePercent);

    private static Laden InUse(DesignReport report, double builtKgM3, double builtPercent, double hand, double blade)
    {
        var fine = Solid.PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, report.Specification.Form.FineGrid());
        var density = builtKgM3 * 1e-6;
        double mass = 0, first = 0;
        for (var i = 0; i < fine.Count; i++)
        {
            var percent = fine.Grid.Patterns[i].Segment.Zone == Solid.Zone.Blade ? blade : hand;
            var grams = fine.WeightMm(i) * fine.MassArea[i] * density * (100 + percent) / (100 + builtPercent); // theory M16
            mass += grams;
            first += grams * fine.Form.AlongShaftMm(fine.X[i]);
        }

        return new(mass, first / mass, first / mass - report.Mass.CentreOfMassMm);
    }

    private static void Require(double percent, string name)
    {
        if (!(percent is >= 0 and <= 40)) throw new ArgumentOutOfRangeException(name, percent, "Moisture must lie in 0 to 40 %.");
    }

    private static List<string> Advice(double built, double used, double blade)
    {
        var notes = new List<string>();
        if (Math.Max(used, blade) > 20)
            notes.Add("Above 20 % fungi can grow (FAA AC 43.13-1B p. 1-14): let the paddle dry between trips and keep the finish sound.");
        if (Math.Abs(built - used) > 4)
            notes.Add("Bring the wood nearer to the moisture it will be used at before shaping: over 4 points of change it may also warp.");
        if (blade > used) notes.Add("A wet blade weighs more and carries the balance point towards the tip until it has dried.");
        return notes;
    }
}
