using Paddle.Design.Fitting;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Request;

/// <summary>
/// A paddle to be designed. Only the species and one of hand spacing and overall length are required; what is left null takes its
/// usual value, and a size of shaft, blade or grip left null is chosen by the solver.
/// </summary>
public sealed record DesignRequest
{
    /// <summary>Name of the design, up to 80 printable characters.</summary>
    public string? Label { get; init; }
    /// <summary>Middle of the grip hand to middle of the lower hand, mm.</summary>
    [HandSpacingBound]
    public double? HandSpacingMm { get; init; }
    /// <summary>Lower hand to throat, mm; 38 unless it follows from the other lengths.</summary>
    [Bound(PaddleLengths.LeastFreeboardMm, PaddleLengths.MostFreeboardMm, "mm", "The lower hand holds the shaft above the throat, 25 to 50 mm by custom", Source = BoundAttribute.Trade)]
    public double? FreeboardMm { get; init; }
    /// <summary>Top of the grip to the tip, mm; follows from the other lengths when null.</summary>
    [OverallLengthBound]
    public double? OverallLengthMm { get; init; }
    /// <summary>The blade.</summary>
    public BladeRequest? Blade { get; init; }
    /// <summary>The shaft.</summary>
    public ShaftRequest? Shaft { get; init; }
    /// <summary>The grip.</summary>
    public GripRequest? Grip { get; init; }
    /// <summary>The wood; its species is required.</summary>
    public WoodRequest? Wood { get; init; }
    /// <summary>How the paddle is put together.</summary>
    public ConstructionRequest? Construction { get; init; }
    /// <summary>What its surfaces are finished with; the aim for balance is that of the finished paddle.</summary>
    public FinishRequest? Finish { get; init; }
    /// <summary>What the design must reach.</summary>
    public AimsRequest? Aims { get; init; }
    /// <summary>What the paddle is made for, and forces that replace the usual ones.</summary>
    public LoadsRequest? Loads { get; init; }
    /// <summary>How drawings and shop papers are written.</summary>
    public DrawingRequest? Drawing { get; init; }

    /// <summary>The request with every default filled in, and what the designer works on.</summary>
    /// <exception cref="ArgumentException">The lengths clash: they add up to no paddle.</exception>
    internal ResolvedDesign Complete() => DesignRequestReader.Read(this);

    /// <summary>Which sizes a solver chose, a bit each; only a design read back from its code knows.</summary>
    internal int? SolvedBefore { get; init; }
}

/// <summary>The blade: a family with its sizes, or the maker's own table of offsets.</summary>
public sealed record BladeRequest
{
    /// <summary>Narrowest blade, mm: 25 mm wider than the widest shaft, so that there is always a shoulder (service's own limit).</summary>
    internal const double LeastWidthMm = 70;
    internal const double MostWidthMm = 240;

    /// <summary>Family by its trade name, such as <c>ottertail</c>; null when offsets are given.</summary>
    public string? Family { get; init; }
    /// <summary>Throat to tip, mm; the family's unless it follows from the other lengths, less for a small person's hand spacing and more for a tall one's.</summary>
    [Bound(PaddleLengths.LeastBladeLengthMm, PaddleLengths.MostBladeLengthMm, "mm", "Blade lengths of single-blade paddles")]
    public double? LengthMm { get; init; }
    /// <summary>Full width at the widest point, mm; the family's when null, less for a small person's hand spacing.</summary>
    [Bound(LeastWidthMm, MostWidthMm, "mm", "Blade widths of single-blade paddles")]
    public double? WidthMm { get; init; }
    /// <summary>Place of the widest point as a fraction of the blade from the throat; the family's when null.</summary>
    public double? WidestAt { get; init; }
    /// <summary>Area below the widest point over that part's length times the full width; the family's when null.</summary>
    public double? Fullness { get; init; }
    /// <summary>The maker's own blade: 4 to 60 stations from the throat to the tip; no family, widest point or fullness then.</summary>
    public IReadOnlyList<OffsetRequest>? Offsets { get; init; }
    /// <summary>Full spine thickness at 0.08 of the blade, mm; the solver chooses when null.</summary>
    public double? ThroatThicknessMm { get; init; }
    /// <summary>Full spine thickness at half the blade, mm; the solver chooses when null.</summary>
    public double? MiddleThicknessMm { get; init; }
    /// <summary>Full spine thickness at 0.92 of the blade, mm; the solver chooses when null.</summary>
    public double? TipThicknessMm { get; init; }
    /// <summary>Full edge thickness, mm; the solver chooses when null.</summary>
    public double? EdgeThicknessMm { get; init; }
}

