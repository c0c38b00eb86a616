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

    /// <summary>x (mm) where the grip's hollow is deepest.</summary>
    public static double HollowMm(DesignReport report)
    {
        // HollowShare rises until 0.55 of the grip and falls from 0.60: midway it is whole.
        const double Deepest = 0.575;
        return Deepest * report.Specification.Form.Places.GripEndMm;
    }

    /// <summary>x (mm) of the grip's widest place.</summary>
    public static double GripCrestMm(DesignReport report)
    {
        var grip = report.Specification.Form.Grip;
        return Design.Outline.GripPattern.Of(grip.Style).CrestAt * grip.LengthMm;
    }
}
