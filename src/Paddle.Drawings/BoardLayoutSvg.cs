using Paddle.Design.Layout;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>Boards with the paddles that come out of them, as SVG.</summary>
internal static class BoardLayoutSvg
{
    /// <summary>Draws the boards that are cut.</summary>
    /// <param name="isToFit">Whether each board is as long as a sheet of paper; else one user unit is a millimetre of the board.</param>
    /// <returns>An SVG document.</returns>
    public static string Write(LayoutOrder order, BoardLayout layout, DrawingContext context, bool isToFit) =>
        SvgWriter.Write(BoardLayoutView.Draw(order, layout, context, isToFit));
}
