using System.Globalization;
using System.Runtime.CompilerServices;
using Paddle.Design.Balance;
using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>Says in plain words, and in the units of the design, what a correction means.</summary>
/// <param name="report">The design.</param>
internal sealed class CorrectionWords(DesignReport report, BuildStage stage, BalanceCorrection correction)
{
    // A cut of so few passes is balanced between them; of a deeper one two thirds go first. Common practice, no source.
    private const double FewPassesMm = 0.3;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private DrawingUnits Units => report.Specification.Units;

    /// <summary>The status in a sentence.</summary>
    public string Summary => correction.Status switch
    {
        CorrectionStatus.MeasureAgain => $"Measure again before anything is cut: {Misfits()}.",
        CorrectionStatus.Cut => $"Take {Mass(correction.Removals.Sum(cut => cut.MassG))} off beyond the plan: {Listed([.. correction.Removals.Select(Cut)])}.",
        CorrectionStatus.OutOfReach => "No cut that the limits allow brings it nearer its aim.",
        _ when Outlook.IsToPlan => "The paddle follows its plan: nothing comes off beyond it.",
        _ => "The paddle ends where it should: nothing comes off beyond the plan.",
    };

    /// <summary>What is doubted, the worst first; empty when nothing is.</summary>
    public IReadOnlyList<CodedNote> Doubts => correction.Doubt switch
    {
        null => [],
        { Readings.Count: 0 } =>
        [
            Note(
                "readings-do-not-fit", Plain,
                $"No single reading is to blame, but together they lie further off this stage of the plan than wood and hands put them."),
        ],
        { Readings: { } readings } => [.. readings.Select(Doubted)],
    };

    /// <summary>What explains the readings; null when they are not believed.</summary>
    public CodedNote? Explanation => correction.Outlook?.Explanation switch
    {
        null => null,
        { UnevenNeeded: false } => Note("even-wood", Plain, $"Wood of one density explains mass and balance point."),
        var found => Note(
            "uneven-wood", Plain,
            $"Even wood at the sizes of this stage would balance {Length(Math.Abs(found.UnexplainedMm))} "
            + $"{(found.UnexplainedMm > 0 ? "nearer the grip" : "nearer the tip")} than read: taken as wood "
            + $"{Math.Abs(found.EndToEndPercent):F1} % {(found.EndToEndPercent > 0 ? "denser" : "lighter")} at the tip end than at the grip end, "
            + $"and as thickness off the plan by up to {Thin(found.ThicknessErrorsMm.Max(Math.Abs))}."),
    };

    /// <summary>What to do, and what to know before doing it.</summary>
    public IReadOnlyList<CodedNote> Advice => correction.Status == CorrectionStatus.MeasureAgain ? [.. Again()] : [.. Believed()];

    /// <summary>Where and how to take one cut.</summary>
    public string How(Removal removal)
    {
        var off = $"From {Place(removal.FromMm)} to {Place(removal.ToMm)} from the top of the grip: {Thin(removal.PerFaceMm)} off each face along the middle";
        var places = report.Specification.Form.Places;
        return removal.Zone switch
        {
            CorrectionZone.ShaftUpper =>
                $"{off} where the grip ends, at {Place(places.GripEndMm)}, half of it at {Place(HalfWayMm)}, running out to nothing at the lower hand, at the edges and into the grip.",
            CorrectionZone.ShaftLower =>
                $"{off}. Above the lower hand go on, with half of it at {Place(HalfWayMm)}, running out to nothing where the grip ends, at {Place(places.GripEndMm)}; below, running out "
                + $"to nothing in the shoulder of the blade, at {Place(places.ThroatMm + BladeBlend.ShoulderEnd * places.BladeMm)}, and at the edges.",
            _ => $"{off}, running out to nothing at the edges and into the neighbouring zones.",
        };
    }

    /// <summary>The same in a line for a drawing.</summary>
    public string Brief(Removal removal)
    {
        var half = removal.Zone is CorrectionZone.ShaftUpper or CorrectionZone.ShaftLower ? $", half of it at {Place(HalfWayMm)}" : "";
        return $"{Words.Capital(Name(removal.Zone)["the ".Length..])}: {Thin(removal.PerFaceMm)} off each face, {Place(removal.FromMm)} to {Place(removal.ToMm)} from the top{half}, {Mass(removal.MassG)}";
    }

    // Both cuts of the shaft run out over all of it between grip and lower hand, the one downwards and the other upwards: half way each has half. Theory M22.
    private double HalfWayMm => (report.Specification.Form.Places.GripEndMm + report.Specification.Form.Places.LowerHandMm) / 2;

    /// <summary>A zone as a maker calls it.</summary>
    public static string Name(CorrectionZone zone) => zone switch
    {
        CorrectionZone.Grip => "the grip",
        CorrectionZone.ShaftUpper => "the upper shaft",
        CorrectionZone.ShaftLower => "the lower shaft",
        CorrectionZone.BladeUpperThird => "the upper third of the blade",
        CorrectionZone.BladeMiddleThird => "the middle third of the blade",
        _ => "the lower third of the blade",
    };