/// <summary>One station of a table of offsets.</summary>
public sealed record OffsetRequest
{
    /// <summary>Distance from the throat, mm.</summary>
    [Bound(0, PaddleLengths.MostBladeLengthMm, "mm", "Stations are measured from the throat to the tip")]
    public double? XMm { get; init; }
    /// <summary>Half-breadth there, mm.</summary>
    [Bound(0, BladeRequest.MostWidthMm / 2, "mm", "Half of the widest blade that is drawn")]
    public double? HalfBreadthMm { get; init; }
}

/// <summary>The shaft.</summary>
public sealed record ShaftRequest
{
    /// <summary>Width at the lower hand, mm; the solver chooses when null.</summary>
    public double? WidthMm { get; init; }
    /// <summary>Thickness at the lower hand, mm; the solver chooses when null.</summary>
    public double? ThicknessMm { get; init; }
    /// <summary>Width just below the grip, mm; the solver chooses when null.</summary>
    public double? UpperWidthMm { get; init; }
    /// <summary>Thickness just below the grip, mm; the solver chooses when null.</summary>
    public double? UpperThicknessMm { get; init; }
    /// <summary>Angle between shaft and blade at the throat, degrees.</summary>
    [BendBound]
    public double? BendDegrees { get; init; }
}

/// <summary>The grip.</summary>
public sealed record GripRequest
{
    /// <summary><c>pear</c> (when null), <c>palm</c> or <c>t</c>.</summary>
    public string? Style { get; init; }
    /// <summary>Full width, mm; the style's when null, less for a small person's hand spacing.</summary>
    public double? WidthMm { get; init; }
    /// <summary>From the top to where the plain shaft begins, mm; the style's when null.</summary>
    public double? LengthMm { get; init; }
    /// <summary>Thickness of the crest, mm; the solver chooses when null.</summary>
    public double? ThicknessMm { get; init; }
    /// <summary><c>matching</c> (when null): both faces alike; <c>one-sided</c>: one face hollowed for the palm.</summary>
    public string? Faces { get; init; }
    /// <summary>Depth of the hollow below the crest on each hollowed face, mm; the style's when null.</summary>
    [Bound(0, 15, "mm", "A hollow deeper than this is no longer a grip")]
    public double? HollowDepthMm { get; init; }
}

/// <summary>The wood.</summary>
public sealed record WoodRequest
{
    /// <summary>Species by its id, such as <c>white-ash</c>. Required.</summary>
    public string? Species { get; init; }
    /// <summary>Moisture in use, percent of ovendry mass.</summary>
    [Bound(WoodSafety.MinimumMoisturePercent, WoodSafety.MaximumMoisturePercent, "percent", WoodSafety.MoistureRangeSource, Source = null, Usual = DesignDefaults.MoisturePercent)]
    public double? MoisturePercent { get; init; }
    /// <summary>Slope of grain, rise over run.</summary>
    [Bound(0, WoodSafety.RefuseSlopeOfGrain, "rise over run", "Steeper grain breaks at the throat", Source = WoodSafety.SlopeOfGrainSource, RoundOff = 1e-9, Usual = DesignDefaults.SlopeOfGrain)]
    public double? SlopeOfGrain { get; init; }
    /// <summary>Density of the maker's own board as weighed, kg/m³; the book's when null.</summary>
    [Bound(200, 1100, "kg/m3", "Woods lie between balsa and the heaviest tropical hardwoods", Source = "from memory")]
    public double? MeasuredDensityKgM3 { get; init; }
    /// <summary>Thickness of the maker's board as it lies in the rack, mm; any board may be bought when null.</summary>
    [Bound(PaddleSpecification.ThinnestBoardMm, 120, "mm", "Planed, a thinner board is not one paddle's shaft; glue it up first")]
    public double? BoardThicknessMm { get; init; }
    /// <summary>Apparent modulus of the maker's own board, MPa; the book's when null.</summary>
    [Bound(3000, 25000, "MPa", "Clear wood along the grain lies between these", Source = "from memory")]
    public double? MeasuredModulusMPa { get; init; }
    /// <summary>Price of a board foot, in the caller's money: only for the cost of wood in the answer. No design code keeps it.</summary>
    [PriceBound]
    public double? PricePerBoardFoot { get; init; }
    /// <summary>Only <c>none</c> (when null) is accepted; treated stock is refused with the reason.</summary>
    public string? Treatment { get; init; }
}

