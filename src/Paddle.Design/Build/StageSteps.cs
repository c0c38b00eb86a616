using System.Globalization;
using Paddle.Design.Outline;

namespace Paddle.Design.Build;

/// <summary>What to mark, what to measure and when to stop, stage by stage.</summary>
/// <remarks>
/// Sources: order, edge lines and kerf from woodworking magazines (no. 142, August 2004; June/July 2011) and a carver's pages, read;
/// where no source is named, common practice.
/// </remarks>
internal static class StageSteps
{
    internal static IReadOnlyList<string> Mark(BuildStage stage, BuildFacts facts) => stage switch
    {
        BuildStage.Blank =>
        [
            "Lay the board so that the straightest grain runs through grip, shaft and throat (over at least 914 mm, 36 in); slope no steeper "
                + "than 1 in 15, growth rings lying alike all over the blade.",
            Invariant($"Cut {facts.Blank.LengthMm:F0} x {facts.Blank.WidthMm:F0} mm from a board {facts.Blank.ThicknessMm:F1} mm thick."),
            "Strike the centre line on both faces and square a line across at every numbered station.",
            facts.BendDegrees > 0
                ? "A bent shaft is glued up from strips over a form, or the blank is sawn to the bend from the side: the figures follow the "
                    + "bent centre line."
                : "Write on each face which end is the grip: the two faces must carry the same stations.",
        ],
        BuildStage.Sawn =>
        [
            "Lay the half template on the centre line and trace it; flip it about the centre line and trace the other half; turn the board "
                + "over and do the same. Both halves match because one template made them.",
            Invariant($"Draw the saw line {facts.SawMm:F1} mm outside."),
            "Saw the waste off in pieces, so that a kerf that closes on the blade can be opened.",
        ],
        BuildStage.EdgeLined =>
        [
            "Run a centre line right round the edge.",
            string.Create(
                CultureInfo.InvariantCulture,
                $"Mark the edge thickness {facts.EdgeMm:F1} mm, half on each side of it, and round the tip {facts.TipMm:F1} mm at "
                + $"its middle."),
            "Draw the shaft's run-out on both faces: full thickness down to the throat, gone a quarter of the way down the blade.",
        ],
        BuildStage.BladeRoughed =>
        [
            "Bevel the edges first, down to the edge lines and 1 mm; then take the middle down towards the spine, never the other way.",
            "Plane with the grain: from the widest part towards the tip and towards the throat. Where it tears, turn round.",
            "Leave the shaft and the grip square: they are what the vice holds.",
        ],
        BuildStage.BladePlaned =>
        [
            "Renew the edge lines. Plane both faces by turns, a few strokes each, so that the spine stays in the middle of the edge.",
        ],
        BuildStage.ShaftEightSided =>
        [
            "Plane the shaft square, to its stations' width and thickness with 0.5 mm left on each face.",
            "Scribe the eight-side lines as tabled at each station, on the faces and on the sides: on an oval shaft the two differ, and the "
                + "corner facet is not at 45 degrees.",
            string.Create(
                CultureInfo.InvariantCulture,
                $"A spar gauge with {facts.Gauge.BetweenFencesMm:F0} mm between its fences has its points "
                + $"{facts.Gauge.FirstPointMm:F2} mm from each fence ({facts.Gauge.BetweenPointsMm:F2} mm apart)."),
            "A round-over bit may do the corners where the shaft is straight: stop it 50-80 mm short of the throat and of the grip.",
        ],
        BuildStage.ShaftSixteenSided =>
            ["Scribe the sixteen-side lines about a quarter in from each corner, as tabled; take every corner off evenly."],
        BuildStage.ShaftRounded =>
            ["Pencil the facets; the round is right when no pencil and no flat is left. Fair the throat into the blade by eye and thumb."],
        BuildStage.GripCut =>
        [
            string.Create(
                CultureInfo.InvariantCulture,
                $"Saw a kerf across {(facts.Kerf.Faces == 2 ? "each face" : "the hollowed face")} {facts.Kerf.PlaceMm:F0} mm from "
                + $"the top, {facts.Kerf.DepthMm:F1} mm deep, and stop: {facts.Kerf.LeftMm:F1} mm of wood stays."),
            "Pare down to the kerf from both sides with chisel and half-round rasp, then fair into the shaft. The kerf's floor is the depth gauge.",
            facts.GripFaces == GripFaces.OneSided
                ? "Only one face is hollowed: mark it, and keep the other full."
                : "Both faces alike: the paddle can be turned over in the hand.",
        ],
        BuildStage.Sanded =>
        [
            "Scribble over the face with pencil; sand until it is gone, then change grit.",
            "After the last grit but one wet the wood, let it dry overnight, and only then use the last grit, with the grain.",
        ],
        _ =>
        [
            "Last grit: P220 on the blade, P400 on shaft and grip. Weigh and balance before any finish goes on.",
            Invariant($"Tape right round the shaft {facts.MaskingMm:F0} mm from the top of the grip, the edge towards the blade."),
        ],
    };

    internal static IReadOnlyList<string> Measure(BuildStage stage) => stage switch
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
        _ => ["Weigh to 1 g; balance to 2 mm: mark the balance point on tape, turn the paddle over and mark again, take the middle."],
    };

    internal static string StopWhen(BuildStage stage, BuildFacts facts) => stage switch
    {
        BuildStage.Blank => "The blank is to length and width, flat, and the grain in the shaft is straight.",
        BuildStage.Sawn => Invariant($"The pencil line shows all round with {facts.SawMm:F1} mm outside it."),
        BuildStage.EdgeLined => "The edge is square to the faces, fair to the eye, and half a millimetre outside the line.",
        BuildStage.BladeRoughed => "The caliper reads the tabled thickness (1.0 mm on each face to come).",
        BuildStage.BladePlaned => "The caliper reads the tabled thickness (0.5 mm on each face to come) and no tool mark is deeper than that.",
        BuildStage.ShaftEightSided => "The eight flats meet the scribed lines and look even end to end.",
        BuildStage.ShaftSixteenSided => "Sixteen facets of even width; no facet has been rounded yet.",
        BuildStage.ShaftRounded => "The caliper reads alike all round within 0.3 mm (on an oval: across opposite facets).",
        BuildStage.GripCut => "The kerfs have just vanished, and the grip reads the tabled thickness (0.3 mm on each face to come).",
        BuildStage.Sanded => "No scratch is left across the grain; mass within the band.",
        _ => string.Create(
            CultureInfo.InvariantCulture,
            $"Mass and balance are in the band: {facts.AimMm:F0} mm from the top is the aim, {facts.ToleranceMm:F0} mm either "
            + $"way."),
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}

/// <summary>Figures that the steps' texts quote.</summary>
internal sealed record BuildFacts(
    Blank Blank,
    double SawMm,
    double EdgeMm,
    double TipMm,
    double BendDegrees,
    GripFaces GripFaces,
    SparGauge Gauge,
    GripKerf Kerf,
    double MaskingMm,
    double AimMm,
    double ToleranceMm);
