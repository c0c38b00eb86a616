using System.Collections.Concurrent;
using Paddle.Design.Outline;

namespace Paddle.Design.Solid;

/// <summary>A list of places from the top of the grip to the tip, with the patterns of their sections.</summary>
public sealed class StationGrid
{
    private static readonly ConcurrentDictionary<(int Segment, int Count), StationPattern[]> Even = new();
    private static readonly StationPattern Tip = StationPattern.At(Segment.All[^1], Segment.All[^1].To);
    private readonly StationPattern[] patterns;

    private StationGrid(StationPattern[] patterns)
    {
        this.patterns = patterns;
        FirstBladePlace = Array.FindIndex(patterns, pattern => pattern.Segment.Zone == Zone.Blade);
        LowerHandPlace = Array.FindIndex(patterns, pattern => ReferenceEquals(pattern.Segment, Segment.LowerShaft));
    }

    private static readonly int[] CoarsePoints = [3, 2, 4, 3, 2, 5, 6, 4, 4, 3], FinePoints = [6, 6, 12, 5, 3, 6, 10, 10, 14, 10];

    /// <summary>The coarse Gauss grid on which the solver works.</summary>
    public static StationGrid Coarse { get; } = Gauss(CoarsePoints);
    /// <summary>The fine Gauss grid from which the report's sums come.</summary>
    public static StationGrid Fine { get; } = Gauss(FinePoints);

    /// <summary>The coarse grid with one more knot on the blade, a fraction of it.</summary>
    internal static StationGrid SplitCoarse(double bladeKnot) => Gauss(CoarsePoints, bladeKnot);
    /// <summary>The fine grid with one more knot on the blade.</summary>
    internal static StationGrid SplitFine(double bladeKnot) => Gauss(FinePoints, bladeKnot);
    /// <summary>The patterns in order.</summary>
    public ReadOnlySpan<StationPattern> Patterns => patterns;
    public int LowerHandPlace { get; }
    /// <summary>The first place on the blade, at the throat.</summary>
    public int FirstBladePlace { get; }

    /// <summary>A Gauss–Legendre grid, split at every knot of the solid, plus a weightless place at every knot.</summary>
    /// <param name="pointsPerSegment">Gauss points for each of <see cref="Segment.All"/>.</param>
    /// <param name="bladeKnot">One more knot on the blade, as a fraction of it, where its wood changes; both parts get the segment's points.</param>
    public static StationGrid Gauss(IReadOnlyList<int> pointsPerSegment, double? bladeKnot = null)
    {
        var patterns = new List<StationPattern>();
        for (var i = 0; i < Segment.All.Count; i++)
        {
            var segment = Segment.All[i];
            if (segment.Zone != Zone.Grip) patterns.Add(StationPattern.At(segment, segment.From));
            var rule = new GaussRule(pointsPerSegment[i]);
            void Add(Segment part)
            {
                for (var k = 0; k < rule.Abscissas.Length; k++)
                {
                    var (coordinate, weight) = Map(part, rule.Abscissas[k], rule.Weights[k]);
                    patterns.Add(StationPattern.At(segment, coordinate, weight));
                }
            }

            if (bladeKnot is not { } knot || segment.Zone != Zone.Blade || knot <= segment.From || knot >= segment.To)
            {
                Add(segment);
                continue;
            }

            Add(segment with { To = knot, ClosesAtEnd = false });
            patterns.Add(StationPattern.At(segment, knot));
            Add(segment with { From = knot });
        }

        return new([.. patterns]);
    }

    /// <summary>Places no further apart than <paramref name="spacingMm"/>, one at every knot and one at the blade's widest point.</summary>
    /// <param name="lengths">Lengths (mm) of grip, upper shaft, lower shaft and blade.</param>
    /// <param name="widestAt">Widest point as a fraction of the blade.</param>
    /// <param name="spacingMm">Largest distance between neighbours, mm.</param>
    /// <param name="bladeKnot">One more place on the blade, as a fraction of it, or null.</param>
    internal static StationGrid Printed(in ZoneLengths lengths, double widestAt, double spacingMm, double? bladeKnot = null)
    {
        var patterns = new List<StationPattern>(256);
        for (var i = 0; i < Segment.All.Count; i++)
        {
            var segment = Segment.All[i];
            var span = (segment.To - segment.From) * lengths.Of(segment);

            // Places closer together in the grip, where width and thickness turn within a few millimetres, and at both round ends.
            var crowding = (segment.Zone == Zone.Grip ? 2 : 1) * (segment.ClosesAtStart || segment.ClosesAtEnd ? 2 : 1);
            patterns.AddRange(EvenPatterns(i, Math.Max(1, (int)Math.Ceiling(crowding * span / spacingMm - 1e-9))));
        }

        patterns.Add(Tip);
        Insert(patterns, widestAt);
        if (bladeKnot is { } knot) Insert(patterns, knot);
        return new([.. patterns]);
    }

