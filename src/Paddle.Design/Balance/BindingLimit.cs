namespace Paddle.Design.Balance;

/// <summary>A limit that holds the design where it is.</summary>
/// <param name="Id">The limit: a size with min, max or pinned, an aim, or a rule of shape.</param>
/// <param name="Unit">Unit in which it is loosened; empty for a pure number.</param>
/// <param name="Gain">What loosening it by one unit would gain.</param>
/// <param name="GainUnit">Grams saved; or, while an aim is missed, how far that aim would be helped.</param>
public sealed record BindingLimit(string Id, string Unit, double Gain, string GainUnit);

/// <summary>How the finished paddle balances.</summary>
/// <param name="TargetMm">Where it should balance, mm from the top of the grip along the shaft's line.</param>
/// <param name="ActualMm">Where it does, finished.</param>
/// <param name="BareMm">Where the bare wood does, before the finish.</param>
/// <param name="ToleranceMm">How far off is still good, mm.</param>
/// <param name="Ballast">What would bring it to the aim without changing its shape.</param>
/// <param name="BindingLimits">The limits that bind, the costliest first; none when every size is the maker's own.</param>
public sealed record BalanceResult(
    double TargetMm, double ActualMm, double BareMm, double ToleranceMm, Ballast Ballast, IReadOnlyList<BindingLimit> BindingLimits)
{
    /// <summary>Balance point less target, mm; negative when grip-heavy.</summary>
    public double OffsetMm => ActualMm - TargetMm;

    /// <summary>Whether it balances within the tolerance.</summary>
    public bool Achieved => Math.Abs(OffsetMm) <= ToleranceMm;
}

/// <summary>A weight let in that would bring the finished paddle to its aim: named and priced, not built in. Theory M14.</summary>
/// <param name="G">The weight, g.</param>
/// <param name="AtMm">Where, mm from the top of the grip: near the tip, or at the grip hand.</param>
public sealed record Ballast(double G, double AtMm)
{
    private const double AboveTipMm = 30;

    /// <summary>The ballast for a finished paddle: dm = M·offset over its distance from the aim. Theory M14.</summary>
    internal static Ballast For(Solid.PaddleForm form, double massG, double offsetMm, double targetMm)
    {
        var at = offsetMm < 0 ? form.Places.OverallMm - AboveTipMm : form.Places.TopHandMm;
        return new(massG * Math.Abs(offsetMm / (form.AlongShaftMm(at) - targetMm)), at);
    }
}
