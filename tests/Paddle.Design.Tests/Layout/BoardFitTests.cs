using System.Globalization;
using System.Text.RegularExpressions;
using Paddle.Design.Laminating;
using Paddle.Design.Layout;
using Paddle.Design.Request;
using Paddle.Design.Units;
using static Paddle.Design.Tests.Layout.LayoutSamples;

namespace Paddle.Design.Tests.Layout;

public class BoardFitTests
{
    private static DesignRequest Wish(double handMm = 840) => new() { HandSpacingMm = handMm, Wood = new() { Species = "white-ash" } };

    private static BoardFit Find(RackBoard board, DesignRequest wish, int count) => BoardFit.Find(wish, count, Order([board], []), default);

    [Fact]
    public void A_large_board_changes_nothing()
    {
        var fit = Find(Board("board", 2000, 400) with { ThicknessMm = 44.4 }, Wish(), 2);
        Assert.Equal(2, fit.Count);
        Assert.Equal(["/wood/boardThicknessMm"], fit.Changes.Select(change => change.JsonPointer));
        Assert.Equal(PaddleDesigner.Design(Wish()).Sizes, fit.Report!.Sizes);
    }

    // 1 1/8 x 8 x 66 in: a board that many have.
    [Fact]
    public void A_pair_out_of_a_narrow_board_trades_width_for_length()
    {
        var board = Board("board", 66 * 25.4, 8 * 25.4) with { ThicknessMm = 28.6 };
        var fit = Find(board, Wish(), 2);
        Assert.Equal(2, fit.Count);
        var (asked, blade) = (PaddleDesigner.Design(Wish()).Specification.Form.Blade, fit.Report!.Specification.Form.Blade);
        Assert.True(blade.WidthMm < asked.WidthMm && blade.LengthMm > asked.LengthMm);
        Assert.InRange(fit.Layout!.Boards[0].UsedWidthMm, board.WidthMm - 2, board.WidthMm);
        Assert.True(2 * fit.Report.Stations.HalfThickness.Max() <= 28.6 - 1 + 1e-9);
        Assert.True(fit.Report.Outcome.IsMet);
        AssertSound(Order([board], [LayoutPaddle.Of("paddle", fit.Report, 2, false)]), fit.Layout);
    }

    [Fact]
    public void A_short_board_shortens_the_blade_and_keeps_the_hands_apart()
    {
        var fit = Find(Board("board", 1400, 300), Wish(), 1);
        Assert.Equal(1400, fit.Report!.Specification.Form.Places.OverallMm, 1.0);
        Assert.Equal(840, fit.Report.Specification.Form.Places.HandSpacingMm, 1e-6);
        Assert.Contains(fit.Changes, change => change.JsonPointer == "/blade/lengthMm" && change.Allowed < change.Asked);
    }

