using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>How a design stands among others.</summary>
internal enum TradeOffStanding
{
    /// <summary>No other beats it.</summary>
    Unbeaten,
    /// <summary>Another is as good in every wish and better in one.</summary>
    Beaten,
    /// <summary>It misses an aim and is held against none.</summary>
    MissesAim,
}

/// <summary>A wish.</summary>
/// <param name="IsWishedLarge">Whether more is better.</param>
internal sealed record TradeOffAxis(string Name, string Unit, bool IsWishedLarge);

/// <summary>A design among others.</summary>
/// <param name="Name">What makes it another.</param>
/// <param name="Figures">Its figures, in the order of the axes.</param>
internal sealed record TradeOffPoint(string Name, IReadOnlyList<double> Figures, TradeOffStanding Standing);

/// <summary>Designs held against one another.</summary>
/// <param name="Varied">Names of the inputs that vary, with their units.</param>
/// <param name="Axes">The wishes, two at least.</param>
/// <param name="Refused">How many combinations could not be designed.</param>
internal sealed record TradeOffPicture(IReadOnlyList<string> Varied, IReadOnlyList<TradeOffAxis> Axes, IReadOnlyList<TradeOffPoint> Points, int Refused);

/// <summary>Designs as points, the first wish across and the second upward, as SVG.</summary>
internal static class TradeOffSvg
{
    /// <summary>Draws them.</summary>
    /// <returns>An SVG document.</returns>
    public static string Write(TradeOffPicture picture, DrawingContext context) => SvgWriter.Write(TradeOffView.Draw(picture, context), TradeOffView.Style);
}
