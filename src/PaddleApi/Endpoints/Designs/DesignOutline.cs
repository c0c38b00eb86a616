namespace PaddleApi.Endpoints.Designs;

/// <summary>The one place where a design is handed to the drawings.</summary>
internal static class DesignOutline
{
    /// <summary>The outline as SVG, or null when this build cannot draw it.</summary>
    internal static string? Draw(ComputedDesign design) => null;
}