    [Fact]
    public void Fewer_come_out_of_a_board_than_wished_and_none_of_one_too_short()
    {
        var fewer = Find(Board("board", 1600, 200), Wish(), 3);
        Assert.InRange(fewer.Count, 1, 2);
        Assert.NotEmpty(fewer.Reasons);
        var none = Find(Board("board", 1100, 200), Wish(), 2);
        Assert.Equal(0, none.Count);
        Assert.Null(none.Report);
        Assert.Contains("too short", none.Reasons[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_grain_of_the_board_is_reckoned_with()
    {
        var fit = Find(Board("board", 1700, 300) with { GrainSlope = 0.06 }, Wish(), 1);
        Assert.Equal(0.06, fit.Report!.Specification.Wood.SlopeOfGrain, 6);
        Assert.Contains(fit.Changes, change => change.JsonPointer == "/wood/slopeOfGrain");
    }

    private static DesignRequest GluedUp(string wings, params double[] widthsMm) => Wish() with
    {
        Construction = new() { Kind = "laminated", Strips = [.. widthsMm.Select((width, k) => new StripRequest { Species = k == 0 ? "white-ash" : wings, WidthMm = width })] },
    };

    // 36 + 2 (8 + 52) mm: all strips of the board's wood, side by side with a cut between them, on a board that just holds them.
    [Fact]
    public void Strips_of_the_boards_wood_all_come_out_of_it()
    {
        var board = Board("board", 1700, 260);
        var fit = Find(board, GluedUp("white-ash", 36, 8, 52), 1);
        Assert.Equal(1, fit.Count);
        Assert.Empty(fit.ToBuy);
        Assert.Equal(fit.Report!.Laminate!.GlueLines.Strips.Sum(strip => strip.Count), fit.Layout!.Placements.Count);
        Assert.Empty(fit.Layout.Unplaced);
        AssertSound(Order([board], [.. LayoutPaddle.Pieces("paddle", fit.Report, 1, false)]), fit.Layout);
    }

    [Fact]
    public void Strips_of_another_wood_are_to_be_bought()
    {
        var fit = Find(Board("board", 1700, 60), GluedUp("western-redcedar", 36, 60), 1);
        Assert.Equal(1, fit.Count);
        Assert.Equal([1], fit.Layout!.Boards.Select(board => board.Paddles));
        // Two wings of the blade, and two ears of the grip no wider than its 64 mm ask: (64 - 36)/2 + 2.
        Assert.Equal([("western-redcedar", 2, 62.0), ("western-redcedar", 2, 16.0)], fit.ToBuy.Select(strip => (strip.Species, strip.Count, strip.WidthMm)));
        Assert.All(fit.ToBuy, strip => Assert.StartsWith("softwood", strip.Stock, StringComparison.Ordinal));
    }

    // The board gives the wings alone, thinner than the shaft; it is too narrow for both at 60 mm, so that blade and wings give way alike.
    [Fact]
    public void Wings_narrow_with_the_blade_until_the_board_gives_both()
    {
        var asked = GluedUp("western-redcedar", 36, 60) with { Blade = new() { LengthMm = 620, WidthMm = 156 } };
        var board = Board("board", 800, 112) with { Species = "western-redcedar", ThicknessMm = 24 };
        var fit = Find(board, asked, 1);
        Assert.Equal(1, fit.Count);
        var (blade, strips) = (fit.Report!.Specification.Form.Blade, fit.Report.Specification.Laminate!.Strips);
        Assert.Equal(36, strips[0].WidthMm);
        Assert.Equal((156 - blade.WidthMm) / 2, 60 - strips[1].WidthMm, 3);
        Assert.InRange(2 * (strips[1].WidthMm + 2) + GapMm, 112 - 2, 112);
        Assert.Contains(fit.Changes, change => change.JsonPointer == "/construction/strips");
        Assert.Contains(fit.ToBuy, strip => strip.Species == "white-ash");
    }

    // A strip of which less than 3 mm would remain is left to the one beside it.
    [Theory]
    [InlineData(true, 8, new double[] { 36, 30, 26 }, new double[] { 36, 30, 22 })]
    [InlineData(true, 50, new double[] { 36, 30, 26 }, new double[] { 36, 31 })]
    [InlineData(false, 20, new double[] { 12, 30, 36, 60 }, new double[] { 32, 36, 50 })]
    public void Outermost_strips_give_way(bool isMirrored, double lostMm, double[] before, double[] after)
    {
        var asked = new ConstructionRequest { IsMirrored = isMirrored, Strips = [.. before.Select(width => new StripRequest { WidthMm = width })] };
        Assert.Equal(after, FittedStrips.Narrowed(asked, lostMm)!.Strips!.Select(strip => strip.WidthMm!.Value));
    }

    // 3 mm are still a strip, 2.9 are left to the one beside it; both edges give half. Fewer than two strips are none.
    [Fact]
    public void A_rest_of_three_millimetres_stays_a_strip()
    {
        double?[]? After(bool isMirrored, double lostMm, params double[] before) => FittedStrips.Narrowed(
            new() { IsMirrored = isMirrored, Strips = [.. before.Select(width => new StripRequest { WidthMm = width })] }, lostMm)?.Strips!.Select(strip => strip.WidthMm).ToArray();
        Assert.Equal([36, 30, 3], After(true, 14, 36, 30, 10)!);
        Assert.Equal([36, 32.9], After(true, 14.2, 36, 30, 10)!);
        Assert.Equal([36, 30, 10], After(true, 0, 36, 30, 10)!);
        Assert.Equal([3, 36, 3], After(false, 14, 10, 36, 10)!);
        Assert.Null(After(true, 62, 36, 30));
        Assert.Null(After(false, 62, 30, 36));
    }

    // With 1 mm to plane 31.2 mm of softwood are more than the 31.75 mm of 1 1/2 in dressed (PS 20), and 32.8 mm of hardwood more than the 33.3 mm of 6/4; for three
    // paddles thrice as many.
    [Fact]
    public void What_is_to_be_bought_is_thick_enough_to_be_planed()
    {
        StripToCut Strip(string species, int count, double thicknessMm) => new(species, count, "blade", 60, 62, 65, 550, thicknessMm, 1000, 1500);
        Assert.Equal(
            [
                new("western-redcedar", 6, 62, 550, 32.2, "softwood nominal 2, surfaced"), new("sugar-maple", 3, 62, 550, 33.8, "hardwood 8/4 S2S"),
            ],
            FittedStrips.Others(new([Strip("white-ash", 1, 32), Strip("western-redcedar", 2, 31.2), Strip("sugar-maple", 1, 32.8)], 4, 700, 30, 90, 7, 100), "white-ash", 3, 1));
    }

    [Fact]
    public void A_board_too_thin_for_its_strips_says_which_is_too_thick()
    {
        var fit = Find(Board("board", 1700, 200) with { Species = "western-redcedar", ThicknessMm = 10 }, GluedUp("western-redcedar", 36, 60), 1);
        Assert.Equal(0, fit.Count);
        Assert.Contains("thick", fit.Reasons[^1], StringComparison.Ordinal);
    }

    // What is missing is the paddle's length less the board's; the service's own words, in the shop's units: sixteenths of an inch.
    [Theory]
    [InlineData(DrawingUnits.Metric)]
    [InlineData(DrawingUnits.Inch)]
    public void Why_a_board_holds_none_is_told_in_the_shops_units(DrawingUnits units)
    {
        var wish = Wish() with { Drawing = new() { Units = units == DrawingUnits.Inch ? "inch" : "metric" } };
        var missing = PaddleDesigner.Design(wish).Specification.Form.Places.OverallMm - 1100;
        var reasons = Find(Board("board", 1100, 200), wish, 2).Reasons;
        Assert.Equal(2, reasons.Count);
        Assert.Equal("2 do not lie on this board, however narrow the blade.", reasons[0]);
        var said = Regex.Match(reasons[1], "^The board is ([0-9 /]+) (mm|in) too short, which is more than the blade can give\\.$");
        Assert.Equal(units == DrawingUnits.Metric ? "mm" : "in", said.Groups[2].Value);
        var read = said.Groups[1].Value;
        Assert.Equal(missing, units == DrawingUnits.Metric ? double.Parse(read, CultureInfo.InvariantCulture) : InchRule.Read(read), 25.4 / 32);
    }

    [Fact]
    public void Why_a_narrow_board_holds_none_is_told()
    {
        Assert.Equal(["A blade of 75 % of the width asked for does not fit."], Find(Board("board", 1700, 90), Wish(), 1).Reasons);
        var table = Wish() with { Blade = new() { Offsets = [.. new (double X, double Half)[] { (0, 15), (150, 50), (300, 75), (450, 60), (600, 0) }.Select(place => new OffsetRequest { XMm = place.X, HalfBreadthMm = place.Half })] } };
        Assert.Equal(["The board does not hold the table of offsets, which fixes the outline."], Find(Board("board", 1700, 120), table, 1).Reasons);
    }

    // What a board of 33.3 mm leaves is told as the board that may be stated; of strips 1 mm more is planed off each face after gluing.
    [Fact]
    public void What_the_board_changed_is_told_with_its_reason()
    {
        var asked = PaddleDesigner.Design(Wish()).Specification.Form;
        BoardFitChange thickness = new("/wood/boardThicknessMm", null, 33.3, "Every section stays within the board's thickness.");
        Assert.Equal(
            [
                thickness, new("/wood/slopeOfGrain", null, 0.06, "The grain of this board: strength is reckoned with it."),
                new("/blade/lengthMm", asked.Blade.LengthMm, asked.Blade.LengthMm - Math.Ceiling(asked.Places.OverallMm - 1400.4), "The board is no longer."),
            ],
            Find(Board("board", 1400.4, 300) with { GrainSlope = 0.06 }, Wish(), 1).Changes);

        var narrow = Find(Board("board", 1700, 130), Wish(), 1);
        var blade = narrow.Report!.Specification.Form.Blade;
        Assert.Equal(
            [
                thickness,
                new("/blade/lengthMm", asked.Blade.LengthMm, blade.LengthMm, "Longer, so that the narrower blade keeps as much of its area as it can."),
                new("/blade/widthMm", asked.Blade.WidthMm, blade.WidthMm, "The board is no wider."),
            ],
            narrow.Changes);
        Assert.InRange(blade.WidthMm, 129.5, 130);
        Assert.Equal(0, (blade.LengthMm - asked.Blade.LengthMm) % 20, 9);
        Assert.InRange(blade.LengthMm, 1.12 * asked.Blade.LengthMm - 20, 1.12 * asked.Blade.LengthMm);

        // A strip is sawn 25 mm longer at both ends, and its length is told in whole millimetres.
        var glued = Find(Board("board", 1480, 260), GluedUp("white-ash", 36, 8, 52), 1);
        Assert.Equal(
            [
                thickness with { Allowed = 31.3 },
                new("/blade/lengthMm", asked.Blade.LengthMm, asked.Blade.LengthMm - Math.Ceiling(asked.Places.OverallMm + 51 - 1480), "The board is no longer."),
            ],
            glued.Changes);
    }
}
