using System.Globalization;
using System.Text;

namespace Paddle.Drawings.Tests.Support;

/// <summary>A small reader of DXF group codes, apart from the code under test.</summary>
internal sealed class DxfReader
{
    public sealed record Entity(string Kind, string Layer, List<(double X, double Y)> Points, bool Closed, string Text);

    private readonly List<(int Code, string Value)> groups = [];

    public DxfReader(byte[] bytes)
    {
        Assert.All(bytes, b => Assert.True(b is >= 32 and < 127 or 13 or 10));
        var lines = Encoding.ASCII.GetString(bytes).Split("\r\n");
        Assert.Equal("", lines[^1]);
        for (var i = 0; i + 1 < lines.Length; i += 2) groups.Add((int.Parse(lines[i], CultureInfo.InvariantCulture), lines[i + 1]));
        Assert.Equal((0, "EOF"), groups[^1]);
    }

    public string Header(string variable)
    {
        var at = groups.FindIndex(group => group == (9, variable));
        return groups[at + 1].Value;
    }

    public (double X, double Y) HeaderPoint(string variable)
    {
        var at = groups.FindIndex(group => group == (9, variable));
        return (N(groups[at + 1].Value), N(groups[at + 2].Value));
    }

    public IReadOnlyList<string> Layers()
    {
        var names = new List<string>();
        for (var i = 0; i + 1 < groups.Count; i++)
        {
            if (groups[i] == (0, "LAYER") && groups[i + 1].Code == 2) names.Add(groups[i + 1].Value);
        }

        return names;
    }

    public List<Entity> Entities()
    {
        var entities = new List<Entity>();
        var start = groups.FindIndex(group => group == (2, "ENTITIES")) + 1;
        Entity? chain = null;
        for (var i = start; groups[i] != (0, "ENDSEC");)
        {
            Assert.Equal(0, groups[i].Code);
            var kind = groups[i].Value;
            var body = groups.Skip(i + 1).TakeWhile(group => group.Code != 0).ToList();
            string Find(int code) => body.FirstOrDefault(group => group.Code == code).Value ?? "";
            switch (kind)
            {
                case "POLYLINE":
                    Assert.Null(chain);
                    Assert.Equal("1", Find(66));
                    chain = new(kind, Find(8), [], Find(70) == "1", "");
                    break;
                case "VERTEX":
                    chain!.Points.Add((N(Find(10)), N(Find(20))));
                    break;
                case "SEQEND":
                    entities.Add(chain!);
                    chain = null;
                    break;
                case "TEXT":
                    entities.Add(new(kind, Find(8), [(N(Find(10)), N(Find(20)))], false, Find(1)));
                    break;
                default:
                    Assert.Fail($"Entity {kind} is not of release 12's safe set.");
                    break;
            }

            i += 1 + body.Count;
        }

        return entities;
    }

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
