using System.Text;
using Paddle.Design;

namespace Paddle.Drawings.Files;

/// <summary>A drawing written as SVG.</summary>
internal sealed class SvgFile(string fileName, string description, string version, Func<DesignReport, DrawingContext, string> write) : IDesignFile
{
    public string FileName => fileName;
    public string MediaType => "image/svg+xml";
    public string Description => description;
    public string Version => version;
    public bool DependsOnPaper => false;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default) =>
        output.Write(Encoding.UTF8.GetBytes(write(report, context)));
}
