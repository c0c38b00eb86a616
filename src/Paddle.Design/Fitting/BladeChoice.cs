using Paddle.Design.Outline;
using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>Sizes of a blade family as the fitting uses them; all come from the catalogue of families, so that both say the same.</summary>
/// <param name="Id">Trade name in the contract.</param>
/// <param name="Name">Name to print inside a sentence.</param>
/// <param name="WidthMm">Default greatest width, mm.</param>
/// <param name="AreaFactor">k in A = k L_b W, that of the family's own outline at its default size.</param>
/// <param name="PressureAt">κ, centre of pressure of a hard stroke as a fraction of the blade from the throat, on the same outline.</param>
/// <param name="ShortestMm">Shortest length of the trade's range, mm.</param>
/// <param name="LongestMm">Longest length of the trade's range, mm.</param>
/// <param name="NarrowestMm">Narrowest width of the trade's range, mm.</param>
/// <param name="WidestMm">Widest width of the trade's range, mm.</param>
internal sealed record BladeSizes(
    string Id,
    string Name,
    double LengthMm,
    double WidthMm,
    double AreaFactor,
    double PressureAt,
    double ShortestMm,
    double LongestMm,
    double NarrowestMm,
    double WidestMm)
{
    /// <summary>The sizes of a family of the catalogue.</summary>
    /// <returns>Its sizes, and the area factor of its outline drawn at the default size.</returns>
    public static BladeSizes Of(BladeFamily family)
    {
        var length = family.DefaultLengthMm;
        var width = family.DefaultWidthMm;
        var plan = BladePlan.For(new BladeShape(family, length, width, family.DefaultWidestAt, family.DefaultFullness, null));
        var outline = new HalfBreadthCurve(plan.Draw(0, BladeShape.NominalShaftHalfWidthMm));
        return new BladeSizes(
            family.Id, InSentence(family.Name), length, width, outline.AreaMm2() / (length * width), PressureCentre(outline),
            family.UsualLengthMm.Min, family.UsualLengthMm.Max, family.UsualWidthMm.Min, family.UsualWidthMm.Max);
    }

    /// <summary>Area of a blade of this family: A = k L_b W.</summary>
    /// <param name="lengthMm">L_b, mm.</param>
    /// <param name="widthMm">W, mm.</param>
    /// <returns>A, mm².</returns>
    public double AreaMm2(double lengthMm, double widthMm) => AreaFactor * lengthMm * widthMm; // theory F20

    // Strips of the blade push with their width times the square of their distance from the hard stroke's pivot, 450 mm above the throat (theory L5, L6).
    private static double PressureCentre(HalfBreadthCurve outline)
    {
        const int Strips = 400;
        const double PivotMm = 450;
        double moment = 0, force = 0;
        for (var i = 0; i < Strips; i++)
        {
            var x = (i + 0.5) / Strips * outline.EndMm;
            var push = outline.HalfBreadthMm(x) * (x + PivotMm) * (x + PivotMm);
            moment += push * x;
            force += push;
        }

        return moment / force / outline.EndMm;
    }

    // Names of shapes are common nouns; a place keeps its capitals, which its second word gives away.
    private static string InSentence(string name) =>
        name.Contains(' ', StringComparison.Ordinal) && char.IsUpper(name[name.IndexOf(' ', StringComparison.Ordinal) + 1])
            ? name
            : Words.Small(name);
}

/// <summary>A blade chosen: family and size as they follow from the person, before they are rounded.</summary>
/// <param name="BendDegrees">Bend between shaft and blade, degrees; 0 for a straight paddle.</param>
/// <param name="WantedAreaMm2">Area that the person and the outing ask of this family, mm².</param>
internal sealed record ChosenBlade(BladeSizes Family, double LengthMm, double WidthMm, double BendDegrees, double WantedAreaMm2)
{
    /// <summary>Area, mm², by the family's area factor.</summary>
    public double AreaMm2 => Family.AreaMm2(LengthMm, WidthMm);
    /// <summary>Length to make, whole mm.</summary>
    public double MadeLengthMm => Math.Round(LengthMm);
    /// <summary>Width to make, whole mm.</summary>
    public double MadeWidthMm => Math.Round(WidthMm);
}

/// <summary>Which blade family suits a water and a seat, and its size: the length fits the body, the width carries the area. Ranges of
/// length and width are the catalogue's (common practice, no source); area factors those of its outlines.</summary>
internal static class BladeChoice
{
    /// <summary>Bend of a bent-shaft paddle, degrees: 12 is the most usual (common practice, no source; 5 to 15 is the trade's range).</summary>
    public const double BentShaftDegrees = 12;
    /// <summary>Hand spacing for which the families' default lengths are meant, mm: 35 in, a practitioner's figure (common practice, no source).</summary>
    public const double ReferenceSpacingMm = 889;

