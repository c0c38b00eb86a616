using System.Text.Json;
using Paddle.Design.Units;
using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Fitting;

/// <summary>Stable codes of refusals, for programs; the words may change, these do not.</summary>
internal static class RefusalCodes
{
    /// <summary>A value outside its range.</summary>
    public const string OutOfRange = "out-of-range";
    /// <summary>A value of the right kind that this place does not take.</summary>
    public const string NotAccepted = "not-accepted";
    /// <summary>A name that is not known here.</summary>
    public const string UnknownName = "unknown-name";
    /// <summary>A value of another kind than this place takes.</summary>
    public const string WrongType = "wrong-type";
    /// <summary>A body that is not the JSON this address reads.</summary>
    public const string NotJson = "not-json";
    /// <summary>A value that must be given.</summary>
    public const string Missing = "missing";
    /// <summary>One fact given in two places that do not agree.</summary>
    public const string GivenTwice = "given-twice";
    /// <summary>Lengths that leave no room for one another.</summary>
    public const string LengthsDisagree = "lengths-disagree";
    /// <summary>Sizes that no one paddle can have together.</summary>
    public const string SizesDisagree = "sizes-disagree";
    /// <summary>A size that the board cannot give.</summary>
    public const string BeyondBoard = "beyond-board";
    /// <summary>A paddle to be glued up, of no strips.</summary>
    public const string NoStrips = "no-strips";
    /// <summary>A wood or a treatment that must not be used.</summary>
    public const string UnsafeWood = "unsafe-wood";
    /// <summary>Nothing gives a hand spacing.</summary>
    public const string NoWayToHandSpacing = "no-way-to-hand-spacing";
    /// <summary>Two measurements that cannot belong to one person.</summary>
    public const string MeasurementsContradict = "measurements-contradict";
    /// <summary>A body mass that nobody of this stature has.</summary>
    public const string BodyMassImpossible = "body-mass-impossible";
    /// <summary>A seat under water.</summary>
    public const string SeatBelowWater = "seat-below-water";
    /// <summary>Customers given twice or not at all.</summary>
    public const string CustomersOrGroups = "customers-or-groups";
    /// <summary>A customer with no figure, or with more than one.</summary>
    public const string OneFigureEach = "one-figure-each";
    /// <summary>Shares that add up to nothing.</summary>
    public const string NoShares = "no-shares";
    /// <summary>A shortest stock length above the longest.</summary>
    public const string StockLimitsCross = "stock-limits-cross";
    /// <summary>No length on the step between the stock limits.</summary>
    public const string NoLengthOnStep = "no-length-on-step";
    /// <summary>Fewer readings than a paddle can be found from.</summary>
    public const string TooFewReadings = "too-few-readings";
}

/// <summary>Why an input is refused, in words that let the caller put it right.</summary>
/// <param name="JsonPointer">JSON Pointer to the input, such as <c>/paddler/armSpanMm</c>.</param>
/// <param name="Code">Stable code, of <see cref="RefusalCodes"/>.</param>
/// <param name="Message">What is wrong and why, in plain words.</param>
/// <param name="Low">Lowest value accepted, if a range was broken.</param>
/// <param name="High">Highest value accepted, if a range was broken.</param>
/// <param name="Unit">Unit of the three figures.</param>
/// <param name="MeasureInstead">Names of the measurements that would answer (see the measurement catalogue).</param>
public sealed record InputRefusal(
    string JsonPointer,
    string Code,
    string Message,
    double? Value = null,
    double? Low = null,
    double? High = null,
    string? Unit = null,
    IReadOnlyList<string>? MeasureInstead = null)
{
    /// <summary>A value outside its range.</summary>
    /// <param name="jsonPointer">JSON Pointer to the input.</param>
    public static InputRefusal OutOfRange(string jsonPointer, double value, double low, double high, string unit, string why) =>
        new(jsonPointer, RefusalCodes.OutOfRange, FormattableString.Invariant($"{value} {unit} is outside {low} to {high} {unit}: {why}"), value, low, high, unit);

    /// <summary>The values of one part of a request that lie outside the bounds beside their members.</summary>
    /// <param name="place">JSON Pointer to the part.</param>
    /// <param name="part">The part; nothing is wrong with one that is left out.</param>
    internal static IEnumerable<InputRefusal> Broken(string place, object? part) =>
        part is null ? [] : Bounds.Broken(part).Select(broken => Broken($"{place}/{JsonNamingPolicy.CamelCase.ConvertName(broken.Member.Member.Name)}", broken.Member.Bound, broken.Value));

    /// <summary>A value outside its bound.</summary>
    /// <param name="jsonPointer">JSON Pointer to the input.</param>
    internal static InputRefusal Broken(string jsonPointer, BoundAttribute bound, double value) =>
        OutOfRange(jsonPointer, value, bound.Least, bound.Most, bound.Unit, Words.Small(bound.Reason)) with { MeasureInstead = bound is MeasuredAttribute { Id: { } id } ? [id] : null };
}

/// <summary>Either an answer or the reasons for a refusal, never both.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Answer">The answer, or null when refused.</param>
/// <param name="Refusals">Why refused; empty when answered.</param>
public sealed record AnswerOrRefusals<T>(T? Answer, IReadOnlyList<InputRefusal> Refusals)
    where T : class;

/// <summary>Lengths completed, or the reasons why they cannot be.</summary>
/// <param name="Lengths">The lengths; null when they clash.</param>
/// <param name="Conflicts">What clashes; empty when nothing does.</param>
internal sealed record LengthsResult(PaddleLengths? Lengths, IReadOnlyList<LengthConflict> Conflicts);

/// <summary>Given lengths that cannot all hold.</summary>
/// <param name="Fields">The lengths that clash, by their names in <see cref="LengthFields"/>.</param>
/// <param name="FollowsMm">What the length that follows from them would be, mm.</param>
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
