using System.Text.RegularExpressions;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Strength;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Fitting;

/// <summary>People of 1.00 to 2.10 m and 18 to 160 kg, drawn at random and swept in fine steps: what must hold for everybody.</summary>
public sealed partial class FittingSweepTests
{
    private const int People = 2_000;

    // Words that stand in the contract but not in speech: names joined by a hyphen and names that end in a unit.
    private static readonly string[] InternalNames =
        [.. BladeFamilies.All.Select(family => family.Id).Where(id => id.Contains('-', StringComparison.Ordinal)), "service-geometry", "bar-on-head-rule", "black-cherry", "white-ash", "sitka-spruce", "deep-lake", "fast-water"];

    private static FittingAdvice Advice(FittingRequest request) => FittingAdvisor.Advise(request).Answer!;

    [Fact]
    public void Whoever_comes_gets_a_sound_answer_or_a_clear_refusal()
    {
        var random = new Random(20270311);
        int answered = 0, news = 0;
        for (var i = 0; i < People; i++)
        {
            var request = Draw(random, absurd: i % 7 == 0);
            var outcome = FittingAdvisor.Advise(request);
            if (outcome.Answer is not { } advice)
            {
                Assert.NotEmpty(outcome.Refusals);
                Assert.All(outcome.Refusals, r => Assert.True(r.JsonPointer.StartsWith('/') && r.Message.Length > 10 && CodeForm().IsMatch(r.Code)));
                continue;
            }

            answered++;
            news += advice.LengthRules.Flagged ? 1 : 0;
            AssertSound(request, advice);
            if (i % 50 == 0) Assert.Equivalent(outcome, FittingAdvisor.Advise(request), strict: true);
        }

        Assert.InRange(answered, People / 2, People);

        // Two standard errors: about one in twenty by chance, some more where absurd bars and statures are drawn.
        Assert.InRange(news, 1, answered / 8);
    }

    private static void AssertSound(FittingRequest request, FittingAdvice a)
    {
        AssertDesign(a, a.Suggested);
        Assert.Equal(a.Suggested.OverallLengthMm, a.OverallLengthMm.Value);
        Assert.True(a.OverallLengthMm.Low < a.OverallLengthMm.Value && a.OverallLengthMm.Value < a.OverallLengthMm.High);
        Assert.Equal(2, a.Others.Count);
        Assert.Equal(3, a.Others.Select(x => x.Design with { Label = "" }).Append(a.Suggested with { Label = "" }).Distinct().Count());
        Assert.All(a.Others, x => AssertDesign(a, x.Design));
        Assert.All(a.Methods, m => Assert.True(double.IsFinite(m.ValueMm) && double.IsFinite(m.StandardErrorMm) && m.StandardErrorMm > 0));
        Assert.Equal(2, a.Methods.Count(m => m.Role == "used"));
        Assert.InRange(a.FreeboardMm, 25, 50);
        Assert.InRange(a.Stroke.SlipMS.Min, 0, a.Stroke.SlipMS.Max);
        Assert.True(double.IsFinite(a.Stroke.SlipMS.Max));
        Assert.InRange(a.Stroke.FroudeEfficiency.Min, 0, a.Stroke.FroudeEfficiency.Max);
        Assert.InRange(a.Immersion.ImmersedShare, 0, 1);

        // No pull outlasts its cycle.
        Assert.True(a.Stroke.PullSeconds < 60 / a.Stroke.StrokesPerMinute);

        // Nobody who kneels is bent, or told of a seated stroke.
        if (request.Seat?.Posture != Posture.Sitting)
        {
            Assert.Equal(0, a.Suggested.BendDegrees);
            Assert.DoesNotContain(a.Reasons, r => r.Contains("seated stroke", StringComparison.Ordinal));
        }

        // A person's own mass where it was given, else one that goes with the person's size.
        var mass = a.Stroke.BodyMassKg;
        if (request.Paddler!.BodyMassKg is { } given) Assert.Equal(Math.Round(given, 1), mass);
        else Assert.Equal(Math.Round(BodyMass.FromStatureKg(PersonInFull.Of(request.Paddler).StatureMm), 1), mass);
        if (request.Outing?.Purpose != OutingPurpose.Race) Assert.NotEqual(Duty.Racing, a.Duty);

        AssertSentences(Sentences(a));
        AssertUnits(a, FittingAdvisor.Advise(request with { Drawing = new() { Units = Names.Of(DrawingUnits.Inch) } }).Answer!);
    }

