// An outfitter's program over the client that Kiota generates.
using System.Text;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Http.HttpClientLibrary;
using Paddle.Client;
using Paddle.Client.Models;
using Paddle.Client.V1.Designs.Item.TemplatesPdf;
using Paddle.Clients;

using var adapter = new HttpClientRequestAdapter(new AnonymousAuthenticationProvider()) { BaseUrl = args.FirstOrDefault() ?? "http://localhost:5080" };
var service = new PaddleClient(adapter).V1;

DesignRequest Paddle(WoodRequest_species species) => new()
{
    Label = "Heron Lake hire fleet, size M",
    HandSpacingMm = 880,
    Blade = new() { Family = BladeRequest_family.Ottertail, LengthMm = 650, WidthMm = 148 },
    Wood = new() { Species = species },
    Aims = new() { BalanceToleranceMm = 12 },
};

var design = (await service.Designs.PostAsync(Paddle(WoodRequest_species.WhiteAsh)))!;
Held.That(design.Outcome == "met" && Math.Abs(design.Balance!.OffsetMm!.Value) <= 12, "the paddle balances within its tolerance");
Held.That(design.Design!.Wood!.Species == WoodRequest_species.WhiteAsh, "the design is of the wood asked for");
Held.That(design.Lengths!.LowerHandMm - design.Lengths.TopHandMm == 880, "the hands lie as far apart as asked");

var opened = (await service.Designs[design.DesignCode!].GetAsync())!;
Held.That(opened.Mass!.TotalG == design.Mass!.TotalG && opened.DesignCode == design.DesignCode, "the code opens to the same paddle");
var slim = (await service.Designs[design.DesignCode!].GetAsync(call => call.QueryParameters.Fields = "mass"))!;
Held.That(slim.Mass!.TotalG == design.Mass.TotalG && slim.Balance is null, "a slim answer has the member asked for alone");

var fitting = (await service.Fittings.PostAsync(new()
{
    Paddler = new() { HandSpacingMm = 880, StatureMm = 1740, BodyMassKg = 78 },
    Seat = new() { Posture = Posture.Kneeling, Place = SeatPlace.Stern },
    Water = new() { Kind = WaterKind.DeepLake },
}))!;
var length = fitting.OverallLengthMm!;
Held.That(length.Low <= length.Value && length.Value <= length.High, "the length suggested lies in its band");
Held.That((await service.Designs.PostAsync(fitting.Design!))!.Outcome == "met", "the paddle suggested can be made");

var run = (await service.SizeRuns.PostAsync(new() { Sizes = 3, FleetCount = 24, Population = new() { Men = 55, Women = 45 } }))!;
Held.That(run.Sizes!.Count == 3 && run.Sizes.Sum(size => size.Count) == 24, "three sizes share the fleet");

var comparison = (await service.Comparisons.PostAsync(new()
{
    Designs = [new() { Id = "ash", DesignCode = design.DesignCode }, new() { Id = "cherry", Design = Paddle(WoodRequest_species.BlackCherry) }],
}))!;
Held.That(comparison.Figures!.Single(figure => figure.Pointer == "/mass/finishedG").Values![0] == design.Mass.FinishedG, "the comparison tells the same mass");
var codes = string.Join('.', comparison.Designs!.Select(one => one.DesignCode));
Held.That((await service.Comparisons[codes].GetAsync())!.Figures!.Count == comparison.Figures!.Count, "the comparison opens by its codes");

Held.StartsWith(await Held.BytesAsync(await service.Designs[design.DesignCode!].OutlineSvg.GetAsync()), "<svg ");
Held.StartsWith(
    await Held.BytesAsync(await service.Designs[design.DesignCode!].TemplatesPdf.GetAsync(call => call.QueryParameters.Paper = GetPaperQueryParameterType.Letter)), "%PDF-");
using var lines = new MemoryStream(Encoding.UTF8.GetBytes("{\"handSpacingMm\":880,\"wood\":{\"species\":\"white-ash\"}}\n{\"handSpacingMm\":88}\n"));
var answers = Encoding.UTF8.GetString(await Held.BytesAsync(await service.DesignBatches.PostAsync(lines)));
Held.That(answers.Contains("\"status\":200", StringComparison.Ordinal) && answers.Contains("\"status\":422", StringComparison.Ordinal), "a batch answers each line");

try
{
    var wrong = Paddle(WoodRequest_species.WhiteAsh);
    wrong.HandSpacingMm = 88;
    await service.Designs.PostAsync(wrong);
    Held.That(false, "a paddle for no hands is refused");
}
catch (Problem problem)
{
    Held.That(problem is { Type: "/problems/invalid-values", Status: 422, RequestId.Length: > 0 }, "the refusal is typed");
    Held.That(problem.Errors!.AdditionalData.ContainsKey("/handSpacingMm"), "the refusal names the place");
}

Console.WriteLine($"a design of {design.Mass.TotalG} g, a fitting, {run.Sizes.Count} sizes, a comparison, SVG, PDF and a refusal");
