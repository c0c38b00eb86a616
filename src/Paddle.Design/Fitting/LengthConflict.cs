using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Fitting;

/// <summary>Lengths completed, or the reasons why they cannot be.</summary>
/// <param name="Lengths">The lengths; null when they clash.</param>
/// <param name="Conflicts">What clashes; empty when nothing does.</param>
internal sealed record LengthsResult(PaddleLengths? Lengths, IReadOnlyList<LengthConflict> Conflicts);

/// <summary>Given lengths that cannot all hold.</summary>
/// <param name="Fields">The lengths that clash, by their names in <see cref="LengthFields"/>.</param>
/// <param name="FollowsMm">What the length that follows from them would be, mm.</param>
/// <param name="LimitsMm">What it may be, mm.</param>
/// <param name="Reason">The sum in plain words, and what would fit.</param>
internal sealed record LengthConflict(IReadOnlyList<string> Fields, double FollowsMm, Range LimitsMm, string Reason);

/// <summary>Names of the lengths in the contract.</summary>
internal static class LengthFields
{
    public const string HandSpacing = "handSpacingMm";

    public const string Freeboard = "freeboardMm";

    public const string Overall = "overallLengthMm";

    public const string Blade = "blade.lengthMm";
}
