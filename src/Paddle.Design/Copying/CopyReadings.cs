using System.Globalization;
using Paddle.Design.Units;

namespace Paddle.Design.Copying;

/// <summary>What a reading is of.</summary>
internal enum ReadingKind
{
    Overall,
    Throat,
    Width,
    Thickness,
    Edge,
    Mass,
    Balance,
    Flex,
    Tap,
}

/// <summary>One reading.</summary>
/// <param name="JsonPointer">Where it stands in the request.</param>
/// <param name="Station">Number of its station; -1 where it has none.</param>
/// <param name="Error">Its standard error, in its own unit; that of its place not counted.</param>
internal sealed record Reading(ReadingKind Kind, string JsonPointer, int Station, double Value, double Error, string Unit)
{
    public bool IsWidth => Kind is ReadingKind.Overall or ReadingKind.Throat or ReadingKind.Width;

    /// <summary>What it is of, such as <c>the width 620 mm from the top</c>.</summary>
    public string Name(double xMm, DrawingUnits units)
    {
        var place = Station < 0 ? "" : $" {DrawnLength.Rough(xMm, units)} from the top";
        return Kind switch
        {
            ReadingKind.Overall => "the overall length",
            ReadingKind.Throat => "the place of the throat",
            ReadingKind.Width => "the width" + place,
            ReadingKind.Thickness => "the thickness" + place,
            ReadingKind.Edge => "the edge" + place,
            ReadingKind.Mass => "the weight",
            ReadingKind.Balance => "the balance point",
            ReadingKind.Flex => "the give on the bench",
            _ => "the note when tapped",
        };
    }

    /// <summary>A value of its kind in the shop's units.</summary>
    public string Show(double value, DrawingUnits units) => Kind switch
    {
        ReadingKind.Mass => DrawnAmount.Mass(value, units),
        ReadingKind.Tap => value.ToString("0.0", CultureInfo.InvariantCulture) + " Hz",
        ReadingKind.Overall or ReadingKind.Throat or ReadingKind.Balance => DrawnLength.Rough(value, units),
        _ => DrawnLength.Text(value, units),
    };
}

/// <summary>All readings of a paddle.</summary>
/// <param name="XsMm">Places of the stations, mm.</param>
internal sealed record CopyReadings(IReadOnlyList<Reading> All, double[] XsMm, double PlaceErrorMm)
{
    /// <summary>Standard errors when none are stated. A caliper in the hand on wood: common practice, no source.</summary>
    public const double LengthMm = 1, CaliperMm = 0.3, PlaceMm = 0.5, MassG = 2, BalanceMm = 2, FlexMm = 0.5, TapPercent = 2;

    public bool Has(ReadingKind kind) => All.Any(reading => reading.Kind == kind);

    /// <summary>Reads a valid request.</summary>
    public static CopyReadings Of(CopyRequest request)
    {
        var errors = request.ReadingErrors ?? new();
        var all = new List<Reading>();
        void Add(ReadingKind kind, string pointer, double? value, double error, string unit, int station = -1)
        {
            if (value is { } read) all.Add(new(kind, pointer, station, read, error, unit));
        }

        var length = errors.LengthMm ?? LengthMm;
        Add(ReadingKind.Overall, "/overallLengthMm", request.OverallLengthMm, length, "mm");
        Add(ReadingKind.Throat, "/throatMm", request.ThroatMm, length, "mm");
        var stations = request.Stations!;
        var caliper = errors.CaliperMm ?? CaliperMm;
        for (var i = 0; i < stations.Count; i++)
        {
            Add(ReadingKind.Width, $"/stations/{i}/widthMm", stations[i].WidthMm, caliper, "mm", i);
            Add(ReadingKind.Thickness, $"/stations/{i}/thicknessMm", stations[i].ThicknessMm, caliper, "mm", i);
            Add(ReadingKind.Edge, $"/stations/{i}/edgeThicknessMm", stations[i].EdgeThicknessMm, caliper, "mm", i);
        }

        Add(ReadingKind.Mass, "/massG", request.MassG, errors.MassG ?? MassG, "g");
        Add(ReadingKind.Balance, "/balanceMm", request.BalanceMm, errors.BalanceMm ?? BalanceMm, "mm");
        Add(ReadingKind.Flex, "/benchFlex/deflectionMm", request.BenchFlex?.DeflectionMm, errors.FlexMm ?? FlexMm, "mm");
        Add(ReadingKind.Tap, "/tapHz", request.TapHz, (errors.TapPercent ?? TapPercent) / 100 * (request.TapHz ?? 0), "Hz");
        return new(all, [.. stations.Select(station => station.XMm!.Value)], errors.PlaceMm ?? PlaceMm);
    }
}
