using static Paddle.Design.Solid.PaddleSizes;

namespace Paddle.Design.Balance;

/// <summary>A linear limit between two sizes: constant + a·v[first] + b·v[second] ≥ 0. Theory B3.</summary>
internal readonly record struct ShapeRow(
    string Id, int First, double FirstWeight, int Second, double SecondWeight, double Constant, LimitGroup Group = LimitGroup.Comfort)
{
    private static readonly ShapeRow[] All =
    [
        new("blade.throat-not-thicker-than-shaft", Shaft, 1, Throat, -1, 0, LimitGroup.Thinning),
        new("blade.throat-holds-the-shaft's-depth", Throat, 1, Shaft, -1, SizeLimits.MostThroatThinningMm),
        new("blade.thins-towards-middle", Throat, 1, Middle, -1, 0, LimitGroup.Thinning),
        new("blade.thins-towards-tip", Middle, 1, Tip, -1, 0, LimitGroup.Thinning),
        new("blade.lower-half-thins", Middle, 1, Tip, -1, -SizeLimits.LeastLowerThinningMm),
        new("blade.tip-not-thinner-than-edge", Tip, 1, Edge, -1, 0, LimitGroup.Thinning),
        new("blade.tip-thicker-than-edge", Tip, 1, Edge, -1, -SizeLimits.LeastTipOverEdgeMm),
        new("blade.tip-fairs-into-edge", Edge, 1, Tip, -1, SizeLimits.MostTipOverEdgeMm),
        new("shaft.width-not-growing-upwards", ShaftWidth, 1, UpperWidth, -1, 0, LimitGroup.Thinning),
        new("shaft.thickness-not-growing-upwards", Shaft, 1, Upper, -1, 0, LimitGroup.Thinning),
        new("shaft.width-taper", UpperWidth, 1, ShaftWidth, -1, SizeLimits.MostTaperMm),
        new("shaft.thickness-taper", Upper, 1, Shaft, -1, SizeLimits.MostTaperMm),
        new("shaft.not-wider-than-thick", Shaft, 1, ShaftWidth, -1, 0),
        new("shaft.not-too-oval", ShaftWidth, SizeLimits.MostOval, Shaft, -1, 0),
        new("shaft.upper-not-wider-than-thick", Upper, 1, UpperWidth, -1, 0),
        new("shaft.upper-not-too-oval", UpperWidth, SizeLimits.MostOval, Upper, -1, 0),
        new("shaft.fills-the-lower-hand", ShaftWidth, 0.5, Shaft, 0.5, -SizeLimits.LeastMeanAtLowerHandMm),
        new("shaft.fills-the-hand-below-the-grip", UpperWidth, 0.5, Upper, 0.5, -SizeLimits.LeastMeanAtGripMm),
    ];

    private bool IsDifference => FirstWeight == 1 && SecondWeight == -1;
    private bool IsMean => FirstWeight == 0.5 && SecondWeight == 0.5;

    /// <summary>The limits that the solver can still do something about: at least one of the two sizes is free.</summary>
    /// <param name="smallShare">Share of an adult's sizes that fills the hand.</param>
    /// <param name="latticeMm">Step of the sizes, mm: a difference between two of them moves to the nearest that there is.</param>
    internal static ShapeRow[] For(SizeSet free, double smallShare, double latticeMm)
    {
        var rows = new List<ShapeRow>(All.Length);
        foreach (var row in All)
        {
            if (!free.Has(row.First) && !free.Has(row.Second)) continue;
            var constant = row.IsDifference ? Math.Round(row.Constant / latticeMm) * latticeMm : row.IsMean ? smallShare * row.Constant : row.Constant;
            rows.Add(row with { Constant = constant });
        }

        return [.. rows];
    }
}
