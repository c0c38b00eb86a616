using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>What to mark, what to measure and when to stop, stage by stage, in the units of the maker's rules.</summary>
/// <remarks>Sources: order, edge lines and kerf from woodworking magazines (no. 142, August 2004; June/July 2011) and a carver's pages,
/// read; where no source is named, common practice.</remarks>
internal sealed class StageSteps(BuildFacts facts)
{
    // Straight grain that a shaft asks for, 36 in: a carver's page, read.
    private const double StraightGrainMm = 914.4;
    // A round-over bit tears where the section begins to change: common practice, no source.
    private const double BitShortOfMm = 63.5;
    // What a hand-held caliper tells apart on a shaft that is called round: common practice, no source.
    private const double RoundWithinMm = 0.3;

    private DrawingUnits Units => facts.Units;

    internal IReadOnlyList<string> Mark(BuildStage stage) => stage switch
    {
        BuildStage.Blank when facts.IsGluedUp =>
        [
            "The strips glued up are the board; the straightest grain is that of the strip in the middle.",
            $"Trim it to {Up(facts.Blank.LengthMm)} long.",
            .. Lined(),
        ],
        BuildStage.Blank =>
        [
            $"Lay the board so that the straightest grain runs through grip, shaft and throat (over at least {Near(StraightGrainMm)}); slope no steeper "
                + "than 1 in 15, growth rings lying alike all over the blade.",
            $"Cut {Up(facts.Blank.LengthMm)} × {Up(facts.Blank.WidthMm)} from {Board()}.",
            .. Lined(),
        ],
        BuildStage.Sawn =>
        [
            "Lay the half template on the centre line and trace it; flip it about the centre line and trace the other half; turn the board "
                + "over and do the same. Both halves match because one template made them.",
            $"Draw the saw line {Left(facts.SawMm)} outside.",
            "Saw the waste off in pieces, so that a kerf that closes on the blade can be opened.",
        ],
        BuildStage.EdgeLined =>
        [
            "Run a centre line right round the edge.",
            $"Mark the edge thickness {Up(facts.EdgeMm)}, half on each side of it, and round the tip {Up(facts.TipMm)} at its middle.",
            "Draw the shaft's run-out on both faces: full thickness down to the throat, gone a quarter of the way down the blade.",
        ],
        BuildStage.BladeRoughed =>
        [
            $"Bevel the edges first, down to {Face(stage)} off the edge lines; then take the middle down towards the spine, never the other way.",
            "Plane with the grain: from the widest part towards the tip and towards the throat. Where it tears, turn round.",
            "Leave the shaft and the grip square: they are what the vice holds.",
        ],
        BuildStage.BladePlaned =>
        ["Renew the edge lines. Plane both faces by turns, a few strokes each, so that the spine stays in the middle of the edge."],
        BuildStage.ShaftEightSided =>
        [
            $"Plane the shaft square, to its stations' width and thickness with {Face(stage)} left on each face.",
            "Scribe the eight-side lines as tabled at each station, on the faces and on the sides: on an oval shaft the two differ, and the "
                + "corner facet is not at 45 degrees.",
            $"A spar gauge with {facts.Gauge.Between(Units)} between its fences has its points {facts.Gauge.First(Units)} from each fence "
                + $"({facts.Gauge.Apart(Units)} apart).",
            $"A round-over bit may do the corners where the shaft is straight: stop it about {DrawnLength.Rough(BitShortOfMm, Units)} short of the throat and of the grip.",
        ],
        BuildStage.ShaftSixteenSided =>
            ["Scribe the sixteen-side lines about a quarter in from each corner, as tabled; take every corner off evenly."],
        BuildStage.ShaftRounded =>
            ["Pencil the facets; the round is right when no pencil and no flat is left. Fair the throat into the blade by eye and thumb."],
        BuildStage.GripCut =>
        [
            $"Saw a kerf across {(facts.Kerf.Faces == 2 ? "each face" : "the hollowed face")} {Near(facts.Kerf.PlaceMm)} from the top, "
                + $"{Near(facts.Kerf.DepthMm)} deep, and stop: {Up(facts.Kerf.LeftMm)} of wood stays.",
            "Pare down to the kerf from both sides with chisel and half-round rasp, then fair into the shaft. The kerf's floor is the depth gauge.",
            facts.GripFaces == GripFaces.OneSided
                ? "Only one face is hollowed: mark it, and keep the other full."
                : "Both faces alike: the paddle can be turned over in the hand.",
        ],
        BuildStage.Sanded =>
        [
            "Scribble over the face with pencil; sand until it is gone, then change grit.",
            "After the last grit but one wet the wood, let it dry overnight, and only then use the last grit, with the grain: "
                + "P220 on the blade, P400 on shaft and grip.",
        ],
        _ => [.. FinishSteps()],
    };

