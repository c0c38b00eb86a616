using System.Collections.Concurrent;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Drawings.Tests;

/// <summary>Real designs of every family to draw, each solved once.</summary>
internal static class SampleDesigns
{
    private static readonly ConcurrentDictionary<(string, double, GripStyle, GripFaces, double, string), DesignReport> Solved = new();

    /// <summary>Label with all that a file format could trip over, 80 characters in all.</summary>
    public const string HostileLabel =
        "<script>alert('x')</script> \"&amp;]]>\" \U0001F6F6 \u202Eעברית \0\u0007 é\r\n  0\nEOF\nLINE padded on";

    public static DesignReport Of(
        string family,
        double bendDegrees = 0,
        GripStyle style = GripStyle.Pear,
        GripFaces faces = GripFaces.Matching,
        double handSpacingMm = 880,
        string species = "white-ash") =>
        Solved.GetOrAdd((family, bendDegrees, style, faces, handSpacingMm, species), static key =>
        {
            var (name, bend, gripStyle, gripFaces, spacing, wood) = key;
            var grip = GripPattern.Of(gripStyle);
            var blade = Blade(name);
            var lower = grip.HandMm + spacing;
            var throat = lower + 38;
            var form = new PaddleForm(
                new(grip.HandMm, grip.LengthMm, lower, throat, throat + blade.LengthMm),
                new(gripStyle, grip.WidthMm, grip.LengthMm, gripFaces, grip.HollowDepthMm),
                blade,
                bend);
            var used = WoodInUse.Resolve(WoodCatalogue.Find(wood)!, 12, 0.04, null, null);
            var aims = new Aims(BalanceAim.LowerHand, 12, 1.3, null, null, null);
            return PaddleDesigner.Design(new(form, new(), used, Loads.For(Duty.Touring, 75, form.BladeAreaMm2()), aims));
        });

    /// <summary>Id of the sample whose blade is a maker's own table of offsets, with a straight end.</summary>
    public const string OwnOffsets = "own-offsets";

    private static BladeShape Blade(string name)
    {
        if (name == OwnOffsets)
        {
            Offset[] table = [new(0, 15), new(100, 24), new(220, 66), new(360, 76), new(480, 72), new(560, 52), new(590, 30)];
            return new(null, 590, 152, 360.0 / 590, 0.8, table);
        }

        var family = BladeFamilies.Find(name)!;
        return new(family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
    }

    /// <summary>One design of every family, with every grip, one bent shaft, one one-sided grip and one short paddle among them.</summary>
    public static DesignReport Varied(string family) => family switch
    {
        "teardrop" => Of(family, bendDegrees: 12),
        "square-tip" => Of(family, style: GripStyle.T),
        "sugar-island" => Of(family, style: GripStyle.Palm),
        "beavertail" => Of(family, faces: GripFaces.OneSided),
        "sturgeon-nose" => Of(family, handSpacingMm: 520),
        _ => Of(family),
    };

    public static DrawingContext Context(
        Units.DrawingUnits units = Units.DrawingUnits.Metric, string label = "Heron Lake hire paddle M", PaperSize paper = PaperSize.A4) =>
        new(label, units, "0.1.0", "p1-abcdefghijklmnopqrstuvwxyz0123456789", paper);

    public static TheoryData<string> Families()
    {
        var data = new TheoryData<string>();
        foreach (var family in BladeFamilies.All) data.Add(family.Id);
        data.Add(OwnOffsets);
        return data;
    }
}
