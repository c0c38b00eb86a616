using System.Linq.Expressions;
using FluentValidation;
using Paddle.Design.Request;

namespace PaddleApi.Validation.Boards;

/// <summary>Rules that every request about boards has.</summary>
internal static class BoardRules
{
    private const string Own = "service's own limit";

    /// <summary>Length of a board, mm.</summary>
    public static IRuleBuilderOptions<T, double?> BoardLength<T>(this IRuleBuilder<T, double?> rule) => rule.InRange(300, 6100, "mm", $"Boards of up to 20 ft ({Own}).");

    /// <summary>Width of a board, mm.</summary>
    public static IRuleBuilderOptions<T, double?> BoardWidth<T>(this IRuleBuilder<T, double?> rule) => rule.InRange(40, 1300, "mm", $"Boards, and panels glued up ({Own}).");

    /// <summary>What saw and plane take.</summary>
    public static void SawRules<T>(
        this AbstractValidator<T> rules, Expression<Func<T, double?>> kerf, Expression<Func<T, double?>> clearance, Expression<Func<T, double?>> planing,
        Expression<Func<T, string?>> saw)
    {
        rules.RuleFor(kerf).InRange(0, 10, "mm", $"Saws for boards ({Own}).");
        rules.RuleFor(clearance).InRange(0, 100, "mm", $"More between two outlines wastes the board ({Own}).");
        rules.RuleFor(planing).InRange(0, 20, "mm", $"More is another board ({Own}).");
        rules.RuleFor(saw).OneOf([.. Names.Saws.Names], "Saws that are known here.");
    }
}