    internal IReadOnlyList<string> Measure(BuildStage stage) => stage switch
    {
        BuildStage.Blank =>
        [
            "Weigh and measure the blank: its density stands for the book's from here on. Thickness at both ends and the middle.",
            "Moisture 6-12 %, two readings a week apart within 1 point.",
        ],
        BuildStage.Sawn or BuildStage.EdgeLined => ["Width at the numbered stations.", "Weigh; balance on a thin edge laid square across."],
        BuildStage.BladeRoughed or BuildStage.BladePlaned =>
        [
            "Caliper at the centre line and at the edge, at every numbered station of the blade.",
            "Weigh; balance on a thin edge. Already past where the balance is expected to go? Stop and work out a correction.",
        ],
        BuildStage.ShaftEightSided => ["Caliper across the flats, on faces and sides, at the shaft's stations.", "Weigh; balance."],
        BuildStage.ShaftSixteenSided or BuildStage.ShaftRounded => ["Caliper across four pairs of facets at each station.", "Weigh; balance."],
        BuildStage.GripCut =>
            ["Caliper at the grip's stations; try it in the hand, with the glove you wear.", "Weigh; balance: the last check before the fine tools."],
        BuildStage.Sanded =>
        [
            $"{Weigh()}: mark the balance point on tape, turn the paddle over and mark again, take the middle.",
            facts.Finish.IsBare
                ? "These are the figures of the paddle: nothing more goes on."
                : "These are figures of bare wood: with the finish on it will weigh more and balance elsewhere, as the next stage says.",
        ],
        _ => facts.Finish.IsBare
            ? [$"{Weigh()} after a week where it is kept."]
            : [$"{Weigh()} when the last coat is hard: these are the figures of the finished paddle, not to be held against those of bare wood."],
    };

    internal string StopWhen(BuildStage stage) => stage switch
    {
        BuildStage.Blank => "The blank is to length and width, flat, and the grain in the shaft is straight.",
        BuildStage.Sawn => $"The pencil line shows all round with {Left(facts.SawMm)} outside it.",
        BuildStage.EdgeLined => $"The edge is square to the faces, fair to the eye, and {Left(StageAllowance.After(stage, facts.Saw).OutlineMm)} outside the line.",
        BuildStage.BladeRoughed => $"The caliper reads the tabled thickness ({Face(stage)} on each face to come).",
        BuildStage.BladePlaned => $"The caliper reads the tabled thickness ({Face(stage)} on each face to come) and no tool mark is deeper than that.",
        BuildStage.ShaftEightSided => "The eight flats meet the scribed lines and look even end to end.",
        BuildStage.ShaftSixteenSided => "Sixteen facets of even width; no facet has been rounded yet.",
        BuildStage.ShaftRounded => $"The caliper reads alike all round within {Left(RoundWithinMm)} (on an oval: across opposite facets).",
        BuildStage.GripCut => $"The kerfs have just vanished, and the grip reads the tabled thickness ({Face(stage)} on each face to come).",
        BuildStage.Sanded => "No scratch is left across the grain; mass and balance of the bare wood are in the band.",
        _ => facts.AimMet
            ? $"Mass and balance are in the band: {Near(facts.AimMm)} from the top is the aim, {Near(facts.ToleranceMm)} either way."
            : $"Mass and balance are in the band: it balances {Near(Math.Abs(facts.OffsetMm))} {(facts.OffsetMm < 0 ? "above" : "below")} the aim "
                + $"({Near(facts.AimMm)} from the top), as the design does.",
    };

