using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Copying;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Units;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation.Designs;
using Range = Paddle.Design.Outline.Range;

namespace PaddleApi.Validation.Copies;

/// <summary>The rules of readings off a paddle.</summary>
internal sealed class CopyValidator : BoundedValidator<CopyRequest>
{
    private const string Own = "service's own limit";
    private const int FewestStations = 3, MostStations = 60, MostVariants = 12;
    private const int BladeWidths = 3, BladeThicknesses = 2;

    // The hand's part of the grip ends above this on every pattern; below it is shaft, mm.
    private const double ShaftFromMm = 100;
    private static readonly string[] Woods = [.. WoodCatalogue.All.Select(species => species.Id)];
    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>States the rules.</summary>
    public CopyValidator()
    {
        Range overall = PaddleLengths.OverallLimitsMm, spacing = PaddleLengths.HandSpacingLimitsMm;
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.OverallLengthMm).Needed("The overall length is required.");
        RuleFor(r => r.ThroatMm).Needed("The place of the throat is required: there the blade begins.");
        RuleFor(r => r.Stations).Needed("Stations are required: what the caliper read.");
        RuleFor(r => r.Stations).EngineCount(FewestStations, MostStations);
        RuleForEach(r => r.Stations).SetValidator(new StationRules()).When(r => r.Stations?.Count <= MostStations);
        RuleFor(r => r.BenchFlex!).SetValidator(new BenchRules());
        RuleFor(r => r.Species).OneOf(Woods, "Woods that are known here; /v1/woods lists them.");
        RuleFor(r => r.Finish!).SetValidator(new DesignRequestValidator.FinishRules());
        RuleFor(r => r.Grip!).SetValidator(new DesignRequestValidator.GripRules());
        RuleFor(r => r.ReadingErrors!).SetValidator(new BoundedValidator<CopyErrorsRequest>());
        RuleFor(r => r.Variants).AtMost(MostVariants, "variants", $"Up to {MostVariants} variants are made at once ({Own}).");
        RuleForEach(r => r.Variants).SetValidator(new VariantRules()).When(r => r.Variants?.Count <= MostVariants);
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "Drawings are lettered in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r).Custom((request, context) =>
        {
            Grip(request, context);
            var (stations, lengths) = (Stations(request, context), Lengths(request, context));
            if (stations && lengths) Enough(request, context);
        });
    }

    // The styles' own limits, and wood between the hollows, are those of a design.
    private static void Grip(CopyRequest request, ValidationContext<CopyRequest> context)
    {
        if (request.Grip is null) return;
        var alone = new DesignRequest { HandSpacingMm = PaddleLengths.HandSpacingLimitsMm.Max - 200, Wood = new() { Species = Woods[0] }, Grip = request.Grip };
        foreach (var failure in DesignRules.Validate(alone).Errors)
        {
            var fault = failure.ToFault();
            if (failure.PropertyName is "Grip.WidthMm" or "Grip.LengthMm" or "Grip.ThicknessMm" || (failure.PropertyName == "Grip.HollowDepthMm" && fault.Code == RefusalCodes.SizesDisagree))
                context.AddFault(failure.PropertyName, fault);
        }
    }

    private static bool Stations(CopyRequest request, ValidationContext<CopyRequest> context)
    {
        if (request.Stations is not { } stations) return false;
        if (stations.Count is < FewestStations or > MostStations)
        {
            context.AddFault("Stations", new("Fewer stations do not fix a paddle; more than this tell nothing new.", stations.Count, FewestStations, MostStations, "stations"));
            return false;
        }

        var sound = stations.All(station => station.XMm is not null);
        for (var i = 0; i < stations.Count; i++)
        {
            if (stations[i] is not { XMm: { } x } station) continue;
            void Refuse(string member, Fault fault)
            {
                context.AddFault($"Stations[{i}].{member}", fault);
                sound = false;
            }

            if (i > 0 && stations[i - 1].XMm is { } before && !(x > before)) Refuse("XMm", new("Stations must follow one another from the grip to the tip.", FaultValue.Show(x), before, Unit: "mm"));
            if (x > request.OverallLengthMm) Refuse("XMm", new("The station lies beyond the tip.", FaultValue.Show(x), 0, request.OverallLengthMm, "mm"));
            if (station.EdgeThicknessMm is { } edge && x <= request.ThroatMm) Refuse("EdgeThicknessMm", new("Only the blade has edges: leave it out on the shaft.", FaultValue.Show(edge)));
        }

        return sound;
    }

    private static bool Lengths(CopyRequest request, ValidationContext<CopyRequest> context)
    {
        if (request is not { OverallLengthMm: { } overall, ThroatMm: { } throat }) return false;
        var sound = true;
        void Within(string member, double value, Range limits, string reason)
        {
            if (limits.Contains(value)) return;
            context.AddFault(member, new(reason, FaultValue.Show(Math.Round(value, 3)), limits.Min, limits.Max, "mm", Code: RefusalCodes.LengthsDisagree));
            sound = false;
        }

        Within("ThroatMm", overall - throat, PaddleLengths.BladeLengthLimitsMm, "The overall length less the place of the throat is the blade's length.");
        var hand = GripPattern.Of(Names.Find<GripStyle>(request.Grip?.Style ?? "") ?? default).HandMm;
        var lower = request.LowerHandMm ?? (request.HandSpacingMm is { } spacing ? hand + spacing : throat - PaddleLengths.DefaultFreeboardMm);
        var (member, place) = request.LowerHandMm is not null ? ("LowerHandMm", "The lower hand") : request.HandSpacingMm is not null ? ("HandSpacingMm", "The lower hand") : ("ThroatMm", "A lower hand");
        Within(member, throat - lower, PaddleLengths.FreeboardLimitsMm with { Min = 2 }, $"{place} lies above the throat, by this much.");
        Within(member, request.HandSpacingMm ?? lower - hand, PaddleLengths.HandSpacingLimitsMm, "From the grip hand to the lower hand.");
        if (request is { LowerHandMm: { } low, HandSpacingMm: { } apart })
            Within("HandSpacingMm", low - apart, PaddleLengths.TopHandLimitsMm(request.Grip?.LengthMm ?? 60), "The lower hand less the hand spacing is the place of the grip hand, which lies on the grip.");
        if (request.BalanceMm > overall) context.AddFault("BalanceMm", new("The balance point lies on the paddle.", request.BalanceMm, 1, overall, "mm"));
        if (request.BenchFlex is not { } bench) return sound;
        var (upper, support, weight) = (bench.UpperSupportMm ?? hand, bench.LowerSupportMm ?? lower, bench.LoadAtMm ?? throat + 0.5 * (overall - throat));
        if (bench.UpperSupportMm is not null || bench.LowerSupportMm is not null)
        {
            Within(bench.UpperSupportMm is null ? "BenchFlex.LowerSupportMm" : "BenchFlex.UpperSupportMm", support - upper, new(100, 1200), "The lower support less the upper one: farther apart than this, or the paddle tips up.");
            if (bench.LowerSupportMm is not null) Within("BenchFlex.LowerSupportMm", support, new(100, throat), "The paddle is held on the shaft.");
        }

        if (bench.LoadAtMm is not null) Within("BenchFlex.LoadAtMm", weight, new(throat + 20, overall), "The weight hangs from the blade.");
        return sound;
    }

    private static void Enough(CopyRequest request, ValidationContext<CopyRequest> context)
    {
        var throat = request.ThroatMm!.Value;
        var blade = request.Stations!.Where(station => station.XMm > throat).ToList();
        var shaft = request.Stations!.Where(station => station.XMm > ShaftFromMm && station.XMm <= throat).ToList();
        void Least(int count, int least, string what)
        {
            if (count < least) context.AddFault("Stations", new($"Too few readings to find the paddle from: {what}.", count, least, MostStations, "readings", Code: RefusalCodes.TooFewReadings));
        }

        Least(blade.Count(station => station.WidthMm > 0), BladeWidths, "widths of the blade");
        Least(blade.Count(station => station.ThicknessMm > 0), BladeThicknesses, "thicknesses of the blade");
        Least(shaft.Count(station => station.WidthMm > 0), 1, "widths of the shaft");
        Least(shaft.Count(station => station.ThicknessMm > 0), 1, "thicknesses of the shaft");
        if (request.Species is null && request.MassG is null)
            context.AddFault("Species", new("Of a wood that nobody knows the paddle must be weighed: give species or massG.", Code: RefusalCodes.TooFewReadings));
    }

    private sealed class StationRules : BoundedValidator<CopyStationRequest>
    {
        public StationRules()
        {
            RuleFor(s => s.XMm).Needed("The place is required.");
        }
    }

    private sealed class BenchRules : BoundedValidator<CopyBenchRequest>
    {
        public BenchRules()
        {
            RuleFor(b => b.DeflectionMm).Needed("The deflection is required.");
        }
    }

    private sealed class VariantRules : BoundedValidator<CopyVariantRequest>
    {
        public VariantRules()
        {
            RuleFor(v => v.Change).Needed("What changes is required.");
            RuleFor(v => v.Change).OneOf(CopyVariants.Changes, "What can change of a copy.");
            RuleFor(v => v.Species).OneOf(Woods, "Woods that are known here; /v1/woods lists them.");
            RuleFor(v => v).Custom((variant, context) =>
            {
                if (variant.Change == CopyVariants.Species != variant.Species is not null)
                    context.AddFaultBelow("Species", new("The other wood goes with the change of species, and with no other.", FaultValue.Show(variant.Species), Code: RefusalCodes.OneFigureEach));
                var size = SizeLimits.Names.ToList().IndexOf(variant.Change ?? "");
                if (size < 0) return;
                var limits = SizeLimits.Pinned[size];
                if (variant.Value is not { } value || !limits.Contains(value))
                    context.AddFaultBelow("Value", new("The size that it is to have.", FaultValue.Show(variant.Value), limits.Min, limits.Max, "mm", Code: RefusalCodes.SizesDisagree));
            });
        }
    }
}
