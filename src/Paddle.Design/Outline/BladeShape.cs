namespace Paddle.Design.Outline;

/// <summary>The blade to be drawn, seen on its face.</summary>
/// <param name="Family">Its family; null when <paramref name="Offsets"/> gives the maker's own shape.</param>
/// <param name="LengthMm">Throat to tip, mm.</param>
/// <param name="WidthMm">Full width at the widest point, mm.</param>
/// <param name="WidestAt">Place of the widest point as a fraction of the blade from the throat.</param>
/// <param name="Fullness">Area below the widest point, over that part's length times the full width.</param>
/// <param name="Offsets">The maker's own table of offsets from the throat, or null.</param>
public sealed record BladeShape(
    BladeFamily? Family,
    double LengthMm,
    double WidthMm,
    double WidestAt,
    double Fullness,
    IReadOnlyList<Offset>? Offsets)
{
    /// <summary>Half-width of shaft (mm) for which the tail is drawn; another shaft changes the shoulder only.</summary>
    internal const double NominalShaftHalfWidthMm = 15;

    /// <summary>Half the full width, mm.</summary>
    public double HalfWidthMm => WidthMm / 2;
}

/// <summary>One line of a table of offsets.</summary>
/// <param name="XMm">Station, mm from the throat towards the tip.</param>
public readonly record struct Offset(double XMm, double HalfBreadthMm);