    // Shares of body and area in the blade's length; the width takes the rest. A child needs blade enough to move its share of the boat; a tall
    // person's blade grows nearly as the shaft, or the paddle would no longer balance at the lower hand. Calibrated so that a child of 1.2 m gets a paddle
    // of 43 to 45 in and a man of 1.9 m one that stands between chin and nose (service's own choice).
    private const double SmallSpacingPower = 0.4, LargeSpacingPower = 0.8, DragPower = 1.0 / 6;

    /// <summary>The families by trade name.</summary>
    public static IReadOnlyList<BladeSizes> Families { get; } = [.. BladeFamilies.All.Select(BladeSizes.Of)];

    /// <summary>A family by its trade name.</summary>
    /// <param name="id">Trade name, such as <c>ottertail</c>.</param>
    /// <exception cref="ArgumentException">There is no such family.</exception>
    public static BladeSizes Family(string id) =>
        Families.FirstOrDefault(f => f.Id == id) ?? throw new ArgumentException($"No blade family is called {id}.", nameof(id));

    /// <summary>Whether a bent shaft is made: asked for by a race or a wish, for somebody who sits, away from rapids.</summary>
    /// <returns>Whether. Cadence has no say: how quick somebody paddles today must not turn one kind of paddle into another.</returns>
    public static bool IsBent(SeatRequest seat, WaterKind? water, OutingPurpose? purpose, bool wished) =>
        seat.Posture == Posture.Sitting && water != WaterKind.FastWater && (wished || purpose == OutingPurpose.Race);

    /// <summary>Family that suits the water and the seat, and why.</summary>
    /// <returns>Family and the reason. Source: uses named in the trade (common practice, no source; power order from forum reports).</returns>
    public static (BladeSizes Family, string Reason) Choose(WaterKind? water, SeatPlace? place, bool bent, bool sensitiveJoints) => water switch
    {
        WaterKind.FastWater => (Family("square-tip"), "Fast water: a short, wide blade with a square tip bites at once and stands the bottom."),
        _ when bent => (Family("teardrop"), "Bent shaft: a short, wide teardrop stays nearer upright at the end of a short seated stroke."),
        WaterKind.Shallow => (Family("sugar-island"), "Shallow water: the straight sides and square tip of a Sugar Island put the area in a short blade."),
        WaterKind.River when sensitiveJoints => (Family("sturgeon-nose"), "River, joints to spare: the blunt point of a sturgeon nose enters quietly and loads the hands gradually."),
        WaterKind.River => (Family("sugar-island"), "River: the straight sides and square tip of a Sugar Island hold in mixed depth."),
        _ when place == SeatPlace.Bow && !sensitiveJoints => (Family("beavertail"), "Lake, bow seat: a beavertail has its full area low on the blade, for power."),
        _ => (Family("ottertail"), "Lake: an ottertail is widest near the hand and narrow at the tip, quiet to recover under water and easy on the hands."),
    };

    /// <summary>Blade lengths usual for a hand spacing, mm: the trade's, shorter for the small and longer for the tall.</summary>
    /// <param name="spacingMm">S, mm.</param>
    public static Outline.Range UsualLengthMm(BladeSizes family, double spacingMm) => new(
        Math.Max(PaddleLengths.BladeLengthLimitsMm.Min, Math.Min(1, spacingMm / Survey.HandSpacing.Women.Mean) * family.ShortestMm),
        Math.Max(1, spacingMm / Survey.HandSpacing.Men.Percentile95) * family.LongestMm);

    /// <summary>Blade widths usual for a person, mm: the trade's, and for a small one the same shares of the width that carries its own part of a boat.</summary>
    /// <param name="spacingMm">S, mm.</param>
    public static Outline.Range UsualWidthMm(BladeSizes family, double spacingMm, double bodyMassKg)
    {
        var share = Math.Min(1, EffortArea.DragShare(bodyMassKg) * family.LengthMm / LengthForBodyMm(family, spacingMm, bodyMassKg));
        return new(share * family.NarrowestMm, share * family.WidestMm);
    }

