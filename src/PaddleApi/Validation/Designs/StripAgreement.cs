using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation.Designs;

/// <summary>Strips belong to a laminated paddle, fill its greatest width, and the middle one is of the paddle's wood.</summary>
internal static class StripAgreement
{
    internal const int Fewest = 2;
    internal const int Most = 15;

    /// <summary>Strips of several sticks scatter each for itself: no chance of them is computed.</summary>
    internal static Fault NotOfStrips { get; } = new(
        "The strips of a laminated paddle are of several sticks, each of which scatters for itself: only paddles of one piece are spread here.",
        "laminated", Allowed: ["one-piece"], Code: RefusalCodes.NotAccepted);

    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        if (request.Construction is not { } construction) return;
        if (!DesignDefaults.IsLaminated(request))
        {
            NotOfOnePiece(construction, context);
            return;
        }

        if (construction.Strips is not { } strips)
        {
            context.AddFault("Construction.Strips", new("A laminated paddle needs its strips.", null, Fewest, Most, "strips", Code: RefusalCodes.NoStrips));
            return;
        }

        if (strips.Count is < Fewest or > Most)
        {
            context.AddFault("Construction.Strips", new("Strips that a maker glues up; one alone is one-piece (service's own limits).", strips.Count, Fewest, Most, "strips"));
            return;
        }

