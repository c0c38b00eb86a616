using System.Collections.Concurrent;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
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
        double handSpacingMm = 889,
        string species = "white-ash") =>
        Solved.GetOrAdd(
            (family, bendDegrees, style, faces, handSpacingMm, species),
            static key => PaddleDesigner.Design(Asked(key.Item1, key.Item2, key.Item3, key.Item4, key.Item5, key.Item6)));

    /// <summary>The trade's cherry paddle, its shaft thinned to 23 mm: too weak.</summary>
    public static DesignReport TooWeak { get; } = PaddleDesigner.Design(
        Asked("ottertail", species: "black-cherry") with { Pinned = new(ShaftWidthMm: 23, ShaftThicknessMm: 23) });

    /// <summary>Strong, but asked to weigh less than any paddle does.</summary>
    public static DesignReport TooHeavy { get; } = PaddleDesigner.Design(HeavyOf(Asked("ottertail", species: "black-cherry")));

    /// <summary>The trade's cherry paddle in an inch shop.</summary>
    public static DesignReport InInches { get; } = PaddleDesigner.Design(InInchesOf(Asked("ottertail", species: "black-cherry")));

    /// <summary>Spruce in the middle, wings of redcedar, glued up in an inch shop.</summary>
    public static DesignReport GluedUpInInches { get; } = PaddleDesigner.Design(InInchesOf(Asked("beavertail", species: "sitka-spruce")).GluedUp(new(
        [new(Wood("sitka-spruce"), 34), new(Wood("western-redcedar"), 90)], true, Adhesive.All[0])));

    /// <summary>A wood at 12 % moisture with nearly straight grain.</summary>
    public static WoodInUse Wood(string species) => WoodInUse.Resolve(WoodCatalogue.Find(species)!, 12, 0.04, null, null);

    /// <summary>The same specification for a shop that measures in inches.</summary>
    public static PaddleSpecification InInchesOf(PaddleSpecification asked) =>
        asked with { Units = DrawingUnits.Inch, LatticeMm = PaddleSpecification.ThirtySecondMm };

    /// <summary>A design to be asked for, every size open.</summary>
    public static PaddleSpecification Asked(
        string name,
        double bend = 0,
        GripStyle gripStyle = GripStyle.Pear,
        GripFaces gripFaces = GripFaces.Matching,
        double spacing = 889,
        string species = "white-ash")
    {
        var grip = GripPattern.Of(gripStyle);
        var blade = Blade(name);
        var lower = grip.HandMm + spacing;
        var throat = lower + 38;
        var form = new PaddleForm(
            new(grip.HandMm, grip.LengthMm, lower, throat, throat + blade.LengthMm),
            new(gripStyle, grip.WidthMm, grip.LengthMm, gripFaces, grip.HollowDepthMm),
            blade,
            bend);
        var used = Wood(species);
        var aims = new Aims(BalanceAim.LowerHand, 12, 1.3, null, null, null);
        return new(form, new(), used, Loads.For(Duty.Touring, 75, form.BladeAreaMm2()), aims);
    }

    private static PaddleSpecification HeavyOf(PaddleSpecification asked) => asked with { Aims = asked.Aims with { MaximumMassG = 400 } };

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
        DrawingUnits units = DrawingUnits.Metric, string label = "Heron Lake hire paddle M", PaperSize paper = PaperSize.A4) =>
        new(label, units, "0.1.0", "p1-abcdefghijklmnopqrstuvwxyz0123456789", paper);

    public static TheoryData<string> Families()
    {
        var data = new TheoryData<string>();
        foreach (var family in BladeFamilies.All) data.Add(family.Id);
        data.Add(OwnOffsets);
        return data;
    }
}
