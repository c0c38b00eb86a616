using Paddle.Drawings;
using PaddleApi.Hosting;

namespace PaddleApi.Endpoints.Designs;

/// <summary>The one place where a design is handed to the drawings.</summary>
internal static class DesignOutline
{
    private const string Unnamed = "Paddle";

    /// <summary>The outline as SVG.</summary>
    internal static string Draw(ComputedDesign design) => OutlineSvg.Write(design.Report, Context(design));

    /// <summary>What any drawing needs to know beside the design.</summary>
    internal static DrawingContext Context(ComputedDesign design) =>
        new(design.Resolved.Request.Label ?? Unnamed, design.Resolved.Units, EngineVersion.Text, design.Code);
}
