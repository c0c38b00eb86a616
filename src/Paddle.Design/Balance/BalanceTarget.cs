using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>Where a paddle should balance.</summary>
internal static class BalanceTarget
{
    /// <summary>The aimed balance point, mm from the top of the grip along the shaft's line.</summary>
    internal static double Mm(PaddleForm form, Aims aims) =>
        aims.BalanceAt == BalanceAim.LowerHand ? form.Places.LowerHandMm : form.Places.ThroatMm;
}
