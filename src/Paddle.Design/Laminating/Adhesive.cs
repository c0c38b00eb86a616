namespace Paddle.Design.Laminating;

/// <summary>The glue.</summary>
/// <param name="Id">Its class.</param>
/// <param name="Name">Its name.</param>
/// <param name="SpreadGM2">Glue needed for a square metre of joint, both faces together, g/m².</param>
/// <param name="SpreadSource">Where that comes from.</param>
/// <param name="ClampLeastMPa">Least pressure of the clamps, MPa.</param>
/// <param name="ClampMostMPa">Most, MPa.</param>
/// <param name="ClampSource">Where that comes from.</param>
/// <param name="CureHours">Hours in the clamps and before planing, at 20 degrees C.</param>
/// <param name="Use">How it is used.</param>
/// <param name="Caution">What can hurt.</param>
/// <param name="CautionSource">Where the caution comes from.</param>
public sealed record Adhesive(
    string Id, string Name, double SpreadGM2, string SpreadSource, double ClampLeastMPa, double ClampMostMPa, string ClampSource, double CureHours,
    string Use, string Caution, string CautionSource)
{
    private const string Practice = "common practice, no source";
    private const string Clamped = "a glue maker's technical guide, read: 0.7 to 1.0 MPa for soft woods, 1.0 to 1.4 for cherry and soft maple, 1.4 to 2.1 for hard ones";

    /// <summary>The classes, the usual one first.</summary>
    public static IReadOnlyList<Adhesive> All { get; } =
    [
        new(
            "epoxy", "epoxy", 350, Practice, 0.02, 0.1, Practice + ": just until the joint is closed and a bead shows all along; more starves it", 24,
            "Wet both faces with plain resin, then spread thickened resin on one. It fills a gap as wide as a card is thick, and softens in heat: keep "
            + "a dark paddle out of a hot car.",
            "Uncured epoxy and its hardener make skin allergic, for good: wear nitrile gloves, keep it off the skin, never wash it off with "
            + "solvent, and do not sand it before it has cured for a week; the dust of half-cured resin sensitises too.",
            "HSE RR079 and Contact Dermatitis 10:146 (1984), as quoted, read; the week and the solvent from memory"),
        new(
            "polyurethane", "moisture-curing polyurethane", 200, Practice, 0.7, 2.1, Clamped, 12,
            "Damp one face, spread the other, and clamp hard at once: the foam that comes out has no strength and fills no gap.",
            "It holds isocyanates (MDI), which make skin and airways allergic, for good: gloves, fresh air, no spraying and no heating; who has "
            + "asthma uses another glue.",
            "Rother and Schlüter 2021, Occupational exposure to diisocyanates in the European Union, abstract read: potent sensitisers of skin and airways, a main cause of asthma at work"),
        new(
            "waterproof-pva", "waterproof PVA (D4)", 180, Practice, 0.7, 2.1, Clamped, 24,
            "Spread both faces thinly and clamp within ten minutes. It creeps under lasting load and softens in heat and long wet: keep such a "
            + "paddle varnished and dry between trips.",
            "Little harm in it; keep it off eyes and skin. D4 by EN 204 holds when wet, but it is a class for joinery, not for what a life hangs on.",
            "EN 204 (durability classes of wood adhesives), from memory"),
    ];

    /// <summary>The class of a name, or null.</summary>
    public static Adhesive? Find(string id) => All.FirstOrDefault(one => one.Id == id);
}
