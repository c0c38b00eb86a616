namespace Paddle.Design.Wood.Species;

/// <summary>A figure and where it was read. A table of species is written in these so that no figure can lack a source.</summary>
/// <param name="Value">The figure in the unit its place in <see cref="SpeciesEntry"/> names.</param>
/// <param name="Source">Where it was read.</param>
internal readonly record struct Figure(double Value, string Source)
{
    /// <summary>1 lbf/in2 in MPa: 4.4482216152605 N over (25.4 mm)^2, exact by definition of both units.</summary>
    private const double MPaPerPsi = 4.4482216152605 / (25.4 * 25.4);

    /// <summary>A strength printed in lbf/in2, in MPa to 0.01 MPa; the table prints to 10 lbf/in2, which is 0.07 MPa.</summary>
    public static Figure FromPsi(double poundsPerSquareInch, string source) =>
        new(Math.Round(poundsPerSquareInch * MPaPerPsi, 2), source);
}
