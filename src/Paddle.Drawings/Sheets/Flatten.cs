namespace Paddle.Drawings.Sheets;

/// <summary>Breaks paths into straight chords.</summary>
internal static class Flatten
{
    /// <summary>The path as chains of points; a closed chain does not repeat its first point.</summary>
    /// <param name="toleranceMm">Most that a chord may stand off the curve, mm.</param>
    public static IReadOnlyList<(List<Point> Points, bool Closed)> Chains(SheetPath path, double toleranceMm)
    {
        var chains = new List<(List<Point>, bool)>();
        var points = new List<Point>();
        void End(bool closed)
        {
            if (closed && points.Count > 1 && (points[0] - points[^1]).Length < 1e-9) points.RemoveAt(points.Count - 1);
            if (points.Count > 1) chains.Add((points, closed));
            points = [];
        }

        foreach (var step in path.Steps)
        {
            switch (step.Kind)
            {
                case StepKind.Move:
                    End(false);
                    points.Add(step.End);
                    break;
                case StepKind.Line:
                    points.Add(step.End);
                    break;
                case StepKind.Cubic:
                    AddCubic(points, points[^1], step, toleranceMm);
                    break;
                default:
                    End(true);
                    break;
            }
        }

        End(false);
        return chains;
    }

    // A cubic cut into n even parts stands off its chords by at most |P''|max/(8n²) (mean value theorem); P'' is greatest at an end.
    private static void AddCubic(List<Point> points, Point p0, PathStep step, double tolerance)
    {
        Point bend0 = p0 - 2 * step.A + step.B, bend1 = step.A - 2 * step.B + step.End;
        var bend = 6 * Math.Max(bend0.Length, bend1.Length);
        var parts = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(bend / (8 * tolerance))));
        for (var k = 1; k <= parts; k++)
        {
            double s = k / (double)parts, t = 1 - s;
            points.Add(t * t * t * p0 + 3 * t * t * s * step.A + 3 * t * s * s * step.B + s * s * s * step.End);
        }
    }
}
