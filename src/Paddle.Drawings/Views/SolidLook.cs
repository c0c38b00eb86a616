using Paddle.Design;
using Paddle.Design.Solid;

namespace Paddle.Drawings.Views;

/// <summary>Looks at a design's solid where a drawing needs it.</summary>
internal static class SolidLook
{
    /// <summary>The solid at given places in rising order, mm from the top of the grip.</summary>
    public static PaddleSolid At(DesignReport report, ReadOnlySpan<double> xsMm)
    {
        var form = report.Specification.Form;
        return PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Through(form.Lengths, xsMm));
    }

    /// <summary>x (mm) where the grip is thinnest, at the bottom of its hollow, to half a millimetre.</summary>
    public static double HollowMm(DesignReport report)
    {
        const double StepMm = 0.5;
        double from = GripProfile.CapEnd * report.Specification.Form.Places.GripEndMm, to = report.Specification.Form.Places.GripEndMm;
        double[] places = [.. Enumerable.Range(0, (int)((to - from) / StepMm) + 1).Select(k => from + k * StepMm)];
        var thickness = At(report, places).HalfThickness;
        return places[Array.IndexOf(thickness, thickness.Min())];
    }

    /// <summary>x (mm) of the grip's widest place.</summary>
    public static double GripCrestMm(DesignReport report)
    {
        var grip = report.Specification.Form.Grip;
        return Design.Outline.GripPattern.Of(grip.Style).CrestAt * grip.LengthMm;
    }
}
