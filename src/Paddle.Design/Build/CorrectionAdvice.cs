using System.Globalization;
using Paddle.Design.Balance;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Says in plain words what a correction means.</summary>
internal static class CorrectionAdvice
{
    internal static IReadOnlyList<string> For(
        BuildStage stage,
        WoodInUse wood,
        Aims aims,
        Explanation explanation,
        Forecast finished,
        double aimMm,
        IReadOnlyList<Removal> removals,
        Corrected corrected,
        bool achievable,
        LeastBad? leastBad)
    {
        var advice = new List<string>();
        var odd = (explanation.DensityKgM3 / wood.DensityKgM3 - 1) / StageScatter.DensityVariation(wood);
        if (Math.Abs(odd) > 3)
        {
            advice.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The readings ask for {explanation.DensityKgM3:F0} kg/m3 where the design has {wood.DensityKgM3:F0}: look at the "
                + $"scale, the stage and the species before cutting."));
        }

        var before = finished.BalanceMm - aimMm;
        var inTolerance = Math.Abs(before) <= aims.BalanceToleranceMm;
        if (removals.Count == 0 && achievable) advice.Add("Plane on to plan: nothing more needs to come off.");
        if (removals.Count > 0 && inTolerance)
        {
            advice.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"Planed to plan the best estimate is in tolerance already ({before:F0} of +/- {aims.BalanceToleranceMm:F0} mm), "
                + $"with a chance of {100 * finished.ChanceInTolerance:F0} % of ending there; the cut makes it "
                + $"{100 * corrected.ChanceInTolerance:F0} %."));
        }

        if (removals.Count > 0)
        {
            if (stage < BuildStage.Sanded)
                advice.Add("Take the cut with the last planing, weigh and balance again, and ask once more before the sanding.");
            else
                advice.Add("Take two thirds of it with a scraper, balance again, then the rest: what is off stays off.");
        }

        if (corrected.Weakest.Margin < 1)
            advice.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The safety factor is {corrected.Weakest.SafetyFactor:F2}, below the {corrected.Weakest.Case.LeastFactor:F2} asked for, "
                + $"before any correction: the wood is thinner than planned. Keep it for a lighter paddler or an easier trip, or "
                + $"start a new one."));
        if (leastBad is null) return advice;
        if (corrected.MassG > aims.MaximumMassG) advice.Add("It stays heavier than asked for: no limit lets more wood come off.");
        if (Math.Abs(leastBad.AcceptOffsetMm) <= aims.BalanceToleranceMm) return advice;
        advice.Add(string.Create(
            CultureInfo.InvariantCulture,
            $"Wood would have to be added: with all that the limits let off it still balances "
            + $"{Math.Abs(leastBad.AcceptOffsetMm):F0} mm "
            + $"{(leastBad.AcceptOffsetMm < 0 ? "towards the grip" : "towards the tip")} of the aim. Accept that,"));
        if (aims.BalanceAt == BalanceAim.LowerHand)
            advice.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"or move the lower-hand mark {Math.Abs(leastBad.MoveLowerHandMm):F0} mm "
                + $"{(leastBad.MoveLowerHandMm < 0 ? "towards the grip" : "towards the tip")},"));
        if (leastBad.AddAtTipG is { } tip) advice.Add(Text($"or add {tip:F0} g of cloth and resin at the tip (it wears best there)."));
        if (leastBad.AddAtGripG is { } grip) advice.Add(Text($"or add {grip:F0} g at the grip, such as a glued-on cap of dense wood."));
        if (stage < BuildStage.Sanded)
        {
            var zone = leastBad.AcceptOffsetMm < 0 ? "blade's lower third" : "grip and upper shaft";
            advice.Add($"or leave part of the allowance on at the {zone}: wood not yet taken off needs no putting back.");
        }

        return advice;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
