namespace Paddle.Design.Solid;

/// <summary>The nine sizes that together with the outline make the solid, each a full width or thickness in mm.</summary>
/// <param name="ShaftWidthMm">Shaft width from the lower hand to the throat.</param>
/// <param name="ShaftThicknessMm">Shaft thickness from the lower hand to the throat.</param>
/// <param name="UpperWidthMm">Shaft width just below the grip.</param>
/// <param name="UpperThicknessMm">Shaft thickness just below the grip.</param>
/// <param name="ThroatThicknessMm">Spine thickness at 0.08 of the blade.</param>
/// <param name="MiddleThicknessMm">Spine thickness at 0.5 of the blade.</param>
/// <param name="TipThicknessMm">Spine thickness from 0.92 of the blade to the tip.</param>
/// <param name="EdgeThicknessMm">Edge thickness below the shoulder.</param>
/// <param name="GripThicknessMm">Thickness of the grip's crest.</param>
public sealed record PaddleSizes(
    double ShaftWidthMm,
    double ShaftThicknessMm,
    double UpperWidthMm,
    double UpperThicknessMm,
    double ThroatThicknessMm,
    double MiddleThicknessMm,
    double TipThicknessMm,
    double EdgeThicknessMm,
    double GripThicknessMm)
{
    /// <summary>How many sizes there are.</summary>
    public const int Count = 9;

    /// <summary>Places of the sizes in a vector of them.</summary>
    internal const int ShaftWidth = 0, Shaft = 1, UpperWidth = 2, Upper = 3, Throat = 4, Middle = 5, Tip = 6, Edge = 7, Grip = 8;

    /// <summary>The sizes in the order of the constructor.</summary>
    public static PaddleSizes FromVector(ReadOnlySpan<double> v) => new(v[ShaftWidth], v[Shaft], v[UpperWidth], v[Upper], v[Throat], v[Middle], v[Tip], v[Edge], v[Grip]);

    /// <summary>Writes the sizes in the order of the constructor.</summary>
    public void CopyTo(Span<double> v)
    {
        (v[ShaftWidth], v[Shaft], v[UpperWidth], v[Upper]) = (ShaftWidthMm, ShaftThicknessMm, UpperWidthMm, UpperThicknessMm);
        (v[Throat], v[Middle], v[Tip], v[Edge], v[Grip]) = (ThroatThicknessMm, MiddleThicknessMm, TipThicknessMm, EdgeThicknessMm, GripThicknessMm);
    }
}
