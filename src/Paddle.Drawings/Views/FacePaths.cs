using Paddle.Design.Outline;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The outline as paths with the very control points that the design was computed from.</summary>
internal static class FacePaths
{
    /// <summary>The whole outline, closed: along one edge from the grip to the tip and back along the other.</summary>
    /// <param name="curve">The half-breadth curve.</param>
    /// <param name="x0">x of the top of the grip on the sheet, mm.</param>
    /// <param name="centre">y of the centre line on the sheet, mm.</param>
    public static SheetPath Whole(HalfBreadthCurve curve, double x0, double centre)
    {
        var steps = new List<PathStep>();
        AddForward(curve, x0, centre, steps);
        var end = curve.Pieces[^1];

        // A maker's own table may end in a breadth: the tip is then a straight edge across.
        if (end.Y3 > 0) steps.Add(new(StepKind.Line, default, default, new(x0 + end.X3, centre + end.Y3)));
        for (var i = curve.Pieces.Length - 1; i >= 0; i--)
        {
            var piece = curve.Pieces[i];
            steps.Add(new(
                StepKind.Cubic, new(x0 + piece.X2, centre + piece.Y2), new(x0 + piece.X1, centre + piece.Y1),
                new(x0 + piece.X0, centre + piece.Y0)));
        }

        steps.Add(new(StepKind.Close, default, default, steps[0].End));
        return new(steps);
    }

    /// <summary>One half, above the centre line; closed along the centre line.</summary>
    public static SheetPath Half(HalfBreadthCurve curve, double x0, double centre)
    {
        var steps = new List<PathStep>();
        AddForward(curve, x0, centre, steps);
        var end = curve.Pieces[^1];
        if (end.Y3 > 0) steps.Add(new(StepKind.Line, default, default, new(x0 + end.X3, centre)));
        steps.Add(new(StepKind.Close, default, default, steps[0].End));
        return new(steps);
    }

    private static void AddForward(HalfBreadthCurve curve, double x0, double centre, List<PathStep> steps)
    {
        var first = curve.Pieces[0];
        steps.Add(new(StepKind.Move, default, default, new(x0 + first.X0, centre - first.Y0)));
        foreach (var piece in curve.Pieces)
        {
            steps.Add(new(
                StepKind.Cubic, new(x0 + piece.X1, centre - piece.Y1), new(x0 + piece.X2, centre - piece.Y2),
                new(x0 + piece.X3, centre - piece.Y3)));
        }
    }
}
