namespace Paddle.Design.Outline;

/// <summary>A closed range of allowed or usual values.</summary>
public readonly record struct Range(double Min, double Max)
{
    /// <summary>Whether <paramref name="value"/> lies within the range, ends included.</summary>
    public bool Contains(double value) => value >= Min && value <= Max;
}

/// <summary>How the part of the blade below its widest point is drawn.</summary>
public enum TailKind
{
    /// <summary>One sweep from the widest point to a round tip.</summary>
    Rounded,
    /// <summary>Nearly straight sides, then a tip that turns the corner.</summary>
    Straight,
}

/// <summary>A blade shape known to the trade, with the sizes it usually has.</summary>
/// <param name="Id">Name in the contract, such as <c>ottertail</c>.</param>
/// <param name="DefaultWidthMm">Full width when none is asked, mm.</param>
/// <param name="UsualWidthMm">Full widths usual in the trade, mm.</param>
/// <param name="DefaultWidestAt">Place of the widest point as a fraction of the blade from the throat.</param>
/// <param name="WidestAtLimits">Places of the widest point that the family's curve can carry.</param>
/// <param name="DefaultFullness">Area below the widest point, over that part's length times the full width.</param>
/// <param name="FullnessLimits">Fullnesses that the family's curve can carry.</param>
/// <param name="Tail">How the part below the widest point is drawn.</param>
/// <param name="TailReach">Rounded tails: how far the widest point's flat direction carries on, as a fraction of the tail.</param>
/// <param name="SideEnd">Straight tails: where the side ends and the tip begins, as a fraction of the blade.</param>
/// <param name="SideDrop">Straight tails: how much the side closes in by then, as a fraction of the half-width.</param>
/// <param name="Source">Where the sizes come from.</param>
public sealed record BladeFamily(
    string Id,
    string Name,
    string Water,
    double DefaultLengthMm,
    Range UsualLengthMm,
    double DefaultWidthMm,
    Range UsualWidthMm,
    double DefaultWidestAt,
    Range WidestAtLimits,
    double DefaultFullness,
    Range FullnessLimits,
    TailKind Tail,
    double TailReach,
    double SideEnd,
    double SideDrop,
    string Source);

/// <summary>The blade families that the service draws. To add one: add an entry here and look at its picture.</summary>
internal static class BladeFamilies
{
    // Blades reported by makers: 6 × 27 in and narrow ones below 5 in (ottertails), 7 × 22, 8 × 21 and 6 1/2 × 24 in (beavertails), 8 × 22 to
    // 24 in (Sugar Islands). The defaults are what a hand spacing of 35 in turns into a paddle of 60 to 62 in, the trade's own arithmetic; the
    // voyageur's is longer, those of square tip and teardrop are shorter by nature.
    private const string Custom = "usual sizes: common practice and makers' reports in forums and a magazine; default within them is the service's own choice";

    /// <summary>All families, by id.</summary>
    public static IReadOnlyList<BladeFamily> All { get; } =
    [
        new("beavertail", "Beavertail", "All-round lake touring and the bow seat; widest in the lower half.",
            590, new(530, 650), 168, new(150, 205), 0.60, new(0.45, 0.75), 0.80, new(0.68, 0.85),
            TailKind.Rounded, 0.52, 0, 0, Custom),
        new("ottertail", "Ottertail", "Deep lakes, solo and stern; widest in the upper half, nearest the lower hand, kind to the joints.",
            620, new(560, 690), 148, new(125, 160), 0.36, new(0.22, 0.48), 0.74, new(0.64, 0.77),
            TailKind.Rounded, 0.50, 0, 0, Custom),
        new("square-tip", "Square tip", "Fast water and shallows; straight sides and a square tip that bites at once.",
            510, new(460, 550), 200, new(185, 215), 0.62, new(0.40, 0.75), 0.93, new(0.84, 0.935),
            TailKind.Straight, 0, 0.78, 0.02, Custom),
        new("sturgeon-nose", "Sturgeon nose", "Deep water with some shallows; a tapered, blunt point that enters quietly.",
            610, new(550, 690), 160, new(130, 170), 0.60, new(0.50, 0.72), 0.72, new(0.66, 0.78),
            TailKind.Rounded, 0.46, 0, 0, Custom),
        new("sugar-island", "Sugar Island", "Rivers and shallows; straight sides and a squarer tip with rounded corners.",
            570, new(500, 620), 172, new(150, 205), 0.58, new(0.40, 0.70), 0.90, new(0.84, 0.94),
            TailKind.Straight, 0, 0.74, 0.03, Custom),
        new("teardrop", "Teardrop", "Bent shafts, seated, switching sides; short and wide with a flat-round tip.",
            470, new(430, 510), 205, new(190, 215), 0.68, new(0.55, 0.80), 0.83, new(0.72, 0.88),
            TailKind.Rounded, 0.55, 0, 0, Custom),
        new("voyageur", "Voyageur", "Deep lakes at a high cadence; long and narrow with straight sides.",
            700, new(640, 780), 118, new(90, 130), 0.34, new(0.22, 0.60), 0.92, new(0.88, 0.95),
            TailKind.Straight, 0, 0.82, 0.05, Custom),
    ];

    /// <summary>The family with this id, or null.</summary>
    public static BladeFamily? Find(string id) => All.FirstOrDefault(family => family.Id == id);
}

/// <summary>The blade to be drawn, seen on its face.</summary>
/// <param name="Family">Its family; null when <paramref name="Offsets"/> gives the maker's own shape.</param>
/// <param name="LengthMm">Throat to tip, mm.</param>
/// <param name="WidthMm">Full width at the widest point, mm.</param>
/// <param name="WidestAt">Place of the widest point as a fraction of the blade from the throat.</param>
/// <param name="Fullness">Area below the widest point, over that part's length times the full width.</param>
/// <param name="Offsets">The maker's own table of offsets from the throat, or null.</param>
public sealed record BladeShape(
    BladeFamily? Family,
    double LengthMm,
    double WidthMm,
    double WidestAt,
    double Fullness,
    IReadOnlyList<Offset>? Offsets)
{
    /// <summary>Half-width of shaft (mm) for which the tail is drawn; another shaft changes the shoulder only.</summary>
    internal const double NominalShaftHalfWidthMm = 15;

    /// <summary>Half the full width, mm.</summary>
    public double HalfWidthMm => WidthMm / 2;
}

/// <summary>One line of a table of offsets.</summary>
/// <param name="XMm">Station, mm from the throat towards the tip.</param>
public readonly record struct Offset(double XMm, double HalfBreadthMm);
