using Paddle.Design.Fitting;
using Paddle.Design.Solid;

namespace Paddle.Design.Request;

/// <summary>The shaft of a fitting, tried in the design it is suggested for: the hand's own where the paddle then meets its aims, else the
/// nearest to it with which the paddle does. The hand has a liking, the balance and the strength have limits.</summary>
internal static class TriedShaft
{
    // A thirty-second of the way between two shafts some millimetres apart is less than a tenth of a millimetre.
    private const int Halvings = 5;

    /// <summary>The design with the shaft that its aims allow.</summary>
    /// <param name="design">A suggestion with the shaft that the hand and the strokes ask for.</param>
    /// <returns>The same, or the shaft nearest to it with which every aim is met; where none is, the one that comes closest.</returns>
    public static SuggestedDesign Settle(SuggestedDesign design, CancellationToken cancellation)
    {
        DesignReport Tried(DesignRequest request) => PaddleDesigner.Design(request.Complete().Specification, cancellation);
        bool IsMet(SuggestedDesign one) => Tried(one.ToRequest()).Outcome.IsMet;
        if (IsMet(design)) return design;

        // What the solver chooses is the farthest that there is any need to go.
        var open = design.ToRequest();
        var sizes = Tried(open with { Shaft = new() { BendDegrees = open.Shaft!.BendDegrees } }).Sizes;
        var farthest = Between(design, sizes, 1);
        if (!IsMet(farthest)) return farthest;
        var (fails, meets) = (0.0, 1.0);
        for (var k = 0; k < Halvings; k++)
        {
            var middle = (fails + meets) / 2;
            if (IsMet(Between(design, sizes, middle))) meets = middle;
            else fails = middle;
        }

        return Between(design, sizes, meets);
    }

    private static SuggestedDesign Between(SuggestedDesign design, PaddleSizes solved, double share)
    {
        double Mix(double hand, double other) => Math.Round(hand + share * (other - hand), 1);
        var hand = design.Shaft;
        var (width, thickness) = (Mix(hand.WidthMm, solved.ShaftWidthMm), Mix(hand.ThicknessMm, solved.ShaftThicknessMm));
        return design with
        {
            Shaft = hand with
            {
                EquivalentDiameterMm = Math.Round(ShaftFit.EquivalentDiameterMm(width, thickness), 1),
                WidthMm = width,
                ThicknessMm = thickness,
                UpperWidthMm = hand.UpperWidthMm is { } upperWidth ? Mix(upperWidth, solved.UpperWidthMm) : null,
                UpperThicknessMm = hand.UpperThicknessMm is { } upper ? Mix(upper, solved.UpperThicknessMm) : null,
                SetBy = ShaftSizeSetBy.Aims,
            },
        };
    }
}