    /// <summary>Weightless places at given distances from the top of the grip: to look at the solid where a drawing needs it.</summary>
    /// <param name="lengths">Lengths (mm) of grip, upper shaft, lower shaft and blade.</param>
    /// <param name="xsMm">Places in rising order, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A place lies outside the paddle.</exception>
    internal static StationGrid Through(in ZoneLengths lengths, ReadOnlySpan<double> xsMm)
    {
        var patterns = new StationPattern[xsMm.Length];
        for (var i = 0; i < xsMm.Length; i++) patterns[i] = PatternAt(lengths, xsMm[i]);
        return new(patterns);
    }

    private static StationPattern PatternAt(in ZoneLengths lengths, double x)
    {
        var (segment, coordinate) = SegmentAt(lengths, x);
        return StationPattern.At(segment, coordinate);
    }

    /// <summary>The segment that a place (mm from the top of the grip) lies in, and the place in its coordinate.</summary>
    internal static (Segment Segment, double Coordinate) SegmentAt(in ZoneLengths lengths, double x)
    {
        // Where segments meet, the solid is the same on both sides; a hair decides for the one that begins there.
        const double Hair = 1e-9;
        double[] zoneStarts = [0, lengths.GripMm, lengths.GripMm + lengths.UpperShaftMm, lengths.GripMm + lengths.UpperShaftMm + lengths.LowerShaftMm];
        for (var i = Segment.All.Count - 1; i >= 0; i--)
        {
            var segment = Segment.All[i];
            var zoneStart = segment.Zone switch
            {
                Zone.Grip => zoneStarts[0],
                Zone.Blade => zoneStarts[3],
                _ => ReferenceEquals(segment, Segment.UpperShaft) ? zoneStarts[1] : zoneStarts[2],
            };
            var coordinate = (x - zoneStart) / lengths.Of(segment);
            if (coordinate < segment.From - Hair) continue;
            if (coordinate > segment.To + Hair) break;
            return (segment, Math.Clamp(coordinate, segment.From, segment.To));
        }

        throw new ArgumentOutOfRangeException(nameof(x), x, "Must lie between the top of the grip and the tip.");
    }

    private static void Insert(List<StationPattern> patterns, double bladeAt)
    {
        var next = patterns.FindIndex(pattern => pattern.Segment.Zone == Zone.Blade && pattern.Coordinate >= bladeAt - 1e-6);
        if (Math.Abs(patterns[next].Coordinate - bladeAt) < 1e-6) return;
        patterns.Insert(next, StationPattern.At(patterns[next - 1].Segment, bladeAt));
    }

    private static StationPattern[] EvenPatterns(int segmentIndex, int count) =>
        Even.GetOrAdd((segmentIndex, count), static key =>
        {
            var segment = Segment.All[key.Segment];
            var patterns = new StationPattern[key.Count];
            for (var k = 0; k < key.Count; k++)
                patterns[k] = StationPattern.At(segment, Map(segment, k / (double)key.Count, 0).Coordinate);
            return patterns;
        });

    // A square-root end is smooth in the square root of the distance from it: points crowd there, and Gauss keeps its power.
    private static (double Coordinate, double Weight) Map(Segment segment, double x, double weight)
    {
        var span = segment.To - segment.From;
        if (segment.ClosesAtStart) return (segment.From + span * x * x, weight * span * 2 * x);
        if (segment.ClosesAtEnd) return (segment.To - span * (1 - x) * (1 - x), weight * span * 2 * (1 - x));
        return (segment.From + span * x, weight * span);
    }
}

/// <summary>Lengths of the zones' coordinates, mm.</summary>
/// <param name="GripMm">Top to grip end.</param>
/// <param name="UpperShaftMm">Grip end to lower hand.</param>
/// <param name="LowerShaftMm">Lower hand to throat.</param>
/// <param name="BladeMm">Throat to tip.</param>
public readonly record struct ZoneLengths(double GripMm, double UpperShaftMm, double LowerShaftMm, double BladeMm)
{
    /// <summary>Length of one unit of a segment's coordinate, mm.</summary>
    internal double Of(Segment segment) => segment.Zone switch
    {
        Zone.Grip => GripMm,
        Zone.Blade => BladeMm,
        _ => ReferenceEquals(segment, Segment.UpperShaft) ? UpperShaftMm : LowerShaftMm,
    };
}
