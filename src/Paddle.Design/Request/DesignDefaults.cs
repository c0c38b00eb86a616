using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Request;

/// <summary>What a design request means where it says nothing.</summary>
internal static class DesignDefaults
{
    /// <summary>Blade family when neither family nor offsets are given: widest nearest the lower hand, kind to the joints.</summary>
    public const string BladeFamily = "ottertail";
    /// <summary>Grip style when none is given (common practice, no source).</summary>
    public const string GripStyle = "pear";
    /// <summary>Moisture when none is given, percent: the basis of the published strengths (USDA Wood Handbook table 5-3).</summary>
    public const double MoisturePercent = 12;
    /// <summary>Slope of grain when none is given, 1 in 25: what a careful eye still passes as straight (common practice, no source).</summary>
    public const double SlopeOfGrain = 0.04;
    /// <summary>How far off balance is still good when nothing is said, mm (service's own choice).</summary>
    public const double BalanceToleranceMm = 12;

    /// <summary>The lengths of a request completed, or what clashes.</summary>
    /// <param name="request">A request whose lengths, family, grip and offsets are valid one by one.</param>
    public static LengthsResult Lengths(DesignRequest request)
    {
        var pattern = Pattern(request);
        return PaddleLengths.Resolve(
            new(
                request.HandSpacingMm, request.FreeboardMm, request.OverallLengthMm,
                request.Blade?.Offsets?[^1].XMm ?? request.Blade?.LengthMm),
            spacing => Family(request) is { } family ? UsualPaddler.Blade(family, spacing).LengthMm : 0,
            pattern,
            request.Grip?.LengthMm ?? pattern.LengthMm);
    }

    /// <summary>The same request with every default filled in; filling in twice changes nothing more.</summary>
    public static DesignRequest FillIn(DesignRequest request, PaddleLengths lengths) => new()
    {
        Label = string.IsNullOrWhiteSpace(request.Label) ? null : request.Label,
        HandSpacingMm = lengths.HandSpacingMm,
        FreeboardMm = lengths.FreeboardMm,
        OverallLengthMm = lengths.OverallMm,
        Blade = FillInBlade(request, lengths),
        Shaft = FillInShaft(request),
        Grip = FillInGrip(request, lengths),
        Wood = FillInWood(request.Wood!),
        Finish = FillInFinish(request.Finish),
        Construction = FillInConstruction(request),
        Aims = FillInAims(request.Aims, Duty(request.Loads)),
        Loads = FillInLoads(request.Loads, lengths.HandSpacingMm),
        SolvedBefore = request.SolvedBefore,
        Drawing = new() { Units = request.Drawing?.Units ?? Names.Of(DrawingUnits.Metric) },
    };

    /// <summary>The family of a request's blade; null when offsets give the shape or no family has that id.</summary>
    internal static BladeFamily? Family(DesignRequest request) =>
        request.Blade?.Offsets is null ? BladeFamilies.Find(request.Blade?.Family ?? BladeFamily) : null;

    /// <summary>The pattern of a request's grip; the default's when no style has that name.</summary>
    internal static GripPattern Pattern(DesignRequest request) =>
        GripPattern.Of(Names.Find<GripStyle>(request.Grip?.Style ?? GripStyle) ?? default);

    /// <summary>The step of a request's sizes, mm.</summary>
    internal static double LatticeMm(DesignRequest request) => PaddleSpecification.LatticeOf(DrawingRequest.Read(request.Drawing?.Units));

    /// <summary>Depth of the hollows of a request's grip, mm; left out, the style's own, or as deep as a thin board or grip leaves wood for.</summary>
    internal static double HollowDepthMm(DesignRequest request) => request.Grip?.HollowDepthMm is { } given
        ? given
        : Math.Min(Pattern(request).HollowDepthMm, Math.Max(0, Math.Floor(10 * DeepestHollowMm(request) + 1e-6) / 10));

    /// <summary>Deepest hollow of a request's grip, mm, that leaves wood enough between the faces.</summary>
    internal static double DeepestHollowMm(DesignRequest request)
    {
        var faces = Names.Find<GripFaces>(request.Grip?.Faces ?? "") == GripFaces.OneSided ? 1 : 2;
        return (GripThicknessMm(request) - SizeLimits.LeastGripCoreMm) / faces;
    }

    /// <summary>Thickness of a request's grip, mm; left out, the most that the solver may choose.</summary>
    internal static double GripThicknessMm(DesignRequest request) => request.Grip?.ThicknessMm
        ?? SizeLimits.ThickestGripMm(request.Wood?.BoardThicknessMm - 2 * PaddleSpecification.SurfacedFaceMm, LatticeMm(request));

    /// <summary>Shaft width (mm) that a table of offsets fixes by its station at the throat, or null.</summary>
    internal static double? ShaftWidthOfOffsets(BladeRequest? blade) =>
        blade?.Offsets is [{ XMm: 0, HalfBreadthMm: { } half }, ..] ? 2 * half : null;

    private static BladeRequest FillInBlade(DesignRequest request, PaddleLengths lengths)
    {
        var blade = request.Blade ?? new();
        var family = Family(request);
        return blade with
        {
            Family = family?.Id,
            LengthMm = lengths.BladeLengthMm,
            WidthMm = GreatestBladeMm(request, lengths.HandSpacingMm),
            WidestAt = blade.WidestAt ?? family?.DefaultWidestAt,
            Fullness = blade.Fullness ?? family?.DefaultFullness,
        };
    }

