using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace PaddleApi.Validation.Designs;

/// <summary>The rules of a design request. Rules of one member stand here and in the parts; rules between members have a file each.</summary>
internal sealed class DesignRequestValidator : BoundedValidator<DesignRequest>
{
    /// <summary>States the rules.</summary>
    public DesignRequestValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Blade!).SetValidator(new BladeRules());
        RuleFor(r => r.Shaft!).SetValidator(new ShaftRules());
        RuleFor(r => r.Grip!).SetValidator(new GripRules());
        RuleFor(r => r.Wood!).EngineRequired().SetValidator(new WoodRules());
        RuleFor(r => r.Construction!).SetValidator(new ConstructionRules());
        RuleFor(r => r.Finish!).SetValidator(new FinishRules());
        RuleFor(r => r.Aims!).SetValidator(new AimsRules());
        RuleFor(r => r.Loads!).SetValidator(new LoadsRules());
        RuleFor(r => r.Drawing!.Units).OneOf(Names.All<DrawingUnits>(), "Drawings are lettered in one of these.").When(r => r.Drawing is not null);
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

    private sealed class BladeRules : BoundedValidator<BladeRequest>
    {
        public BladeRules()
        {
            RuleFor(b => b.Family).EngineNames(BladeFamilies.All.Select(family => family.Id));
            RuleFor(b => b.WidestAt).EngineRange(BladeFamilies.All.Select(family => family.WidestAtLimits));
            RuleFor(b => b.Fullness).EngineRange(BladeFamilies.All.Select(family => family.FullnessLimits));
            RuleFor(b => b.Offsets).EngineCount(OffsetTable.FewestStations, OffsetTable.MostStations);
            RuleForEach(b => b.Offsets).SetValidator(new OffsetRules()).When(b => b.Offsets?.Count <= OffsetTable.MostStations);
            RuleFor(b => b.ThroatThicknessMm).Pinned(PaddleSizes.Throat);
            RuleFor(b => b.MiddleThicknessMm).Pinned(PaddleSizes.Middle);
            RuleFor(b => b.TipThicknessMm).Pinned(PaddleSizes.Tip);
            RuleFor(b => b.EdgeThicknessMm).Pinned(PaddleSizes.Edge);
        }
    }

    private sealed class OffsetRules : BoundedValidator<OffsetRequest>
    {
        public OffsetRules()
        {
            RuleFor(o => o.XMm).Needed("Each station needs its distance from the throat.");
            RuleFor(o => o.HalfBreadthMm).Needed("Each station needs its half-breadth.");
        }
    }

    private sealed class ShaftRules : BoundedValidator<ShaftRequest>
    {
        public ShaftRules()
        {
            RuleFor(s => s.WidthMm).Pinned(PaddleSizes.ShaftWidth);
            RuleFor(s => s.ThicknessMm).Pinned(PaddleSizes.Shaft);
            RuleFor(s => s.UpperWidthMm).Pinned(PaddleSizes.UpperWidth);
            RuleFor(s => s.UpperThicknessMm).Pinned(PaddleSizes.Upper);
        }
    }

    /// <summary>The rules of a grip.</summary>
    internal sealed class GripRules : BoundedValidator<GripRequest>
    {
        public GripRules()
        {
            RuleFor(g => g.Style).OneOf(Names.All<GripStyle>(), "Grips are drawn in one of these styles.");
            RuleFor(g => g.Faces).OneOf(Names.All<GripFaces>(), "Both faces alike, or one hollowed for the palm.");
            RuleFor(g => g.WidthMm).EngineRange(GripPattern.All.Select(pattern => pattern.WidthLimitsMm));
            RuleFor(g => g.LengthMm).EngineRange(GripPattern.All.Select(pattern => pattern.LengthLimitsMm));
            RuleFor(g => g.ThicknessMm).Pinned(PaddleSizes.Grip);
        }
    }

    private sealed class WoodRules : BoundedValidator<WoodRequest>
    {
        public WoodRules()
        {
            RuleFor(w => w.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
            RuleFor(w => w.Treatment).EngineNames([WoodSafety.NoTreatment]);
        }
    }

    private sealed class ConstructionRules : AbstractValidator<ConstructionRequest>
    {
        public ConstructionRules()
        {
            RuleFor(c => c.Kind).OneOf(Names.All<ConstructionKind>(), "A paddle is put together in one of these ways.");
            RuleFor(c => c.Strips).EngineCount(StripAgreement.Fewest, StripAgreement.Most);
            RuleForEach(c => c.Strips).SetValidator(new StripRules()).When(c => c.Strips?.Count <= StripAgreement.Most);
            RuleFor(c => c.TipPiece!).SetValidator(new TipPieceRules());
            RuleFor(c => c.Facing!).SetValidator(new FacingRules());
            RuleFor(c => c.Adhesive).OneOf([.. Adhesive.All.Select(one => one.Id)], "Glues by their class.");
        }
    }

    private sealed class StripRules : BoundedValidator<StripRequest>
    {
        public StripRules()
        {
            RuleFor(s => s.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id));
            RuleFor(s => s.WidthMm).Needed("Each strip needs its width.");
        }
    }

    private sealed class TipPieceRules : BoundedValidator<TipPieceRequest>
    {
        public TipPieceRules()
        {
            RuleFor(t => t.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id));
            RuleFor(t => t.Species).Needed("A species is required.");
            RuleFor(t => t.LengthMm).Needed("This size is required.");
        }
    }

    private sealed class FacingRules : BoundedValidator<FacingRequest>
    {
        public FacingRules()
        {
            RuleFor(f => f.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id));
            RuleFor(f => f.Species).Needed("A species is required.");
            RuleFor(f => f.ThicknessMm).Needed("This size is required.");
        }
    }

    /// <summary>The rules of a finish.</summary>
    internal sealed class FinishRules : BoundedValidator<FinishRequest>
    {
        public FinishRules()
        {
            RuleFor(f => f.Blade).OneOf(Names.All<SurfaceFinish>(), "A blade is finished with one of these.");
            RuleFor(f => f.Shaft).OneOf(Names.All<SurfaceFinish>(), "Shaft and grip are finished with one of these.");
            RuleFor(f => f.TipReinforcement).OneOf(Names.All<TipFacing>(), "A tip is reinforced with one of these.");
        }
    }

    private sealed class AimsRules : BoundedValidator<AimsRequest>
    {
        public AimsRules()
        {
            RuleFor(a => a.BalanceAt).OneOf(Names.All<BalanceAim>(), "Balance is aimed at one of these places.");
            RuleFor(a => a.BenchFlexMm!).SetValidator(new BoundedValidator<BenchFlexRequest>());
        }
    }

    private sealed class LoadsRules : BoundedValidator<LoadsRequest>
    {
        public LoadsRules()
        {
            RuleFor(l => l.Duty).OneOf(Names.All<Duty>(), "A paddle is made for one of these.");
        }
    }
}
