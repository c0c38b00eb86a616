using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Request;

/// <summary>A request read: every default filled in, and what the designer makes of it.</summary>
/// <param name="Request">The request with every default filled in; sizes left to the solver are still null.</param>
/// <param name="Specification">The same for the designer.</param>
internal sealed record ResolvedDesign(DesignRequest Request, PaddleSpecification Specification)
{
    /// <summary>System of measure on drawings.</summary>
    public DrawingUnits Units => Names.Units.Find(Request.Drawing!.Units!)!.Value;

    /// <summary>The request with all nine sizes pinned: it evaluates to the same paddle without solving.</summary>
    public DesignRequest Pin(PaddleSizes sizes) => Request with
    {
        Shaft = Request.Shaft! with
        {
            WidthMm = sizes.ShaftWidthMm,
            ThicknessMm = sizes.ShaftThicknessMm,
            UpperWidthMm = sizes.UpperWidthMm,
            UpperThicknessMm = sizes.UpperThicknessMm,
        },
        Blade = Request.Blade! with
        {
            ThroatThicknessMm = sizes.ThroatThicknessMm,
            MiddleThicknessMm = sizes.MiddleThicknessMm,
            TipThicknessMm = sizes.TipThicknessMm,
            EdgeThicknessMm = sizes.EdgeThicknessMm,
        },
        Grip = Request.Grip! with { ThicknessMm = sizes.GripThicknessMm },
        SolvedBefore = Specification.Free.Bits,
    };
}
