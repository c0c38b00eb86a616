using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Tests.Support;

/// <summary>Boxes of lettering, to see that none leaves its sheet or runs into another.</summary>
internal static class TextLayout
{
    public static void AssertOnSheet(Sheet sheet)
    {
        foreach (var (text, box) in Boxes(sheet))
        {
            Assert.True(
                box.Left >= 0 && box.Top >= 0 && box.Right <= sheet.WidthMm && box.Bottom <= sheet.HeightMm,
                $"'{text}' leaves the sheet {sheet.Name}");
        }
    }

    public static void AssertApart(Sheet sheet)
    {
        var boxes = Boxes(sheet).ToArray();
        for (var i = 0; i < boxes.Length; i++)
        {
            for (var j = i + 1; j < boxes.Length; j++)
            {
                var (a, b) = (boxes[i].Box, boxes[j].Box);
                var apart = a.Right <= b.Left || b.Right <= a.Left || a.Bottom <= b.Top || b.Bottom <= a.Top;
                Assert.True(apart, $"'{boxes[i].Text}' runs into '{boxes[j].Text}' on {sheet.Name}");
            }
        }
    }

    private static IEnumerable<(string Text, (double Left, double Top, double Right, double Bottom) Box)> Boxes(Sheet sheet)
    {
        foreach (var item in sheet.Items.OfType<TextItem>().Where(item => item.Text.Length > 0))
        {
            // A usual face is a little narrower than the width that layout reserves.
            var width = 0.9 * Lettering.WidthMm(item.Text, item.HeightMm);
            var left = item.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
            var (sin, cos) = Math.SinCos(item.TurnDegrees * Math.PI / 180);
            var corners = new[] { (left, 0.0), (left + width, 0.0), (left, -item.HeightMm), (left + width, -item.HeightMm) }
                .Select(p => (X: item.At.X + p.Item1 * cos - p.Item2 * sin, Y: item.At.Y + p.Item1 * sin + p.Item2 * cos)).ToArray();
            yield return (item.Text, (corners.Min(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.X), corners.Max(p => p.Y)));
        }
    }
}
