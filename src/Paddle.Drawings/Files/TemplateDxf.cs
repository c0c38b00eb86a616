using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Files;

/// <summary>The shapes to cut as a CAD drawing in millimetres: face at the origin with its centre line on y = 0, half template below it,
/// sections below that, a square to check the scale.</summary>
internal sealed class TemplateDxf : IDesignFile
{
    private const double GapMm = 60;

    public string FileName => "template.dxf";
    public string MediaType => "image/vnd.dxf";
    public string Description => "Face, half template and sections for CAD or a cutter, on named layers, in millimetres.";
    public string Version => "2";
    public bool DependsOnPaper => false;
    public bool IsHeavy => true;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default) =>
        DxfWriter.Write(Draw(report, context), 0, 0, output);

    private static Sheet Draw(DesignReport report, DrawingContext context)
    {
        var (sketch, units) = (new Sketch(), context.Units);
        var form = report.Specification.Form;
        var places = form.Places;
        var half = Math.Max(form.Blade.HalfWidthMm, form.Grip.WidthMm / 2);
        sketch.Path(FacePaths.Whole(report.Outline, 0, 0), LineKind.Visible, Layer.Outline);
        sketch.Line(-10, 0, places.OverallMm + 10, 0, LineKind.Centre, Layer.Centre);
        foreach (var x in StationPlan.Even(form, units))
        {
            var breadth = report.Outline.HalfBreadthMm(x);
            sketch.Line(x, -breadth, x, breadth, LineKind.Fine, Layer.Stations);
            sketch.Text(DrawnLength.Figure(x, units), x + 1, 4, Lettering.Small, layer: Layer.Stations);
        }

        foreach (var mark in Landmarks.Of(report))
        {
            var breadth = report.Outline.HalfBreadthMm(mark.XMm) + 5;
            sketch.Line(mark.XMm, -breadth, mark.XMm, breadth, LineKind.Narrow, Layer.Marks);
            sketch.Text(mark.Text(units), mark.XMm + 1, breadth + 1, Lettering.Note, layer: Layer.Marks, turn: 90);
        }

        var halfTemplate = 2 * half + GapMm;
        sketch.Path(FacePaths.Half(report.Outline, 0, halfTemplate), LineKind.Visible, Layer.HalfTemplate);
        sketch.Path(
            SheetPath.Circle(SolidLook.GripCrestMm(report), halfTemplate - 0.55 * form.Grip.WidthMm / 2, HalfTemplateView.HoleRadiusMm),
            LineKind.Visible, Layer.HalfTemplate);

        var sections = SectionCards.OneSheet(report, context, places.OverallMm);
        sketch.Add(sections, 0, halfTemplate + GapMm / 2);
        CalibrationSquare.Draw(sketch, -CalibrationSquare.SideMm(units) - GapMm, 0, units);
        var label = DxfWriter.Ascii(context.Label);
        sketch.Text(context.Label, places.GripEndMm + 10, -half - 20, Lettering.FitHeightMm(label, Lettering.Title, places.OverallMm - places.GripEndMm));
        sketch.Text("UNITS: MM", places.GripEndMm + 10, -half - 8, Lettering.Figure);
        AddNotice(sketch, report, units, places.GripEndMm + 10, -half - 36, places.OverallMm - places.GripEndMm - 10);
        return sketch.Finish("template", context.Label, "", places.OverallMm, halfTemplate);
    }

    // Its foot stands on the given line, above the title.
    private static void AddNotice(Sketch sketch, DesignReport report, DrawingUnits units, double left, double foot, double width)
    {
        var notice = new Sketch();
        var tall = OutcomeNotice.Draw(notice, report, units, 0, 0, width, Lettering.Figure);
        sketch.Add(notice.Finish("notice", "", "", width, tall), left, foot - tall);
    }
}
