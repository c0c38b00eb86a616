namespace Paddle.Drawings.Sheets;

/// <summary>What an item of a drawing is for; also the layer it lies on in a CAD file.</summary>
internal enum Layer
{
    Outline,
    Centre,
    Stations,
    Marks,
    HalfTemplate,
    Sections,
    Gauge,
    Blank,
    Calibration,
    Text,
}

internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>How the inside of a closed path is shown.</summary>
internal enum Fill
{
    None,
    Wood,
    Ink,
}

/// <summary>Something drawn on a sheet.</summary>
internal abstract record SheetItem(Layer Layer);

/// <summary>A drawn line.</summary>
internal sealed record PathItem(SheetPath Path, LineKind Line, Layer Layer, Fill Fill = Fill.None, string? Id = null, string? Css = null)
    : SheetItem(Layer);

/// <summary>A line of lettering; its height is that of a capital.</summary>
internal sealed record TextItem(
    string Text, Point At, double HeightMm, Anchor Anchor, Layer Layer, double TurnDegrees = 0, bool Strong = false, string? Css = null)
    : SheetItem(Layer)
{
    /// <summary>Whether lines under it are kept clear of it: names of marks stand where lines run.</summary>
    public bool HasHalo => Layer == Layer.Marks && Css is null;
}

/// <summary>A finished sheet, mm, ready for any writer; its name keeps the ids of two drawings on one page apart.</summary>
internal sealed record Sheet(string Name, string Title, string Description, double WidthMm, double HeightMm, IReadOnlyList<SheetItem> Items);
