using Paddle.Drawings.Files;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings;

/// <summary>Every kind of file that a design can be had as. To add one: add an entry here; routes and links follow.</summary>
public static class DesignFiles
{
    /// <summary>All files, in the order in which a list shows them.</summary>
    public static IReadOnlyList<IDesignFile> All { get; } =
    [
        new SvgFile("overview.svg", "The design in one picture for a web page, light or dark: face, edge, sections and key figures.", "2",
            (report, context) => SvgWriter.Write(OverviewView.Draw(report, context), OverviewView.Style, scalable: true)),
        new SvgFile("outline.svg", "The face at true scale, with marks, stations and half-breadths.", "2", OutlineSvg.Write),
        new SvgFile("half-template.svg", "One half of the face at true scale, to trace and flip about the centre line.", "2",
            (report, context) => SvgWriter.Write(HalfTemplateView.Draw(report, context))),
        new SvgFile("elevation.svg", "The edge at true scale: thicknesses, edge lines, the grip's saw kerfs and the bend.", "2",
            (report, context) => SvgWriter.Write(ElevationView.Draw(report, context))),
        new SvgFile("sections.svg", "Cross-sections at true scale, with the lines for eight and sixteen sides.", "3",
            (report, context) => SvgWriter.Write(SectionCards.OneSheet(report, context))),
        new SvgFile("strength.svg", "Bending moment, strength used and bench flex along the paddle.", "3",
            (report, context) => SvgWriter.Write(StrengthView.Draw(report, context), StrengthView.Style)),
        new OffsetsCsv(),
        new TemplateDxf(),
        new TemplatesPdf(),
        new SolidStl(),
    ];

    /// <summary>The file with this name, or null. Names are compared exactly.</summary>
    /// <param name="fileName">Name, such as <c>outline.svg</c>.</param>
    public static IDesignFile? Find(string fileName) => All.FirstOrDefault(file => file.FileName == fileName);
}
