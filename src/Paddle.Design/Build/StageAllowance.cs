namespace Paddle.Design.Build;

/// <summary>The saw that cuts the outline.</summary>
public enum OutlineSaw
{
    /// <summary>Band saw or hand saw.</summary>
    BandSaw,
    /// <summary>Jigsaw: its blade bends in thick wood, so it stays further off the line.</summary>
    Jigsaw,
}

/// <summary>How many sides the shaft has.</summary>
internal enum ShaftShape
{
    /// <summary>Square or rectangular.</summary>
    Square,
    EightSided,
    SixteenSided,
    /// <summary>Round or oval.</summary>
    Round,
}

/// <summary>Wood left on outside the designed sizes at one stage; null where the board's full thickness still stands.</summary>
/// <param name="OutlineMm">Outside the outline, on each side, mm.</param>
/// <param name="BladeFaceMm">On each face of the blade, mm, or null.</param>
/// <param name="ShaftFaceMm">On each face and side of the shaft, mm, or null.</param>
/// <param name="GripFaceMm">On each face of the grip, mm, or null.</param>
/// <param name="Shaft">Sides of the shaft.</param>
/// <param name="FaceToleranceMm">How well a face is held by the tools of this stage, mm: 9 times in 10 within it.</param>
/// <remarks>
/// Source: common practice, no source, bounded by a published loss of up to 3.2 mm in sawing, a published stand-off of 3.2 mm
/// from the edge line until the final shaping, and the stock that a sanding sequence takes (0.33 mm from P80, wide-belt figures).
/// Wood cannot be put back, so the larger value was taken where two were read.
/// </remarks>
internal sealed record StageAllowance(
    double OutlineMm, double? BladeFaceMm, double? ShaftFaceMm, double? GripFaceMm, ShaftShape Shaft, double FaceToleranceMm)
{
    /// <summary>Left outside the line by a saw, mm.</summary>
    public static double SawMm(OutlineSaw saw) => saw == OutlineSaw.Jigsaw ? 3.0 : 2.0;

    /// <summary>The allowance left after a stage.</summary>
    /// <param name="stage">The stage; the blank is as wide as the board, not as the outline.</param>
    public static StageAllowance After(BuildStage stage, OutlineSaw saw) => stage switch
    {
        BuildStage.Blank or BuildStage.Sawn => new(SawMm(saw), null, null, null, ShaftShape.Square, 0.25),
        BuildStage.EdgeLined => new(0.5, null, null, null, ShaftShape.Square, 0.25),
        BuildStage.BladeRoughed => new(0.5, 1.0, null, null, ShaftShape.Square, 0.5),
        BuildStage.BladePlaned => new(0.5, 0.5, null, null, ShaftShape.Square, 0.25),
        BuildStage.ShaftEightSided => new(0.5, 0.5, 0.5, null, ShaftShape.EightSided, 0.25),
        BuildStage.ShaftSixteenSided => new(0.5, 0.5, 0.3, null, ShaftShape.SixteenSided, 0.25),
        BuildStage.ShaftRounded => new(0.3, 0.3, 0.3, null, ShaftShape.Round, 0.2),
        BuildStage.GripCut => new(0.3, 0.3, 0.3, 0.3, ShaftShape.Round, 0.2),
        _ => new(0, 0, 0, 0, ShaftShape.Round, 0.15),
    };
}