    private static IEnumerable<string> Sentences(FittingAdvice a) => a.Reasons.Concat(a.Cautions.Select(c => c.Text)).Concat(a.Others.Select(x => x.Reason));

    // One system throughout, and figures as people say them; the trade's own name of a shaft stays beside its millimetres.
    private static void AssertUnits(FittingAdvice metric, FittingAdvice inch)
    {
        Assert.Equal(metric.Suggested, inch.Suggested with { Units = DrawingUnits.Metric });
        var (said, inInches) = (string.Join('\n', Sentences(metric)), string.Join('\n', Sentences(inch)));
        Assert.Equal(Sentences(metric).Count(), Sentences(inch).Count());
        Assert.Equal("", PrintedTenths().Match(said).Value);
        Assert.Equal("", Inches().Match(TradeName().Replace(said, "")).Value);
        Assert.Equal("", Millimetres().Match(inInches).Value);
        Assert.Matches(Inches(), inInches);
    }

    [GeneratedRegex(@"\d\.0 mm")]
    private static partial Regex PrintedTenths();

    [GeneratedRegex(@"\((1 1/8|7/8) in\)")]
    private static partial Regex TradeName();

    [GeneratedRegex(@"\d in\b|\d lb\b|in²")]
    private static partial Regex Inches();

    [GeneratedRegex(@"\bmm\b|cm²|millimetre")]
    private static partial Regex Millimetres();

    // No name of the contract in a sentence, the right articles, and each thing said once.
    private static void AssertSentences(IEnumerable<string> sentences)
    {
        var all = sentences.ToList();
        Assert.Equal(all.Count, all.Distinct().Count());
        Assert.All(all, text => Assert.True(char.IsUpper(text[0]) && text[^1] == '.', text));
        var text = string.Join('\n', all);
        Assert.DoesNotContain(InternalNames, name => text.Contains(name, StringComparison.Ordinal));
        Assert.Equal("", Stumble().Match(text).Value);
    }

    private static void AssertDesign(FittingAdvice a, SuggestedDesign d)
    {
        var f = BladeFamilies.Find(d.BladeFamily)!;
        Assert.InRange(d.HandSpacingMm, PaddleLengths.HandSpacingLimitsMm.Min, PaddleLengths.HandSpacingLimitsMm.Max);
        Assert.InRange(d.FreeboardMm, 0, 150);
        var beyondTheUsual = Math.Max(1, PersonSpacing(a) / Survey.HandSpacing.Men.Percentile95);
        Assert.InRange(d.BladeLengthMm, PaddleLengths.BladeLengthLimitsMm.Min, Math.Ceiling(beyondTheUsual * f.UsualLengthMm.Max));
        Assert.InRange(d.BladeWidthMm, 70, f.UsualWidthMm.Max);
        Assert.InRange(d.OverallLengthMm, PaddleLengths.OverallLimitsMm.Min, PaddleLengths.OverallLimitsMm.Max);
        var grip = GripPattern.Of(d.Grip.Style);
        Assert.InRange(d.Grip.WidthMm, grip.WidthLimitsMm.Min, grip.WidthLimitsMm.Max);
        Assert.InRange(d.Grip.LengthMm, grip.LengthLimitsMm.Min, grip.LengthLimitsMm.Max);
        Assert.InRange(d.BodyMassKg, 12, 160);
        Assert.Equal(a.Duty, d.Duty);
        Assert.InRange(d.Shaft.EquivalentDiameterMm, 22, 40);
        Assert.True((d.Shaft.UpperWidthMm ?? 18) is >= 18 and var upper && upper < d.Shaft.WidthMm && (d.Shaft.UpperThicknessMm ?? 0) < d.Shaft.ThicknessMm);
        Assert.True((d.Shaft.UpperWidthMm ?? 0) <= d.Grip.WidthMm);
        Assert.All([d.HandSpacingMm, d.FreeboardMm, d.BladeLengthMm, d.BladeWidthMm, d.Grip.WidthMm, d.Grip.LengthMm], x => Assert.Equal(Math.Round(x), x));
    }

