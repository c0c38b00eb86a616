namespace Paddle.Design.Units;

/// <summary>Units that a shop measures in: drawings and sentences are lettered in one of them; geometry is millimetres either way.</summary>
public enum DrawingUnits
{
    /// <summary>Millimetres, to 0.1 mm, and grams.</summary>
    Metric,
    /// <summary>Inches and fractions, and ounces with grams beside.</summary>
    Inch,
}

/// <summary>Which way a printed length may leave the exact one.</summary>
internal enum LengthRounding
{
    /// <summary>To the nearest step; halves away from nothing.</summary>
    Nearest,
    /// <summary>To the step above: for thicknesses that a limit holds, where less wood would cross it.</summary>
    Up,
}
