using System.Text.Json.Serialization;

namespace Paddle.Design.Build;

/// <summary>The stages of making a one-piece paddle, in the order of the work.</summary>
/// <remarks>Source of the order: edges first, then the blade from the edges towards the spine, the shaft last because square it can be held
/// in a vice (a woodworking magazine, no. 142, August 2004, pp. 32-40); the rest common practice, no source.</remarks>
public enum BuildStage
{
    /// <summary>The board cut to length and width.</summary>
    Blank,
    /// <summary>The outline sawn at the board's full thickness.</summary>
    Sawn,
    /// <summary>Edges planed square to the line and the edge thickness marked round them.</summary>
    EdgeLined,
    /// <summary>The blade thinned with coarse tools.</summary>
    BladeRoughed,
    BladePlaned,
    /// <summary>The shaft thinned to size and its corners taken off to eight sides.</summary>
    ShaftEightSided,
    /// <summary>The shaft taken to sixteen sides.</summary>
    ShaftSixteenSided,
    /// <summary>The shaft rounded, the throat faired and the blade scraped.</summary>
    ShaftRounded,
    /// <summary>The grip cut and faired into the shaft.</summary>
    GripCut,
    /// <summary>Sanded to the last grit: bare wood at its designed sizes, the last stage of the wood.</summary>
    Sanded,
    /// <summary>The same wood with its finish on, as it goes on the water; the solid is that of <see cref="Sanded"/>.</summary>
    Finished,
}

/// <summary>The stages and their titles.</summary>
internal static class BuildStages
{
    /// <summary>All stages in the order of the work.</summary>
    public static IReadOnlyList<BuildStage> All { get; } = Enum.GetValues<BuildStage>();

    private static readonly IReadOnlyList<BuildStage> OfStrips = [.. All.Where(stage => stage >= BuildStage.ShaftEightSided)];

    /// <summary>The stages whose weights hold: those before the eight-sided shaft are of a board as thick all over as it was bought, and strips are not.</summary>
    public static IReadOnlyList<BuildStage> Weighed(bool isGluedUp) => isGluedUp ? OfStrips : All;

    /// <summary>A stage's title for a heading.</summary>
    public static string Title(BuildStage stage) => stage switch
    {
        BuildStage.Blank => "Blank cut to length and width",
        BuildStage.Sawn => "Outline sawn",
        BuildStage.EdgeLined => "Edges planed and lined",
        BuildStage.BladeRoughed => "Blade roughed out",
        BuildStage.BladePlaned => "Blade planed",
        BuildStage.ShaftEightSided => "Shaft eight-sided",
        BuildStage.ShaftSixteenSided => "Shaft sixteen-sided",
        BuildStage.ShaftRounded => "Shaft rounded, blade scraped",
        BuildStage.GripCut => "Grip cut",
        BuildStage.Sanded => "Sanded: bare wood at its sizes",
        _ => "Finished",
    };
}

/// <summary>The saw that cuts the outline.</summary>
public enum OutlineSaw
{
    /// <summary>Band saw or hand saw.</summary>
    BandSaw,
    /// <summary>Jigsaw: its blade bends in thick wood, so it stays further off the line.</summary>
    Jigsaw,
}

/// <summary>How many sides the shaft has.</summary>
internal enum ShaftShape
{
    /// <summary>Square or rectangular.</summary>
    Square,
    EightSided,
    SixteenSided,
    /// <summary>Round or oval.</summary>
    Round,
}

/// <summary>Wood left on outside the designed sizes at one stage; null where the board's full thickness still stands.</summary>
/// <param name="OutlineMm">Outside the outline, on each side, mm.</param>
/// <param name="BladeFaceMm">On each face of the blade, mm, or null.</param>
/// <param name="ShaftFaceMm">On each face and side of the shaft, mm, or null.</param>
/// <param name="GripFaceMm">On each face of the grip, mm, or null.</param>
/// <param name="FaceToleranceMm">How well a face is held by the tools of this stage, mm: 9 times in 10 within it.</param>
/// <remarks>Source: common practice, no source, bounded by a published loss of up to 3.2 mm in sawing, a published stand-off of 3.2 mm from
/// the edge line until the final shaping, and the stock that a sanding sequence takes (0.33 mm from P80, wide-belt figures). Wood cannot be
/// put back, so the larger value was taken where two were read.</remarks>
internal sealed record StageAllowance(
    double OutlineMm, double? BladeFaceMm, double? ShaftFaceMm, double? GripFaceMm, [property: JsonIgnore] ShaftShape Shaft, double FaceToleranceMm)
{
    /// <summary>Left outside the line by a saw, mm.</summary>
    public static double SawMm(OutlineSaw saw) => saw == OutlineSaw.Jigsaw ? 3.0 : 2.0;

    /// <summary>The allowance left after a stage.</summary>
    /// <param name="stage">The stage; the blank is as wide as the board, not as the outline.</param>
    public static StageAllowance After(BuildStage stage, OutlineSaw saw) => stage switch
    {
        BuildStage.Blank or BuildStage.Sawn => new(SawMm(saw), null, null, null, ShaftShape.Square, 0.25),
        BuildStage.EdgeLined => new(0.5, null, null, null, ShaftShape.Square, 0.25),
        BuildStage.BladeRoughed => new(0.5, 1.0, null, null, ShaftShape.Square, 0.5),
        BuildStage.BladePlaned => new(0.5, 0.5, null, null, ShaftShape.Square, 0.25),
        BuildStage.ShaftEightSided => new(0.5, 0.5, 0.5, null, ShaftShape.EightSided, 0.25),
        BuildStage.ShaftSixteenSided => new(0.5, 0.5, 0.3, null, ShaftShape.SixteenSided, 0.25),
        BuildStage.ShaftRounded => new(0.3, 0.3, 0.3, null, ShaftShape.Round, 0.2),
        BuildStage.GripCut => new(0.3, 0.3, 0.3, 0.3, ShaftShape.Round, 0.2),
        _ => new(0, 0, 0, 0, ShaftShape.Round, 0.15),
    };
}

