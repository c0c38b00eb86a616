using System.Globalization;
using Paddle.Design.Balance;
using Paddle.Design.Boards;
using Paddle.Design.Finishing;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Checks;

/// <summary>Holds a finished design against every limit that its user would ask about.</summary>
internal static class DesignChecks
{
    private const string Asked = "the limit asked for in the request";
    private const string Practice = "common practice, no source";

    internal static IReadOnlyList<DesignCheck> Of(
        PaddleSpecification asked, PaddleSizes sizes, double thickestMm, BalanceResult balance, MassProperties mass,
        FinishedMass finished, StrengthCheck strength, Flex flex, LaminateReport? laminate = null)
    {
        var (form, _, wood, loads, aims) = asked;
        var checks = new List<DesignCheck>(24);
        AddBalance(checks, balance, asked.Units);
        AddStrength(checks, strength, wood, loads);
        AddFlex(checks, aims, flex);
        AddMass(checks, aims, mass, finished, wood, form.Places.HandSpacingMm, laminate is not null);
        AddShape(checks, form, sizes, loads);
        AddWood(checks, wood);
        checks.Add(Board(asked, thickestMm, balance.BindingLimits));
        if (laminate is not null) checks.AddRange(LaminateChecks.Of(laminate));
        return checks;
    }

    // Off balance, a paddle is less pleasant and no less safe: the maker is told, and told what it costs.
    private static void AddBalance(List<DesignCheck> checks, BalanceResult balance, DrawingUnits units) => checks.Add(AtMost(
        "balance.offset", Math.Abs(balance.OffsetMm), balance.ToleranceMm, "mm", CheckStatus.Warn, Asked, "Finished, it balances where asked.",
        OffBalanceWords.Say(balance, units)));

    private static void AddStrength(List<DesignCheck> checks, StrengthCheck strength, WoodInUse wood, Loads loads)
    {
        foreach (var result in strength.Cases)
        {
            checks.Add(AtLeast(
                "strength." + result.Case.Id, result.SafetyFactor, result.Case.LeastFactor, "", CheckStatus.Fail,
                result.Case.Source, "Strong enough.", "Weaker than the safety factor asked for."));
        }

        checks.Add(AtLeast(
            "strength.shaft-buckling", strength.BucklingLoadN / loads.Cases.Max(loadCase => loadCase.ThrustN), 3, "", CheckStatus.Warn,
            "Euler column between the hands; factor of 3 is the service's own", "The shaft is far from buckling.",
            "Pushing off could buckle the shaft."));

        const double DampPercent = 16; // equilibrium at 20 degrees C and 80 % humidity, theory W13
        if (wood.MoisturePercent >= DampPercent || WoodCatalogue.Find(wood.Species) is not { } species) return;
        var wet = MoistureAdjustment.ModulusOfRuptureMPa(species, DampPercent)
            / MoistureAdjustment.ModulusOfRuptureMPa(species, wood.MoisturePercent);
        checks.Add(AtLeast(
            "strength.damp", strength.Cases.First(result => result.Case.Id == "hard-stroke").SafetyFactor * wet, 1, "", CheckStatus.Warn,
            "Wood Handbook eq. 5-3 at 16 % moisture, the equilibrium at 20 degrees C and 80 % humidity (eq. 4-5)", "A hard stroke holds when the wood has been in damp air for weeks (16 %).",
            "Damp (16 %), a hard stroke would load it beyond its 5th-percentile strength: keep the finish sound."));
    }

    private static void AddFlex(List<DesignCheck> checks, Aims aims, Flex flex)
    {
        if (aims.LeastBenchFlexMm is { } least)
        {
            checks.Add(AtLeast(
                "flex.least", flex.BenchFlexMm, least, "mm", CheckStatus.Fail, Asked, "Gives enough.", "Stiffer than asked for."));
        }

        if (aims.MostBenchFlexMm is { } most)
        {
            checks.Add(AtMost(
                "flex.most", flex.BenchFlexMm, most, "mm", CheckStatus.Fail, Asked, "Stiff enough.", "Gives more than asked for."));
        }
    }

