// An outfitter's program over the client that NSwag generates for System.Text.Json.
using System.Text;
using Paddle.Client;
using Paddle.Clients;

using var http = new HttpClient();
var service = new PaddleClient(http) { BaseUrl = args.FirstOrDefault() ?? "http://localhost:5080" };

DesignRequest Paddle(WoodRequestSpecies species) => new()
{
    Label = "Heron Lake hire fleet, size M",
    HandSpacingMm = 880,
    Blade = new() { Family = BladeRequestFamily.Ottertail, LengthMm = 650, WidthMm = 148 },
    Wood = new() { Species = species },
    Aims = new() { BalanceToleranceMm = 12 },
};

var design = await service.CreateDesignAsync(Paddle(WoodRequestSpecies.WhiteAsh));
Held.That(design.Outcome == "met" && Math.Abs(design.Balance.OffsetMm) <= 12, "the paddle balances within its tolerance");
Held.That(design.Design.Wood.Species == WoodRequestSpecies.WhiteAsh, "the design is of the wood asked for");
Held.That(design.Lengths.LowerHandMm - design.Lengths.TopHandMm == 880, "the hands lie as far apart as asked");

var opened = await service.GetDesignAsync(design.DesignCode);
Held.That(opened.Mass.TotalG == design.Mass.TotalG && opened.DesignCode == design.DesignCode, "the code opens to the same paddle");
Held.That((await service.GetDesignAsync(design.DesignCode, "mass")).Mass.TotalG == design.Mass.TotalG, "a slim answer has the member asked for");

var fitting = await service.CreateFittingAsync(new()
{
    Paddler = new() { HandSpacingMm = 880, StatureMm = 1740, BodyMassKg = 78 },
    Seat = new() { Posture = Posture.Kneeling, Place = SeatPlace.Stern },
    Water = new() { Kind = WaterKind.DeepLake },
});
var length = fitting.OverallLengthMm;
Held.That(length.Low <= length.Value && length.Value <= length.High, "the length suggested lies in its band");
Held.That((await service.CreateDesignAsync(fitting.Design)).Outcome == "met", "the paddle suggested can be made");

var run = await service.CreateSizeRunAsync(new() { Sizes = 3, FleetCount = 24, Population = new() { Men = 55, Women = 45 } });
Held.That(run.Sizes.Count == 3 && run.Sizes.Sum(size => size.Count) == 24, "three sizes share the fleet");

var comparison = await service.CompareDesignsAsync(new()
{
    Designs = [new() { Id = "ash", DesignCode = design.DesignCode }, new() { Id = "cherry", Design = Paddle(WoodRequestSpecies.BlackCherry) }],
});
Held.That(comparison.Figures.Single(figure => figure.Pointer == "/mass/finishedG").Values.First() == design.Mass.FinishedG, "the comparison tells the same mass");
var codes = string.Join('.', comparison.Designs.Select(one => one.DesignCode));
Held.That((await service.GetComparisonAsync(codes)).Figures.Count == comparison.Figures.Count, "the comparison opens by its codes");

Held.That((await service.ListWoodsAsync()).Woods.Any(wood => wood is { Id: "white-ash", Suitability: Suitability.Recommended or Suitability.Usable }), "ash is a wood for paddles");

using (var outline = await service.GetDesignOutlineAsync(design.DesignCode, Units.Metric))
    Held.StartsWith(await Held.BytesAsync(outline.Stream), "<svg ");
using (var templates = await service.GetDesignTemplatesAsync(design.DesignCode))
    Held.StartsWith(await Held.BytesAsync(templates.Stream), "%PDF-");
using var lines = new MemoryStream(Encoding.UTF8.GetBytes("{\"handSpacingMm\":880,\"wood\":{\"species\":\"white-ash\"}}\n{\"handSpacingMm\":88}\n"));
using (var batch = await service.DesignBatchAsync(lines))
{
    var answers = Encoding.UTF8.GetString(await Held.BytesAsync(batch.Stream));
    Held.That(answers.Contains("\"status\":200", StringComparison.Ordinal) && answers.Contains("\"status\":422", StringComparison.Ordinal), "a batch answers each line");
}

try
{
    var wrong = Paddle(WoodRequestSpecies.WhiteAsh);
    wrong.HandSpacingMm = 88;
    await service.CreateDesignAsync(wrong);
    Held.That(false, "a paddle for no hands is refused");
}
catch (ApiException<Problem> refusal)
{
    Held.That(refusal.StatusCode == 422 && refusal.Result.Type == "/problems/invalid-values", "the refusal is typed");
    var fault = refusal.Result.Errors!["/handSpacingMm"].Single();
    Held.That(fault.Code == "out-of-range" && fault.Unit == "mm" && 88 < fault.Min, "the refusal names the place and the range");
}

Console.WriteLine($"a design of {design.Mass.TotalG} g, a fitting, {run.Sizes.Count} sizes, a comparison, SVG, PDF and a refusal");
