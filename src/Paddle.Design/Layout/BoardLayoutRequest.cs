using Paddle.Design.Request;

namespace Paddle.Design.Layout;

/// <summary>Boards in the rack and the paddles that are to come out of them.</summary>
public sealed record BoardLayoutRequest
{
    /// <summary>Most paddles laid out at once, all counts together (service's own limit).</summary>
    internal const int MostPaddles = 300;

    /// <summary>Name of the order, up to 80 printable characters.</summary>
    public string? Label { get; init; }
    /// <summary>The boards; at least one.</summary>
    public IReadOnlyList<RackBoardRequest>? Boards { get; init; }
    /// <summary>The paddles; at least one.</summary>
    public IReadOnlyList<WantedPaddleRequest>? Paddles { get; init; }
    /// <summary>Width of the saw's cut, mm; 1.2 for a band saw and 1.5 for a jigsaw when null.</summary>
    [KerfBound]
    public double? KerfMm { get; init; }
    /// <summary>Least distance between two outlines, mm, never less than the kerf; the kerf and what the saw leaves outside both lines when null.</summary>
    [ClearanceBound]
    public double? ClearanceMm { get; init; }
    /// <summary>Wood planed off a board's thickness, both faces together, mm; 1 when null.</summary>
    [PlaningBound]
    public double? PlaningMm { get; init; }
    /// <summary>The saw that cuts the outlines: <c>band-saw</c> (when null) or <c>jigsaw</c>.</summary>
    public string? Saw { get; init; }
    /// <summary>Longest time for the search, ms; 2000 when null.</summary>
    [Bound(50, 8000, "ms", "The time of one request")]
    public int? TimeLimitMs { get; init; }
    /// <summary>How the drawing of the boards is written.</summary>
    public LayoutDrawingRequest? Drawing { get; init; }
}

/// <summary>How the drawing of boards is written.</summary>
public sealed record LayoutDrawingRequest
{
    /// <summary><c>metric</c> (when null) or <c>inch</c>.</summary>
    public string? Units { get; init; }
    /// <summary><c>true</c> (when null): one millimetre is one millimetre; <c>fit</c>: each board as wide as a sheet of paper.</summary>
    public string? Scale { get; init; }
}

/// <summary>A kind of board. X runs along its length from one end, Y across from its near edge.</summary>
public sealed record RackBoardRequest
{
    /// <summary>The caller's name of it; required, each once.</summary>
    public string? Id { get; init; }
    /// <summary>Length, mm; required.</summary>
    [BoardLengthBound]
    public double? LengthMm { get; init; }
    /// <summary>Width, mm; required.</summary>
    [BoardWidthBound]
    public double? WidthMm { get; init; }
    /// <summary>Thickness as it lies in the rack, mm; required.</summary>
    [Bound(10, 120, "mm", "Boards")]
    public double? ThicknessMm { get; init; }
    /// <summary>Species by its id, such as <c>white-ash</c>; required.</summary>
    public string? Species { get; init; }
    /// <summary>How many alike; 1 when null. Of boards that a shop offers: as many as it has, or as are needed when null.</summary>
    [Bound(1, 500, "boards", "Up to 500 boards at once")]
    public int? Count { get; init; }
    /// <summary>Price of one, in the caller's money.</summary>
    [PriceBound]
    public double? PriceEach { get; init; }
    /// <summary>Angle between the grain and the long edge on the face, degrees.</summary>
    [Bound(0, 45, "degrees", "From along the edge to where it is as much across", Source = null, Usual = 0)]
    public double? GrainDegrees { get; init; }
    /// <summary>Sapwood along the near edge, Y = 0, that is not to be used, mm; none when null.</summary>
    [Bound(0, BoardWidthBoundAttribute.WidestMm, "mm", "A strip of the board", Source = null)]
    public double? SapwoodNearMm { get; init; }
    /// <summary>Sapwood along the far edge that is not to be used, mm; none when null.</summary>
    [Bound(0, BoardWidthBoundAttribute.WidestMm, "mm", "A strip of the board", Source = null)]
    public double? SapwoodFarMm { get; init; }
    /// <summary>Knots, checks and other places that no paddle may hold.</summary>
    public IReadOnlyList<BoardDefectRequest>? Defects { get; init; }
}

/// <summary>A place on a board's face that no paddle may hold.</summary>
public sealed record BoardDefectRequest
{
    /// <summary><c>circle</c>, <c>rectangle</c> or <c>polygon</c>; required.</summary>
    public string? Kind { get; init; }
    /// <summary>A circle's middle, or a rectangle's corner nearest the board's origin: place along the board, mm.</summary>
    [Bound(-1000, 7100, "mm", "On or near the board", Source = null)]
    public double? XMm { get; init; }
    /// <summary>The same across the board, mm.</summary>
    [Bound(-1000, 2300, "mm", "On or near the board", Source = null)]
    public double? YMm { get; init; }
    /// <summary>A circle's radius, mm.</summary>
    [Bound(0.5, 1000, "mm", "On or near the board", Source = null)]
    public double? RadiusMm { get; init; }
    /// <summary>A rectangle's extent along the board, mm.</summary>
    [Bound(0.5, 7100, "mm", "On or near the board", Source = null)]
    public double? LengthMm { get; init; }
    /// <summary>A rectangle's extent across the board, mm.</summary>
    [Bound(0.5, 2300, "mm", "On or near the board", Source = null)]
    public double? WidthMm { get; init; }
    /// <summary>A polygon's corners in order, 3 to 60.</summary>
    public IReadOnlyList<BoardPointRequest>? Points { get; init; }
}

/// <summary>A point on a board's face.</summary>
public sealed record BoardPointRequest
{
    /// <summary>Along the board, mm; required.</summary>
    [Bound(-1000, 7100, "mm", "On or near the board", Source = null)]
    public double? XMm { get; init; }
    /// <summary>Across the board, mm; required.</summary>
    [Bound(-1000, 2300, "mm", "On or near the board", Source = null)]
    public double? YMm { get; init; }
}

/// <summary>A paddle wanted: by the code of a design, or by a request for one.</summary>
public sealed record WantedPaddleRequest : IGivesDesign
{
    /// <summary>The caller's name of it; required, each once.</summary>
    public string? Id { get; init; }
    /// <summary>Code of a design that was made before.</summary>
    public string? DesignCode { get; init; }
    /// <summary>A design to be made.</summary>
    public DesignRequest? Design { get; init; }
    /// <summary>How many.</summary>
    [Bound(1, BoardLayoutRequest.MostPaddles, "paddles", "As many as are laid out at once", Usual = 1)]
    public int? Count { get; init; }
    /// <summary>Whether the order is complete without it; it is made where wood is left.</summary>
    public bool? Optional { get; init; }
}