    private static void AddMass(List<DesignCheck> checks, Aims aims, MassProperties mass, FinishedMass finished, WoodInUse wood, double spacingMm, bool isGluedUp)
    {
        if (aims.MaximumMassG is { } most)
        {
            checks.Add(AtMost(
                "mass.most", finished.MassG, most, "g", CheckStatus.Fail, Asked, "Light enough.", "Heavier than asked for."));
        }

        checks.Add(AtMost(
            "mass.floats", isGluedUp ? 1000 * mass.TotalG / mass.VolumeCm3 : wood.DensityKgM3, 1000, "kg/m3", CheckStatus.Fail, "density of fresh water", "Floats.", "Would sink."));
        const double UsualMostG = 850;
        var longer = Math.Max(1, spacingMm / BladeChoice.ReferenceSpacingMm);
        checks.Add(AtMost(
            "mass.usual", mass.TotalG, UsualMostG * longer * longer, "g", CheckStatus.Warn,
            Practice + ": one-piece touring paddles weigh 550-850 g, those of taller people in proportion to length and width", "Of a usual weight.",
            "Heavier than most people like for a day: a lighter wood, a smaller blade or a lower hard stroke would help."));
    }

    private static void AddShape(List<DesignCheck> checks, PaddleForm form, PaddleSizes sizes, Loads loads)
    {
        const string HandSource = "28-40 mm accepted, 30-40 mm rated best: Kong and Lowe 2005, Int J Ind Ergon 35:495-507 (abstract)";
        const string LeastSource = "27 mm is the least that makers carve in hardwood for a hand spacing of 889 mm, smaller hands in proportion: common practice, no source";
        var spacing = form.Places.HandSpacingMm;
        var bodySpacing = form.BendDegrees > 0 ? spacing + FittingAdvisor.BentShaftShorterMm : spacing;
        var grip = ShaftFit.EquivalentDiameterMm(sizes.ShaftWidthMm, sizes.ShaftThicknessMm);
        checks.Add(AtLeast(
            "hand.shaft-least", grip, LeastShaftMm(spacing), "mm", CheckStatus.Warn, LeastSource, "Fills the lower hand.", "Thin in the lower hand."));
        checks.Add(AtMost(
            "hand.shaft-most", grip, 40, "mm", CheckStatus.Warn, HandSource, "The lower hand closes round it.", "Thick in the lower hand."));
        checks.Add(AtMost(
            "shape.shaft-oval", Math.Max(sizes.ShaftThicknessMm / sizes.ShaftWidthMm, sizes.ShaftWidthMm / sizes.ShaftThicknessMm),
            SizeLimits.MostOval + 0.005, "", CheckStatus.Warn, Practice, "Round to gently oval.", "More oval than usual."));

        if (form.Blade.Family is not { } family) return;
        var inTrade = BladeChoice.Family(family.Id);
        var narrowest = BladeChoice.UsualWidthMm(inTrade, bodySpacing, loads.BodyMassKg).Min;
        AddUsual(checks, "shape.blade-length", form.Blade.LengthMm, BladeChoice.UsualLengthMm(inTrade, bodySpacing), family.Name);
        AddUsual(checks, "shape.blade-width", form.Blade.WidthMm, family.UsualWidthMm with { Min = narrowest }, family.Name);
        var reached = form.BladePlan.Fullness;
        var asked = Math.Abs(reached - form.Blade.Fullness) < 0.002;
        checks.Add(new(
            "shape.fullness", asked ? CheckStatus.Pass : CheckStatus.Warn, reached, form.Blade.Fullness, "",
            asked ? "As full as asked." : "At these proportions the curve stays fair only at another fullness: it is drawn with this one.",
            "area below the widest point over its length times the full width"));
    }

    private static double LeastShaftMm(double spacingMm) =>
        27 * Math.Clamp(spacingMm / BladeChoice.ReferenceSpacingMm, ShaftFit.SmallestMm / ShaftFit.TradeMm, 1);

    private static void AddUsual(List<DesignCheck> checks, string id, double value, Outline.Range usual, string family)
    {
        var limit = value < usual.Min ? usual.Min : usual.Max;
        const double Rounded = 0.5; // blades are made to whole millimetres
        var status = value >= usual.Min - Rounded && value <= usual.Max + Rounded ? CheckStatus.Pass : CheckStatus.Warn;
        checks.Add(new(
            id, status, value, limit, "mm", status == CheckStatus.Pass ? "Usual for the family." : $"Unusual for this family: {family.ToLowerInvariant()}.", Practice));
    }