    private Outlook Outlook => correction.Outlook!;

    private string Cut(Removal cut) => $"{Thin(cut.ThicknessMm)} from {Name(cut.Zone)}";

    private string Misfits() => correction.Doubt!.Readings.Count switch
    {
        0 => "the readings do not fit this stage of the plan",
        1 => $"{Called(correction.Doubt.Readings[0])} does not fit",
        _ => $"{Listed([.. correction.Doubt.Readings.Select(Called)])} do not fit",
    };

    private CodedNote Doubted(ReadingDoubt doubt)
    {
        var (code, read, expected) = doubt.Kind switch
        {
            ReadingKind.Mass => ("mass-does-not-fit", Mass(doubt.Read), $"{Mass(doubt.Low)} to {Mass(doubt.High)}"),
            ReadingKind.Balance => ("balance-does-not-fit", Place(doubt.Read), $"{Place(doubt.Low)} to {Place(doubt.High)}"),
            _ => ("thickness-does-not-fit", Length(doubt.Read), $"{Length(doubt.Low)} to {Length(doubt.High)}"),
        };
        var name = Called(doubt);
        return Note(
            code, Plain,
            $"{Words.Capital(name)} reads {read} where {expected} is to be expected.{Density(doubt)}{Slip(doubt)}");
    }

    private string Called(ReadingDoubt doubt) => doubt.Kind switch
    {
        ReadingKind.Mass => "the mass",
        ReadingKind.Balance => "the balance point",
        _ => $"the thickness at {Place(correction.ThicknessPlacesMm[doubt.Index])}",
    };

    private string Density(ReadingDoubt doubt)
    {
        var planned = report.Specification.Wood.DensityKgM3;
        return doubt.Kind == ReadingKind.Mass
            ? $" It would take wood of {DrawnAmount.Density(planned * doubt.Read / doubt.Expected, Units)} where the design has "
                + $"{DrawnAmount.Density(planned, Units)}."
            : "";
    }

    private string Slip(ReadingDoubt doubt)
    {
        if (doubt.WouldFit is not { } fits) return "";
        var figure = doubt.Kind switch
        {
            ReadingKind.Mass => Mass(fits),
            ReadingKind.Balance => Place(fits),
            _ => Length(fits),
        };
        var tenfold = Math.Abs(Math.Log10(fits / doubt.Read));
        return Math.Abs(tenfold - 1) < 1e-9
            ? $" With one digit {(fits > doubt.Read ? "more" : "fewer")}, {figure} would fit."
            : $" Read from the tip it would be {figure} from the grip, and fit.";
    }

    private IEnumerable<CodedNote> Again()
    {
        var doubt = correction.Doubt!;
        yield return doubt.Readings.Count == 0
            ? Note("read-again", Plain, $"Close the caliper and look whether it reads nothing; then take a few thicknesses, the mass and the balance point again.")
            : Note("read-again", Plain, $"Take {(doubt.Readings.Count == 1 ? "it" : "them")} again, and look at what was typed; leave the wood alone until then.");
        if (doubt.FitsStage is { } other)
            yield return Note("check-stage", Plain, $"As they are the readings would fit another stage: {BuildStages.Title(other).ToLowerInvariant()}.");
        if (doubt.IsBeyondBelief && doubt.Readings.All(one => one.WouldFit is null))
            yield return Note("check-design", Plain, $"No wood and no hand puts a reading so far off: should it read the same, the paddle is of another design or another wood.");
        if (!doubt.IsBeyondBelief)
        {
            yield return Note(
                "hold-to-it", Plain,
                $"Should {(doubt.Readings.Count == 1 ? "it read" : "they read")} the same, say that it was measured again, and the cut is worked out from that.");
        }
    }

