namespace Paddle.Drawings.Sheets;

/// <summary>A point of a sheet, mm; x to the right, y down.</summary>
internal readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(double k, Point a) => new(k * a.X, k * a.Y);

    public double Length => Math.Sqrt(X * X + Y * Y);
}

internal enum StepKind
{
    Move,
    Line,
    Cubic,
    Close,
}

/// <summary>One step of a path; <paramref name="A"/> and <paramref name="B"/> are the handles of a cubic.</summary>
internal readonly record struct PathStep(StepKind Kind, Point A, Point B, Point End);

/// <summary>A path of straight lines and cubic Béziers.</summary>
internal sealed record SheetPath(IReadOnlyList<PathStep> Steps)
{
    /// <summary>An open or closed chain of straight lines.</summary>
    public static SheetPath Polyline(IEnumerable<Point> points, bool closed = false)
    {
        var steps = points.TryGetNonEnumeratedCount(out var count) ? new List<PathStep>(count + 1) : [];
        foreach (var point in points) steps.Add(new(steps.Count == 0 ? StepKind.Move : StepKind.Line, default, default, point));
        if (closed) steps.Add(new(StepKind.Close, default, default, steps[0].End));
        return new(steps);
    }

    public static SheetPath Line(double x0, double y0, double x1, double y1) => Polyline([new(x0, y0), new(x1, y1)]);

    public static SheetPath Rectangle(double x, double y, double width, double height) =>
        Polyline([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], closed: true);

    /// <summary>A circle of four cubics, true to 0.03 % of its radius.</summary>
    public static SheetPath Circle(double x, double y, double radius)
    {
        const double Quarter = 0.5522847498;
        Point centre = new(x, y), right = new(radius, 0), down = new(0, radius);
        var steps = new List<PathStep> { new(StepKind.Move, default, default, centre + right) };
        Point from = right, to = down;
        for (var quarter = 0; quarter < 4; quarter++)
        {
            steps.Add(new(StepKind.Cubic, centre + from + Quarter * to, centre + to + Quarter * from, centre + to));
            (from, to) = (to, -1 * from);
        }

        steps.Add(new(StepKind.Close, default, default, centre + right));
        return new(steps);
    }

    /// <summary>The path carried elsewhere.</summary>
    public SheetPath Map(Func<Point, Point> move)
    {
        var moved = new PathStep[Steps.Count];
        for (var i = 0; i < moved.Length; i++)
        {
            var step = Steps[i];
            moved[i] = step.Kind == StepKind.Cubic ? new(step.Kind, move(step.A), move(step.B), move(step.End)) : step with { End = move(step.End) };
        }

        return new(moved);
    }
}
