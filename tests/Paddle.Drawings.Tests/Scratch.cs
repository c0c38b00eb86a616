using Paddle.Design.Outline;
using Paddle.Drawings.Units;

namespace Paddle.Drawings.Tests;

public class Scratch
{
    [Fact]
    public void Dump()
    {
        var dir = Environment.GetEnvironmentVariable("PADDLE_DUMP");
        if (dir is null) return;
        foreach (var family in BladeFamilies.All)
        {
            foreach (var units in Enum.GetValues<DrawingUnits>())
            {
                var report = SampleDesigns.Of(family.Id, family.Id == "teardrop" ? 12 : 0, family.Id == "square-tip" ? GripStyle.T : family.Id == "sugar-island" ? GripStyle.Palm : GripStyle.Pear,
                    family.Id == "beavertail" ? GripFaces.OneSided : GripFaces.Matching);
                var context = new DrawingContext("Heron Lake hire paddle M", units, "0.1.0", "p1-abcdefghijklmnopqrstuvwxyz0123456789", units == DrawingUnits.Metric ? PaperSize.A4 : PaperSize.Letter);
                foreach (var file in DesignFiles.All)
                {
                    using var stream = File.Create(Path.Combine(dir, $"{family.Id}-{units}-{file.FileName}"));
                    file.Write(report, context, stream);
                }
            }
        }
    }
}
