using FluentValidation;
using PaddleApi.Contracts.Builds;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of a maker's own board.</summary>
internal sealed class BoardSizesValidator : AbstractValidator<BoardSizes>
{
    private const string Pair = "Length and width go together: one alone says nothing of where the paddle lies.";

    /// <summary>States the rules.</summary>
    public BoardSizesValidator()
    {
        RuleFor(b => b.BoardLengthMm).InRange(300, 6100, "mm", "Boards of up to 20 ft (service's own limit).");
        RuleFor(b => b.BoardWidthMm).InRange(40, 1300, "mm", "Boards, and panels glued up (service's own limit).");
        RuleFor(b => b.BoardLengthMm).NotNull().When(b => b.BoardWidthMm is not null).Saying(Pair);
        RuleFor(b => b.BoardWidthMm).NotNull().When(b => b.BoardLengthMm is not null).Saying(Pair);
    }
}
