using MathNet.Numerics.Distributions;
using Paddle.Design.Copying;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Copying;

/// <summary>Paddles drawn at random, and what a person with a caliper reads off them.</summary>
internal static class CopySamples
{
    private static readonly double[] GripShares = [0.1, 0.2, 0.35, 0.55, 0.8], BladeShares = [0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.88, 0.93, 0.97];

    /// <summary>A design of the engine: any family or a maker's own table, any grip, wood and size.</summary>
    public static DesignReport Draw(Random random)
    {
        double Between(double low, double high) => low + random.NextDouble() * (high - low);
        var family = BladeFamilies.All[random.Next(BladeFamilies.All.Count)];
        var pattern = GripPattern.All[random.Next(GripPattern.All.Count)];
        double length = Math.Round(Between(family.UsualLengthMm.Min, family.UsualLengthMm.Max)), width = Math.Round(Between(family.UsualWidthMm.Min, family.UsualWidthMm.Max));
        var blade = new BladeRequest { Family = family.Id, LengthMm = length, WidthMm = width };
        var request = new DesignRequest
        {
            HandSpacingMm = Math.Round(Between(760, 960)),
            FreeboardMm = Math.Round(Between(25, 50)),
            Blade = blade,
            Grip = new()
            {
                Style = Names.Of(pattern.Style),
                WidthMm = Math.Round(pattern.WidthMm + Between(-6, 6)),
                LengthMm = Math.Round(pattern.LengthMm + Between(-8, 8)),
            },
            Wood = new() { Species = WoodCatalogue.All[random.Next(WoodCatalogue.All.Count)].Id },
        };
        var book = request.Complete().Specification.Wood;
        request = request with
        {
            Wood = request.Wood with
            {
                MeasuredDensityKgM3 = Math.Round(book.DensityKgM3 * Math.Exp(Normal.Sample(random, 0, 0.08))),
                MeasuredModulusMPa = Math.Round(book.ApparentModulusMPa * Math.Exp(Normal.Sample(random, 0, 0.15))),
            },
        };
        var report = PaddleDesigner.Design(request);
        return random.Next(5) > 0 ? report : PaddleDesigner.Design(request with { Blade = new() { Offsets = OwnTable(random, report) } });
    }

    // A family's curve with a wave of a maker's own, drawn as a table.
    private static List<OffsetRequest> OwnTable(Random random, DesignReport report)
    {
        double throat = report.Specification.Form.Places.ThroatMm, length = report.Specification.Form.Places.BladeMm;
        var (wave, phase) = (0.02 * random.NextDouble(), 6 * random.NextDouble());
        var table = new List<OffsetRequest>();
        for (var i = 1; i < 24; i++)
        {
            var t = 1 - Math.Pow(1 - i / 24.0, 1.5);
            table.Add(new() { XMm = Math.Round(t * length, 1), HalfBreadthMm = Math.Round(report.Outline.HalfBreadthMm(throat + t * length) * (1 + wave * t * Math.Sin(phase + 5 * t)), 1) });
        }

        table.Add(new() { XMm = length, HalfBreadthMm = 0 });
        return table;
    }

    /// <summary>Places where a person holds the caliper.</summary>
    public static double[] Places(DesignReport report)
    {
        var places = report.Specification.Form.Places;
        double grip = places.GripEndMm, throat = places.ThroatMm, blade = places.BladeMm;
        return
        [
            .. GripShares.Select(share => Math.Round(share * grip)), Math.Round(grip + 15), Math.Round((grip + places.LowerHandMm) / 2),
            Math.Round(places.LowerHandMm), Math.Round(throat - 5),
            .. BladeShares.Select(share => Math.Round(throat + share * blade)),
        ];
    }

    /// <summary>Readings without any error.</summary>
    public static CopyRequest Exact(DesignReport report, bool hasSpecies = true)
    {
        var specification = report.Specification;
        var (form, xs) = (specification.Form, Places(report));
        var solid = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Through(form.Lengths, xs));
        return new()
        {
            OverallLengthMm = form.Places.OverallMm,
            ThroatMm = form.Places.ThroatMm,
            Stations = [.. xs.Select((x, i) => At(solid, i, x))],
            MassG = report.Finished.MassG,
            BalanceMm = report.Finished.CentreOfMassMm,
            BenchFlex = new() { DeflectionMm = report.Flex.BenchFlexMm },
            TapHz = report.Flex.FirstFrequencyHz,
            Species = hasSpecies ? specification.Wood.Species : null,
            LowerHandMm = form.Places.LowerHandMm,
        };
    }

    private static CopyStationRequest At(PaddleSolid solid, int i, double x) => new()
    {
        XMm = x,
        WidthMm = 2 * solid.HalfWidth[i],
        ThicknessMm = 2 * solid.HalfThickness[i],
        EdgeThicknessMm = x > solid.Form.Places.ThroatMm + 0.2 * solid.Form.Places.BladeMm ? 2 * solid.EdgeHalfThickness[i] : null,
    };

    /// <summary>Readings as a person takes them: each with the usual error, stations a little off their places, rounded to what the tool shows.</summary>
    public static CopyRequest Read(DesignReport report, Random random, bool hasSpecies = true)
    {
        var exact = Exact(report, hasSpecies);
        var form = report.Specification.Form;
        double Off(double value, double error, int decimals = 1) => Math.Round(value + Normal.Sample(random, 0, error), decimals);
        double[] xs = [.. Places(report).Select(x => x + Normal.Sample(random, 0, CopyReadings.PlaceMm))];
        var solid = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Through(form.Lengths, xs));
        return exact with
        {
            OverallLengthMm = Off(exact.OverallLengthMm!.Value, CopyReadings.LengthMm),
            ThroatMm = Off(exact.ThroatMm!.Value, CopyReadings.LengthMm),
            Stations =
            [
                .. exact.Stations!.Select((station, i) => At(solid, i, station.XMm!.Value)).Select(station => station with
                {
                    WidthMm = Off(station.WidthMm!.Value, CopyReadings.CaliperMm),
                    ThicknessMm = Off(station.ThicknessMm!.Value, CopyReadings.CaliperMm),
                    EdgeThicknessMm = station.EdgeThicknessMm is { } edge ? Off(edge, CopyReadings.CaliperMm) : null,
                }),
            ],
            MassG = Off(exact.MassG!.Value, CopyReadings.MassG),
            BalanceMm = Off(exact.BalanceMm!.Value, CopyReadings.BalanceMm),
            BenchFlex = new() { DeflectionMm = Off(exact.BenchFlex!.DeflectionMm!.Value, CopyReadings.FlexMm) },
            TapHz = Off(exact.TapHz!.Value, CopyReadings.TapPercent / 100 * exact.TapHz.Value, 2),
        };
    }
}
