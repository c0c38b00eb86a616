using FluentValidation;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Fitting;
using Paddle.Design.Layout;
using Paddle.Design.Units;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Boards;

/// <summary>The rules of an order for boards; those of the designs in it are the designs' own.</summary>
internal sealed class BoardLayoutValidator : BoundedValidator<BoardLayoutRequest>
{
    private const string Own = "service's own limit";
    private const int MostKinds = 100, MostPaddles = BoardLayoutRequest.MostPaddles, MostBoards = 500;

    /// <summary>States the rules.</summary>
    public BoardLayoutValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Boards).EngineRequired().NotEmpty().Saying("At least one board is required.").AtMost(MostKinds, "boards", $"Up to {MostKinds} kinds of board are laid out at once ({Own}).");
        RuleFor(r => r.Paddles).EngineRequired().NotEmpty().Saying("At least one paddle is required.").AtMost(MostKinds, "paddles", $"Up to {MostKinds} kinds of paddle are laid out at once ({Own}).");
        RuleForEach(r => r.Boards).SetValidator(new RackBoardValidator()).When(r => r.Boards?.Count <= MostKinds);
        RuleForEach(r => r.Paddles).SetValidator(new WantedRules()).When(r => r.Paddles?.Count <= MostKinds);
        RuleFor(r => r.Saw).OneOf(Names.All<OutlineSaw>(), "Saws that are known here.");
        RuleFor(r => r.Drawing!).SetValidator(new LayoutDrawingRules());
        RuleFor(r => r).Custom((request, context) =>
        {
            context.RefuseSameIds("Boards", request.Boards?.Take(MostKinds).Select(board => board?.Id));
            context.RefuseSameIds("Paddles", request.Paddles?.Take(MostKinds).Select(paddle => paddle?.Id));
            CheckSum("Boards", request.Boards?.Sum(board => (long?)board?.Count ?? 1), MostBoards, "boards", context);
            CheckSum("Paddles", request.Paddles?.Sum(paddle => (long?)paddle?.Count ?? 1), MostPaddles, "paddles", context);
        });
    }

    private static void CheckSum(string list, long? sum, int most, string unit, ValidationContext<BoardLayoutRequest> context)
    {
        if (sum > most) context.AddFault(list, new($"All counts together: up to {most} {unit} are laid out at once ({Own}).", sum, 1, most, unit));
    }

    private sealed class WantedRules : GivenDesignRules<WantedPaddleRequest>
    {
        public WantedRules()
            : base("A paddle")
        {
            RuleFor(p => p.Id).Needed("An id is required: the answer names the paddle by it.").Printable(Labels.Longest);
            RuleFor(p => p.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
        }
    }
}

/// <summary>The rules of the drawing of boards.</summary>
internal sealed class LayoutDrawingRules : AbstractValidator<LayoutDrawingRequest>
{
    /// <summary>States the rules.</summary>
    public LayoutDrawingRules()
    {
        RuleFor(d => d.Units).OneOf(Names.All<DrawingUnits>(), "Drawings are lettered in one of these.");
        RuleFor(d => d.Scale).OneOf(["true", "fit"], "True scale to chalk from, or to fit a page.");
    }
}

/// <summary>The rules of a board.</summary>
internal sealed class RackBoardValidator : BoundedValidator<RackBoardRequest>
{
    private const string Own = "service's own limit";
    private const int MostDefects = 60, MostPoints = 60;
    private static readonly string[] Species = [.. WoodCatalogue.All.Select(species => species.Id)];

    /// <summary>States the rules.</summary>
    public RackBoardValidator()
    {
        RuleFor(b => b.Id).Needed("An id is required: the answer names the board by it.").Printable(Labels.Longest);
        RuleFor(b => b.LengthMm).Needed("The length is required.");
        RuleFor(b => b.WidthMm).Needed("The width is required.");
        RuleFor(b => b.ThicknessMm).Needed("The thickness is required.");
        RuleFor(b => b.Species).Needed("A species is required: paddles are laid out on boards of their wood.");
        RuleFor(b => b.Species).OneOf(Species, "Woods that are known here; /v1/woods lists them.");
        RuleFor(b => b.Defects).AtMost(MostDefects, "defects", $"Up to {MostDefects} defects a board are looked at ({Own}).");
        RuleForEach(b => b.Defects).SetValidator(new DefectRules()).When(b => b.Defects?.Count <= MostDefects);
    }

    private sealed class DefectRules : BoundedValidator<BoardDefectRequest>
    {
        public DefectRules()
        {
            RuleFor(d => d.Kind).Needed("A kind is required.");
            RuleFor(d => d.Kind).OneOf(LayoutOrderReader.DefectKinds, "Shapes of defects.");
            RuleFor(d => d.Points).AtMost(MostPoints, "corners", $"Up to {MostPoints} corners ({Own}).");
            RuleForEach(d => d.Points).SetValidator(new PointRules()).When(d => d.Points?.Count <= MostPoints);
            RuleFor(d => d).Custom((defect, context) =>
            {
                foreach (var (path, fault) in Faults(defect)) context.AddFaultBelow(path, fault);
            });
        }

        // What each kind needs, and no more: a member that means nothing here is a slip.
        private static IEnumerable<(string Path, Fault Fault)> Faults(BoardDefectRequest defect)
        {
            (string Path, object? Value, bool IsNeeded)[] members = defect.Kind switch
            {
                "circle" => [("XMm", defect.XMm, true), ("YMm", defect.YMm, true), ("RadiusMm", defect.RadiusMm, true), ("LengthMm", defect.LengthMm, false), ("WidthMm", defect.WidthMm, false), ("Points", defect.Points, false)],
                "rectangle" => [("XMm", defect.XMm, true), ("YMm", defect.YMm, true), ("LengthMm", defect.LengthMm, true), ("WidthMm", defect.WidthMm, true), ("RadiusMm", defect.RadiusMm, false), ("Points", defect.Points, false)],
                "polygon" => [("Points", defect.Points, true), ("XMm", defect.XMm, false), ("YMm", defect.YMm, false), ("RadiusMm", defect.RadiusMm, false), ("LengthMm", defect.LengthMm, false), ("WidthMm", defect.WidthMm, false)],
                _ => [],
            };
            foreach (var (path, value, isNeeded) in members)
            {
                if (isNeeded && value is null) yield return (path, new($"A {defect.Kind} needs this.", Code: RefusalCodes.Missing));
                if (!isNeeded && value is not null) yield return (path, new($"A {defect.Kind} has none of this: leave it out.", FaultValue.Show(value)));
            }

            if (defect is not { Kind: "polygon", Points: { } points } || points.Count > MostPoints) yield break;
            if (points.Count < 3) yield return ("Points", new("A polygon has three corners or more.", points.Count, 3, MostPoints, "corners"));
            else if (points.All(point => point is { XMm: not null, YMm: not null }) && ExactClearance.CrossesItself([.. points.Select(point => (point.XMm!.Value, point.YMm!.Value))]))
                yield return ("Points", new("The sides of this polygon cross or touch each other: give its corners in order around it.", Code: "crosses-itself"));
        }
    }

    private sealed class PointRules : BoundedValidator<BoardPointRequest>
    {
        public PointRules()
        {
            RuleFor(p => p.XMm).Needed("The place is required.");
            RuleFor(p => p.YMm).Needed("The place is required.");
        }
    }
}
