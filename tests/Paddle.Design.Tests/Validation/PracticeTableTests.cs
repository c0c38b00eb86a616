using Paddle.Design.Checks;
using Paddle.Design.Outline;

namespace Paddle.Design.Tests.Validation;

/// <summary>Whoever knows paddles must find in the first answer a paddle that somebody carves.</summary>
public class PracticeTableTests
{
    [Fact]
    public void At_defaults_nothing_fails_and_every_aim_is_met() =>
        Assert.All(PracticeTable.Rows, row =>
        {
            Assert.True(row.Report.Outcome.IsMet, $"{row.Name}: {string.Join(" ", row.Report.Outcome.Unmet.Select(aim => aim.Message))}");
            Assert.DoesNotContain(row.Report.Checks, check => check.Status == CheckStatus.Fail);
        });

    // A warning on a default answer is a fault of the defaults, unless it is the wood that is doubtful.
    [Fact]
    public void At_defaults_nothing_warns_but_of_the_wood() => Assert.All(PracticeTable.Rows, row => Assert.DoesNotContain(
        row.Report.Checks, check => check.Status == CheckStatus.Warn && !check.Id.StartsWith("wood.", StringComparison.Ordinal)));

    [Fact]
    public void Nineteen_figures_in_twenty_are_what_makers_carve_and_the_rest_is_explained()
    {
        var all = PracticeTable.Rows.SelectMany(row => row.Figures.Select(figure => (Row: row, Figure: figure))).ToArray();
        var outside = all.Where(pair => !pair.Figure.IsInside).ToArray();
        Assert.True(outside.Length <= 0.05 * all.Length, $"{outside.Length} of {all.Length}");
        Assert.All(outside, pair => Assert.True(
            PracticeTable.Explanation(pair.Row, pair.Figure) is not null, $"{pair.Row.Name}: {pair.Figure.Name} {pair.Figure.Value}"));
    }

    // The trade has carried cherry shafts of 1 1/8 in for generations (a book on canoe paddles quoted on a carving blog); nobody trusts 23 mm.
    [Theory]
    [InlineData(28.6, false)]
    [InlineData(23, true)]
    public void A_cherry_shaft_of_1_1_8_in_holds_and_one_of_23_mm_does_not(double diameterMm, bool tooWeak)
    {
        var report = PracticeTable.Design(
            BladeFamilies.Find("ottertail")!, "black-cherry", pinned: new(ShaftWidthMm: diameterMm, ShaftThicknessMm: diameterMm));
        Assert.Equal(tooWeak, report.Outcome.IsTooWeak);
        if (tooWeak) Assert.Contains(report.Checks, check => check.Status == CheckStatus.Fail);
    }
}
