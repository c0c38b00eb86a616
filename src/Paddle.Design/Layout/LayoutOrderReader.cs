using Paddle.Design.Build;
using Paddle.Design.Units;

namespace Paddle.Design.Layout;

/// <summary>Reads a valid request for a layout.</summary>
internal static class LayoutOrderReader
{
    /// <summary>Kerfs of saws, mm: band saw with its set 1.2, jigsaw 1.5 (planning values of common practice, no source).</summary>
    public const double BandSawKerfMm = 1.2, JigsawKerfMm = 1.5;
    /// <summary>Planed off both faces together of a surfaced board when nothing is said, mm.</summary>
    public const double UsualPlaningMm = 2 * PaddleSpecification.SurfacedFaceMm;
    /// <summary>Longest time for the search when nothing is said, ms.</summary>
    public const int UsualTimeLimitMs = 2000;

    /// <summary>Names of the kinds of defect.</summary>
    public static IReadOnlyList<string> DefectKinds { get; } = ["circle", "rectangle", "polygon"];

    /// <summary>Reads a request.</summary>
    /// <param name="designs">The designs of its paddles, in their order.</param>
    /// <param name="isShopping">Whether its boards are what a shop offers, as many as are needed.</param>
    public static LayoutOrder Read(BoardLayoutRequest request, IReadOnlyList<DesignReport> designs, bool isShopping) => new(
        [.. request.Boards!.Select(board => Board(board, isShopping))],
        [.. request.Paddles!.SelectMany((paddle, k) => LayoutPaddle.Pieces(paddle.Id!, designs[k], paddle.Count ?? 1, paddle.Optional ?? false))],
        GapMm(request.Saw, request.KerfMm, request.ClearanceMm),
        request.PlaningMm ?? UsualPlaningMm,
        TimeSpan.FromMilliseconds(request.TimeLimitMs ?? UsualTimeLimitMs),
        isShopping);

    /// <summary>Reads the board of a request for a fit; its paddles are still to be found.</summary>
    public static LayoutOrder Read(BoardFitRequest request) => new(
        [Board(request.Board!, isShopping: false) with { Count = 1 }], [], GapMm(request.Saw, request.KerfMm, request.ClearanceMm), request.PlaningMm ?? UsualPlaningMm,
        TimeSpan.FromMilliseconds(UsualTimeLimitMs), IsByPrice: false);

    /// <summary>Units that the answer is written in.</summary>
    public static DrawingUnits Units(BoardLayoutRequest request) => DrawingRequest.Read(request.Drawing?.Units);

    /// <summary>Reads a board.</summary>
    public static RackBoard Board(RackBoardRequest board, bool isShopping) => new(
        board.Id!, board.LengthMm!.Value, board.WidthMm!.Value, board.ThicknessMm!.Value, board.Species!, board.Count ?? (isShopping ? null : 1), board.PriceEach,
        Math.Tan((board.GrainDegrees ?? 0) * Math.PI / 180), [.. Defects(board)]);

    /// <summary>Kept between two outlines: the kerf, and what the saw leaves outside both lines to be cleared later, mm.</summary>
    public static double GapMm(OutlineSaw saw) => KerfMm(saw) + 2 * StageAllowance.SawMm(saw);

    private static double GapMm(string? sawName, double? kerfMm, double? clearanceMm)
    {
        var saw = sawName is { } name ? Names.Find<OutlineSaw>(name)!.Value : OutlineSaw.BandSaw;
        var kerf = kerfMm ?? KerfMm(saw);
        return Math.Max(kerf, clearanceMm ?? kerf + 2 * StageAllowance.SawMm(saw));
    }

    private static double KerfMm(OutlineSaw saw) => saw == OutlineSaw.Jigsaw ? JigsawKerfMm : BandSawKerfMm;

    private static IEnumerable<DefectSpan> Defects(RackBoardRequest board)
    {
        var (length, width) = (board.LengthMm!.Value, board.WidthMm!.Value);
        if (board.SapwoodNearMm is > 0 and var near) yield return DefectSpan.Rectangle(0, -1, length, near + 1);
        if (board.SapwoodFarMm is > 0 and var far) yield return DefectSpan.Rectangle(0, width - far, length, far + 1);
        foreach (var defect in board.Defects ?? [])
        {
            yield return defect.Kind switch
            {
                "circle" => DefectSpan.Circle(defect.XMm!.Value, defect.YMm!.Value, defect.RadiusMm!.Value),
                "rectangle" => DefectSpan.Rectangle(defect.XMm!.Value, defect.YMm!.Value, defect.LengthMm!.Value, defect.WidthMm!.Value),
                _ => DefectSpan.Polygon([.. defect.Points!.Select(point => (point.XMm!.Value, point.YMm!.Value))]),
            };
        }
    }
}