    private static void AddWood(List<DesignCheck> checks, WoodInUse wood)
    {
        checks.Add(AtMost(
            "wood.slope-of-grain", wood.SlopeOfGrain, WoodSafety.WarnSlopeOfGrain, "", CheckStatus.Warn, WoodSafety.SlopeOfGrainSource,
            "Straight enough.", "Grain runs out: look again at the shaft and the throat, and take a straighter board if you can."));
        if (WoodCatalogue.Find(wood.Species) is not { } species) return;
        var status = species.Suitability == Suitability.Caution ? CheckStatus.Warn : CheckStatus.Pass;
        checks.Add(new("wood.suitability", status, 0, 0, "", species.SuitabilityReason, Practice));
    }

    // Whether a board can be had is no fault of the design; only a board in hand can be too thin for it.
    private static DesignCheck Board(PaddleSpecification asked, double thickestMm, IReadOnlyList<BindingLimit> limits)
    {
        const string Sold = "boards as sold: PS 20 and suppliers' charts, read; 0.5 mm planed off each face common practice, no source";
        var units = asked.Units;
        if (asked.UsableThicknessMm is not { } usable)
        {
            var need = BoardNeed.For(thickestMm, WoodCatalogue.Find(asked.Wood.Species)?.IsSoftwood ?? false);
            return new("board.stock", CheckStatus.Pass, need.NeededMm, need.Stock.ThicknessMm, "mm", need.InWords(units), Sold);
        }

        const double Hair = 1e-6;
        var status = thickestMm <= usable + Hair ? CheckStatus.Pass : thickestMm <= asked.BoardThicknessMm + Hair ? CheckStatus.Warn : CheckStatus.Fail;
        var words = $"Your board, {DrawnLength.Text(asked.BoardThicknessMm!.Value, units)}, leaves {DrawnLength.Text(usable, units)} when planed; "
            + $"the thickest section is {DrawnLength.Text(thickestMm, units, LengthRounding.Up)}.";
        if (status != CheckStatus.Pass) words += " It is too thin: take a thicker board, or thinner sizes.";
        else if (limits.FirstOrDefault(limit => limit.Id == "wood.boardThicknessMm") is { } binding) words += BoardCost.InWords(binding, units);
        return new("board.stock", status, thickestMm, usable, "mm", words, Sold);
    }

    private static DesignCheck AtMost(
        string id, double value, double limit, string unit, CheckStatus otherwise, string source, string good, string bad) =>
        value <= limit ? new(id, CheckStatus.Pass, value, limit, unit, good, source) : new(id, otherwise, value, limit, unit, bad, source);

    private static DesignCheck AtLeast(
        string id, double value, double limit, string unit, CheckStatus otherwise, string source, string good, string bad) =>
        value >= limit ? new(id, CheckStatus.Pass, value, limit, unit, good, source) : new(id, otherwise, value, limit, unit, bad, source);
}

/// <summary>How a check came out.</summary>
public enum CheckStatus
{
    /// <summary>Within its limit.</summary>
    Pass,
    /// <summary>Worth a look.</summary>
    Warn,
    /// <summary>Outside its limit.</summary>
    Fail,
}

/// <summary>One figure held against its limit.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Status">How it came out.</param>
/// <param name="Value">The figure.</param>
/// <param name="Limit">Its limit.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Message">What it means, in plain words.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record DesignCheck(string Id, CheckStatus Status, double Value, double Limit, string Unit, string Message, string Source);

/// <summary>What a board that holds the design back costs, in words.</summary>
internal static class BoardCost
{
    private const double SixteenthMm = DrawnLength.MmPerInch / 16;

    /// <summary>A sentence, with the space before it.</summary>
    /// <param name="binding">The board as a limit that binds: its gain is for a millimetre more.</param>
    internal static string InWords(BindingLimit binding, DrawingUnits units)
    {
        var (step, gain) = units == DrawingUnits.Metric ? ("millimetre", binding.Gain) : ("sixteenth of an inch", binding.Gain * SixteenthMm);
        string Shift(string what) => $"bring the {what} {DrawnLength.Shaving(gain, units)} nearer to what is asked";
        var would = binding.GainUnit switch
        {
            BindingLimitList.Saved => $"save {DrawnAmount.Mass(gain, units)}",
            BindingLimitList.OfSafety => string.Create(CultureInfo.InvariantCulture, $"raise the least safety factor by {gain:0.00}"),
            BindingLimitList.OfBalance => Shift("balance"),
            BindingLimitList.OfFlex => Shift("flex"),
            _ => Shift("shape"),
        };
        return $" It holds the design back: each {step} more would {would}.";
    }
}
