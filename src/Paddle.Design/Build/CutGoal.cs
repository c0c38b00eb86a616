using MathNet.Numerics.Distributions;

namespace Paddle.Design.Build;

/// <summary>Where a corrected paddle is to balance and how much it may weigh. Theory M27.</summary>
/// <remarks>
/// The aim within its tolerance; and a design that lies outside its own tolerance or mass, as its answer says, is no more than what it
/// promised: nobody cuts wood off a paddle for following its plan.
/// </remarks>
/// <param name="AimMm">Aimed balance point, mm.</param>
/// <param name="PlannedMm">Balance point of the paddle exactly to plan, mm.</param>
/// <param name="MaximumMassG">Most mass, g.</param>
/// <param name="Confidence">How sure the maker wants to be of ending in tolerance.</param>
internal sealed record CutGoal(double AimMm, double ToleranceMm, double PlannedMm, double MaximumMassG, double Confidence)
{
    // Half of what a kitchen scale shows.
    private const double MassSlackG = 0.5;

    internal static CutGoal Of(DesignReport report, (double MassG, double BalanceMm) planned, double confidence)
    {
        var aims = report.Specification.Aims;
        return new(
            report.Balance.TargetMm,
            aims.BalanceToleranceMm,
            planned.BalanceMm,
            Math.Max(aims.MaximumMassG ?? double.PositiveInfinity, planned.MassG),
            confidence);
    }

    /// <summary>Whether the paddle exactly to plan is in tolerance.</summary>
    internal bool IsMetByPlan => Math.Abs(PlannedMm - AimMm) <= ToleranceMm;

    /// <summary>Least balance that is in tolerance, mm.</summary>
    internal double LowMm => Low(ToleranceMm);

    /// <summary>Most balance that is, mm.</summary>
    internal double HighMm => High(ToleranceMm);

    /// <summary>Whether a paddle is where it should be.</summary>
    /// <param name="slackMm">How far beyond the tolerance still counts, mm.</param>
    internal bool Holds(double balanceMm, double massG, double slackMm) =>
        balanceMm >= LowMm - slackMm - 1e-6 && balanceMm <= HighMm + slackMm + 1e-6 && HoldsMass(massG);

    /// <summary>Whether a paddle is light enough.</summary>
    internal bool HoldsMass(double massG) => massG <= MaximumMassG + MassSlackG;

    /// <summary>The same drawn in so that chance is on the maker's side; never to less than a tenth of the tolerance.</summary>
    /// <param name="uncertaintyMm">Standard uncertainty of the balance point, mm.</param>
    internal (double LowMm, double HighMm) Reach(double uncertaintyMm)
    {
        var inside = Math.Max(0.1 * ToleranceMm, ToleranceMm - Normal.InvCDF(0, 1, Confidence) * uncertaintyMm);
        return (Low(inside), High(inside));
    }

    private double Low(double insideMm) => IsMetByPlan ? AimMm - insideMm : Math.Min(AimMm - insideMm, PlannedMm);

    private double High(double insideMm) => IsMetByPlan ? AimMm + insideMm : Math.Max(AimMm + insideMm, PlannedMm);
}