/// <summary>How a paddle is put together.</summary>
internal enum ConstructionKind
{
    /// <summary>From one piece of wood.</summary>
    OnePiece,
    /// <summary>Glued up of strips side by side across the width.</summary>
    Laminated,
}

/// <summary>How the paddle is put together.</summary>
public sealed record ConstructionRequest
{
    /// <summary><c>one-piece</c> (when null), or <c>laminated</c>: glued up of strips side by side across the width.</summary>
    public string? Kind { get; init; }

    /// <summary>
    /// Strips of a laminated paddle, 2 to 15, their planes parallel to the paddle's middle plane along its length; they fill the greatest width.
    /// Mirrored, the list runs from the middle outward: the first strip straddles the centre line, every further one lies on both sides. Not
    /// mirrored, it runs from one edge to the other.
    /// </summary>
    public IReadOnlyList<StripRequest>? Strips { get; init; }

    /// <summary>Whether the strips are listed from the middle outward and laid alike on both sides; so when null. Of a laminated paddle only.</summary>
    public bool? IsMirrored { get; init; }
    /// <summary>Glue by its class: <c>epoxy</c> (when null), <c>polyurethane</c> or <c>waterproof-pva</c>. Of a laminated paddle only.</summary>
    public string? Adhesive { get; init; }
    /// <summary>A hard piece across the end of the blade. Of a laminated paddle only.</summary>
    public TipPieceRequest? TipPiece { get; init; }
    /// <summary>A thin sheet on both faces of the blade. Of a laminated paddle only.</summary>
    public FacingRequest? Facing { get; init; }
}

/// <summary>A hard piece across the end of the blade, its grain square to the paddle.</summary>
public sealed record TipPieceRequest
{
    /// <summary>Species by its id; required.</summary>
    public string? Species { get; init; }
    /// <summary>Length along the paddle, mm; required.</summary>
    [Bound(10, 80, "mm", "Shorter is a bead of glue, longer bends across its own grain")]
    public double? LengthMm { get; init; }
}

/// <summary>A thin sheet on both faces of the blade, from a quarter of the blade below the throat to the tip, its grain along the paddle.</summary>
public sealed record FacingRequest
{
    /// <summary>Species by its id; required.</summary>
    public string? Species { get; init; }
    /// <summary>Thickness of each sheet, mm; it counts within the designed thickness; required.</summary>
    [Bound(0.4, 1.2, "mm", "Thinner is sanded through, thicker has no room within the edge")]
    public double? ThicknessMm { get; init; }
}

/// <summary>One strip of a laminated paddle.</summary>
public sealed record StripRequest
{
    /// <summary>Species by its id; that of <c>wood</c> when null. The strip on the centre line is of that wood in any case.</summary>
    public string? Species { get; init; }
    /// <summary>Price of a board foot of its wood, in the caller's money; each wood has one. No design code keeps it.</summary>
    [PriceBound]
    public double? PricePerBoardFoot { get; init; }
    /// <summary>Width across the paddle, mm; the middle strip's is its full width, the outermost may be wider than needed. Required.</summary>
    [Bound(3, BladeRequest.MostWidthMm, "mm", "A thinner strip is veneer, a wider one than the widest blade there is not")]
    public double? WidthMm { get; init; }
}

/// <summary>What is laid over the tip.</summary>
internal enum TipFacing
{
    /// <summary>Nothing.</summary>
    None,
    /// <summary>Glass cloth on both faces.</summary>
    GlassCloth,
}