    private string[] Lined() =>
    [
        "Strike the centre line on both faces and square a line across at every numbered station.",
        facts.BendDegrees > 0
            ? "A bent shaft is glued up from strips over a form, or the blank is sawn to the bend from the side: the figures follow the "
                + "bent centre line."
            : "Write on each face which end is the grip: the two faces must carry the same stations.",
    ];

    private IEnumerable<string> FinishSteps()
    {
        var finish = facts.Finish;
        if (finish.TipReinforcement)
        {
            yield return $"Lay the cloth over the last {Near(facts.Tip.LengthMm)} of both faces, on bare wood; fill its weave with resin, let it cure, wash it and "
                + "sand it dull. The other finish goes over it.";
        }

        if (facts.MaskingMm is { } line) yield return $"Tape right round the shaft {Near(line)} from the top of the grip, the edge towards the blade.";
        SurfaceFinish blade = FinishChoice.On(finish.Blade, finish.BladeCoats), shaft = FinishChoice.On(finish.Shaft, finish.ShaftCoats);
        foreach (var kind in (SurfaceFinish[])[SurfaceFinish.Varnish, SurfaceFinish.Oil])
        {
            var zones = (blade == kind, shaft == kind) switch
            {
                (true, true) => finish.BladeCoats == finish.ShaftCoats
                    ? $"the whole paddle: {Coats(finish.BladeCoats)}"
                    : $"the whole paddle: {Coats(finish.BladeCoats)} on the blade, {Coats(finish.ShaftCoats)} on shaft and grip",
                (true, false) => $"the blade: {Coats(finish.BladeCoats)}",
                (false, true) => $"shaft and grip: {Coats(finish.ShaftCoats)}",
                _ => "",
            };
            if (zones.Length == 0) continue;
            yield return kind == SurfaceFinish.Varnish
                ? $"Varnish {zones}, thinned as tabled, each sanded dull before the next."
                : $"Oil {zones}, each wiped dry after a quarter of an hour.";
        }

        if (blade == SurfaceFinish.None && shaft == SurfaceFinish.None) yield return "Nothing goes on the wood: keep the paddle dry and out of the sun.";
        else if (blade == SurfaceFinish.None) yield return "The blade stays bare.";
        else if (shaft == SurfaceFinish.None) yield return "Shaft and grip stay bare.";
    }

    private string Board() => facts.Blank.IsOwn
        ? $"your board, {Near(facts.Blank.ThicknessMm)} thick"
        : $"a board {Near(facts.Blank.ThicknessMm)} thick ({facts.Blank.Stock})";

    private string Weigh() => Units == DrawingUnits.Metric ? "Weigh to 1 g; balance to 2 mm" : "Weigh to a tenth of an ounce; balance to 1/16 in";

    private string Face(BuildStage stage)
    {
        var left = StageAllowance.After(stage, facts.Saw);
        return Left((stage == BuildStage.GripCut ? left.GripFaceMm : stage == BuildStage.ShaftEightSided ? left.ShaftFaceMm : left.BladeFaceMm)!.Value);
    }

    private static string Coats(int count) => count == 1 ? "one coat" : FormattableString.Invariant($"{count} coats");

    private string Near(double mm) => mm > DrawnLength.FineUpToMm ? DrawnLength.Rough(mm, Units) : DrawnLength.Text(mm, Units);

    private string Up(double mm) => DrawnLength.Text(mm, Units, LengthRounding.Up);

    private string Left(double mm) => DrawnLength.Shaving(mm, Units);
}

/// <summary>Figures that the steps' texts quote.</summary>
internal sealed record BuildFacts(
    DrawingUnits Units,
    Blank Blank,
    OutlineSaw Saw,
    double EdgeMm,
    double TipMm,
    double BendDegrees,
    GripFaces GripFaces,
    SparGauge Gauge,
    GripKerf Kerf,
    FinishChoice Finish,
    TipReinforcement Tip,
    double? MaskingMm,
    double AimMm,
    double ToleranceMm,
    double OffsetMm,
    bool IsGluedUp)
{
    internal double SawMm => StageAllowance.SawMm(Saw);
    internal bool AimMet => Math.Abs(OffsetMm) <= ToleranceMm;
}
