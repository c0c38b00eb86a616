using FluentValidation;
using PaddleApi.Contracts.Builds;

namespace PaddleApi.Validation.Builds;

/// <summary>The rules of a maker's own board.</summary>
internal sealed class BoardSizesValidator : BoundedValidator<BoardSizes>
{
    private const string Pair = "Length and width go together: one alone says nothing of where the paddle lies.";

    /// <summary>States the rules.</summary>
    public BoardSizesValidator()
    {
        RuleFor(b => b.BoardLengthMm).NotNull().When(b => b.BoardWidthMm is not null).Because(Pair);
        RuleFor(b => b.BoardWidthMm).NotNull().When(b => b.BoardLengthMm is not null).Because(Pair);
    }
}