    /// <summary>Full width of a request's blade, mm; null when no family has its id, or the hand spacing that it follows from is not known.</summary>
    internal static double? GreatestBladeMm(DesignRequest request, double? handSpacingMm)
    {
        if (request.Blade?.Offsets is { } offsets) return 2 * offsets.Max(offset => offset.HalfBreadthMm);
        return request.Blade?.WidthMm ?? (Family(request) is { } family && handSpacingMm is { } spacing ? UsualPaddler.Blade(family, spacing).WidthMm : null);
    }

    private static ShaftRequest FillInShaft(DesignRequest request)
    {
        var shaft = request.Shaft ?? new();
        return shaft with { WidthMm = shaft.WidthMm ?? ShaftWidthOfOffsets(request.Blade), BendDegrees = shaft.BendDegrees ?? 0 };
    }

    private static GripRequest FillInGrip(DesignRequest request, PaddleLengths lengths)
    {
        var grip = request.Grip ?? new();
        var pattern = Pattern(request);
        return grip with
        {
            Style = grip.Style ?? GripStyle,
            WidthMm = grip.WidthMm ?? UsualPaddler.GripWidthMm(pattern, lengths.HandSpacingMm),
            LengthMm = grip.LengthMm ?? pattern.LengthMm,
            Faces = grip.Faces ?? Names.Of(GripFaces.Matching),
            HollowDepthMm = HollowDepthMm(request),
        };
    }

    private static WoodRequest FillInWood(WoodRequest wood) => wood with
    {
        MoisturePercent = wood.MoisturePercent ?? MoisturePercent,
        SlopeOfGrain = wood.SlopeOfGrain ?? SlopeOfGrain,
        Treatment = wood.Treatment ?? WoodSafety.NoTreatment,
    };

    private static ConstructionRequest FillInConstruction(DesignRequest request)
    {
        if (!IsLaminated(request)) return new() { Kind = Names.Of(ConstructionKind.OnePiece) };
        var given = request.Construction!;
        return given with
        {
            Strips = [.. given.Strips!.Select(strip => strip with { Species = strip.Species ?? request.Wood!.Species })],
            IsMirrored = given.IsMirrored ?? true,
            Adhesive = given.Adhesive ?? Adhesive.All[0].Id,
        };
    }

    /// <summary>Whether a request asks for a paddle glued up of strips.</summary>
    internal static bool IsLaminated(DesignRequest request) => request.Construction?.Kind == Names.Of(ConstructionKind.Laminated);

    private static AimsRequest FillInAims(AimsRequest? aims, Duty duty) => (aims ?? new()) with
    {
        BalanceAt = aims?.BalanceAt ?? "lower-hand",
        BalanceToleranceMm = aims?.BalanceToleranceMm ?? BalanceToleranceMm,
        MinimumSafetyFactor = aims?.MinimumSafetyFactor ?? DutyRule.Of(duty).LeastFactor,
        BenchFlexMm = aims?.BenchFlexMm ?? new(),
    };

    internal static FinishRequest FillInFinish(FinishRequest? given)
    {
        var usual = FinishChoice.Usual;
        var blade = given?.Blade ?? Names.Of(usual.Blade);
        var shaft = given?.Shaft ?? Names.Of(usual.Shaft);
        return new()
        {
            Blade = blade,
            BladeCoats = given?.BladeCoats ?? FinishChoice.UsualCoats(Names.Find<SurfaceFinish>(blade)!.Value),
            Shaft = shaft,
            ShaftCoats = given?.ShaftCoats ?? FinishChoice.UsualCoats(Names.Find<SurfaceFinish>(shaft)!.Value),
            TipReinforcement = given?.TipReinforcement ?? Names.Of(TipFacing.None),
        };
    }

    private static Duty Duty(LoadsRequest? loads) => Names.Find<Duty>(loads?.Duty ?? "") ?? default;

    // The forces follow in FillInForces: what water gives in a brace depends on the blade.
    private static LoadsRequest FillInLoads(LoadsRequest? given, double handSpacingMm) => (given ?? new()) with
    {
        Duty = Names.Of(Duty(given)),
        BodyMassKg = given?.BodyMassKg ?? UsualPaddler.BodyMassKg(handSpacingMm),
    };

    /// <param name="bladeAreaMm2">Area of its blade's face, mm².</param>
    internal static DesignRequest FillInForces(DesignRequest filled, double bladeAreaMm2)
    {
        var loads = filled.Loads!;
        var cases = Loads.For(Duty(loads), loads.BodyMassKg!.Value, bladeAreaMm2, asked: Forces(loads));
        return filled with
        {
            Loads = loads with
            {
                TouringStrokeN = Tenth(cases.Case("touring-stroke").ForceN),
                HardStrokeN = Tenth(cases.Case("hard-stroke").ForceN),
                BraceN = Tenth(cases.Case("brace").ForceN),
                PushOffAxialN = Tenth(cases.Case("push-off").ForceN),
                PushOffSideN = Tenth(cases.Case("push-off").SideForceN),
                EdgePressN = Tenth(cases.Case("edge-press").ForceN),
            },
        };
    }

    /// <summary>The forces that a request states.</summary>
    internal static ForcesAsked Forces(LoadsRequest loads) => new(
        loads.TouringStrokeN, loads.HardStrokeN, loads.BraceN, loads.PushOffAxialN, loads.PushOffSideN, loads.EdgePressN);

    // The echo shows forces to 0.1 N; the design is that of the forces shown, so that giving the echo back changes nothing.
    private static double Tenth(double forceN) => Math.Round(forceN, 1);
}
