using Paddle.Design.Build;

namespace Paddle.Design.Layout;

/// <summary>The maker's own board with as many copies of a paddle chalked on it as it holds.</summary>
/// <param name="Order">The board and the paddle.</param>
/// <param name="Layout">Where they lie; what does not fit is told only where none does.</param>
internal sealed record BoardPlan(LayoutOrder Order, BoardLayout Layout)
{
    // Nobody gets more out of one board.
    private const int Most = 8;

    /// <summary>How many come out of the board.</summary>
    public int Count => Layout.Placements.Count;

    /// <summary>Lays a design on a board of its wood.</summary>
    /// <param name="lengthMm">Length of the board, mm.</param>
    /// <param name="widthMm">Width of the board, mm.</param>
    /// <param name="thicknessMm">Its thickness, mm.</param>
    public static BoardPlan For(DesignReport report, double lengthMm, double widthMm, double thicknessMm, OutlineSaw saw, CancellationToken cancellation = default)
    {
        var wood = report.Specification.Wood;
        var board = new RackBoard("of yours", lengthMm, widthMm, thicknessMm, wood.Species, 1, null, 0, []);
        var order = new LayoutOrder([board], [LayoutPaddle.Of("paddle", report, Most, isOptional: true)], LayoutOrderReader.GapMm(saw), 0, TimeSpan.FromSeconds(1), false);
        var layout = LayoutReport.Of(order, report.Specification.Units, cancellation);
        return new(order, layout with { Unplaced = layout.Placements.Count > 0 ? [] : layout.Unplaced });
    }
}
