using FluentValidation;
using Paddle.Design.Fitting;
using Paddle.Design.Layout;
using Paddle.Design.Request;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Boards;

/// <summary>The rules of a request for the best paddle of a board.</summary>
internal sealed class BoardFitValidator : AbstractValidator<BoardFitRequest>
{
    private const string Own = "service's own limit";
    private const double SteepestGrain = 1.0 / 12;
    private const double ThinnestMm = 14;
    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>States the rules.</summary>
    public BoardFitValidator()
    {
        RuleFor(r => r.Board).NotNull().Saying("A board is required.");
        RuleFor(r => r.Board!).SetValidator(new RackBoardValidator());
        RuleFor(r => r.Design).NotNull().Saying("A design is required: the paddle wished for.");
        RuleFor(r => r.Count).InRange(1, 8, "paddles", $"Out of one board ({Own}).");
        RuleFor(r => r.KerfMm).InRange(0, 10, "mm", $"Saws for boards ({Own}).");
        RuleFor(r => r.ClearanceMm).InRange(0, 100, "mm", $"More between two outlines wastes the board ({Own}).");
        RuleFor(r => r.PlaningMm).InRange(0, 20, "mm", $"More is another board ({Own}).");
        RuleFor(r => r.Saw).OneOf([.. Names.Saws.Names], "Saws that are known here.");
        RuleFor(r => r).Custom((request, context) =>
        {
            if (request is not { Board: { } board, Design: { } design }) return;
            if (design.Wood?.Species is { } species && board.Species is { } own && species != own)
                context.AddFault("Design.Wood.Species", new($"The board is of {own}: leave the species out, or take a board of the design's.", FaultValue.Show(species), Allowed: [own]));
            if (board.ThicknessMm < ThinnestMm + (request.PlaningMm ?? LayoutOrderReader.UsualPlaningMm))
            {
                context.AddFault("Board.ThicknessMm", new(
                    "No paddle is carved out of a thinner board once it is planed.", board.ThicknessMm, ThinnestMm + (request.PlaningMm ?? LayoutOrderReader.UsualPlaningMm), Unit: "mm",
                    Code: RefusalCodes.BeyondBoard));
            }

            if (Math.Tan((board.GrainDegrees ?? 0) * Math.PI / 180) > SteepestGrain)
            {
                context.AddFault("Board.GrainDegrees", new(
                    "Steeper than 1 in 12 no paddle is designed: its shaft would break along the grain.", board.GrainDegrees, 0, Math.Round(Math.Atan(SteepestGrain) * 180 / Math.PI, 2), "degrees"));
            }

            if (DesignDefaults.IsLaminated(design)) context.AddFault("Design.Construction.Kind", StripAgreement.NotOnOneBoard);
            foreach (var failure in DesignRules.Validate(OfBoard(request)).Errors) context.AddFault($"Design.{failure.PropertyName}", Validated.ToFault(failure));
        });
    }

    /// <summary>The design wished for, in the board's wood.</summary>
    public static DesignRequest OfBoard(BoardFitRequest request) =>
        request.Design! with { Wood = (request.Design.Wood ?? new()) with { Species = request.Design.Wood?.Species ?? request.Board!.Species } };
}
