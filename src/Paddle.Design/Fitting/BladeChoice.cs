using Paddle.Design.Outline;

namespace Paddle.Design.Fitting;

/// <summary>Sizes of a blade family as the fitting uses them; all come from the catalogue of families, so that both say the same.</summary>
/// <param name="Id">Trade name.</param>
/// <param name="LengthMm">Default length, mm.</param>
/// <param name="WidthMm">Default greatest width, mm.</param>
/// <param name="AreaFactor">k in A = k L_b W, that of the family's own outline at its default size.</param>
/// <param name="ShortestMm">Shortest length of the trade's range, mm.</param>
/// <param name="LongestMm">Longest length of the trade's range, mm.</param>
/// <param name="NarrowestMm">Narrowest width of the trade's range, mm.</param>
/// <param name="WidestMm">Widest width of the trade's range, mm.</param>
public sealed record BladeSizes(
    string Id,
    double LengthMm,
    double WidthMm,
    double AreaFactor,
    double ShortestMm,
    double LongestMm,
    double NarrowestMm,
    double WidestMm)
{
    /// <summary>The sizes of a family of the catalogue.</summary>
    /// <param name="family">The family.</param>
    /// <returns>Its sizes, and the area factor of its outline drawn at the default size.</returns>
    public static BladeSizes Of(BladeFamily family)
    {
        ArgumentNullException.ThrowIfNull(family);
        double length = family.DefaultLengthMm;
        double width = family.DefaultWidthMm;
        var plan = BladePlan.For(new BladeShape(family, length, width, family.DefaultWidestAt, family.DefaultFullness, null));
        double area = new HalfBreadthCurve(plan.Draw(0, BladeShape.NominalShaftHalfWidthMm)).AreaMm2();
        return new BladeSizes(
            family.Id, length, width, area / (length * width),
            family.UsualLengthMm.Min, family.UsualLengthMm.Max, family.UsualWidthMm.Min, family.UsualWidthMm.Max);
    }

    /// <summary>Area of a blade of this family: A = k L_b W.</summary>
    /// <param name="lengthMm">L_b, mm.</param>
    /// <param name="widthMm">W, mm.</param>
    /// <returns>A, mm².</returns>
    public double AreaMm2(double lengthMm, double widthMm) => AreaFactor * lengthMm * widthMm; // theory F20
}

/// <summary>A blade chosen: family and size, with the reason.</summary>
/// <param name="Family">Sizes of the family.</param>
/// <param name="LengthMm">Length, whole mm.</param>
/// <param name="WidthMm">Greatest width, whole mm.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees; 0 for a straight paddle.</param>
public sealed record ChosenBlade(BladeSizes Family, double LengthMm, double WidthMm, double BendDegrees)
{
    /// <summary>Area, mm², by the family's area factor.</summary>
    public double AreaMm2 => Family.AreaMm2(LengthMm, WidthMm);
}

/// <summary>
/// Which blade family suits a water and a stroke, and what size carries the area. Ranges of length and width are the catalogue's
/// (common practice, no source); area factors those of its outlines.
/// </summary>
public static class BladeChoice
{
    /// <summary>Bend of a bent-shaft paddle, degrees: 12 is the most usual (common practice, no source; 5 to 15 is the trade's range).</summary>
    public const double BentShaftDegrees = 12;

    /// <summary>Cadence from which a seated paddler is taken to sit and switch, strokes a minute. Source: forum and mailing-list reports, 45 to 60.</summary>
    public const double SwitchingStrokesPerMinute = 50;

    /// <summary>Cadence from which a long straight-sided blade is offered on deep water, strokes a minute (common practice, no source: high cadence).</summary>
    public const double QuickStrokesPerMinute = 55;

    /// <summary>The families by trade name.</summary>
    public static IReadOnlyList<BladeSizes> Families { get; } = [.. BladeFamilies.All.Select(BladeSizes.Of)];

