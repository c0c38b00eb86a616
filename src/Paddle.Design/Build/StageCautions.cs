using Paddle.Design.Checks;

namespace Paddle.Design.Build;

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
    /// <param name="design">Cautions of the design, for its wood.</param>
    public static IReadOnlyList<Caution> For(BuildStage stage, IReadOnlyList<Caution> design, string speciesId)
    {
        var edge = Named(design, "edge-tools");
        var saws = Named(design, "saws");
        var dust = design.Where(caution => caution.Id.StartsWith("wood-dust", StringComparison.Ordinal)
            || caution.Id.StartsWith(speciesId + "-", StringComparison.Ordinal));
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