        CheckGluedOn(request, construction, context);
        var sound = true;
        for (var k = 0; k < strips.Count; k++) sound &= CheckStrip(strips[k], k, context);
        if (!sound) return;
        CheckMiddle(request, construction, context);
        CheckPrices(request, strips, context);
        CheckWidth(request, construction, context);
    }

    private static void NotOfOnePiece(ConstructionRequest construction, ValidationContext<DesignRequest> context)
    {
        const string Reason = "This belongs to a laminated paddle: leave it out or null, or ask for kind laminated.";
        if (construction.Strips is { } strips) context.AddFault("Construction.Strips", new(Reason, strips.Count, Code: RefusalCodes.GivenTwice));
        if (construction.TipPiece is not null) context.AddFault("Construction.TipPiece", new(Reason, Code: RefusalCodes.GivenTwice));
        if (construction.Facing is not null) context.AddFault("Construction.Facing", new(Reason, Code: RefusalCodes.GivenTwice));
        if (construction.IsMirrored is { } isMirrored) context.AddFault("Construction.IsMirrored", new(Reason, isMirrored, Code: RefusalCodes.GivenTwice));
        if (construction.Adhesive is { } adhesive && Adhesive.Find(adhesive) is not null)
            context.AddFault("Construction.Adhesive", new(Reason, FaultValue.Show(adhesive), Code: RefusalCodes.GivenTwice));
    }

    private static void CheckGluedOn(DesignRequest request, ConstructionRequest construction, ValidationContext<DesignRequest> context)
    {
        if (construction.TipPiece?.Species is { } across) WoodAgreement.CheckSpecies("Construction.TipPiece.Species", across, context);
        if (construction.Facing is not { } facing) return;
        if (facing.Species is { } species) WoodAgreement.CheckSpecies("Construction.Facing.Species", species, context);
        if (request.Blade?.EdgeThicknessMm is { } edge && facing.ThicknessMm is { } sheet && edge < 2 * sheet)
        {
            context.AddFault("Construction.Facing.ThicknessMm", new(
                $"Two sheets do not go into an edge of {edge} mm: take thinner ones, or leave the edge to be chosen.", FaultValue.Show(sheet), Bounds.Of<FacingRequest>(nameof(facing.ThicknessMm)).Least, edge / 2, "mm",
                Code: RefusalCodes.SizesDisagree));
        }
    }

    private static bool CheckStrip(StripRequest strip, int k, ValidationContext<DesignRequest> context)
    {
        if (strip.Species is { } species) WoodAgreement.CheckSpecies($"Construction.Strips[{k}].Species", species, context);
        return strip.WidthMm is { } width && Bounds.Of<StripRequest>(nameof(strip.WidthMm)).Holds(width);
    }

    /// <summary>The strip on the centre line; null where the strips are not sound.</summary>
    internal static StripRequest? Middle(DesignRequest request) =>
        request.Construction is { Strips: { Count: > 0 and <= Most } strips } construction && strips.All(strip => strip is { WidthMm: > 0 })
            ? strips[MiddleOf(construction)] : null;

    private static int MiddleOf(ConstructionRequest construction) =>
        construction.IsMirrored == false ? Laminate.MiddleOf([.. construction.Strips!.Select(strip => strip.WidthMm!.Value)]) : 0;

    private static void CheckMiddle(DesignRequest request, ConstructionRequest construction, ValidationContext<DesignRequest> context)
    {
        var strips = construction.Strips!;
        var middle = MiddleOf(construction);
        if (request.Wood?.Species is not { } wood || strips[middle].Species is not { } own || own == wood) return;
        context.AddFault($"Construction.Strips[{middle}].Species", new(
            "This strip lies on the centre line and is of the paddle's wood, wood.species: leave it null or the same.", FaultValue.Show(own), Allowed: [FaultValue.Shorten(wood)],
            Code: RefusalCodes.GivenTwice));
    }

    // A wood has one price, wherever it is given.
    private static void CheckPrices(DesignRequest request, IReadOnlyList<StripRequest> strips, ValidationContext<DesignRequest> context)
    {
        var prices = new Dictionary<string, double>();
        if (request.Wood is { Species: { } own, PricePerBoardFoot: { } first }) prices[own] = first;
        for (var k = 0; k < strips.Count; k++)
        {
            if ((strips[k].Species ?? request.Wood?.Species) is not { } species || strips[k].PricePerBoardFoot is not { } price) continue;
            if (prices.TryAdd(species, price) || prices[species] == price) continue;
            context.AddFault($"Construction.Strips[{k}].PricePerBoardFoot", new("This wood has another price elsewhere: give it once.", FaultValue.Show(price), Code: RefusalCodes.GivenTwice));
        }
    }

    // The outermost strip may be wider than needed, but each must be touched by the outline.
    private static void CheckWidth(DesignRequest request, ConstructionRequest construction, ValidationContext<DesignRequest> context)
    {
        if (GreatestWidthMm(request) is not { } needed) return;
        const double Hair = 1e-6;
        var widths = construction.Strips!.Select(strip => strip.WidthMm!.Value).ToArray();
        var isMirrored = construction.IsMirrored != false;
        var together = isMirrored ? 2 * widths.Sum() - widths[0] : widths.Sum();
        if (together < needed - Hair)
        {
            context.AddFault("Construction.Strips", new(
                "The strips must fill the greatest width of blade and grip, those of a mirrored list counted on both sides.", Math.Round(together, 3), needed, Unit: "mm",
                Code: RefusalCodes.SizesDisagree));
        }

        for (var k = 0; k < widths.Length; k++)
        {
            var before = widths[..k].Sum();
            var inner = isMirrored ? (k == 0 ? 0 : before - widths[0] / 2)
                : Math.Max(0, Math.Max(before - together / 2, together / 2 - before - widths[k]));
            if (inner < needed / 2 - Hair) continue;
            context.AddFault($"Construction.Strips[{k}].WidthMm", new(
                $"This strip lies outside the paddle, which is {needed} mm wide: leave it out.", FaultValue.Show(widths[k]), Code: RefusalCodes.SizesDisagree));
        }
    }

    private static double? GreatestWidthMm(DesignRequest request)
    {
        var blade = DesignDefaults.GreatestBladeMm(request, LengthAgreement.Of(request)?.HandSpacingMm);
        var grip = request.Grip?.WidthMm ?? DesignDefaults.Pattern(request).WidthMm;
        return blade is { } wide ? Math.Max(wide, grip) : null;
    }
}
