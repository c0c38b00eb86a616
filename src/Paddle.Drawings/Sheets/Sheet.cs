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

/// <summary>Line types of a technical drawing.</summary>
/// <remarks>ISO 128-2 types, from memory: wide 0.5 mm and narrow 0.25 mm, 2 to 1.</remarks>
internal enum LineKind
{
    /// <summary>Wide continuous: what is seen and traced.</summary>
    Visible,
    /// <summary>Narrow continuous: dimensions, leaders, stations.</summary>
    Narrow,
    /// <summary>Narrow dashed: what is hidden.</summary>
    Hidden,
    /// <summary>Narrow long-dashed dotted: centre lines.</summary>
    Centre,
    /// <summary>Narrow long-dashed double-dotted: the blank before it is cut.</summary>
    Blank,
    /// <summary>Thinnest continuous: grids and table rules.</summary>
    Fine,
}

/// <summary>How a line type is drawn.</summary>
/// <param name="DashesMm">Dashes and gaps by turns, mm; empty for a continuous line.</param>
internal sealed record LineStyle(double WidthMm, IReadOnlyList<double> DashesMm)
{
    private const double D = 0.25;

    /// <summary>Dash 12d, long dash 24d, gap 3d, dot at most 0.5d. Source: ISO 128-2, from memory.</summary>
    public static LineStyle Of(LineKind kind) => kind switch
    {
        LineKind.Visible => new(0.5, []),
        LineKind.Narrow => new(D, []),
        LineKind.Hidden => new(D, [12 * D, 3 * D]),
        LineKind.Centre => new(D, [24 * D, 3 * D, 0.5 * D, 3 * D]),
        LineKind.Blank => new(D, [24 * D, 3 * D, 0.5 * D, 3 * D, 0.5 * D, 3 * D]),
        _ => new(0.13, []),
    };
}
