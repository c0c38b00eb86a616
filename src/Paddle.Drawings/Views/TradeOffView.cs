using System.Globalization;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Designs by their first two figures; the unbeaten ones numbered, and named below with all their figures.</summary>
internal static class TradeOffView
{
    private const double Width = 297, Left = 30, Right = 282, PanelMm = 120, RowMm = 5;
    // A table of more is read in the answer, not on a picture.
    private const int MostNamed = 40;
    private const double Large = 2.2, Small = 0.9;

    /// <summary>Class of a point; a second class says how it stands.</summary>
    public const string PointCss = "point";

    /// <summary>Colours; an unbeaten point is filled and numbered as well, one that misses an aim is a cross.</summary>
    public const string Style = """
        .line.point.unbeaten{fill:#2f6b3a;stroke:#2f6b3a}.line.point.beaten{fill:none;stroke:#6b6557}.line.point.missed{fill:none;stroke:#a03a1a}
        """;

    public static Sheet Draw(TradeOffPicture picture, DrawingContext context)
    {
        var sketch = new Sketch();
        var named = picture.Points.Where(point => point.Standing == TradeOffStanding.Unbeaten)
            .OrderBy(point => point.Figures[0]).ThenBy(point => point.Figures[1]).ToList();
        TitleBlock.Heading(sketch, context.Label, Summary(picture, named.Count), 12, 6, Width - 24, small: true);
        const double Top = 44, Foot = Top + PanelMm;
        var (x, y) = (Scale.Over(picture, 0), Scale.Over(picture, 1));
        double X(TradeOffPoint point) => Left + (Right - Left) * x.Share(point.Figures[0]);
        double Y(TradeOffPoint point) => Foot - PanelMm * y.Share(point.Figures[1]);
        DrawGrid(sketch, x, y, Top, Foot);
        sketch.Text(Titled(picture.Axes[0]), (Left + Right) / 2, Foot + 11, Lettering.Small, Anchor.Middle, strong: true);
        sketch.Text(Titled(picture.Axes[1]), Left - 16, (Top + Foot) / 2, Lettering.Small, Anchor.Middle, turn: -90, strong: true);
        var size = Sizes(picture);
        foreach (var point in picture.Points.OrderByDescending(point => point.Standing)) DrawPoint(sketch, X(point), Y(point), size(point), point.Standing);
        DrawNumbers(sketch, [.. named.Take(MostNamed).Select(point => (new Point(X(point), Y(point)), size(point)))], picture.Axes[0].IsWishedLarge, picture.Axes[1].IsWishedLarge);

        var foot = DrawLegend(sketch, picture, Foot + 18);
        foot = DrawTable(sketch, picture, named, foot);
        sketch.Text($"Engine {context.EngineVersion}", Left, foot + 3, Lettering.Small);
        return sketch.Finish("trade-off", $"{context.Label}: trade-off", Describe(picture, named), Width, foot + 9);
    }

    // On the side where nothing better can lie; neighbours too close to be numbered apart share a label.
    private static void DrawNumbers(Sketch sketch, IReadOnlyList<(Point At, double Size)> points, bool isRightBetter, bool isUpBetter)
    {
        const double ApartMm = 3.2;
        for (int first = 0, next; first < points.Count; first = next)
        {
            var (at, size) = points[first];
            for (next = first + 1; next < points.Count && (points[next].At - at).Length < ApartMm; next++)
            {
            }

            var text = next - first == 1 ? Number(first + 1) : $"{first + 1}–{next}";
            sketch.Text(
                text, at.X + (isRightBetter ? 1 : -1) * (size + 0.6), at.Y + (isUpBetter ? -size - 0.4 : size + 2.2), Lettering.Small,
                isRightBetter ? Anchor.Start : Anchor.End, Layer.Marks, strong: true);
        }
    }

    private static void DrawPoint(Sketch sketch, double x, double y, double size, TradeOffStanding standing)
    {
        if (standing == TradeOffStanding.MissesAim)
        {
            const string Css = PointCss + " missed";
            sketch.Line(x - Small, y - Small, x + Small, y + Small, LineKind.Narrow, Layer.Marks, Css);
            sketch.Line(x - Small, y + Small, x + Small, y - Small, LineKind.Narrow, Layer.Marks, Css);
            return;
        }

        sketch.Path(SheetPath.Circle(x, y, size), LineKind.Narrow, Layer.Marks, css: PointCss + (standing == TradeOffStanding.Unbeaten ? " unbeaten" : " beaten"));
    }

    private static void DrawGrid(Sketch sketch, Scale x, Scale y, double top, double foot)
    {
        foreach (var value in x.Ticks())
        {
            var at = Left + (Right - Left) * x.Share(value);
            sketch.Line(at, top, at, foot, LineKind.Fine, Layer.Stations);
            sketch.Text(Number(value), at, foot + 5, Lettering.Small, Anchor.Middle);
        }

        foreach (var value in y.Ticks())
        {
            var at = foot - (foot - top) * y.Share(value);
            sketch.Line(Left, at, Right, at, LineKind.Fine, Layer.Stations);
            sketch.Text(Number(value), Left - 2, at + 1.2, Lettering.Small, Anchor.End);
        }
    }

