using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design;

/// <summary>A paddle to be designed, every default filled in; only the sizes left to the solver are open.</summary>
/// <param name="Form">Places, grip, blade outline and bend.</param>
/// <param name="Pinned">Sizes that the maker fixes; null ones are the solver's to choose.</param>
/// <param name="Loads">The forces it must stand.</param>
public sealed record PaddleSpecification(PaddleForm Form, PinnedSizes Pinned, WoodInUse Wood, Loads Loads, Aims Aims)
{
    /// <summary>Lattice of sizes when none is asked for: what a caliper shows, mm.</summary>
    public const double CaliperMm = 0.1;
    /// <summary>Lattice of a shop that measures in inches: 1/32 in, mm.</summary>
    public const double ThirtySecondMm = 25.4 / 32;

    /// <summary>Thinnest board that is taken, mm (own limit).</summary>
    public const double ThinnestBoardMm = 15;

    /// <summary>The step of a shop's sizes, mm.</summary>
    internal static double LatticeOf(DrawingUnits units) => units == DrawingUnits.Inch ? ThirtySecondMm : CaliperMm;

    /// <summary>The finish, which weighs on the balance.</summary>
    public FinishChoice Finish { get; init; } = FinishChoice.Usual;
    /// <summary>The strips that it is glued up of; null of one piece. The form holds them as its layup.</summary>
    public Laminate? Laminate { get; private init; }

    /// <summary>The same paddle glued up of strips, or of one piece.</summary>
    internal PaddleSpecification GluedUp(Laminate? laminate) =>
        this with { Laminate = laminate, Form = Form with { Strips = laminate?.Layup(Wood, Form.Places) } };

    /// <summary>The same with every size open again that a solver chose.</summary>
    internal PaddleSpecification Reopened() => this with { Pinned = PinnedSizes.Of(Fixed), SolvedBefore = default };

    /// <summary>Thickness of the maker's board as it lies in the rack, mm; null when any board may be bought.</summary>
    public double? BoardThicknessMm { get; init; }
    /// <summary>Prices of a board foot by species, as far as they are known: no figure but the cost of wood depends on them.</summary>
    internal IReadOnlyDictionary<string, double> PricesPerBoardFoot { get; init; } = new Dictionary<string, double>();
    /// <summary>Units that the shop measures in: sentences about the design are in them.</summary>
    public DrawingUnits Units { get; init; }
    /// <summary>Step in which the solver's sizes are rounded, mm.</summary>
    public double LatticeMm { get; init; } = CaliperMm;
    /// <summary>Sizes that are pinned only because a solver chose them before: a design read back from its code.</summary>
    public SizeSet SolvedBefore { get; init; }
    /// <summary>The sizes that no maker fixed.</summary>
    public SizeSet Free => SolvedBefore | SizeSet.Open(Pinned);

    /// <summary>The maker's own sizes, null where the solver chooses or chose.</summary>
    internal double?[] Fixed
    {
        get
        {
            var sizes = Pinned.ToVector();
            for (var k = 0; k < sizes.Length; k++)
            {
                if (Free.Has(k)) sizes[k] = null;
            }

            return sizes;
        }
    }

    /// <summary>Thickness that the board leaves after planing, mm, or null.</summary>
    internal double? UsableThicknessMm => BoardThicknessMm - 2 * SurfacedFaceMm;

    /// <summary>Wood left outside the designed sizes on each face of a surfaced board, mm. Common practice, no source.</summary>
    public const double SurfacedFaceMm = 0.5;
}

/// <summary>Some of the nine sizes, in the order of <see cref="PaddleSizes"/>.</summary>
public readonly record struct SizeSet(int Bits)
{
    /// <summary>The sizes that are null.</summary>
    internal static SizeSet Open(PinnedSizes pinned)
    {
        var bits = 0;
        var sizes = pinned.ToVector();
        for (var k = 0; k < sizes.Length; k++) bits |= sizes[k] is null ? 1 << k : 0;
        return new(bits);
    }

    /// <summary>Whether a size is among them.</summary>
    internal bool Has(int size) => (Bits >> size & 1) != 0;

    /// <summary>Those of either set.</summary>
    public static SizeSet operator |(SizeSet a, SizeSet b) => new(a.Bits | b.Bits);
}

/// <summary>The nine sizes (mm), each fixed by the maker or null for the solver to choose; meanings as in <see cref="PaddleSizes"/>.</summary>
/// <param name="ShaftWidthMm">Shaft width at the lower hand.</param>
/// <param name="ShaftThicknessMm">Shaft thickness at the lower hand.</param>
/// <param name="UpperWidthMm">Shaft width just below the grip.</param>
/// <param name="UpperThicknessMm">Shaft thickness just below the grip.</param>
/// <param name="ThroatThicknessMm">Spine thickness at 0.08 of the blade.</param>
/// <param name="MiddleThicknessMm">Spine thickness at 0.5 of the blade.</param>
/// <param name="TipThicknessMm">Spine thickness from 0.92 of the blade.</param>
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

    /// <summary>Sizes in the order of <see cref="PaddleSizes"/>.</summary>
    internal static PinnedSizes Of(double?[] v) => new(
        v[PaddleSizes.ShaftWidth], v[PaddleSizes.Shaft], v[PaddleSizes.UpperWidth], v[PaddleSizes.Upper], v[PaddleSizes.Throat], v[PaddleSizes.Middle],
        v[PaddleSizes.Tip], v[PaddleSizes.Edge], v[PaddleSizes.Grip]);

    /// <summary>Every size pinned to a solved design's.</summary>
    public static PinnedSizes To(PaddleSizes sizes) => new(
        sizes.ShaftWidthMm, sizes.ShaftThicknessMm, sizes.UpperWidthMm, sizes.UpperThicknessMm, sizes.ThroatThicknessMm,
        sizes.MiddleThicknessMm, sizes.TipThicknessMm, sizes.EdgeThicknessMm, sizes.GripThicknessMm);
}