    private IEnumerable<CodedNote> Believed()
    {
        var (corrected, finished, aims) = (Outlook.Corrected, Outlook.Finished, report.Specification.Aims);
        if (correction.Doubt is not null)
            yield return Note("doubt-stands", Plain, $"Readings that were doubted have been taken again and are believed.");
        if (report.Outcome.IsTooWeak)
        {
            yield return Note("design-too-weak", Plain, $"The design itself is too weak for its load cases, as its own answer says: do not build it so.");
        }
        else if (corrected.Weakest.Margin < 1)
        {
            yield return Note(
                "wood-too-thin", Plain,
                $"The wood is thinner than planned: in the load case {corrected.Weakest.Case.Name} the safety factor is "
                + $"{corrected.Weakest.SafetyFactor:F2}, below the {corrected.Weakest.Case.LeastFactor:F2} asked for, before any correction. Keep the "
                + $"paddle for a lighter paddler or an easier trip, or start a new one.");
        }

        if (correction.Status == CorrectionStatus.OnPlan)
        {
            yield return stage == BuildStage.Finished
                ? Note("done", Plain, $"It is done.")
                : Note("follow-plan", Plain, $"Go on to plan.");
        }

        var own = report.Balance.OffsetMm;
        if (Math.Abs(own) > correction.ToleranceMm && correction.Status == CorrectionStatus.OnPlan)
        {
            yield return Note(
                "design-off-aim", Plain,
                $"The design itself balances {Off(own)} its aim, as its own answer says; the paddle does as the design.");
        }

        if (correction.Status == CorrectionStatus.Cut)
            foreach (var note in Cutting(finished, corrected)) yield return note;

        if (Outlook.LeastBad is not { } left) yield break;
        if (corrected.MassG > aims.MaximumMassG)
        {
            yield return Note(
                "too-heavy", Plain,
                $"It stays heavier than asked for, {Mass(corrected.MassG)} against {Mass(aims.MaximumMassG.Value)}: no limit lets more wood come off.");
        }

        if (Math.Abs(left.AcceptOffsetMm) <= correction.ToleranceMm) yield break;
        foreach (var note in Choices(left, aims)) yield return note;
    }

    private IEnumerable<CodedNote> Cutting(Forecast finished, Corrected corrected)
    {
        var before = finished.BalanceMm - correction.AimMm;
        if (Math.Abs(before) <= correction.ToleranceMm)
        {
            yield return Note(
                "in-tolerance-already", Plain,
                $"Without the cut it would most likely end in tolerance, {Off(before)} the aim with {Place(correction.ToleranceMm)} allowed, but "
                + $"with a chance of {100 * finished.ChanceInTolerance:F0} % only; the cut makes it {100 * corrected.ChanceInTolerance:F0} %.");
        }

        if (stage < BuildStage.Sanded)
        {
            yield return Note(
                "cut-with-last-planing", Plain,
                $"Take the cut with the last planing, then weigh and balance again, and ask once more before the sanding.");
            yield break;
        }

        if (stage == BuildStage.Finished && report.Finished.Load.MassG > 0)
            yield return Note("cut-through-finish", Plain, $"The finish comes off with it: scrape, balance, and put the finish on again there.");
        yield return correction.Removals.Max(cut => cut.ThicknessMm) <= FewPassesMm
            ? Note("cut-in-passes", Plain, $"Scrape it off in light passes and balance between them: what is off stays off.")
            : Note("cut-in-two-steps", Plain, $"Scrape off two thirds of it, balance again, then take the rest: what is off stays off.");
    }

    private IEnumerable<CodedNote> Choices(LeastBad left, Aims aims)
    {
        var all = correction.Removals.Count > 0 ? "With all that the limits let off it" : "It";
        yield return Note(
            "short-of-aim", Plain,
            $"{all} still balances {Off(left.AcceptOffsetMm)} the aim: only wood put back would reach it. The choices:");
        yield return Note("accept-offset", Plain, $"Accept it.");
        if (aims.BalanceAt == BalanceAim.LowerHand)
        {
            yield return Note(
                "move-lower-hand", Plain,
                $"Move the lower-hand mark {Place(Math.Abs(left.MoveLowerHandMm))} {(left.MoveLowerHandMm < 0 ? "towards the grip" : "towards the tip")}.");
        }

        if (left.AddAtTipG is { } tip)
            yield return Note("add-at-tip", Plain, $"Add {Mass(tip)} of cloth and resin at the tip, where it wears best.");
        if (left.AddAtGripG is { } grip)
            yield return Note("add-at-grip", Plain, $"Add {Mass(grip)} at the grip, such as a glued-on cap of dense wood.");
        if (stage < BuildStage.Sanded)
        {
            yield return Note(
                "leave-allowance", Plain,
                $"Leave part of the allowance on {(left.AcceptOffsetMm < 0 ? "the lower third of the blade" : "grip and upper shaft")}: wood not yet "
                + $"taken off needs no putting back.");
        }
    }

    private string Off(double offsetMm) => $"{Place(Math.Abs(offsetMm))} {(offsetMm < 0 ? "towards the grip from" : "towards the tip from")}";

    private string Length(double mm) => DrawnLength.Text(mm, Units);

    private string Place(double mm) => DrawnLength.Rough(mm, Units);

    private string Mass(double g) => DrawnAmount.Mass(g, Units);

    // Cuts are thinner than any mark of a rule: an inch shop reads them in thousandths off a caliper.
    private string Thin(double mm) => Units == DrawingUnits.Metric
        ? mm.ToString("0.##", Plain) + " mm"
        : (mm / DrawnLength.MmPerInch).ToString("0.000", Plain) + " in";

    private static string Listed(IReadOnlyList<string> items) => items.Count == 1
        ? items[0]
        : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";

    private static CodedNote Note(
        string code, CultureInfo culture, [InterpolatedStringHandlerArgument(nameof(culture))] ref DefaultInterpolatedStringHandler text) =>
        new(code, text.ToStringAndClear());
}
