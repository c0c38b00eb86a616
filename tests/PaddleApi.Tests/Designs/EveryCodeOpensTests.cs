using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Validation.Designs;
using Xunit.Abstractions;

namespace PaddleApi.Tests.Designs;

/// <summary>
/// Whatever a valid request asks for, the code of its answer must open again as the very same paddle: a template in a mail is nothing worth
/// when its address answers 400. The requests lie at the ends of what is valid: thin boards, small and long paddles, deep hollows, odd pins.
/// </summary>
public sealed class EveryCodeOpensTests(ITestOutputHelper output)
{
    private const int Seed = 20_261_127, MostShown = 12;

    // Longer runs by hand: CODES_COUNT=100000 dotnet test tests/PaddleApi.Tests --filter EveryCodeOpens
    private static readonly int Count =
        Environment.GetEnvironmentVariable("CODES_COUNT") is { Length: > 0 } given ? int.Parse(given, System.Globalization.CultureInfo.InvariantCulture) : Sweep.Of(300, 2500);

    private static readonly DesignRequestValidator Rules = new();
    private static readonly string[] Woods = [.. WoodCatalogue.All.Select(wood => wood.Id)];
    private static readonly BladeFamily[] Families = [.. BladeFamilies.All];

    [Theory]
    [InlineData("""{"handSpacingMm":880,"wood":{"species":"western-redcedar","boardThicknessMm":20}}""")]
    [InlineData("""{"handSpacingMm":880,"wood":{"species":"white-ash","boardThicknessMm":15}}""")]
    [InlineData("""{"handSpacingMm":583,"wood":{"species":"white-ash"},"drawing":{"units":"inch"}}""")]
    [InlineData("""{"handSpacingMm":880,"wood":{"species":"white-ash"},"grip":{"hollowDepthMm":5.03}}""")]
    [InlineData("""{"handSpacingMm":880,"wood":{"species":"white-ash"},"shaft":{"thicknessMm":25.1234567}}""")]
    public void What_could_not_be_opened_once_opens(string json) => Assert.Null(Fault(Requests.Read(json)));

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void Every_code_that_is_handed_out_opens_as_the_same_paddle()
    {
        var valid = 0;
        var faults = new List<string>();
        for (var number = 0; number < Count; number++)
        {
            var request = Hostile(new Random(unchecked(Seed * 397 ^ number * 486187739)));
            if (!Rules.Validate(request).IsValid) continue;
            valid++;
            if (Fault(request) is { } fault) faults.Add($"{number}: {fault}");
        }

        output.WriteLine($"{valid} of {Count} requests were valid.");
        Assert.True(faults.Count == 0, $"{faults.Count} of {valid}:\n{string.Join('\n', faults.Take(MostShown))}");
        Assert.True(valid > Count / 3, $"Only {valid} of {Count} requests were valid: the rest tried nothing.");
    }

    private static string? Fault(DesignRequest request)
    {
        var asked = System.Text.Json.JsonSerializer.Serialize(request, PaddleApi.Hosting.Json.StrictJson.Options);
        var made = DesignService.Compute(request);
        var (design, problem) = DesignService.Read(made.Code);
        if (problem is not null)
            return $"{string.Join("; ", problem.Errors?.Select(error => $"{error.Key} {string.Join(' ', error.Value.Select(f => $"{f.Value} {f.Min}..{f.Max} {f.Reason}"))}") ?? [problem.Detail])}: {asked}";
        var again = DesignService.Evaluate(design!, made.Code);
        return again.Report.Sizes != made.Report.Sizes ? $"{made.Report.Sizes} came back as {again.Report.Sizes}: {asked}"
            : DesignCodes.Encode(design!.Pin(again.Report.Sizes)) != made.Code ? $"its code changes when it is opened: {asked}"
            : null;
    }

    private static DesignRequest Hostile(Random random)
    {
        double? Maybe(int oneIn, double from, double to) => random.Next(oneIn) == 0 ? Amount(random, from, to) : null;
        double? Pin(int size, int oneIn) => Maybe(oneIn, SizeLimits.Pinned[size].Min, SizeLimits.Pinned[size].Max);
        string? Name(params string?[] names) => names[random.Next(names.Length)];
        var family = Families[random.Next(Families.Length)];
        var style = Name("pear", "palm", "t", null);
        var rarely = random.Next(3) == 0 ? 4 : 40; // most requests pin little, some a lot
        return new()
        {
            HandSpacingMm = Amount(random, 400, 1100),
            FreeboardMm = Maybe(4, 5, 60),
            Blade = random.Next(10) == 0
                ? Requests.Read(Requests.With($"/blade/offsets={Requests.Offsets}")).Blade
                : new()
                {
                    Family = family.Id,
                    LengthMm = Maybe(3, 400, 800),
                    WidthMm = Maybe(3, 70, 240),
                    WidestAt = Maybe(6, family.WidestAtLimits.Min, family.WidestAtLimits.Max),
                    Fullness = Maybe(6, family.FullnessLimits.Min, family.FullnessLimits.Max),
                    ThroatThicknessMm = Pin(4, rarely),
                    MiddleThicknessMm = Pin(5, rarely),
                    TipThicknessMm = Pin(6, rarely),
                    EdgeThicknessMm = Pin(7, rarely),
                },
            Shaft = new()
            {
                WidthMm = Pin(0, rarely),
                ThicknessMm = Pin(1, rarely),
                UpperWidthMm = Pin(2, rarely),
                UpperThicknessMm = Pin(3, rarely),
                BendDegrees = Maybe(4, 0, 15),
            },
            Grip = new() { Style = style, Faces = Name("matching", "one-sided", null), ThicknessMm = Pin(8, rarely), HollowDepthMm = Maybe(3, 0, 11) },
            Wood = new()
            {
                Species = Woods[random.Next(Woods.Length)],
                BoardThicknessMm = Maybe(2, 15, 40),
                MeasuredDensityKgM3 = Maybe(8, 200, 1100),
                MeasuredModulusMPa = Maybe(8, 3000, 25000),
                SlopeOfGrain = Maybe(6, 0, 0.1),
            },
            Aims = new() { BalanceToleranceMm = Maybe(6, 1, 100), MinimumSafetyFactor = Maybe(6, 0.8, 5), MaximumMassG = Maybe(6, 200, 2500), BalanceAt = Name("lower-hand", "throat", null) },
            Loads = new() { Duty = Name("touring", "expedition", "racing", null), BodyMassKg = Maybe(3, 12, 250) },
            Drawing = new() { Units = Name("metric", "inch", null) },
        };
    }

    // The ends themselves, whole numbers, and what a conversion from inches leaves behind the point.
    private static double Amount(Random random, double from, double to) => random.Next(6) switch
    {
        0 => from,
        1 => to,
        2 => Math.Clamp(Math.Round(from + (to - from) * random.NextDouble()), from, to),
        3 => Math.Clamp(Math.Round(from + (to - from) * random.NextDouble(), 1), from, to),
        _ => from + (to - from) * random.NextDouble(),
    };
}
