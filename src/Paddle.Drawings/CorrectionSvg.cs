using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>Where wood is to come off a paddle in mid-build, as SVG.</summary>
internal static class CorrectionSvg
{
    /// <summary>Draws the correction.</summary>
    /// <param name="stage">The stage that it was asked at.</param>
    /// <returns>An SVG document.</returns>
    public static string Write(DesignReport report, BalanceCorrection correction, BuildStage stage, DrawingContext context) =>
        SvgWriter.Write(CorrectionView.Draw(report, correction, stage, context), CorrectionView.Style, scalable: true);
}