/// <summary>What can hurt at each stage.</summary>
internal static class StageCautions
{
    private static readonly Caution PowerPlane = new(
        "power-plane",
        "Clamp the work, keep both hands on the plane and the cord behind it; let it stop before you put it down, and unplug it before "
        + "touching the blades. Follow its manual.",
        "OSHA 3080, hand and power tools, from memory");

    private static readonly Caution BandSaw = new(
        "band-saw",
        "Set the guide just above the work and keep the rest of the blade covered; fingers never in line with the blade. A jigsaw's blade "
        + "comes out below: look where.",
        "29 CFR 1910.213(i), from memory; the jigsaw common practice, no source");

    private static readonly Caution Router = new(
        "router",
        "If you round over with a router: feed against the cutter's turn, work clamped and sound, speed as marked on the bit; wait for it to "
        + "stop before you lift it or clear chips.",
        "OSHA 3157, woodworking hazards (1999), read in a copy");

    private static readonly Caution Noise = new(
        "noise",
        "Wear hearing protection with planers, routers and saws: at 93 dBA 76 minutes, at 97 dBA 30 minutes and at 101 dBA 12 minutes fill "
        + "a day's dose without it.",
        "NIOSH limit 85 dBA over 8 hours, 3 dB exchange; tool levels a woodworking magazine, no. 140, April 2004, p. 65, read");

    private static readonly Caution FinishingSpace = new(
        "finishing-space",
        "Do not sand where you varnish, and keep pilot lights, heaters and sparks away until the smell has gone.",
        "common practice, no source");

    private static readonly Caution Epoxy = new(
        "epoxy",
        "Uncured epoxy sensitises the skin, often for life: thick nitrile gloves changed often, no bare skin, no sanding of part-cured resin. "
        + "Mix small: a deep pot heats itself, so spread it out.",
        "HSE RR079 and Contact Dermatitis 10:146 (1984), as quoted, read; for life and the heating pot from memory and common practice");

    private static readonly Caution FirstLaunch = new(
        "first-use",
        "Before the first trip load the paddle on land, listen and look for cracks, then try it close to shore with somebody by.",
        "common practice, no source");

    /// <summary>The cautions of one stage, most urgent first; those that every paddle carries keep their text.</summary>
    /// <param name="design">Cautions of the design, for its woods.</param>
    /// <param name="speciesIds">The woods: one, or those of the strips.</param>
    public static IReadOnlyList<Caution> For(BuildStage stage, IReadOnlyList<Caution> design, IReadOnlyList<string> speciesIds)
    {
        var edge = Named(design, "edge-tools");
        var saws = Named(design, "saws");
        var dust = design.Where(caution => caution.Id.StartsWith("wood-dust", StringComparison.Ordinal)
            || speciesIds.Any(id => caution.Id.StartsWith(id + "-", StringComparison.Ordinal)));
        return stage switch
        {
            BuildStage.Blank => [.. saws, .. Named(design, "stock"), Noise, .. dust],
            BuildStage.Sawn => [.. saws, BandSaw, Noise, .. dust],
            BuildStage.EdgeLined => [.. edge],
            BuildStage.BladeRoughed or BuildStage.BladePlaned => [.. edge, PowerPlane, Noise, .. dust],
            BuildStage.ShaftEightSided or BuildStage.ShaftSixteenSided => [.. edge, Router, Noise],
            BuildStage.ShaftRounded => [.. edge, .. dust],
            BuildStage.GripCut => [.. edge, .. saws, .. dust],
            BuildStage.Sanded => [.. dust],
            _ =>
            [
                .. Named(design, "oily-rags"), .. Named(design, "solvent"), FinishingSpace, Epoxy, .. Named(design, "life-jacket"),
                .. Named(design, "cold-water"), FirstLaunch, .. Named(design, "design-aid"),
            ],
        };
    }

    private static IEnumerable<Caution> Named(IReadOnlyList<Caution> design, string id) => design.Where(caution => caution.Id == id);
}

/// <summary>A predicted figure with the band that nine paddles in ten fall in.</summary>
/// <param name="Value">Prediction for the design's wood.</param>
/// <param name="Low">5th percentile.</param>
/// <param name="High">95th percentile.</param>
internal sealed record StageFigure(double Value, double Low, double High)
{
    /// <summary>A band of a half-width on both sides.</summary>
    internal static StageFigure Around(double value, double half) => new(value, value - half, value + half);
}
