using System.Globalization;
using System.Text;
using Paddle.Design;
using Paddle.Drawings.Units;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Files;

/// <summary>Table of offsets as comma-separated values (RFC 4180): what a boatbuilder lays a shape out from.</summary>
/// <remarks>
/// Stations every 50 mm, or 2 in, every 25 mm (1 in) near the throat and in the last 100 mm, and at the places a maker marks.
/// Spacing: common practice, no source. Thicknesses in fractions are rounded up, so that no limit is crossed at the bench.
/// </remarks>
internal sealed class OffsetsCsv : IDesignFile
{
    private const double CloseToTipMm = 100;
    private const double CloseToThroatMm = 60;

    public string FileName => "offsets.csv";

    public string MediaType => "text/csv";

    public string Description => "Table of offsets: half-breadth and thicknesses at stations, in millimetres and inch fractions.";

    public string Version => "1";

    public bool DependsOnPaper => false;

    public void Write(DesignReport report, DrawingContext context, Stream output)
    {
        var rows = new StringBuilder(
            "mark,station_mm,half_breadth_mm,centre_thickness_mm,edge_thickness_mm,station_in,half_breadth_in,centre_thickness_in,edge_thickness_in\r\n");
        var stations = Stations(report, context.Units);
        var solid = SolidLook.At(report, [.. stations.Select(station => station.XMm)]);
        for (var i = 0; i < stations.Count; i++)
        {
            double half = solid.HalfWidth[i], centre = 2 * solid.HalfThickness[i], edge = 2 * solid.EdgeHalfThickness[i];
            rows.Append(stations[i].Name).Append(',').AppendJoin(',', new[] { stations[i].XMm, half, centre, edge }.Select(Millimetres))
                .Append(',').Append(DrawnLength.Figure(stations[i].XMm, DrawingUnits.Inch))
                .Append(',').Append(DrawnLength.Figure(half, DrawingUnits.Inch))
                .Append(',').Append(DrawnLength.Figure(centre, DrawingUnits.Inch, LengthRounding.Up))
                .Append(',').Append(DrawnLength.Figure(edge, DrawingUnits.Inch, LengthRounding.Up)).Append("\r\n");
        }

        output.Write(Encoding.UTF8.GetBytes(rows.ToString()));
    }

    /// <summary>Stations with the names of those that are marks, in order.</summary>
    internal static IReadOnlyList<Landmark> Stations(DesignReport report, DrawingUnits units)
    {
        var places = report.Specification.Form.Places;
        var step = StationPlan.StepMm(units);
        var named = new List<Landmark> { new("grip top", 0) };
        named.AddRange(Landmarks.Of(report).Where(mark => mark.Name != "Balance").Select(mark => mark with { Name = mark.Name.ToLowerInvariant() }));
        named.Add(new("grip end", places.GripEndMm));
        named.Add(new("tip", places.OverallMm));
        var even = Enumerable.Range(1, (int)(places.OverallMm / step * 2)).Select(k => k * step / 2)
            .Where((x, i) => i % 2 == 1 || x > places.OverallMm - CloseToTipMm || Math.Abs(x - places.ThroatMm) < CloseToThroatMm)
            .Where(x => x < places.OverallMm - 0.5 && named.TrueForAll(mark => Math.Abs(mark.XMm - x) > 0.05))
            .Select(x => new Landmark("", x));
        return [.. named.Concat(even).OrderBy(station => station.XMm)];
    }

    private static string Millimetres(double mm) => Math.Round(mm, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
}
