using Paddle.Design.Comparison;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>Designs laid over one another, as SVG.</summary>
internal static class ComparisonSvg
{
    /// <summary>Draws them.</summary>
    /// <param name="designs">Two to twelve.</param>
    /// <returns>An SVG document.</returns>
    public static string Write(IReadOnlyList<ComparedPaddle> designs, DrawingContext context) =>
        SvgWriter.Write(ComparisonView.Draw(designs, context), ComparisonView.Style);
}
