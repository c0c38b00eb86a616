using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>The outline on the face, as SVG at true scale.</summary>
internal static class OutlineSvg
{
    /// <param name="report">The design.</param>
    /// <returns>An SVG document, one user unit a millimetre; the outline's Béziers are the design's own.</returns>
    public static string Write(DesignReport report, DrawingContext context) => SvgWriter.Write(OutlineView.Draw(report, context));

    /// <summary>Draws the outline of a design without a label of its owner's.</summary>
    /// <param name="report">The design.</param>
    public static string Write(DesignReport report, DrawingUnits units) =>
        Write(report, new DrawingContext("Paddle", units, typeof(OutlineSvg).Assembly.GetName().Version!.ToString(3)));
}
