using Paddle.Design.Fitting;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>The customers of a size run as a histogram with the sizes drawn on it, as SVG.</summary>
internal static class SizeRunSvg
{
    /// <summary>Draws the histogram.</summary>
    /// <returns>An SVG document.</returns>
    public static string Write(SizeRunAdvice advice, DrawingContext context) => SvgWriter.Write(SizeRunView.Draw(advice, context));
}