/// <summary>What the surfaces are finished with.</summary>
public sealed record FinishRequest
{
    /// <summary>Finish of the blade: <c>varnish</c> (when null), <c>oil</c> or <c>none</c>.</summary>
    public string? Blade { get; init; }
    /// <summary>Coats on the blade; 6 of varnish or 3 of oil when null.</summary>
    [CoatsBound]
    public int? BladeCoats { get; init; }
    /// <summary>Finish of shaft and grip: <c>oil</c> (when null), <c>varnish</c> or <c>none</c>.</summary>
    public string? Shaft { get; init; }
    /// <summary>Coats on shaft and grip; 3 of oil or 6 of varnish when null.</summary>
    [CoatsBound]
    public int? ShaftCoats { get; init; }
    /// <summary>Reinforcement of the tip: <c>none</c> (when null) or <c>glass-cloth</c>.</summary>
    public string? TipReinforcement { get; init; }
}

/// <summary>What the design must reach.</summary>
public sealed record AimsRequest
{
    /// <summary>Where it should balance: <c>lower-hand</c> (when null) or <c>throat</c>.</summary>
    public string? BalanceAt { get; init; }
    /// <summary>How far off is still good, mm.</summary>
    [Bound(1, 100, "mm", "Closer than 1 mm cannot be weighed out; beyond 100 mm there is no aim left", Usual = DesignDefaults.BalanceToleranceMm)]
    public double? BalanceToleranceMm { get; init; }

    /// <summary>
    /// Least safety factor of the hard stroke on 5th-percentile strength; the other cases' follow in proportion. The duty's own
    /// when null: 1.3, or 1.5 for an expedition.
    /// </summary>
    [Bound(0.8, 5, "", "Far below 1 more than one stick in twenty breaks at the load; above 5 it is no longer a paddle")]
    public double? MinimumSafetyFactor { get; init; }

    /// <summary>Range asked of the bench flex.</summary>
    public BenchFlexRequest? BenchFlexMm { get; init; }
    /// <summary>Most mass, g; no limit when null.</summary>
    [Bound(200, 2500, "g", "Masses of single-blade wooden paddles")]
    public double? MaximumMassG { get; init; }
}

/// <summary>Range asked of the bench flex: deflection at the centre of pressure under 50 N, held at the hands.</summary>
public sealed record BenchFlexRequest
{
    /// <summary>Least, mm; no limit when null.</summary>
    [BenchFlexBound]
    public double? Min { get; init; }
    /// <summary>Most, mm; no limit when null.</summary>
    [BenchFlexBound]
    public double? Max { get; init; }
}

/// <summary>What the paddle is made for, and forces that replace the usual ones; those left null follow from duty and body mass.</summary>
public sealed record LoadsRequest
{
    /// <summary><c>touring</c> (when null): lakes and day trips; <c>expedition</c>: rivers, far from help; <c>racing</c>.</summary>
    public string? Duty { get; init; }
    /// <summary>Body mass that the usual forces scale with, kg; 75 when null, less for a small person's hand spacing.</summary>
    [Bound(12, 250, "kg", "Body masses from a child to a heavy adult")]
    public double? BodyMassKg { get; init; }
    /// <summary>Peak of an easy stroke, repeated a million times, N.</summary>
    [ForceBound]
    public double? TouringStrokeN { get; init; }
    /// <summary>Peak of a hard stroke, N.</summary>
    [ForceBound]
    public double? HardStrokeN { get; init; }
    /// <summary>Leaning on the flat blade, pried over the lower hand, N.</summary>
    [ForceBound]
    public double? BraceN { get; init; }
    /// <summary>Pushing off the bottom, along the shaft, N.</summary>
    [ForceBound]
    public double? PushOffAxialN { get; init; }
    /// <summary>Pushing off the bottom, sideways on the tip, N.</summary>
    [ForceBound]
    public double? PushOffSideN { get; init; }
    /// <summary>Force whose pressure bends the blade across the grain, N; the hard stroke's when null.</summary>
    [ForceBound]
    public double? EdgePressN { get; init; }
}