    // The body's own spacing, before a bent shaft takes some off it.
    private static double PersonSpacing(FittingAdvice a) => a.Methods.First(m => m.Quantity == "handSpacingMm" && m.Role is "used" or "basis").ValueMm + (a.Suggested.BendDegrees > 0 ? 75 : 0);

    private static FittingRequest Draw(Random random, bool absurd)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        double? Maybe(double share, double low, double high) => random.NextDouble() < share ? Between(low, high) : null;
        T? Any<T>(double share) where T : struct, Enum => random.NextDouble() < share ? Enum.GetValues<T>()[random.Next(Enum.GetValues<T>().Length)] : null;
        var h = Between(1000, 2100);
        double scatter = absurd ? 400 : 45;
        var usual = BodyMass.FromStatureKg(h);
        var mass = absurd ? Maybe(0.6, 18, 160) : Maybe(0.6, Math.Max(18, 0.75 * usual), Math.Min(160, 1.7 * usual));
        var way = 1 + random.Next(7);
        double? Given(int bit, double value, double spread) => (way & bit) != 0 ? value + Between(-spread, spread) : null;
        return new FittingRequest
        {
            Paddler = new()
            {
                HandSpacingMm = Given(1, HandSpacingMethods.FromStatureLine.At(h), scatter),
                StatureMm = Given(2, h, 0),
                SittingHeightMm = Maybe(0.3, (0.535 * h) - (scatter / 2), (0.535 * h) + (scatter / 2)),
                ShoulderBreadthMm = Maybe(0.2, 0.2 * h, 0.26 * h),
                ArmSpanMm = Given(4, Survey.PooledLine(Survey.ArmSpanLines).At(h), scatter),
                HandLengthMm = Maybe(0.4, (0.11 * h) - (scatter / 5), (0.11 * h) + (scatter / 5)),
                HandBreadthMm = Maybe(0.4, (0.05 * h) - (scatter / 9), (0.05 * h) + (scatter / 9)),
                BodyMassKg = mass,
            },
            Seat = random.NextDouble() < 0.8 ? new SeatRequest { Posture = Any<Posture>(1)!.Value, HeightAboveWaterMm = Maybe(0.6, absurd ? -50 : 0, 350), Place = Any<SeatPlace>(1) } : null,
            Water = random.NextDouble() < 0.8 ? new WaterRequest { Kind = Any<WaterKind>(1), DepthMm = Maybe(0.5, absurd ? 50 : 100, 1500), TemperatureC = Maybe(0.4, 0, 30) } : null,
            Outing = random.NextDouble() < 0.8 ? new OutingRequest { HoursPerDay = Maybe(0.5, 0.5, 12), StrokesPerMinute = Maybe(0.6, 20, 110), Effort = Any<Effort>(1), Purpose = Any<OutingPurpose>(0.5) } : null,
            Preferences = random.NextDouble() < 0.8 ? new PreferencesRequest { SensitiveJoints = random.Next(2) == 0, StraighterWrist = random.Next(2) == 0, LightCarry = random.Next(2) == 0, BentShaft = random.Next(2) == 0 } : null,
            Label = random.Next(2) == 0 ? "Hire paddle" : null
        };
    }

    /// <summary>Every number of an answer, with the most that it may change in one step of a sweep.</summary>
    private static IEnumerable<(string Name, double Value, double MostStep)> Figures(FittingAdvice a)
    {
        yield return ("overall length", a.OverallLengthMm.Value, 5);
        yield return ("hand spacing", a.HandSpacingMm.Value, 3);
        yield return ("freeboard", a.FreeboardMm, 1);
        yield return ("blade length", a.Blade.LengthMm, 5);
        yield return ("blade width", a.Blade.WidthMm, 2.5);
        yield return ("blade area, cm²", a.Blade.AreaCm2, 12);
        yield return ("area wanted, cm²", a.Blade.TargetAreaCm2, 30);
        yield return ("shaft width", a.Shaft.WidthMm, 0.21);
        yield return ("shaft thickness", a.Shaft.ThicknessMm, 0.21);
        yield return ("grips hardest at", a.Shaft.GripsHardestAtMm, 0.21);
        yield return ("most comfortable at", a.Shaft.MostComfortableAtMm, 0.21);
        yield return ("grip width", a.Grip.WidthMm, 1);
        yield return ("grip length", a.Grip.LengthMm, 1);
        yield return ("depth needed", a.Immersion.NeededMm, 2);
        yield return ("share immersed", a.Immersion.ImmersedShare, 0.012);
        yield return ("body mass", a.Stroke.BodyMassKg, 1.05);
        foreach (var (name, value) in new[]
        {
            ("boat speed", a.Stroke.BoatSpeedMS), ("hull drag", a.Stroke.HullDragN), ("mean pull", a.Stroke.MeanPullN), ("pull seconds", a.Stroke.PullSeconds),
            ("slip, low", a.Stroke.SlipMS.Min), ("slip, high", a.Stroke.SlipMS.Max),
            ("efficiency, low", a.Stroke.FroudeEfficiency.Min), ("efficiency, high", a.Stroke.FroudeEfficiency.Max),
        })
            yield return (name, value, 0.045 * value);
    }

    public static TheoryData<string> Sweeps => ["stature", "stature and mass", "mass", "cadence", "depth", "hours", "hand spacing", "seat height"];

    // Fine steps through everything that is asked in numbers, for people and waters of many kinds: no figure jumps, and none turns round.
    [Theory]
    [MemberData(nameof(Sweeps))]
    public void No_figure_jumps_or_turns_round(string swept)
    {
        var (kneeling, sitting) = (new SeatRequest(), new SeatRequest { Posture = Posture.Sitting, Place = SeatPlace.Bow });
        foreach (var water in Enum.GetValues<WaterKind>())
        {
            foreach (var (seat, effort, bent) in new[] { (kneeling, Effort.Easy, false), (kneeling, Effort.Hard, false), (sitting, Effort.Steady, false), (sitting, Effort.Easy, true) })
                AssertSmooth(Answers(swept, water, seat, effort, bent).ToList(), $"{swept}, {water}, {seat.Posture}, {effort}, {bent}");
        }
    }

    private static IEnumerable<FittingAdvice> Answers(string swept, WaterKind water, SeatRequest seat, Effort effort, bool bent)
    {
        var person = new PaddlerRequest { StatureMm = 1720, BodyMassKg = 72 };
        var wishes = new PreferencesRequest { BentShaft = bent };
        FittingAdvice At(PaddlerRequest who, double? depth = null, double? hours = null, double? cadence = null, double? seatMm = null) =>
            Advice(new FittingRequest { Paddler = who, Seat = seat with { HeightAboveWaterMm = seatMm }, Water = new() { Kind = water, DepthMm = depth }, Outing = new() { HoursPerDay = hours, StrokesPerMinute = cadence, Effort = effort }, Preferences = wishes });
        static IEnumerable<double> Steps(double from, double to, double step) => Enumerable.Range(0, (int)Math.Round((to - from) / step) + 1).Select(i => from + i * step);
        return swept switch
        {
            "stature" => Steps(1000, 2100, 4).Select(h => At(new PaddlerRequest { StatureMm = h })),
            "stature and mass" => Steps(1450, 2100, 4).Select(h => At(new PaddlerRequest { StatureMm = h, BodyMassKg = 60 })),
            "mass" => Steps(33, 160, 0.5).Select(m => At(person with { BodyMassKg = m })),
            "cadence" => Steps(20, 110, 0.5).Select(f => At(person, cadence: f)),
            "depth" => Steps(100, 1200, 4).Select(d => At(person, depth: d)),
            "hours" => Steps(0.25, 18, 0.05).Select(t => At(person, hours: t)),
            "hand spacing" => Steps(500, 1100, 2).Select(s => At(new PaddlerRequest { HandSpacingMm = s })),
            _ => Steps(0, 400, 4).Select(z => At(person, seatMm: z)),
        };
    }

    private static void AssertSmooth(IReadOnlyList<FittingAdvice> answers, string about)
    {
        var rows = answers.Select(a => Figures(a).ToList()).ToList();
        for (var k = 0; k < rows[0].Count; k++)
        {
            var way = 0;
            for (var i = 1; i < rows.Count; i++)
            {
                var (name, value, most) = rows[i][k];
                var step = value - rows[i - 1][k].Value;
                if (Math.Abs(step) > most) Assert.Fail($"{about}: {name} jumps by {step} to {value} at step {i}");
                if (Math.Abs(step) < 1e-9) continue;
                if (way == -Math.Sign(step)) Assert.Fail($"{about}: {name} turns round at {value}, step {i}");
                way = Math.Sign(step);
            }
        }

        // The kind of paddle stays the same, and what is asked for counts.
        Assert.Single(answers.Select(a => (a.Suggested.BladeFamily, a.Suggested.BendDegrees, a.Suggested.Species, a.Duty)).Distinct());
        Assert.True(rows.Select(row => row.Sum(figure => figure.Value)).Distinct().Count() > 10, about);
    }

    // Effort comes in three steps; each asks for a little more, and none for another kind of paddle.
    [Fact]
    public void Effort_asks_for_a_little_more_and_not_for_another_paddle()
    {
        foreach (var cadence in new double?[] { null, 35, 49, 50, 70 })
        {
            var (easy, steady, hard) = (At(Effort.Easy), At(Effort.Steady), At(Effort.Hard));
            foreach (var (less, more) in new[] { (easy, steady), (steady, hard) })
            {
                Assert.True(more.Blade.TargetAreaCm2 >= less.Blade.TargetAreaCm2 * (1 - 1e-12));
                Assert.InRange(more.Blade.AreaCm2 / less.Blade.AreaCm2, 1 - 1e-12, 1.12);
                Assert.True(more.Stroke.MeanPullN > less.Stroke.MeanPullN);
                Assert.Equal(less.OverallLengthMm, more.OverallLengthMm);
                Assert.Equal(less.Suggested with { BladeWidthMm = 0 }, more.Suggested with { BladeWidthMm = 0 });
            }

            FittingAdvice At(Effort effort) => Advice(new FittingRequest { Paddler = new() { StatureMm = 1756, BodyMassKg = 75 }, Seat = new() { Posture = Posture.Sitting }, Outing = new() { StrokesPerMinute = cadence, Effort = effort } });
        }
    }

    [GeneratedRegex("^[a-z]+(-[a-z]+)+$")]
    private static partial Regex CodeForm();

    // NaN, a name with its unit, a wrong article (but "a one-sided"), a stray space or stop.
    [GeneratedRegex(@"NaN|(?<=[a-z0-9])(Mm|Kg|Cm2|MPa)\b|\b[Aa] (?!one)[aeiou]|\b[Aa]n [^aeiouh\W]|  |\.\.| ,| \.")]
    private static partial Regex Stumble();
}