    /// <summary>A family by its trade name.</summary>
    /// <param name="id">Trade name, such as <c>ottertail</c>.</param>
    /// <returns>The family.</returns>
    /// <exception cref="ArgumentException">There is no such family.</exception>
    public static BladeSizes Family(string id) =>
        Families.FirstOrDefault(f => f.Id == id) ?? throw new ArgumentException($"No blade family is called {id}.", nameof(id));

    /// <summary>Family that suits the water, the seat and the stroke, and why.</summary>
    /// <param name="water">Kind of water.</param>
    /// <param name="seat">Seat.</param>
    /// <param name="strokesPerMinute">Cadence.</param>
    /// <param name="sensitiveJoints">Whether joints are to be spared.</param>
    /// <returns>Family, bend in degrees and the reason. Source: uses named in the trade (common practice, no source; power and cadence order from forum reports).</returns>
    public static (BladeSizes Family, double BendDegrees, string Reason) Choose(WaterKind water, SeatPlan seat, double strokesPerMinute, bool sensitiveJoints)
    {
        ArgumentNullException.ThrowIfNull(seat);
        bool switches = seat.Posture == Posture.Sitting && strokesPerMinute >= SwitchingStrokesPerMinute;
        return water switch
        {
            WaterKind.FastWater => (Family("square-tip"), 0, "Fast water: a short, wide, square blade bites at once and stands the bottom."),
            _ when switches => (Family("teardrop"), BentShaftDegrees, "Seated at a quick cadence: a short, wide blade on a bent shaft stays nearer upright at the end of a short stroke."),
            WaterKind.Shallow => (Family("sugar-island"), 0, "Shallow water: straight sides and a square tip put the area in a short blade."),
            WaterKind.River when sensitiveJoints => (Family("sturgeon-nose"), 0, "River, joints to spare: a blunt point enters quietly and loads the hands gradually."),
            WaterKind.River => (Family("sugar-island"), 0, "River: straight sides and a square tip hold in mixed depth."),
            _ when strokesPerMinute >= QuickStrokesPerMinute => (Family("voyageur"), 0, "Deep water at a quick cadence: a long narrow blade asks little of each stroke."),
            _ when seat.Place == SeatPlace.Bow && !sensitiveJoints => (Family("beavertail"), 0, "Deep water in the bow: full area low on the blade, for power."),
            _ => (Family("ottertail"), 0, "Deep water: widest near the hand, narrow at the tip, quiet to recover under water and easy on the hands."),
        };
    }

    /// <summary>
    /// Size a family for an area, keeping its proportions as far as its range allows: both sides scale by √(A/A₀), and where one
    /// meets its limit the other takes up the rest.
    /// </summary>
    /// <param name="family">The family.</param>
    /// <param name="areaMm2">A, area wanted, mm².</param>
    /// <param name="bendDegrees">Bend, degrees.</param>
    /// <param name="longestMm">Longest blade the water allows, mm; a value below the family's shortest gives the shortest.</param>
    /// <returns>The blade, whole millimetres, inside the family's range.</returns>
    public static ChosenBlade Size(BladeSizes family, double areaMm2, double bendDegrees, double longestMm = double.PositiveInfinity)
    {
        ArgumentNullException.ThrowIfNull(family);
        double longest = Math.Floor(Math.Max(family.ShortestMm, Math.Min(family.LongestMm, longestMm)));
        double scale = Math.Sqrt(areaMm2 / family.AreaMm2(family.LengthMm, family.WidthMm)); // theory F21
        double length = Math.Clamp(family.LengthMm * scale, family.ShortestMm, longest);
        double width = Math.Clamp(areaMm2 / (family.AreaFactor * length), family.NarrowestMm, family.WidestMm);
        length = Math.Clamp(areaMm2 / (family.AreaFactor * width), family.ShortestMm, longest);
        return new ChosenBlade(family, Math.Round(length), Math.Round(width), bendDegrees);
    }
}
