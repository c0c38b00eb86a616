using System.Globalization;
using System.Text;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Files;

/// <summary>Table of offsets as comma-separated values (RFC 4180): what a boatbuilder lays a shape out from.</summary>
/// <remarks>Stations are those of build sheet and template. Thicknesses in fractions are rounded up, so that no limit is crossed at the
/// bench. The last column says what a design misses, the whole of it in the first row and its headline in every other; it is empty for a
/// sound one. A comment before the header would be taken for the header by most readers.</remarks>
internal sealed class OffsetsCsv : IDesignFile
{
    public string FileName => "offsets.csv";
    public string MediaType => "text/csv";
    public string Description => "Table of offsets: half-breadth and thicknesses at stations, in millimetres and inch fractions.";
    public string Version => "2";
    public bool DependsOnPaper => false;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default)
    {
        var rows = new StringBuilder(
            "mark,station_mm,half_breadth_mm,centre_thickness_mm,edge_thickness_mm,station_in,half_breadth_in,centre_thickness_in,edge_thickness_in,notice\r\n");
        var stations = StationPlan.Of(report.Specification.Form, context.Units);
        var solid = SolidLook.At(report, [.. stations.Select(station => station.XMm)]);
        string whole = Quoted(OutcomeNotice.Whole(report, context.Units)), headline = Quoted(OutcomeNotice.Headline(report));
        for (var i = 0; i < stations.Count; i++)
        {
            double x = stations[i].XMm, half = solid.HalfWidth[i], centre = 2 * solid.HalfThickness[i], edge = 2 * solid.EdgeHalfThickness[i];
            rows.Append(stations[i].Mark).Append(',').AppendJoin(',', new[] { x, half, centre, edge }.Select(Millimetres))
                .Append(',').Append(DrawnLength.Figure(x, DrawingUnits.Inch))
                .Append(',').Append(DrawnLength.Figure(half, DrawingUnits.Inch))
                .Append(',').Append(DrawnLength.Figure(centre, DrawingUnits.Inch, LengthRounding.Up))
                .Append(',').Append(DrawnLength.Figure(edge, DrawingUnits.Inch, LengthRounding.Up))
                .Append(',').Append(i == 0 ? whole : headline).Append("\r\n");
        }

        output.Write(Encoding.UTF8.GetBytes(rows.ToString()));
    }

    private static string Millimetres(double mm) => Math.Round(mm, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);

    // Quotes within quotes are doubled (RFC 4180, 2.7).
    private static string Quoted(string text) => text.Length == 0 ? "" : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
