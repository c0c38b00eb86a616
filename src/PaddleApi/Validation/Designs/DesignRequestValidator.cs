using FluentValidation;
using Paddle.Design;
using Paddle.Design.Finishing;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace PaddleApi.Validation.Designs;

/// <summary>The rules of a design request. Rules of one member stand here and in the parts; rules between members have a file each.</summary>
internal sealed class DesignRequestValidator : AbstractValidator<DesignRequest>
{
    private const string Own = "service's own limit";

    /// <summary>States the rules.</summary>
    public DesignRequestValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        var (spacing, freeboard, overall) =
            (PaddleLengths.HandSpacingLimitsMm, PaddleLengths.FreeboardLimitsMm, PaddleLengths.OverallLimitsMm);
        RuleFor(r => r.HandSpacingMm).InRange(spacing.Min, spacing.Max, "mm", $"Hand spacings that fit a person ({Own}).");
        RuleFor(r => r.FreeboardMm).InRange(
            freeboard.Min, freeboard.Max, "mm", "The lower hand holds the shaft above the throat, 25 to 50 mm by custom (common practice, no source).");
        RuleFor(r => r.OverallLengthMm).InRange(overall.Min, overall.Max, "mm", $"Lengths of single-blade paddles ({Own}).");
        RuleFor(r => r.Blade!).SetValidator(new BladeRules());
        RuleFor(r => r.Shaft!).SetValidator(new ShaftRules());
        RuleFor(r => r.Grip!).SetValidator(new GripRules());
        RuleFor(r => r.Wood!).EngineRequired().SetValidator(new WoodRules());
        RuleFor(r => r.Construction!).SetValidator(new ConstructionRules());
        RuleFor(r => r.Finish!).SetValidator(new FinishRules());
        RuleFor(r => r.Aims!).SetValidator(new AimsRules());
        RuleFor(r => r.Loads!).SetValidator(new LoadsRules());
        RuleFor(r => r.Drawing!.Units).OneOf([.. Names.Units.Names], "Drawings are lettered in one of these.").When(r => r.Drawing is not null);
        RuleFor(r => r).Custom((request, context) =>
        {
            LengthAgreement.Check(request, context);
            BladeAgreement.Check(request, context);
            OffsetTable.Check(request, context);
            SizeAgreement.Check(request, context);
            Stock.Check(request, context);
            StripAgreement.Check(request, context);
            if (request.Aims?.BenchFlexMm is { Min: { } least, Max: { } most } && most <= least)
                context.AddFault("Aims.BenchFlexMm.Max", new("The most bench flex must be above the least.", FaultValue.Show(most), least, Unit: "mm"));
        });
    }

    private sealed class BladeRules : AbstractValidator<BladeRequest>
    {
        public BladeRules()
        {
            RuleFor(b => b.Family).EngineNames(BladeFamilies.All.Select(family => family.Id));
            RuleFor(b => b.WidestAt).EngineRange(BladeFamilies.All.Select(family => family.WidestAtLimits));
            RuleFor(b => b.Fullness).EngineRange(BladeFamilies.All.Select(family => family.FullnessLimits));
            var length = PaddleLengths.BladeLengthLimitsMm;
            RuleFor(b => b.LengthMm).InRange(length.Min, length.Max, "mm", $"Blade lengths of single-blade paddles ({Own}).");
            var width = OffsetTable.WidthLimitsMm;
            RuleFor(b => b.WidthMm).InRange(width.Min, width.Max, "mm", $"Blade widths of single-blade paddles ({Own}).");
            RuleFor(b => b.Offsets).EngineCount(OffsetTable.FewestStations, OffsetTable.MostStations);
            RuleFor(b => b.ThroatThicknessMm).Pinned(PaddleSizes.Throat);
            RuleFor(b => b.MiddleThicknessMm).Pinned(PaddleSizes.Middle);
            RuleFor(b => b.TipThicknessMm).Pinned(PaddleSizes.Tip);
            RuleFor(b => b.EdgeThicknessMm).Pinned(PaddleSizes.Edge);
        }
    }

    private sealed class OffsetRules : AbstractValidator<OffsetRequest>
    {
        public OffsetRules()
        {
            RuleFor(o => o.XMm).EngineRange(0, PaddleLengths.BladeLengthLimitsMm.Max).EngineRequired();
            RuleFor(o => o.HalfBreadthMm).EngineRange(0, OffsetTable.WidthLimitsMm.Max / 2).EngineRequired();
        }
    }

    private sealed class ShaftRules : AbstractValidator<ShaftRequest>
    {
        public ShaftRules()
        {
            RuleFor(s => s.WidthMm).Pinned(PaddleSizes.ShaftWidth);
            RuleFor(s => s.ThicknessMm).Pinned(PaddleSizes.Shaft);
            RuleFor(s => s.UpperWidthMm).Pinned(PaddleSizes.UpperWidth);
            RuleFor(s => s.UpperThicknessMm).Pinned(PaddleSizes.Upper);
            RuleFor(s => s.BendDegrees).InRange(0, 15, "degrees", "Bent shafts of the trade bend 5 to 15 degrees (common practice, no source).");
        }
    }

    /// <summary>The rules of a grip.</summary>
    internal sealed class GripRules : AbstractValidator<GripRequest>
    {
        public GripRules()
        {
            RuleFor(g => g.Style).OneOf([.. Names.GripStyles.Names], "Grips are drawn in one of these styles.");
            RuleFor(g => g.Faces).OneOf([.. Names.GripFaces.Names], "Both faces alike, or one hollowed for the palm.");
            RuleFor(g => g.WidthMm).EngineRange(GripPattern.All.Select(pattern => pattern.WidthLimitsMm));
            RuleFor(g => g.LengthMm).EngineRange(GripPattern.All.Select(pattern => pattern.LengthLimitsMm));
            RuleFor(g => g.ThicknessMm).Pinned(PaddleSizes.Grip);
            var hollow = SizeAgreement.HollowLimitsMm;
            RuleFor(g => g.HollowDepthMm).InRange(hollow.Min, hollow.Max, "mm", $"A hollow deeper than this is no longer a grip ({Own}).");
        }
    }

    private sealed class WoodRules : AbstractValidator<WoodRequest>
    {
        public WoodRules()
        {
            RuleFor(w => w.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
            RuleFor(w => w.Treatment).EngineNames([WoodSafety.NoTreatment]);
            RuleFor(w => w.MoisturePercent).InRange(
                WoodSafety.MinimumMoisturePercent, WoodSafety.MaximumMoisturePercent, "percent", WoodSafety.MoistureRangeSource + ".");
            RuleFor(w => w.SlopeOfGrain).EngineRange(0, WoodSafety.RefuseSlopeOfGrain);
            RuleFor(w => w.SlopeOfGrain)
                .Must(slope => slope is null || (slope >= 0 && WoodSafety.JudgeSlope(slope.Value) != GrainVerdict.Refuse))
                .Saying($"Steeper grain breaks at the throat: {WoodSafety.SlopeOfGrainSource}.", 0, WoodSafety.RefuseSlopeOfGrain, "rise over run");
            RuleFor(w => w.MeasuredDensityKgM3).InRange(200, 1100, "kg/m3", "Woods lie between balsa and the heaviest tropical hardwoods (from memory).");
            RuleFor(w => w.BoardThicknessMm).InRange(
                PaddleSpecification.ThinnestBoardMm, 120, "mm", $"Planed, a thinner board is not one paddle's shaft; glue it up first ({Own}).");
            RuleFor(w => w.PricePerBoardFoot).InRange(StripAgreement.PriceLimits.Min, StripAgreement.PriceLimits.Max, "", StripAgreement.PriceReason);
            RuleFor(w => w.MeasuredModulusMPa).InRange(3000, 25000, "MPa", "Clear wood along the grain lies between these (from memory).");
        }
    }

    private sealed class ConstructionRules : AbstractValidator<ConstructionRequest>
    {
        public ConstructionRules()
        {
            RuleFor(c => c.Kind).OneOf([.. Names.Constructions.Names], "A paddle is put together in one of these ways.");
            RuleFor(c => c.Strips).EngineCount(StripAgreement.Fewest, StripAgreement.Most);
            RuleFor(c => c.Adhesive).OneOf([.. Adhesive.All.Select(one => one.Id)], "Glues by their class.");
        }
    }

    private sealed class StripRules : AbstractValidator<StripRequest>
    {
        public StripRules()
        {
            RuleFor(s => s.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id));
            RuleFor(s => s.PricePerBoardFoot).EngineRange(StripAgreement.PriceLimits.Min, StripAgreement.PriceLimits.Max);
            RuleFor(s => s.WidthMm).EngineRange(StripAgreement.WidthLimitsMm.Min, StripAgreement.WidthLimitsMm.Max).EngineRequired();
        }
    }

    private sealed class TipPieceRules : AbstractValidator<TipPieceRequest>
    {
        public TipPieceRules()
        {
            RuleFor(t => t.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
            RuleFor(t => t.LengthMm).EngineRange(StripAgreement.TipLimitsMm.Min, StripAgreement.TipLimitsMm.Max).EngineRequired();
        }
    }

    private sealed class FacingRules : AbstractValidator<FacingRequest>
    {
        public FacingRules()
        {
            RuleFor(f => f.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
            RuleFor(f => f.ThicknessMm).EngineRange(StripAgreement.SheetLimitsMm.Min, StripAgreement.SheetLimitsMm.Max).EngineRequired();
        }
    }

    /// <summary>The rules of a finish.</summary>
    internal sealed class FinishRules : AbstractValidator<FinishRequest>
    {
        public FinishRules()
        {
            const string Coats = "3 to 6 of varnish are usual (Wood Handbook FPL-GTR-190, ch. 16, read), 3 of oil (common practice, no source); the end is the "
                + Own + ".";
            RuleFor(f => f.Blade).OneOf([.. Names.Finishes.Names], "A blade is finished with one of these.");
            RuleFor(f => f.Shaft).OneOf([.. Names.Finishes.Names], "Shaft and grip are finished with one of these.");
            RuleFor(f => f.TipReinforcement).OneOf([.. Names.TipFacings.Names], "A tip is reinforced with one of these.");
            RuleFor(f => f.BladeCoats).InRange(0, FinishChoice.MostCoats, "coats", Coats);
            RuleFor(f => f.ShaftCoats).InRange(0, FinishChoice.MostCoats, "coats", Coats);
        }
    }

    private sealed class AimsRules : AbstractValidator<AimsRequest>
    {
        public AimsRules()
        {
            RuleFor(a => a.BalanceAt).OneOf([.. Names.BalanceAims.Names], "Balance is aimed at one of these places.");
            RuleFor(a => a.BalanceToleranceMm).InRange(
                1, 100, "mm", $"Closer than 1 mm cannot be weighed out; beyond 100 mm there is no aim left ({Own}).");
            RuleFor(a => a.MinimumSafetyFactor).InRange(
                0.8, 5, "", $"Far below 1 more than one stick in twenty breaks at the load; above 5 it is no longer a paddle ({Own}).");
            RuleFor(a => a.MaximumMassG).InRange(200, 2500, "g", $"Masses of single-blade wooden paddles ({Own}).");
            RuleFor(a => a.BenchFlexMm!.Min).InRange(0.5, 200, "mm", $"Flex that a rule can measure ({Own}).").When(a => a.BenchFlexMm is not null);
            RuleFor(a => a.BenchFlexMm!.Max).InRange(0.5, 200, "mm", $"Flex that a rule can measure ({Own}).").When(a => a.BenchFlexMm is not null);
        }
    }

    private sealed class LoadsRules : AbstractValidator<LoadsRequest>
    {
        public LoadsRules()
        {
            const string Force = "Forces that a person can put on a paddle (" + Own + ").";
            RuleFor(l => l.Duty).OneOf([.. Names.Duties.Names], "A paddle is made for one of these.");
            RuleFor(l => l.BodyMassKg).InRange(12, 250, "kg", $"Body masses from a child to a heavy adult ({Own}).");
            RuleFor(l => l.TouringStrokeN).InRange(10, 2000, "N", Force);
            RuleFor(l => l.HardStrokeN).InRange(10, 2000, "N", Force);
            RuleFor(l => l.BraceN).InRange(10, 2000, "N", Force);
            RuleFor(l => l.PushOffAxialN).InRange(10, 2000, "N", Force);
            RuleFor(l => l.PushOffSideN).InRange(10, 2000, "N", Force);
            RuleFor(l => l.EdgePressN).InRange(10, 2000, "N", Force);
        }
    }
}