    /// <summary>Size a family for a person: L_b = L₀ (S/889)^n μ^(1/6), n 0.4 below 889 mm and 0.8 above, and W = A/(k L_b), with A the
    /// outing's area. The trade's lengths hold from the mean woman's hand spacing to that of the 95th percentile of men and shrink or grow
    /// in proportion beyond; the stroke moves a small person's width about its own as far as the family's narrowest and widest stand off
    /// its usual one. Where a limit is met the area gives way, not the length.</summary>
    /// <param name="family">The family; L₀ and A₀ are its default length and area.</param>
    /// <param name="spacingMm">S, the body's hand spacing, mm.</param>
    /// <param name="longestMm">Longest blade the water allows, mm; a value below the family's shortest gives the shortest.</param>
    /// <remarks>Source: service's own choice, calibrated on common practice and not validated.</remarks>
    public static ChosenBlade Size(
        BladeSizes family, double spacingMm, StrokeDemand demand, double bendDegrees, double longestMm = double.PositiveInfinity)
    {
        var shortest = UsualLengthMm(family, spacingMm).Min;
        var fitting = LengthForBodyMm(family, spacingMm, demand.BodyMassKg);
        var length = Math.Clamp(fitting, shortest, Math.Max(shortest, longestMm)); // theory F21

        var area = demand.AreaShare * family.AreaMm2(family.LengthMm, family.WidthMm);
        var usual = UsualWidthMm(family, spacingMm, demand.BodyMassKg);
        var width = Math.Clamp(area / (family.AreaFactor * length), usual.Min, usual.Max);
        return new ChosenBlade(family, length, width, bendDegrees, area);
    }

    /// <summary>A blade's length over the family's usual one: (S/S₀)ⁿ μ^(1/6).</summary>
    /// <param name="spacingShare">S/S₀, hand spacing over that of the usual blade.</param>
    /// <param name="dragShare">μ, drag of the paddler's part of a boat over the usual one's.</param>
    internal static double LengthShare(double spacingShare, double dragShare) =>
        Math.Pow(dragShare, DragPower) * Math.Pow(spacingShare, spacingShare < 1 ? SmallSpacingPower : LargeSpacingPower); // theory F21

    private static double LengthForBodyMm(BladeSizes family, double spacingMm, double bodyMassKg)
    {
        var body = family.LengthMm * LengthShare(spacingMm / ReferenceSpacingMm, EffortArea.DragShare(bodyMassKg));
        var usual = UsualLengthMm(family, spacingMm);
        return Math.Clamp(body, usual.Min, usual.Max);
    }
}

/// <summary>Whether a blade can be immersed in the depth given.</summary>
/// <param name="DepthMm">Depth of the water, mm; null where unlimited or unknown.</param>
/// <param name="NeededMm">Depth that the blade which fits the body needs, mm.</param>
/// <param name="Blade">The blade to use: the one that fits the body, shortened as far as its family goes where the water asks for it.</param>
/// <param name="ImmersedShare">Share of that blade's length that can be under water, 0 to 1.</param>
internal sealed record ImmersionAdvice(double? DepthMm, double NeededMm, bool Fits, ChosenBlade Blade, double ImmersedShare);

/// <summary>Depth a blade needs, and the length that fits a shallower water.</summary>
internal static class ImmersionDepth
{
    /// <summary>Water to leave between tip and bottom, mm (assumption, no source).</summary>
    public const double BottomClearanceMm = 50;

    /// <summary>Depth needed with the blade upright and its throat at the water: L_b + clearance.</summary>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <remarks>Source: geometry; clearance assumed.</remarks>
    public static double NeededMm(double bladeLengthMm) => bladeLengthMm + BottomClearanceMm; // theory F22

    /// <summary>Check a blade against a depth; where it does not fit, shorten it within its family, the width taking up the area as far as
    /// it can. The family stays: another one is offered as an alternative, so that a centimetre of water never turns one paddle into
    /// another.</summary>
    /// <param name="depthMm">Depth, mm; null where unlimited or unknown.</param>
    public static ImmersionAdvice Check(BladeSizes family, double spacingMm, StrokeDemand demand, double bendDegrees, double? depthMm)
    {
        var chosen = BladeChoice.Size(family, spacingMm, demand, bendDegrees);
        var needed = NeededMm(chosen.LengthMm);
        if (depthMm is not { } depth || depth >= needed) return new ImmersionAdvice(depthMm, needed, true, chosen, 1);
        var longest = depth - BottomClearanceMm;
        var blade = BladeChoice.Size(family, spacingMm, demand, bendDegrees, longest);
        return new ImmersionAdvice(depthMm, needed, false, blade, Math.Clamp(longest / blade.LengthMm, 0, 1));
    }
}
