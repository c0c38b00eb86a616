using Paddle.Design.Build;

namespace Paddle.Design.Layout;

/// <summary>Which paddle comes out of which board.</summary>
/// <param name="Placements">Where each paddle lies.</param>
/// <param name="Unplaced">Paddles that no board holds, each with what stopped it.</param>
/// <param name="Boards">The boards that are cut.</param>
/// <param name="Totals">All boards that are cut, together.</param>
/// <param name="GapMm">Least distance that was kept between two outlines, mm.</param>
/// <param name="Notes">What the maker should know before sawing.</param>
public record BoardLayout(
    IReadOnlyList<PaddlePlacement> Placements,
    IReadOnlyList<UnplacedPaddle> Unplaced,
    IReadOnlyList<CutBoard> Boards,
    LayoutTotals Totals,
    double GapMm,
    IReadOnlyList<CodedNote> Notes);

/// <summary>
/// A paddle on a board. A point of it, x from the top of the grip and y from its centre line, lies at (xMm + x, yMm + y), or at
/// (xMm − x, yMm − y) where it is turned. An outline is its own mirror image: to mirror it changes nothing.
/// </summary>
/// <param name="PaddleId">Which paddle.</param>
/// <param name="Copy">Which of those alike, from 1.</param>
/// <param name="BoardId">Which board.</param>
/// <param name="BoardCopy">Which of those alike, from 1.</param>
/// <param name="XMm">Place of the top of its grip along the board, mm.</param>
/// <param name="YMm">Place of its centre line across the board, mm.</param>
/// <param name="RotatedDegrees">0, or 180 with the tip where X is least.</param>
public sealed record PaddlePlacement(
    string PaddleId, int Copy, string BoardId, int BoardCopy, double XMm, double YMm, int RotatedDegrees)
{
    /// <summary>What it is called on drawings and in sentences.</summary>
    internal string Name => FormattableString.Invariant($"{PaddleId} no. {Copy}");
}

/// <summary>Paddles that found no place.</summary>
/// <param name="PaddleId">Which.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Reasons">What stopped it, on the most promising board first.</param>
/// <param name="SmallestBoard">The smallest board that would hold one.</param>
public sealed record UnplacedPaddle(string PaddleId, int Count, IReadOnlyList<UnplacedReason> Reasons, SmallestBoard SmallestBoard);

/// <summary>What stopped a paddle on a board.</summary>
/// <param name="Code">Stable code: <c>no-board-of-species</c>, <c>thickness</c>, <c>grain</c>, <c>length</c>, <c>width</c>, <c>defects</c> or <c>no-room-left</c>.</param>
/// <param name="BoardId">The board, or null where no board is of its species.</param>
/// <param name="Message">The same in words.</param>
public sealed record UnplacedReason(string Code, string? BoardId, string Message);

/// <summary>A board for one paddle, without defects.</summary>
/// <param name="LengthMm">Length, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness before planing, mm.</param>
/// <param name="Species">Id of its wood.</param>
/// <param name="Stock">The thickness in the trade that gives it.</param>
public sealed record SmallestBoard(double LengthMm, double WidthMm, double ThicknessMm, string Species, string Stock);

/// <summary>A board that is cut.</summary>
/// <param name="BoardId">Which board.</param>
/// <param name="Copy">Which of those alike, from 1.</param>
/// <param name="Paddles">How many paddles come out of it.</param>
/// <param name="UsedWidthMm">Width that the outlines take together, mm.</param>
/// <param name="LeastGapMm">Least distance between two outlines as laid out, mm; null with one paddle.</param>
/// <param name="YieldPercent">Area of the outlines in that of the face, percent.</param>
/// <param name="ThickestMm">Thickest finished section that it gives, mm.</param>
/// <param name="ToPlaneMm">Wood to plane off both faces together down to that section, mm.</param>
/// <param name="Thickness">Its thickness in the words of the trade.</param>
/// <param name="HeadToTail">Pairs that lie head to tail, by their ids and copies.</param>
/// <param name="Cuts">What to saw, in order.</param>
/// <param name="Offcuts">Rectangles left over that are worth keeping.</param>
/// <param name="BoardFeet">Its measure in board feet.</param>
/// <param name="Cost">Its price, or null.</param>
public sealed record CutBoard(
    string BoardId,
    int Copy,
    int Paddles,
    double UsedWidthMm,
    double? LeastGapMm,
    double YieldPercent,
    double ThickestMm,
    double ToPlaneMm,
    string Thickness,
    IReadOnlyList<string> HeadToTail,
    IReadOnlyList<string> Cuts,
    IReadOnlyList<Offcut> Offcuts,
    double BoardFeet,
    double? Cost);

/// <summary>A rectangle of sound board left over.</summary>
/// <param name="XMm">Where it begins along the board, mm.</param>
/// <param name="YMm">Where it begins across the board, mm.</param>
/// <param name="LengthMm">Along the board, mm.</param>
/// <param name="WidthMm">Across the board, mm.</param>
public sealed record Offcut(double XMm, double YMm, double LengthMm, double WidthMm);

/// <summary>All boards that are cut, together.</summary>
/// <param name="Boards">How many boards.</param>
/// <param name="Paddles">How many paddles.</param>
/// <param name="BoardAreaM2">Area of their faces, m².</param>
/// <param name="YieldPercent">Area of the outlines in it, percent.</param>
/// <param name="BoardFeet">Their measure in board feet.</param>
/// <param name="WasteLitres">Wood of the boards that is in no finished paddle, L: off-cuts, planings and shavings.</param>
/// <param name="Cost">Their prices, or null where one has none.</param>
/// <param name="CostPerPaddle">The same by the paddle, or null.</param>
public sealed record LayoutTotals(
    int Boards, int Paddles, double BoardAreaM2, double YieldPercent, double BoardFeet, double WasteLitres, double? Cost, double? CostPerPaddle);
