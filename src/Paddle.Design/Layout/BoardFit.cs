using System.Globalization;
using System.Text.Json.Serialization;
using Paddle.Design.Laminating;
using Paddle.Design.Request;
using Paddle.Design.Units;

namespace Paddle.Design.Layout;

/// <summary>A board, and the paddles that are wished out of it.</summary>
public sealed record BoardFitRequest
{
    /// <summary>The board; required.</summary>
    public RackBoardRequest? Board { get; init; }
    /// <summary>The paddle wished for; its species, moisture aside, is that of the board, or of a glued-up paddle one of its strips' is; required.</summary>
    public DesignRequest? Design { get; init; }
    /// <summary>How many alike.</summary>
    [Bound(1, 8, "paddles", "Out of one board", Usual = 1)]
    public int? Count { get; init; }
    /// <summary>Width of the saw's cut, mm; 1.2 for a band saw and 1.5 for a jigsaw when null.</summary>
    [KerfBound]
    public double? KerfMm { get; init; }
    /// <summary>Least distance between two outlines, mm; the kerf and what the saw leaves outside both lines when null.</summary>
    [ClearanceBound]
    public double? ClearanceMm { get; init; }
    /// <summary>Wood planed off the board's thickness, both faces together, mm; 1 when null.</summary>
    [PlaningBound]
    public double? PlaningMm { get; init; }
    /// <summary>The saw that cuts the outlines: <c>band-saw</c> (when null) or <c>jigsaw</c>.</summary>
    public string? Saw { get; init; }
}

/// <summary>What the board changed.</summary>
/// <param name="JsonPointer">JSON Pointer into the design's request.</param>
/// <param name="Asked">What was asked, or would have been without the board.</param>
/// <param name="Allowed">What the board allows.</param>
/// <param name="Reason">Why.</param>
public sealed record BoardFitChange([property: JsonPropertyName("pointer")] string JsonPointer, double? Asked, double Allowed, string Reason);

