namespace Paddle.Design.Build;

/// <summary>Sanding of one zone.</summary>
/// <param name="Zone">Zone of the paddle.</param>
/// <param name="Grits">Grits in order, P grades (FEPA, ISO 6344).</param>
/// <param name="RemovesMm">Wood that the sequence takes from each face, mm, at most.</param>
/// <param name="Why">Why it stops there.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record SandingStep(string Zone, IReadOnlyList<int> Grits, double RemovesMm, string Why, string Source);

/// <summary>Sanding by zone.</summary>
internal static class SandingPlan
{
    /// <summary>Wood that the next grit must take to clear the scratches of a grit, mm per face. Source: wide-belt sanding table, a
    /// woodworking trade site, 7 August 2014, read (inches there): an upper value for hand sanding. Beyond P220 the table ends.</summary>
    public static IReadOnlyDictionary<int, double> NextRemovesMm { get; } = new Dictionary<int, double>
    {
        [60] = 0.38,
        [80] = 0.20,
        [100] = 0.15,
        [120] = 0.10,
        [150] = 0.05,
        [180] = 0.025,
        [220] = 0.013,
    };

    public static IReadOnlyList<SandingStep> All { get; } =
    [
        Step("blade", [80, 120, 180, 220],
            "A film of varnish bridges P220 scratches and needs their hold; finer gains nothing under it.",
            "finish makers' sheets (bare wood 120-220) and a woodworking magazine's rules for sanding, read"),
        Step("shaft and grip", [80, 120, 180, 240, 320, 400],
            "Bare or oiled wood is felt by the hand: stop at P400; up to P800 if you like, but a very fine polish on a hard, dense grip "
            + "feels slippery when wet.",
            "common practice, no source"),
        Step("between coats of varnish", [220, 320],
            "P220 on the early coats, P320 on the late ones, only until the shine is gone.",
            "a boat-owners' association's coat schedule, July 2012, read"),
    ];

    /// <summary>Wood taken by a sequence after its first grit, mm per face, as far as the table goes. Theory M11.</summary>
    public static double RemovesMm(IReadOnlyList<int> grits)
    {
        var sum = 0.0;
        for (var i = 0; i + 1 < grits.Count; i++) sum += NextRemovesMm.GetValueOrDefault(grits[i]);
        return sum; // theory M11
    }

    private static SandingStep Step(string zone, IReadOnlyList<int> grits, string why, string source) =>
        new(zone, grits, grits[0] >= 220 ? 0 : RemovesMm(grits), why, source);
}
