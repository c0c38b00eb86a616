using Paddle.Design.Balance;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

/// <summary>A load case is one record: whatever it says reaches everything that looks at strength, for every case there is.</summary>
public class LoadCaseTests
{
    public static TheoryData<string> Ids => [.. TestPaddles.Loads().Cases.Select(loadCase => loadCase.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_case_is_reported_with_its_own_record(string id)
    {
        var loads = TestPaddles.Loads();
        var result = Check(loads).Cases.Single(found => found.Case.Id == id);
        Assert.Same(loads.Case(id), result.Case);
        Assert.NotEmpty(result.Case.Source);
        Assert.InRange(result.MaxStressMPa, 0.01, 200);
    }

    // Statics is linear but for a thrust's growth: twice the force is twice the stress of this case, and of no other.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Twice_the_force_is_twice_the_stress_of_that_case_alone(string id)
    {
        var loads = TestPaddles.Loads();
        var twice = With(loads, id, loadCase => loadCase with { ForceN = 2 * loadCase.ForceN, SideForceN = 2 * loadCase.SideForceN });
        foreach (var (once, doubled) in Check(loads).Cases.Zip(Check(twice).Cases))
        {
            if (once.Case.Id != id) Assert.Equal(once, doubled);
            else Assert.InRange(doubled.MaxStressMPa / once.MaxStressMPa, 2 - 1e-9, once.Case.ThrustN > 0 ? 3 : 2 + 1e-9);
        }
    }

    // The share of strength and the least factor of a case are those of its record.
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_least_factor_decides_the_margin_of_that_case_alone(string id)
    {
        var loads = TestPaddles.Loads();
        var stricter = With(loads, id, loadCase => loadCase with { LeastFactor = 2 * loadCase.LeastFactor });
        foreach (var (once, doubled) in Check(loads).Cases.Zip(Check(stricter).Cases))
            Assert.Equal(once.Case.Id == id ? once.Margin / 2 : once.Margin, doubled.Margin, 1e-12);
    }

    // The solver sees every case that bends along the grain: made severe enough to govern, it makes the paddle heavier.
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_solver_sees_every_case_along_the_grain(string id)
    {
        var loads = TestPaddles.Loads(leastFactor: 0.8);
        if (!loads.Case(id).BendsAlongTheGrain) return;
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var severe = With(loads, id, loadCase => loadCase with { LeastFactor = 0.9 * 0.8 * Check(loads).Cases.Single(c => c.Case.Id == id).SafetyFactor });
        double MassG(Loads asked) =>
            SizeChoice.For(TestPaddles.Asked(form, loads: asked, aims: Wide)).Mass.TotalG;
        Assert.True(MassG(With(severe, id, c => c with { LeastFactor = 2.2 * c.LeastFactor })) > MassG(severe) + 1, id);
    }

    // A case added to the list needs nothing else to be reported, drawn and designed for.
    [Fact]
    public void A_new_case_is_one_record()
    {
        var loads = TestPaddles.Loads();
        var pry = new LoadCase("pry-off", LoadAction.EvenPressure, 700, 1.5, "a case of this test's own");
        var more = loads with { Cases = [.. loads.Cases, pry] };
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var check = StrengthCheck.Of(solid, BladePressure.On(solid), more, TestPaddles.Ash);
        Assert.Same(pry, check.Cases[^1].Case);
        Assert.Same(pry, check.Governing.Case);
        Assert.Contains(StrengthCurves.Of(solid, check, more, TestPaddles.Ash).Cases, curve => curve.Case == pry);
        Assert.True(
            SizeChoice.For(TestPaddles.Asked(form, loads: more, aims: Wide)).Mass.TotalG
            > SizeChoice.For(TestPaddles.Asked(form, loads: loads, aims: Wide)).Mass.TotalG + 10);
    }

    private static Aims Wide { get; } = new(BalanceAim.LowerHand, 60, 1.5, null, null, null);

    private static Loads With(Loads loads, string id, Func<LoadCase, LoadCase> change) =>
        loads with { Cases = [.. loads.Cases.Select(loadCase => loadCase.Id == id ? change(loadCase) : loadCase)] };

    private static StrengthCheck Check(Loads loads)
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        return StrengthCheck.Of(solid, BladePressure.On(solid), loads, TestPaddles.Ash);
    }
}
