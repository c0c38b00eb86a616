using System.Numerics;
using Paddle.Design;
using Paddle.Design.Solid;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Solids;

/// <summary>A triangle in single precision, as an STL file stores it, its corners against the clock seen from outside.</summary>
internal readonly record struct Facet(Vector3 A, Vector3 B, Vector3 C);

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

    private readonly Vector3[][] rings;
    private readonly Vector3 top;
    private readonly Vector3 tip;
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
        var facets = new Facet[MostInBand];
        for (var band = 0; band <= rings.Length; band++) firstOfBand[band + 1] = firstOfBand[band] + Fill(band, facets);
    }

    /// <summary>Most facets that a band has.</summary>
    public int MostInBand => 2 * rings[0].Length;

    /// <summary>How many facets there are.</summary>
    public int FacetCount => firstOfBand[^1];

    /// <summary>The band that a facet lies in, and that band's first facet.</summary>
    public (int Band, int First) BandOf(int facet)
    {
        var at = Array.BinarySearch(firstOfBand, facet);
        var band = at >= 0 ? at : ~at - 1;
        while (firstOfBand[band + 1] <= facet) band++; // of equal entries, which are empty bands, the search may give any
        return (band, firstOfBand[band]);
    }

    /// <summary>The facets of a band. Bands run from the point at the top over the gaps between rings to the point at the tip.</summary>
    /// <param name="facets">Receives them; room for <see cref="MostInBand"/>.</param>
    /// <returns>How many there are.</returns>
    public int Fill(int band, Span<Facet> facets)
    {
        var filled = 0;
        Vector3[] near = rings[Math.Max(band - 1, 0)], far = rings[Math.Min(band, rings.Length - 1)];
        for (var j = 0; j < near.Length; j++)
        {
            var k = j + 1 < near.Length ? j + 1 : 0;
            if (band == 0) filled = Add(facets, filled, top, far[k], far[j]);
            else if (band == rings.Length) filled = Add(facets, filled, tip, near[j], near[k]);
            else filled = Add(facets, Add(facets, filled, near[j], near[k], far[j]), near[k], far[k], far[j]);
        }

        return filled;
    }

    private static int Add(Span<Facet> facets, int filled, Vector3 a, Vector3 b, Vector3 c)
    {
        if (a == b || b == c || c == a) return filled;
        facets[filled] = new(a, b, c);
        return filled + 1;
    }

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

    private static Vector3[] Ring(PaddleSolid solid, int i, EdgeProfile profile, double mitre)
    {
        var offset = solid.Grid.Patterns[i].Segment.Zone == Zone.Grip ? solid.CentreOffsetMm(i) : 0;
        var points = SectionPaths.Closed(solid.Section(i), ChordsPerQuarter);
        var ring = new Vector3[points.Count];
        for (var j = 0; j < ring.Length; j++)
        {
            var height = offset + points[j].Y;
            ring[j] = ToCorner(mitre == 0 ? profile.At(solid.X[i], height) : new(solid.X[i] - height * mitre, height), points[j].X);
        }

        return ring;
    }

    // Zero has one sign, so that equal corners are equal bytes too.
    private static Vector3 ToCorner(Point place, double across) => new((float)place.X + 0f, (float)across + 0f, (float)place.Y + 0f);
}
