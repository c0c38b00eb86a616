using Paddle.Design.Balance;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design;

/// <summary>A paddle to be designed, every default filled in; only the sizes left to the solver are open.</summary>
/// <param name="Form">Places, grip, blade outline and bend.</param>
/// <param name="Pinned">Sizes that the maker fixes; null ones are the solver's to choose.</param>
/// <param name="Wood">The wood as it will be used.</param>
/// <param name="Loads">The forces it must stand.</param>
/// <param name="Aims">What is asked of it.</param>
public sealed record PaddleSpecification(PaddleForm Form, PinnedSizes Pinned, WoodInUse Wood, Loads Loads, Aims Aims);

/// <summary>The nine sizes (mm), each fixed by the maker or null for the solver to choose; meanings as in <see cref="PaddleSizes"/>.</summary>
/// <param name="ShaftWidthMm">Shaft width at the lower hand.</param>
/// <param name="ShaftThicknessMm">Shaft thickness at the lower hand.</param>
/// <param name="UpperWidthMm">Shaft width just below the grip.</param>
/// <param name="UpperThicknessMm">Shaft thickness just below the grip.</param>
/// <param name="ThroatThicknessMm">Spine thickness at 0.08 of the blade.</param>
/// <param name="MiddleThicknessMm">Spine thickness at 0.5 of the blade.</param>
/// <param name="TipThicknessMm">Spine thickness from 0.92 of the blade.</param>
/// <param name="EdgeThicknessMm">Edge thickness.</param>
/// <param name="GripThicknessMm">Thickness of the grip's crest.</param>
public sealed record PinnedSizes(
    double? ShaftWidthMm = null,
    double? ShaftThicknessMm = null,
    double? UpperWidthMm = null,
    double? UpperThicknessMm = null,
    double? ThroatThicknessMm = null,
    double? MiddleThicknessMm = null,
    double? TipThicknessMm = null,
    double? EdgeThicknessMm = null,
    double? GripThicknessMm = null)
{
    /// <summary>The sizes in the order of <see cref="PaddleSizes"/>.</summary>
    public double?[] ToVector() =>
    [
        ShaftWidthMm, ShaftThicknessMm, UpperWidthMm, UpperThicknessMm, ThroatThicknessMm, MiddleThicknessMm, TipThicknessMm,
        EdgeThicknessMm, GripThicknessMm,
    ];

    /// <summary>Every size pinned to a solved design's.</summary>
    public static PinnedSizes To(PaddleSizes sizes) => new(
        sizes.ShaftWidthMm,
        sizes.ShaftThicknessMm,
        sizes.UpperWidthMm,
        sizes.UpperThicknessMm,
        sizes.ThroatThicknessMm,
        sizes.MiddleThicknessMm,
        sizes.TipThicknessMm,
        sizes.EdgeThicknessMm,
        sizes.GripThicknessMm);
}
