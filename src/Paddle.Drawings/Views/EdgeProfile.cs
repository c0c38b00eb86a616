using Paddle.Design;
using Paddle.Design.Solid;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The paddle seen from its edge: the spine's silhouette and the edge lines, the blade turned by the bend.</summary>
/// <remarks>Along the shaft x runs right and z up; below the throat both turn by the bend. At the throat the two meet on the bisector.</remarks>
internal sealed class EdgeProfile
{
    private const double SpacingMm = 4;

    private readonly PaddleForm form;
    private readonly double mitre;

    public EdgeProfile(DesignReport report)
    {
        form = report.Specification.Form;
        mitre = Math.Tan(form.BendDegrees * Math.PI / 360);
        Solid = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Printed(form.Lengths, form.Blade.WidestAt, SpacingMm));
    }

    /// <summary>The solid at the profile's places.</summary>
    public PaddleSolid Solid { get; }

    /// <summary>A place at a height above the centre line, in shaft coordinates (x right, z up), mm.</summary>
    public Point At(double xMm, double zMm)
    {
        var beyond = xMm - form.Places.ThroatMm;
        return beyond <= 0
            ? new(xMm, zMm)
            : new(form.Places.ThroatMm + beyond * form.BendCosine - zMm * form.BendSine, beyond * form.BendSine + zMm * form.BendCosine);
    }

    /// <summary>The silhouette, closed, in shaft coordinates.</summary>
    public IReadOnlyList<Point> Silhouette()
    {
        var upper = Side(1, i => Solid.HalfThickness[i]);
        var lower = Side(-1, i => Solid.HalfThickness[i]);
        lower.Reverse();
        return [.. upper, .. lower];
    }

    /// <summary>The upper (+1) or lower (-1) edge line of the blade, from where the blade has an edge.</summary>
    public IReadOnlyList<Point> EdgeLine(int side) =>
    [
        .. Enumerable.Range(0, Solid.Count).Where(i => Solid.EdgeHalfThickness[i] > 0)
            .Select(i => At(Solid.X[i], side * Solid.EdgeHalfThickness[i])),
    ];

    /// <summary>Centre of the section, mm above the shaft's or the blade's own line: only a one-sided grip is off it.</summary>
    public double OwnOffset(int i) => Solid.Grid.Patterns[i].Segment.Zone == Zone.Grip ? Solid.CentreOffsetMm(i) : 0;

    private List<Point> Side(int side, Func<int, double> halfThickness)
    {
        var points = new List<Point>();
        var throat = form.Places.ThroatMm;
        var met = false;
        for (var i = 0; i < Solid.Count; i++)
        {
            var z = OwnOffset(i) + side * halfThickness(i);
            var cut = z * mitre;
            var beyond = Solid.X[i] - throat;
            if (beyond > -cut - 1e-9 && beyond < cut + 1e-9 && form.BendDegrees != 0) continue;
            if (beyond > 0 && !met && form.BendDegrees != 0)
            {
                // Where the two straight runs meet: on the bisector, in both frames at once.
                var atThroat = side * Solid.HalfThickness[Solid.Grid.FirstBladePlace];
                points.Add(new(throat - atThroat * mitre, atThroat));
                met = true;
            }

            points.Add(At(Solid.X[i], z));
        }

        return points;
    }
}