    private static double DrawLegend(Sketch sketch, TradeOffPicture picture, double y)
    {
        (TradeOffStanding Standing, string Text)[] kinds =
            [(TradeOffStanding.Unbeaten, "no other beats it"), (TradeOffStanding.Beaten, "beaten by another"), (TradeOffStanding.MissesAim, "misses an aim, held against none")];
        foreach (var (k, kind) in kinds.Index())
        {
            DrawPoint(sketch, Left + k * 50, y - 1.2, 1.3, kind.Standing);
            sketch.Text(kind.Text, Left + k * 50 + 3, y, Lettering.Small);
        }

        if (picture.Axes.Count > 2) sketch.Text($"The larger the circle, the larger the {Titled(picture.Axes[2])}", Left, y += RowMm, Lettering.Small);
        return y + 9;
    }

    private static double DrawTable(Sketch sketch, TradeOffPicture picture, List<TradeOffPoint> named, double y)
    {
        const double First = Left + 8, NameMm = 92;
        var column = (Right - First - NameMm) / picture.Axes.Count;
        double At(int k) => First + NameMm + (k + 1) * column;
        var inputs = string.Join("; ", picture.Varied);
        sketch.Text(inputs, First, y, Lettering.FitHeightMm(inputs, Lettering.Small, NameMm), strong: true);
        foreach (var (k, axis) in picture.Axes.Index())
        {
            var head = Named(axis);
            sketch.Text(head, At(k), y, Lettering.FitHeightMm(head, Lettering.Small, column - 3), Anchor.End, strong: true);
        }

        foreach (var (n, point) in named.Take(MostNamed).Index())
        {
            y += RowMm;
            sketch.Text(Number(n + 1), Left, y, Lettering.Small, strong: true);
            sketch.Text(point.Name, First, y, Lettering.FitHeightMm(point.Name, Lettering.Small, NameMm));
            foreach (var (k, figure) in point.Figures.Index()) sketch.Text(Number(figure), At(k), y, Lettering.Small, Anchor.End);
        }

        if (named.Count > MostNamed) sketch.Text($"and {named.Count - MostNamed} more", First, y += RowMm, Lettering.Small);
        return y + RowMm;
    }

    // Circles by the third figure; without one all alike.
    private static Func<TradeOffPoint, double> Sizes(TradeOffPicture picture)
    {
        if (picture.Axes.Count < 3) return _ => 1.5;
        var scale = Scale.Over(picture, 2);
        return point => Small + (Large - Small) * scale.Share(point.Figures[2]);
    }

    private static string Titled(TradeOffAxis axis) => $"{Named(axis)} ({(axis.IsWishedLarge ? "more" : "less")} is better)";

    private static string Named(TradeOffAxis axis) => axis.Unit.Length > 0 ? $"{axis.Name}, {axis.Unit}" : axis.Name;

    private static string Summary(TradeOffPicture picture, int unbeaten)
    {
        var missed = picture.Points.Count(point => point.Standing == TradeOffStanding.MissesAim);
        var text = $"{unbeaten} of {picture.Points.Count + picture.Refused} designs are beaten by no other";
        if (missed > 0) text += $"; {missed} {(missed == 1 ? "misses" : "miss")} an aim";
        return picture.Refused > 0 ? $"{text}; {picture.Refused} cannot be made" : text;
    }

    private static string Describe(TradeOffPicture picture, List<TradeOffPoint> named) =>
        $"Designs by {Named(picture.Axes[0])} across and {Named(picture.Axes[1])} upward. {Summary(picture, named.Count)}. Varied: {string.Join("; ", picture.Varied)}. "
        + string.Join("; ", named.Take(MostNamed).Select((point, k) => $"{k + 1}: {point.Name}: {string.Join(", ", point.Figures.Select(Number))}"));

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>An axis from one even figure to another.</summary>
    private readonly record struct Scale(double Low, double High, double Step)
    {
        internal static Scale Over(TradeOffPicture picture, int axis)
        {
            var all = picture.Points.Select(point => point.Figures[axis]).DefaultIfEmpty(0).ToList();
            double low = all.Min(), high = all.Max(), step = Views.Ticks.Step(Math.Max(high - low, 1e-3 * Math.Max(Math.Abs(high), 1e-3)) / 6);
            low = Math.Floor(low / step - 0.2) * step;
            return new(low, Math.Max(low + step, Math.Ceiling(high / step + 0.2) * step), step);
        }

        internal double Share(double value) => (value - Low) / (High - Low);

        internal IEnumerable<double> Ticks()
        {
            for (var k = 0; Low + k * Step <= High + Step / 2; k++) yield return Math.Round(Low + k * Step, 9);
        }
    }
}
