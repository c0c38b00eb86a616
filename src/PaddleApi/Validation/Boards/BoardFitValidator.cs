using FluentValidation;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Layout;
using Paddle.Design.Request;
using Paddle.Design.Wood;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Boards;

/// <summary>The rules of a request for the best paddle of a board.</summary>
internal sealed class BoardFitValidator : BoundedValidator<BoardFitRequest>
{
    private const double ThinnestMm = 14;
    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>States the rules.</summary>
    public BoardFitValidator()
    {
        RuleFor(r => r.Board).Needed("A board is required.");
        RuleFor(r => r.Board!).SetValidator(new RackBoardValidator());
        RuleFor(r => r.Design).Needed("A design is required: the paddle wished for.");
        RuleFor(r => r.Saw).OneOf(Names.All<OutlineSaw>(), "Saws that are known here.");
        RuleFor(r => r).Custom((request, context) =>
        {
            if (request is not { Board: { } board, Design: { } design }) return;
            CheckSpecies(design, board, context);
            var least = ThinnestMm + (request.PlaningMm ?? LayoutOrderReader.UsualPlaningMm);
            if (DesignDefaults.IsLaminated(design)) least = OfBoard(request).Wood!.Species == board.Species ? least + 2 * GlueUp.FacePlaningMm : 0;
            if (board.ThicknessMm < least)
            {
                context.AddFault("Board.ThicknessMm", new(
                    "No paddle is carved out of a thinner board once it is planed.", board.ThicknessMm, least, Unit: "mm", Code: RefusalCodes.BeyondBoard));
            }

            if (Math.Tan((board.GrainDegrees ?? 0) * Math.PI / 180) > WoodSafety.RefuseSlopeOfGrain)
            {
                context.AddFault("Board.GrainDegrees", new(
                    "Steeper than 1 in 12 no paddle is designed: its shaft would break along the grain.", board.GrainDegrees, 0, Math.Round(Math.Atan(WoodSafety.RefuseSlopeOfGrain) * 180 / Math.PI, 2), "degrees"));
            }

            foreach (var failure in DesignRules.Validate(OfBoard(request)).Errors) context.AddFault($"Design.{failure.PropertyName}", failure.ToFault());
        });
    }

    /// <summary>The design wished for, in the board's wood unless its middle strip has another.</summary>
    public static DesignRequest OfBoard(BoardFitRequest request)
    {
        var (design, board) = (request.Design!, request.Board!);
        var middle = DesignDefaults.IsLaminated(design) ? StripAgreement.Middle(design)?.Species : null;
        return design with { Wood = (design.Wood ?? new()) with { Species = design.Wood?.Species ?? middle ?? board.Species } };
    }

    private static void CheckSpecies(DesignRequest design, RackBoardRequest board, ValidationContext<BoardFitRequest> context)
    {
        if (board.Species is not { } own) return;
        if (!DesignDefaults.IsLaminated(design))
        {
            if (design.Wood?.Species is { } wood && wood != own)
                context.AddFault("Design.Wood.Species", new($"The board is of {own}: leave the species out, or take a board of the design's.", FaultValue.Show(wood), Allowed: [own]));
            return;
        }

        // Without a wood of its own the paddle is of the board's where no strip says otherwise.
        var species = FittedStrips.SpeciesOf(design);
        var isOfBoard = design.Wood?.Species is null && StripAgreement.Middle(design)?.Species is null;
        if (isOfBoard || species.Contains(own)) return;
        context.AddFault("Board.Species", new(
            "No strip is of the board's wood: take a board of one of the strips' species, or give a strip, or wood.species, the board's.", FaultValue.Show(own),
            Allowed: [.. species.Select(FaultValue.Shorten)]));
    }
}
