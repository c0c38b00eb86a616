using Paddle.Design;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>A named place along the paddle.</summary>
internal sealed record Landmark(string Name, double XMm)
{
    /// <summary>Name of the balance point, which is found with a finger.</summary>
    public const string Balance = "Balance";

    public string Text(DrawingUnits units) => $"{Name} {(Name == Balance ? DrawnLength.Rough(XMm, units) : DrawnLength.Text(XMm, units))}";
}

/// <summary>The places that a maker marks, and their lettering in rows that never run into one another.</summary>
internal static class Landmarks
{
    public const double RowMm = 8;

    /// <summary>Top hand, lower hand, balance, throat and widest point, in order along the paddle.</summary>
    public static IReadOnlyList<Landmark> Of(DesignReport report)
    {
        var form = report.Specification.Form;
        var places = form.Places;
        return
        [
            .. new Landmark[]
            {
                new("Top hand", places.TopHandMm),
                new("Lower hand", places.LowerHandMm),
                new(Landmark.Balance, BalanceXMm(report)),
                new("Throat", places.ThroatMm),
                new("Widest", places.ThroatMm + form.Blade.WidestAt * places.BladeMm),
            }.OrderBy(mark => mark.XMm),
        ];
    }

    /// <summary>x (mm) of the finished paddle's balance point along its own centre line; the report gives it along the shaft's line.</summary>
    public static double BalanceXMm(DesignReport report) => OnCentreLineMm(report.Specification.Form, report.Finished.CentreOfMassMm);

    /// <summary>x (mm) along the paddle's own centre line of a place given along the shaft's line.</summary>
    public static double OnCentreLineMm(PaddleForm form, double alongShaftMm)
    {
        var beyond = alongShaftMm - form.Places.ThroatMm;
        return beyond <= 0 ? alongShaftMm : form.Places.ThroatMm + beyond / form.BendCosine;
    }

    /// <summary>Row of each mark's lettering, 0 the lowest. The lettering runs to the right of its leader, so that a mark must stand above
    /// every mark whose leader it would otherwise run into.</summary>
    public static int[] Rows(IReadOnlyList<double> xs, IReadOnlyList<double> widthsMm)
    {
        var rows = new int[xs.Count];
        for (var i = xs.Count - 1; i >= 0; i--)
        {
            for (var j = i + 1; j < xs.Count && xs[j] < xs[i] + widthsMm[i]; j++) rows[i] = Math.Max(rows[i], rows[j] + 1);
        }

        return rows;
    }

    /// <summary>The sign of a balance point: a circle with two opposite quarters filled.</summary>
    public static void DrawBalance(Sketch sketch, double x, double y, double radius, string? css = null)
    {
        sketch.Path(SheetPath.Circle(x, y, radius), LineKind.Narrow, Layer.Marks);
        const double Quarter = 0.5522847498;
        foreach (var side in (double[])[1, -1])
        {
            Point centre = new(x, y), along = new(side * radius, 0), up = new(0, -side * radius);
            sketch.Path(
                new(
                [
                    new(StepKind.Move, default, default, centre),
                    new(StepKind.Line, default, default, centre + along),
                    new(StepKind.Cubic, centre + along + Quarter * up, centre + up + Quarter * along, centre + up),
                    new(StepKind.Close, default, default, centre),
                ]),
                LineKind.Narrow,
                Layer.Marks,
                Fill.Ink,
                css: css);
        }
    }
}
