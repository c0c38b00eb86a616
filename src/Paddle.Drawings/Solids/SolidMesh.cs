using Paddle.Design;
using Paddle.Design.Solid;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Solids;

/// <summary>A corner of the mesh in single precision, as an STL file stores it.</summary>
internal readonly record struct Corner(float X, float Y, float Z);

/// <summary>The solid as a closed skin of triangles: rings of points around sections, joined to their neighbours, closed by a point at the
/// top of the grip and one at the tip. At a bend the ring at the throat lies on the bisector, where both runs meet.</summary>
/// <remarks>Chords stand off the solid by less than 0.1 mm: outline flattened to 0.03 mm, 20 chords a quarter section, rings at every place
/// of the printed grid. Facets whose corners fall together (where the edge runs out to nothing) are left out; the two edges that such a
/// facet would have kept apart are then one and the same, so the skin stays closed.</remarks>
internal sealed class SolidMesh
{
    private const double RingSpacingMm = 4;
    private const double OutlineToleranceMm = 0.03;
    private const int ChordsPerQuarter = 20;
    // How far before the ends the last rings lie: the closing cones are this shallow.
    private const double EndMm = 0.03;

    private readonly Corner[][] rings;
    private readonly Corner top;
    private readonly Corner tip;
    // Index of each band's first facet, and behind them the count of all.
    private readonly int[] firstOfBand;

    public SolidMesh(DesignReport report)
    {
        var form = report.Specification.Form;
        var profile = new EdgeProfile(report);
        var xs = RingPlaces(report);
        var solid = SolidLook.At(report, xs);
        var mitre = Math.Tan(form.BendDegrees * Math.PI / 360);
        var throatRing = Array.IndexOf(xs, form.Places.ThroatMm);
        var reach = solid.HalfThickness[throatRing] * mitre + 0.05;
        rings =
        [
            .. Enumerable.Range(0, xs.Length).Where(i => mitre == 0 || i == throatRing || Math.Abs(xs[i] - form.Places.ThroatMm) > reach)
                .Select(i => Ring(solid, i, profile, i == throatRing ? mitre : 0)),
        ];
        top = ToCorner(profile.At(0, 0), 0);
        tip = ToCorner(profile.At(form.Places.OverallMm, 0), 0);
        firstOfBand = new int[rings.Length + 2];
        for (var band = 0; band <= rings.Length; band++) firstOfBand[band + 1] = firstOfBand[band] + Band(band).Count();
    }

    /// <summary>How many facets there are.</summary>
    public int FacetCount => firstOfBand[^1];

    /// <summary>All facets, their corners against the clock seen from outside.</summary>
    public IEnumerable<(Corner A, Corner B, Corner C)> Facets() => FacetsFrom(0);

    /// <summary>The facets from one on: the bands before it are not gone through.</summary>
    public IEnumerable<(Corner A, Corner B, Corner C)> FacetsFrom(int first)
    {
        var at = Array.BinarySearch(firstOfBand, first);

        // Between two entries the search gives the complement of the later; of equal ones, which are empty bands, any will do.
        for (var band = at >= 0 ? at : ~at - 1; band <= rings.Length; band++)
        {
            foreach (var facet in Band(band).Skip(Math.Max(0, first - firstOfBand[band]))) yield return facet;
        }
    }

    // Bands run from the point at the top over the gaps between rings to the point at the tip.
    private IEnumerable<(Corner A, Corner B, Corner C)> Band(int band)
    {
        var count = rings[0].Length;
        for (var j = 0; j < count; j++)
        {
            var k = (j + 1) % count;
            if (band == 0)
            {
                if (IsFacet(top, rings[0][k], rings[0][j])) yield return (top, rings[0][k], rings[0][j]);
            }
            else if (band == rings.Length)
            {
                if (IsFacet(tip, rings[^1][j], rings[^1][k])) yield return (tip, rings[^1][j], rings[^1][k]);
            }
            else
            {
                Corner[] near = rings[band - 1], far = rings[band];
                if (IsFacet(near[j], near[k], far[j])) yield return (near[j], near[k], far[j]);
                if (IsFacet(near[k], far[k], far[j])) yield return (near[k], far[k], far[j]);
            }
        }
    }

    private static bool IsFacet(Corner a, Corner b, Corner c) => a != b && b != c && c != a;

    private static double[] RingPlaces(DesignReport report)
    {
        var form = report.Specification.Form;
        var overall = form.Places.OverallMm;
        var grid = StationGrid.Printed(form.Lengths, form.Blade.WidestAt, RingSpacingMm);
        var places = new List<double> { EndMm, overall - EndMm, form.Places.ThroatMm };
        places.AddRange(PaddleSolid.Shape(form, report.Sizes, report.Outline, grid).X);
        foreach (var (points, _) in Flatten.Chains(FacePaths.Half(report.Outline, 0, 0), OutlineToleranceMm)) places.AddRange(points.Select(p => p.X));

        // The rounded top closes in both directions at once: its points crowd towards the end.
        const int CapRings = 14;
        var cap = GripProfile.CapEnd * form.Places.GripEndMm;
        places.AddRange(Enumerable.Range(1, CapRings).Select(k => cap * k * k / (CapRings * CapRings)));

        places.Sort();
        var kept = new List<double>();
        foreach (var x in places)
        {
            if (x < EndMm || x > overall - EndMm) continue;
            if (kept.Count > 0 && x - kept[^1] < EndMm / 2)
            {
                if (x == form.Places.ThroatMm) kept[^1] = x;
                continue;
            }

            kept.Add(x);
        }

        return [.. kept];
    }

    private static Corner[] Ring(PaddleSolid solid, int i, EdgeProfile profile, double mitre)
    {
        var offset = solid.Grid.Patterns[i].Segment.Zone == Zone.Grip ? solid.CentreOffsetMm(i) : 0;
        return
        [
            .. SectionPaths.Closed(solid.Section(i), ChordsPerQuarter).Select(point =>
            {
                var height = offset + point.Y;
                var place = mitre == 0 ? profile.At(solid.X[i], height) : new Point(solid.X[i] - height * mitre, height);
                return ToCorner(place, point.X);
            }),
        ];
    }

    // Zero has one sign, so that equal corners are equal bytes too.
    private static Corner ToCorner(Point place, double across) => new((float)place.X + 0f, (float)across + 0f, (float)place.Y + 0f);
}
