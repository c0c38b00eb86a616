using System.Buffers.Binary;
using System.Numerics;
using Paddle.Design;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

public class SolidStlTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void The_skin_is_closed_and_faces_outward(string family)
    {
        var edges = new Dictionary<(Vector3, Vector3), int>();
        foreach (var (a, b, c, _) in Facets(SampleDesigns.Varied(family)))
        {
            foreach (var edge in new[] { (a, b), (b, c), (c, a) }) edges[edge] = edges.GetValueOrDefault(edge) + 1;
        }

        foreach (var ((from, to), count) in edges)
        {
            Assert.Equal(1, count);
            Assert.True(edges.ContainsKey((to, from)), $"open edge at {from}");
        }
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Volume_and_balance_point_are_the_reports(string family)
    {
        var report = SampleDesigns.Varied(family);
        double volume = 0, moment = 0, across = 0;
        foreach (var (a, b, c, _) in Facets(report))
        {
            var six = Vector3Double(a, b, c);
            volume += six / 6;
            moment += six / 24 * (a.X + b.X + c.X);
            across += six / 24 * (a.Y + b.Y + c.Y);
        }

        Assert.Equal(report.Mass.VolumeCm3, volume / 1000, 0.003 * report.Mass.VolumeCm3);
        Assert.Equal(report.Mass.CentreOfMassMm, moment / volume, 0.003 * report.Mass.CentreOfMassMm);
        Assert.Equal(0, across / volume, 1e-3);
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Extents_are_the_designs(string family)
    {
        var report = SampleDesigns.Varied(family);
        var form = report.Specification.Form;
        var corners = Facets(report).SelectMany(facet => new[] { facet.A, facet.B, facet.C }).ToList();
        Assert.Equal(0, corners.Min(v => v.X), 1e-3);
        var half = Math.Max(form.Blade.HalfWidthMm, form.Grip.WidthMm / 2);
        Assert.InRange(corners.Max(v => v.Y), half - 0.1, half + 1e-3);
        if (form.BendDegrees == 0) Assert.Equal(form.Places.OverallMm, corners.Max(v => v.X), 1e-3);
        else Assert.True(corners.Max(v => v.Z) > form.Places.BladeMm * form.BendSine);
    }

    [Theory]
    [InlineData("square-tip")]
    [InlineData("sturgeon-nose")]
    [InlineData("beavertail")]
    public void Facets_keep_to_the_solid_within_a_tenth_of_a_millimetre(string family)
    {
        var report = SampleDesigns.Varied(family);
        var facets = Facets(report).ToList();
        for (var i = 0; i < facets.Count; i += 97)
        {
            var middle = (facets[i].A + facets[i].B + facets[i].C) / 3;
            if (middle.X < 0.03 || middle.X > report.Outline.EndMm - 0.03) continue;
            var solid = SolidLook.At(report, [middle.X]);
            var offset = middle.X < report.Specification.Form.Places.GripEndMm ? solid.CentreOffsetMm(0) : 0;
            var section = SectionPaths.Closed(solid.Section(0), 300);
            var distance = Enumerable.Range(0, section.Count).Min(k =>
                Distance(new(middle.Y, middle.Z - (float)offset), section[k], section[(k + 1) % section.Count]));

            // Measured in the section's plane; the skin leans out of it near the ends.
            distance *= Math.Sqrt(facets[i].Normal.Y * facets[i].Normal.Y + facets[i].Normal.Z * facets[i].Normal.Z);
            Assert.True(distance < 0.1, $"{distance:0.000} mm off at {middle}");
        }
    }

    [Fact]
    public void Normals_are_unit_and_agree_with_the_corners()
    {
        foreach (var (a, b, c, normal) in Facets(SampleDesigns.Of("ottertail")))
        {
            var cross = Vector3.Cross(b - a, c - a);
            if (cross.Length() < 1e-4f) continue;
            Assert.Equal(1, normal.Length(), 1e-4);
            Assert.True(Vector3.Dot(normal, Vector3.Normalize(cross)) > 0.999f);
        }
    }

    [Fact]
    public void The_file_is_binary_and_as_long_as_it_says()
    {
        var bytes = Written(SampleDesigns.Of("ottertail"));
        Assert.False(bytes.AsSpan(0, 5).SequenceEqual("solid"u8));
        var count = BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(80));
        Assert.Equal(84 + 50L * count, bytes.Length);
        Assert.InRange(bytes.Length, 1_000_000, 8_000_000);
    }

    [Fact]
    public void Facets_of_no_area_are_few()
    {
        var facets = Facets(SampleDesigns.Of("ottertail")).ToList();
        Assert.All(facets, facet => Assert.True(facet.A != facet.B && facet.B != facet.C && facet.C != facet.A));
    }

    private static double Vector3Double(Vector3 a, Vector3 b, Vector3 c) =>
        a.X * ((double)b.Y * c.Z - (double)b.Z * c.Y) + a.Y * ((double)b.Z * c.X - (double)b.X * c.Z) + a.Z * ((double)b.X * c.Y - (double)b.Y * c.X);

    private static double Distance(Vector2 p, Sheets.Point a, Sheets.Point b)
    {
        var along = b - a;
        Sheets.Point to = new(p.X - a.X, p.Y - a.Y);
        var t = Math.Clamp((to.X * along.X + to.Y * along.Y) / Math.Max(1e-18, along.Length * along.Length), 0, 1);
        return (to - t * along).Length;
    }

    private static byte[] Written(DesignReport report)
    {
        using var stream = new WriteOnlyStream();
        DesignFiles.Find("solid.stl")!.Write(report, SampleDesigns.Context(), stream);
        return stream.Bytes;
    }

    private static IEnumerable<(Vector3 A, Vector3 B, Vector3 C, Vector3 Normal)> Facets(DesignReport report)
    {
        var bytes = Written(report);
        Vector3 At(int from) => new(
            BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(from)),
            BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(from + 4)),
            BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(from + 8)));
        for (var at = 84; at < bytes.Length; at += 50) yield return (At(at + 12), At(at + 24), At(at + 36), At(at));
    }
}
