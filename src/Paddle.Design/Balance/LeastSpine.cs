using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>Least thickness of the spine that strength across the grain asks for, mm; 0 where it asks for none.</summary>
internal readonly record struct LeastSpine(double MiddleMm, double TipMm)
{
    private const double Hair = 0.005;

    /// <summary>The spine thicker where a chosen blade falls short across the grain, within what makers carve. It seldom does, so the solver
    /// is not burdened with it. Theory B10.</summary>
    internal LeastSpine ThickerFor(SizeChoice choice, DesignProblem problem)
    {
        var weakest = choice.Strength.Cases.Where(result => !result.Case.BendsAlongTheGrain).MinBy(result => result.Margin)!;
        if (weakest.Margin >= 1) return this;
        var (sizes, places) = (choice.Sizes, choice.Stations.Form.Places);
        var t = (weakest.AtMm - places.ThroatMm) / places.BladeMm;
        var more = (1 + Hair) / Math.Sqrt(weakest.Margin) - 1;
        // Down from the middle of the blade, middle and tip share what is wanted as they share the thickness: the least change that gives it.
        var ofTip = Math.Clamp((t - SpineProfile.Middle) / (SpineProfile.Tip - SpineProfile.Middle), 0, 1);
        var ofMiddle = 1 - ofTip;
        var each = more * (ofMiddle * sizes.MiddleThicknessMm + ofTip * sizes.TipThicknessMm) / (ofMiddle * ofMiddle + ofTip * ofTip);
        return new(
            Raised(MiddleMm, sizes.MiddleThicknessMm, each * ofMiddle, problem.High[PaddleSizes.Middle]),
            Raised(TipMm, sizes.TipThicknessMm, each * ofTip, problem.High[PaddleSizes.Tip]));
    }

    private static double Raised(double leastMm, double sizeMm, double byMm, double mostMm) =>
        byMm > 0 ? Math.Max(leastMm, Math.Min(mostMm, sizeMm + byMm)) : leastMm;
}
