using Paddle.Design.Boards;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Layout;

/// <summary>Says what stopped a paddle, and which board would do.</summary>
internal sealed class LayoutReasons(LayoutOrder order, DrawingUnits units)
{
    private const string NoSpecies = "no-board-of-species", Thickness = "thickness", Grain = "grain", Length = "length", Width = "width", Defects = "defects", NoRoom = "no-room-left";
    private const int MostReasons = 3;
    private static readonly string[] FromWorst = [NoSpecies, Thickness, Grain, Length, Width, Defects, NoRoom];

    /// <summary>What stops a paddle on a board, or null: all but defects and the room that others take.</summary>
    public static string? Stop(RackBoard board, LayoutPaddle paddle, double planingMm)
    {
        return board.Species != paddle.Species ? NoSpecies
            : board.ThicknessMm + BoardPacker.Hair < paddle.ThickestMm + planingMm ? Thickness
            : board.GrainSlope > paddle.SlopeOfGrain + BoardPacker.Hair ? Grain
            : board.LengthMm + BoardPacker.Hair < paddle.LengthMm ? Length
            : board.WidthMm + BoardPacker.Hair < 2 * paddle.HalfWidthMm ? Width
            : null;
    }

    /// <summary>The least thickness (mm) that would do for any paddle on a board of its wood, where every board is too thin for every paddle; else
    /// null.</summary>
    public static double? LeastThicknessMm(LayoutOrder order)
    {
        var pairs = order.Boards.SelectMany(board => order.Paddles.Where(paddle => paddle.Species == board.Species).Select(paddle => (board, paddle))).ToList();
        return pairs.Count > 0 && pairs.TrueForAll(pair => Stop(pair.board, pair.paddle, order.PlaningMm) == Thickness)
            ? pairs.Min(pair => pair.paddle.ThickestMm + order.PlaningMm) : null;
    }

    /// <summary>Tells of a paddle that found no place.</summary>
    /// <param name="fits">Whether a board with nothing else on it holds the paddle.</param>
    public UnplacedPaddle Of(LayoutPaddle paddle, int count, Func<int, bool> fits)
    {
        // The most promising board is the one on which the paddle came furthest, and of those the largest.
        var stops = order.Boards.Select((board, b) => (Board: board, Code: Stop(board, paddle, order.PlaningMm) ?? (fits(b) ? NoRoom : Defects)))
            .Where(stop => stop.Code != NoSpecies)
            .OrderByDescending(stop => Array.IndexOf(FromWorst, stop.Code)).ThenByDescending(stop => stop.Board.AreaM2)
            .Take(MostReasons)
            .Select(stop => new UnplacedReason(stop.Code, stop.Board.Id, Message(stop.Code, stop.Board, paddle)))
            .ToList();
        return new(paddle.Id, count, stops.Count > 0 ? stops : [new(NoSpecies, null, $"No board of {Wood(paddle).CommonName} is in the rack.")], Smallest(paddle));
    }

    private SmallestBoard Smallest(LayoutPaddle paddle)
    {
        var stock = BoardStock.Holding(paddle.ThickestMm + order.PlaningMm, Wood(paddle).IsSoftwood);
        return new(Tenths(paddle.LengthMm), Tenths(2 * paddle.HalfWidthMm), Tenths(paddle.ThickestMm + order.PlaningMm), paddle.Species, stock.Name);
    }

    // Up, but for what is stored a hair above itself: a strip of 100 mm asks for no board of 100.1.
    private static double Tenths(double mm) => Math.Ceiling(10 * (mm - BoardPacker.Hair)) / 10;

    private static WoodSpecies Wood(LayoutPaddle paddle) => WoodCatalogue.Find(paddle.Species)!;

    private string Message(string code, RackBoard board, LayoutPaddle paddle) => code switch
    {
        Thickness => $"Board {board.Id} is {Text(board.ThicknessMm)} thick; the thickest section is {Up(paddle.ThickestMm)} and {Shaving(order.PlaningMm)} is planed off, "
            + $"{Up(paddle.ThickestMm + order.PlaningMm)} in all. State wood.boardThicknessMm to have a paddle that this board holds.",
        Grain => $"The grain of board {board.Id} runs at 1 in {1 / board.GrainSlope:F0}; the design counts with 1 in {1 / paddle.SlopeOfGrain:F0}"
            + $" and would be weaker than computed. Make it with wood.slopeOfGrain {board.GrainSlope:F3}, or take straighter wood.",
        Length => $"Board {board.Id} is {Text(board.LengthMm)} long, the {Kind(paddle)} {Up(paddle.LengthMm)}.",
        Width => $"Board {board.Id} is {Text(board.WidthMm)} wide, the {Kind(paddle)} {Up(2 * paddle.HalfWidthMm)}.",
        Defects => $"Board {board.Id} is large enough, but a defect or sapwood lies inside the outline, or within {Shaving(LayoutShape.DefectMarginMm)} of grip, shaft and throat, wherever it is laid.",
        _ => $"Board {board.Id} would hold it alone; the other paddles take its room.",
    };

    private static string Kind(LayoutPaddle paddle) => paddle.IsStrip ? "strip" : "paddle";

    private string Text(double mm) => DrawnLength.Text(mm, units);

    private string Up(double mm) => DrawnLength.Text(mm, units, LengthRounding.Up);

    private string Shaving(double mm) => DrawnLength.Shaving(mm, units);
}
