using System.Globalization;
using System.Xml.Linq;

namespace Paddle.Drawings.Tests.Support;

/// <summary>Reads paths out of an SVG with its own Bézier evaluation, apart from the code under test.</summary>
internal static class SvgReader
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public readonly record struct Cubic((double X, double Y) A, (double X, double Y) B, (double X, double Y) C, (double X, double Y) D);

    public static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    public static XElement ById(XDocument document, string id) =>
        document.Descendants().Single(element => (string?)element.Attribute("id") == id);

    /// <summary>All curves of a path of absolute M, C, L and Z.</summary>
    public static List<Cubic> Curves(string data)
    {
        var curves = new List<Cubic>();
        var tokens = data.Replace("M", " M ").Replace("C", " C ").Replace("L", " L ").Replace("Z", " Z ")
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        (double X, double Y) at = default;
        for (var i = 0; i < tokens.Length;)
        {
            (double X, double Y) Pair(int k) => (Number(tokens[i + k]), Number(tokens[i + k + 1]));
            switch (tokens[i])
            {
                case "M" or "L":
                    at = Pair(1);
                    i += 3;
                    break;
                case "C":
                    curves.Add(new(at, Pair(1), Pair(3), Pair(5)));
                    at = Pair(5);
                    i += 7;
                    break;
                default:
                    i++;
                    break;
            }
        }

        return curves;
    }

    /// <summary>y of a curve at x by de Casteljau and bisection; the curve's x runs one way only.</summary>
    public static double YAt(Cubic curve, double x)
    {
        double low = 0, high = 1;
        var rising = curve.D.X > curve.A.X;
        for (var i = 0; i < 80; i++)
        {
            var s = (low + high) / 2;
            if (At(curve, s).X < x == rising) low = s;
            else high = s;
        }

        return At(curve, (low + high) / 2).Y;
    }

    public static (double X, double Y) At(Cubic c, double s)
    {
        (double X, double Y) Mix((double X, double Y) p, (double X, double Y) q) => (p.X + s * (q.X - p.X), p.Y + s * (q.Y - p.Y));
        var (ab, bc, cd) = (Mix(c.A, c.B), Mix(c.B, c.C), Mix(c.C, c.D));
        return Mix(Mix(ab, bc), Mix(bc, cd));
    }
}