/// <summary>The best paddle that a board allows.</summary>
/// <param name="Request">The request with what the board allows; null where it holds no paddle.</param>
/// <param name="Report">Its design.</param>
/// <param name="Layout">Where the paddles lie.</param>
/// <param name="Count">How many come out of it; may be fewer than wished.</param>
/// <param name="Changes">What the board changed.</param>
/// <param name="Reasons">Why it holds none, or fewer than wished.</param>
/// <param name="ToBuy">Strips of other woods, of a paddle that is glued up.</param>
internal sealed record BoardFit(
    DesignRequest? Request, DesignReport? Report, BoardLayout? Layout, int Count, IReadOnlyList<BoardFitChange> Changes, IReadOnlyList<string> Reasons,
    IReadOnlyList<StripToBuy> ToBuy)
{
    // Narrower than this share of what was asked it is another paddle; and a blade grows no longer than this to win back its area.
    private const double LeastWidthShare = 0.75, MostLengthShare = 1.12;
    private const double LengthStepMm = 20;
    private const double WidthStepMm = 0.5;

    /// <summary>Finds the paddle: the blade shortened where the board is short, narrowed until the paddles lie beside each other, and made
    /// longer again where the request leaves that open, to keep its area. Of a glued-up paddle it is the strips of the board's wood that are laid on
    /// it. Theory N6–N7.</summary>
    /// <param name="asked">A valid request for a design of the board's wood, or with strips of it.</param>
    /// <param name="order">Board, gap and planing; its paddles are not looked at.</param>
    public static BoardFit Find(DesignRequest asked, int count, LayoutOrder order, CancellationToken cancellation)
    {
        var reasons = new List<string>();
        for (var wished = count; wished > 0; wished--)
        {
            if (new Search(asked, wished, order, cancellation).Best(reasons) is { } best) return best with { Reasons = reasons };
            if (wished > 1) reasons.Add($"{wished} do not lie on this board, however narrow the blade.");
        }

        return new(null, null, null, 0, [], reasons, []);
    }

    private sealed class Search(DesignRequest asked, int count, LayoutOrder order, CancellationToken cancellation)
    {
        private readonly RackBoard board = order.Boards[0];
        private readonly bool isGluedUp = DesignDefaults.IsLaminated(asked);
        private LayoutOrder? last;

        public BoardFit? Best(List<string> reasons)
        {
            // The wood is the board's: its thickness, the slope of its grain. Wings alone may come out of a thinner board than the shaft.
            var isShafts = asked.Wood!.Species == board.Species;
            var faces = isGluedUp ? 2 * GlueUp.FacePlaningMm : 0;
            var wood = asked.Wood with
            {
                BoardThicknessMm = !isShafts ? asked.Wood.BoardThicknessMm : Math.Min(
                    asked.Wood.BoardThicknessMm ?? double.PositiveInfinity, board.ThicknessMm - order.PlaningMm - faces + 2 * PaddleSpecification.SurfacedFaceMm),
                SlopeOfGrain = Math.Max(asked.Wood.SlopeOfGrain ?? DesignDefaults.SlopeOfGrain, Math.Round(board.GrainSlope, 4)),
            };
            var whole = asked with { Wood = wood };
            var (request, isOwnTable) = (whole.Complete().Request, asked.Blade?.Offsets is not null);
            var units = DrawingRequest.Read(request.Drawing?.Units);
            var (length, width) = (request.Blade!.LengthMm!.Value, request.Blade.WidthMm!.Value);
            var trim = isGluedUp ? 2 * GlueUp.EndTrimMm + 1 - (asked.Construction!.TipPiece?.LengthMm ?? 0) : 0;
            var excess = isShafts ? Math.Max(0, request.OverallLengthMm!.Value + trim - board.LengthMm) : 0;
            if (isOwnTable) return Try(whole, null) is { } own ? Told(own, length, width) : Refuse("The board does not hold the table of offsets, which fixes the outline.");
            var shorter = length - Math.Ceiling(excess);
            if (shorter < Fitting.PaddleLengths.BladeLengthLimitsMm.Min)
                return Refuse($"The board is {DrawnLength.Rough(excess, units)} too short, which is more than the blade can give.");

            // As asked, or else as wide as the board lets it be; longer only where nobody fixed the length.
            if (Widest(request, whole, shorter, width) is not { } best) return Refuse(string.Create(CultureInfo.InvariantCulture, $"A blade of {100 * LeastWidthShare:0} % of the width asked for does not fit.{Stopped()}"));
            var isOpen = asked.OverallLengthMm is null && asked.Blade?.LengthMm is null && excess == 0;
            var most = Math.Min(isShafts ? board.LengthMm - trim - (request.OverallLengthMm!.Value - length) : double.PositiveInfinity, MostLengthShare * length);
            for (var longer = shorter + LengthStepMm; isOpen && longer <= most && best.Width * best.Length < width * length; longer += LengthStepMm)
            {
                if (Widest(request, whole, longer, Math.Min(width, width * length / longer)) is { } next && next.Width * next.Length > best.Width * best.Length) best = next;
            }

            return Told(best.Found, length, width);

            BoardFit? Refuse(string reason)
            {
                if (count == 1) reasons.Add(reason);
                return null;
            }

            // Which strip it was that the board does not give.
            string Stopped() => isGluedUp && last?.Paddles.FirstOrDefault(strip => LayoutReasons.Stop(board, strip, order.PlaningMm) is not null) is { } strip
                ? $" {new LayoutReasons(last, units).Of(strip, 1, _ => false).Reasons[0].Message}" : "";
        }

        private (Attempt Found, double Length, double Width)? Widest(DesignRequest completed, DesignRequest whole, double lengthMm, double mostMm)
        {
            var (asked, grip) = (completed.Blade!.WidthMm!.Value, completed.Grip!.WidthMm!.Value);
            Attempt? TryWidth(double widthMm)
            {
                var construction = isGluedUp ? FittedStrips.Narrowed(whole.Construction!, Math.Max(asked, grip) - Math.Max(widthMm, grip)) : whole.Construction;
                return isGluedUp && construction is null ? null : Try(
                    whole with
                    {
                        HandSpacingMm = completed.HandSpacingMm,
                        FreeboardMm = completed.FreeboardMm,
                        OverallLengthMm = null,
                        Blade = (whole.Blade ?? new()) with { LengthMm = lengthMm, WidthMm = widthMm },
                        Construction = construction,
                    },
                    widthMm);
            }

            if (TryWidth(mostMm) is { } asIs) return (asIs, lengthMm, mostMm);
            var (low, high) = (Math.Max(BladeRequest.LeastWidthMm, LeastWidthShare * mostMm), mostMm);
            if (TryWidth(low) is not { } best) return null;
            while (high - low > WidthStepMm)
            {
                var middle = Math.Round((low + high) / 2, 1);
                if (TryWidth(middle) is { } fits) (best, low) = (fits, middle);
                else high = middle;
            }

            return (best, lengthMm, low);
        }

        private Attempt? Try(DesignRequest request, double? widthMm)
        {
            cancellation.ThrowIfCancellationRequested();
            if ((!isGluedUp && widthMm > board.WidthMm) || DesignDefaults.Lengths(request).Lengths is null) return null;
            var report = PaddleDesigner.Design(request.Complete().Specification, cancellation);
            last = order with { Paddles = [.. LayoutPaddle.Pieces("paddle", report, count, false).Where(piece => piece.Species == board.Species)] };
            return BoardLayouter.OnOneBoard(last, cancellation) is { } solved ? new(request, report, last, solved) : null;
        }

        private BoardFit Told(Attempt found, double lengthMm, double widthMm)
        {
            var blade = found.Report.Specification.Form.Blade;
            var changes = new List<BoardFitChange>();
            void Change(string pointer, double? was, double now, string reason)
            {
                if (was is not { } before || Math.Abs(before - now) > 0.05) changes.Add(new(pointer, was, Math.Round(now, 4), reason));
            }

            if (found.Request.Wood!.BoardThicknessMm is { } thickness) Change("/wood/boardThicknessMm", asked.Wood!.BoardThicknessMm, thickness, "Every section stays within the board's thickness.");
            if (found.Request.Wood.SlopeOfGrain > (asked.Wood!.SlopeOfGrain ?? DesignDefaults.SlopeOfGrain))
                changes.Add(new("/wood/slopeOfGrain", asked.Wood.SlopeOfGrain, found.Request.Wood.SlopeOfGrain.Value, "The grain of this board: strength is reckoned with it."));
            Change("/blade/lengthMm", lengthMm, blade.LengthMm, blade.LengthMm < lengthMm
                ? "The board is no longer." : "Longer, so that the narrower blade keeps as much of its area as it can.");
            Change("/blade/widthMm", widthMm, blade.WidthMm, count == 1 ? "The board is no wider." : "Blade beside shaft, so many lie on the board.");
            if (found.Report.Laminate is { } glued)
                Change("/construction/strips", asked.Complete().Specification.Laminate!.WidthMm, glued.Laminate.WidthMm, "Width of the strips together: the outermost give way as the blade does.");
            return new(
                found.Request, found.Report, LayoutReport.Of(found.Order, found.Solved, found.Report.Specification.Units), count, changes, [],
                found.Report.Laminate is { GlueLines: var glueUp } ? FittedStrips.Others(glueUp, board.Species, count, order.PlaningMm) : []);
        }
    }

    private sealed record Attempt(DesignRequest Request, DesignReport Report, LayoutOrder Order, SolvedLayout Solved);
}
