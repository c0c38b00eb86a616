using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Request;

/// <summary>Reads a valid request: fills in every default and turns it into what the designer works on.</summary>
internal static class DesignRequestReader
{
    /// <summary>Fills in every default and reads the result.</summary>
    /// <param name="request">A request that its validator has passed.</param>
    /// <exception cref="ArgumentException">The lengths clash: the request was not validated.</exception>
    public static ResolvedDesign Read(DesignRequest request)
    {
        var result = DesignDefaults.Lengths(request);
        if (result.Lengths is not { } lengths) throw new ArgumentException(result.Conflicts[0].Reason, nameof(request));
        var filled = DesignDefaults.FillIn(request, lengths);
        var form = new PaddleForm(lengths.Places, Grip(filled.Grip!), Blade(filled.Blade!), filled.Shaft!.BendDegrees!.Value);
        var bladeAreaMm2 = form.BladeAreaMm2();
        filled = DesignDefaults.FillInForces(filled, bladeAreaMm2);
        var units = Names.Find<DrawingUnits>(filled.Drawing!.Units!)!.Value;
        var asked = new PaddleSpecification(form, PinnedSizes.Of(filled.Sizes()), Wood(filled.Wood!), Loads(filled, bladeAreaMm2), Aims(filled.Aims!))
        {
            Finish = Finish(filled.Finish!),
            BoardThicknessMm = filled.Wood!.BoardThicknessMm,
            Units = units,
            LatticeMm = PaddleSpecification.LatticeOf(units),
            SolvedBefore = new(filled.SolvedBefore ?? 0),
            PricesPerBoardFoot = Prices(filled),
        };
        return new(filled, DesignDefaults.IsLaminated(filled) ? asked.GluedUp(Laminate(filled, asked.Wood)) : asked);
    }

    private static Dictionary<string, double> Prices(DesignRequest filled)
    {
        var prices = new Dictionary<string, double>();
        if (filled.Wood!.PricePerBoardFoot is { } own) prices[filled.Wood.Species!] = own;
        foreach (var strip in filled.Construction!.Strips ?? [])
        {
            if (strip.PricePerBoardFoot is { } price) prices[strip.Species!] = price;
        }

        return prices;
    }

    // Strips of the paddle's own species are of the maker's own board, with what was measured on it; others are the book's.
    private static Laminate Laminate(DesignRequest filled, WoodInUse wood)
    {
        var asked = filled.Construction!;
        var woods = new Dictionary<string, WoodInUse> { [wood.Species] = wood };
        WoodInUse Of(string? species)
        {
            if (!woods.TryGetValue(species!, out var own))
            {
                own = WoodInUse.Resolve(WoodCatalogue.Find(species!)!, wood.MoisturePercent, wood.SlopeOfGrain, null, null);
                woods.Add(species!, own);
            }

            return own;
        }

        return new([.. asked.Strips!.Select(strip => new Strip(Of(strip.Species), strip.WidthMm!.Value))], asked.IsMirrored!.Value, Adhesive.Find(asked.Adhesive!)!)
        {
            TipPiece = asked.TipPiece is { } tip ? new(Of(tip.Species), tip.LengthMm!.Value) : null,
            Facing = asked.Facing is { } facing ? new(Of(facing.Species), facing.ThicknessMm!.Value) : null,
        };
    }

    private static GripShape Grip(GripRequest grip) => new(
        Names.Find<GripStyle>(grip.Style!)!.Value, grip.WidthMm!.Value, grip.LengthMm!.Value, Names.Find<GripFaces>(grip.Faces!)!.Value,
        grip.HollowDepthMm!.Value);

    private static BladeShape Blade(BladeRequest blade)
    {
        if (blade.Offsets is not { } given)
        {
            return new(
                BladeFamilies.Find(blade.Family!), blade.LengthMm!.Value, blade.WidthMm!.Value, blade.WidestAt!.Value, blade.Fullness!.Value, null);
        }

        var offsets = new Offset[given.Count];
        for (var i = 0; i < offsets.Length; i++) offsets[i] = new(given[i].XMm!.Value, given[i].HalfBreadthMm!.Value);
        var widest = offsets.MaxBy(offset => offset.HalfBreadthMm);
        var lengthMm = blade.LengthMm!.Value;

        // The table gives the shape; fullness is a parameter of the families' curves and has no say here.
        return new(null, lengthMm, blade.WidthMm!.Value, widest.XMm / lengthMm, 0, offsets);
    }

    private static WoodInUse Wood(WoodRequest wood) => WoodInUse.Resolve(
        WoodCatalogue.Find(wood.Species!)!, wood.MoisturePercent!.Value, wood.SlopeOfGrain!.Value, wood.MeasuredDensityKgM3,
        wood.MeasuredModulusMPa);

    private static Loads Loads(DesignRequest filled, double bladeAreaMm2) => Paddle.Design.Strength.Loads.For(
        Names.Find<Duty>(filled.Loads!.Duty!)!.Value, filled.Loads.BodyMassKg!.Value, bladeAreaMm2,
        filled.Aims!.MinimumSafetyFactor!.Value, DesignDefaults.Forces(filled.Loads));

    /// <summary>The finish that a request means.</summary>
    internal static FinishChoice FinishOf(FinishRequest? given) => Finish(DesignDefaults.FillInFinish(given));

    private static FinishChoice Finish(FinishRequest finish) => new(
        Names.Find<SurfaceFinish>(finish.Blade!)!.Value, finish.BladeCoats!.Value, Names.Find<SurfaceFinish>(finish.Shaft!)!.Value,
        finish.ShaftCoats!.Value, Names.Find<TipFacing>(finish.TipReinforcement!) == TipFacing.GlassCloth);

    private static Aims Aims(AimsRequest aims) => new(
        Names.Find<BalanceAim>(aims.BalanceAt!)!.Value, aims.BalanceToleranceMm!.Value, aims.MinimumSafetyFactor!.Value,
        aims.BenchFlexMm!.Min, aims.BenchFlexMm.Max, aims.MaximumMassG);
}

/// <summary>A request read: every default filled in, and what the designer makes of it.</summary>
/// <param name="Request">The request with every default filled in; sizes left to the solver are still null.</param>
internal sealed record ResolvedDesign(DesignRequest Request, PaddleSpecification Specification)
{
    /// <summary>System of measure on drawings.</summary>
    public DrawingUnits Units => Names.Find<DrawingUnits>(Request.Drawing!.Units!)!.Value;

    /// <summary>The request with all nine sizes pinned: it evaluates to the same paddle without solving.</summary>
    public DesignRequest Pin(PaddleSizes sizes) => Request.Pin(sizes) with { SolvedBefore = Specification.Free.Bits };
}
