using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Paddle.Drawings.Sheets;

/// <summary>A plain single-stroke alphabet, so that a printed template needs no font file and looks alike everywhere. Drawn for this
/// project on a grid ten units to the capital, seven to the small letter, three below the line.</summary>
/// <remarks>Proportions after ISO 3098 type B, from memory: stroke a tenth of the height, letters two tenths apart, words six. Each stroke
/// is <c>l</c> straight, <c>s</c> smooth or <c>o</c> smooth and closed; a smooth stroke is the quadratic B-spline of its points. Letters
/// outside it are drawn as an open box.</remarks>
internal static class StrokeAlphabet
{
    private const double Capital = 10;
    private const double Between = 2;
    private const double WordSpace = 6;
    private const string Bowl = "o 0,0 0,7 5.2,7 5.2,0";

    private static readonly FrozenDictionary<int, Glyph> Glyphs = new Dictionary<string, string>
    {
        ["A"] = "l 0,0 3.5,10 7,0|l 1.05,3 5.95,3",
        ["B"] = "l 0,0 0,10|s 0,10 3,10 6,10 6,5.4 3,5.4 0,5.4|s 0,5.4 3.5,5.4 6.6,5.4 6.6,0 3.5,0 0,0",
        ["C"] = "s 6.6,8 6,10 0,10 0,0 6,0 6.6,2",
        ["D"] = "l 0,0 0,10|s 0,10 3,10 6.8,10 6.8,0 3,0 0,0",
        ["E"] = "l 6,0 0,0 0,10 6,10|l 0,5.3 4.8,5.3",
        ["F"] = "l 0,0 0,10 5.6,10|l 0,5.3 4.6,5.3",
        ["G"] = "s 6.6,8 6,10 0,10 0,0 6.8,0 6.8,4.6|l 6.8,4.6 3.8,4.6",
        ["H"] = "l 0,0 0,10|l 6.8,0 6.8,10|l 0,5.3 6.8,5.3",
        ["I"] = "l 0,0 0,10",
        ["J"] = "s 0,1.6 0.4,0 4.6,0 4.6,4|l 4.6,4 4.6,10",
        ["K"] = "l 0,0 0,10|l 6.2,10 0,4.2|l 2.2,6.3 6.4,0",
        ["L"] = "l 0,10 0,0 5.6,0",
        ["M"] = "l 0,0 0,10 4,3 8,10 8,0",
        ["N"] = "l 0,0 0,10 6.8,0 6.8,10",
        ["O"] = "o 0,0 0,10 7.2,10 7.2,0",
        ["P"] = "l 0,0 0,10|s 0,10 3,10 6.2,10 6.2,4.8 3,4.8 0,4.8",
        ["Q"] = "o 0,0 0,10 7.2,10 7.2,0|l 4.4,2.6 7.2,-0.8",
        ["R"] = "l 0,0 0,10|s 0,10 3,10 6.2,10 6.2,4.8 3,4.8 0,4.8|l 3.2,4.8 6.4,0",
        ["S"] = "s 6,8.3 5.6,10 0.2,10 0.2,5.6 6.2,5 6.2,0 0.4,0 0,1.9",
        ["T"] = "l 0,10 6.4,10|l 3.2,10 3.2,0",
        ["U"] = "l 0,10 0,3.4|s 0,3.4 0,0 6.8,0 6.8,3.4|l 6.8,3.4 6.8,10",
        ["V"] = "l 0,10 3.5,0 7,10",
        ["W"] = "l 0,10 2.2,0 4.5,8 6.8,0 9,10",
        ["X"] = "l 0,0 6.6,10|l 0,10 6.6,0",
        ["Y"] = "l 0,10 3.3,5 6.6,10|l 3.3,5 3.3,0",
        ["Z"] = "l 0,10 6.4,10 0,0 6.4,0",
        ["a"] = Bowl + "|l 5.2,7 5.2,0",
        ["b"] = Bowl + "|l 0,10 0,0",
        ["c"] = "s 4.8,5.4 4.4,7 0,7 0,0 4.4,0 4.8,1.6",
        ["d"] = Bowl + "|l 5.2,10 5.2,0",
        ["e"] = "l 0.1,3.7 5.2,3.7|s 5.2,3.7 5.2,7 0,7 0,0 4.8,0 5.1,1.6",
        ["f"] = "s 3.6,9.9 1.4,10.4 1.4,7.6|l 1.4,7.6 1.4,0|l 0,6.6 3.4,6.6",
        ["g"] = Bowl + "|l 5.2,7 5.2,-0.5|s 5.2,-0.5 5.2,-3.2 0.6,-3.2 0.3,-1.8",
        ["h"] = "l 0,10 0,0|s 0,4.4 0,7 5,7 5,4.2|l 5,4.2 5,0",
        ["i"] = "l 0,7 0,0|l 0,9.4 0,9.9",
        ["j"] = "l 1.6,7 1.6,-1|s 1.6,-1 1.6,-3 0,-3|l 1.6,9.4 1.6,9.9",
        ["k"] = "l 0,10 0,0|l 4.6,7 0,2.8|l 1.7,4.4 4.8,0",
        ["l"] = "l 0,10 0,1.4|s 0,1.4 0,0 1.3,0",
        ["m"] = "l 0,7 0,0|s 0,4.6 0,7 4,7 4,4.6|l 4,4.6 4,0|s 4,4.6 4,7 8,7 8,4.6|l 8,4.6 8,0",
        ["n"] = "l 0,7 0,0|s 0,4.4 0,7 5,7 5,4.2|l 5,4.2 5,0",
        ["o"] = Bowl,
        ["p"] = Bowl + "|l 0,7 0,-3",
        ["q"] = Bowl + "|l 5.2,7 5.2,-3",
        ["r"] = "l 0,7 0,0|s 0,4.4 0,7 3.2,6.9",
        ["s"] = "s 4.2,5.7 3.8,7 0.1,7 0.1,3.9 4.4,3.6 4.4,0 0.4,0 0,1.4",
        ["t"] = "l 1.3,9.4 1.3,2|s 1.3,2 1.3,0 3.4,0.1|l 0,7 3.3,7",
        ["u"] = "l 0,7 0,2.8|s 0,2.8 0,0 5,0 5,2.8|l 5,7 5,0",
        ["v"] = "l 0,7 2.5,0 5,7",
        ["w"] = "l 0,7 1.8,0 3.5,6 5.2,0 7,7",
        ["x"] = "l 0,0 4.8,7|l 0,7 4.8,0",
        ["y"] = "l 0,7 2.6,0|l 5,7 2.2,-1.6|s 2.2,-1.6 1.6,-3.1 0.2,-3",
        ["z"] = "l 0,7 4.6,7 0,0 4.6,0",
        ["0"] = "o 0,0 0,10 6,10 6,0",
        ["1"] = "l 1.2,8 3.4,10 3.4,0",
        ["2"] = "s 0.2,7.8 0.4,10 5.8,10 5.8,6 3.6,3.8 0,0|l 0,0 6,0",
        ["3"] = "s 0.2,8.4 0.6,10 5.6,10 5.6,5.4 2.6,5.4|s 2.6,5.4 6,5.4 6,0 0.4,0 0,1.8",
        ["4"] = "l 4.6,0 4.6,10 0,3 6,3",
        ["5"] = "l 5.4,10 0.8,10 0.4,5.6|s 0.4,5.6 1.6,6.6 6,6.6 6,0 0.4,0 0,1.7",
        ["6"] = "o 0,0 0,6.2 6,6.2 6,0|s 0,3.1 0,7.4 4.4,10",
        ["7"] = "l 0,10 6,10 2,0",
        ["8"] = "o 0.4,5.4 0.4,10 5.6,10 5.6,5.4|o 0,0 0,5.4 6,5.4 6,0",
        ["9"] = "o 0,3.8 0,10 6,10 6,3.8|s 6,6.9 6,2.6 1.6,0",
        ["."] = "l 0,0 0,0.6",
        [","] = "l 0.6,0.6 0,-1.6",
        [":"] = "l 0,1.2 0,1.8|l 0,5.4 0,6",
        [";"] = "l 0.6,0.6 0,-1.6|l 0.6,5.4 0.6,6",
        ["!"] = "l 0,10 0,3|l 0,0 0,0.6",
        ["?"] = "s 0,8 0.2,10 5,10 5,6 2.4,5.4 2.4,2.8|l 2.4,0 2.4,0.6",
        ["-"] = "l 0,3.8 3.2,3.8",
        ["+"] = "l 0,4.2 5,4.2|l 2.5,1.7 2.5,6.7",
        ["="] = "l 0,5.4 5,5.4|l 0,3 5,3",
        ["/"] = "l 0,-1 4,10.6",
        ["\\"] = "l 0,10.6 4,-1",
        ["("] = "s 2,11 0,8.6 0,0.4 2,-2",
        [")"] = "s 0,11 2,8.6 2,0.4 0,-2",
        ["["] = "l 2,11 0,11 0,-2 2,-2",
        ["]"] = "l 0,11 2,11 2,-2 0,-2",
        ["{"] = "s 2.6,11 1,11 1,5.6 0,4.5 1,3.4 1,-2 2.6,-2",
        ["}"] = "s 0,11 1.6,11 1.6,5.6 2.6,4.5 1.6,3.4 1.6,-2 0,-2",
        ["'"] = "l 0,10 0,7.8",
        ["\""] = "l 0,10 0,7.8|l 1.8,10 1.8,7.8",
        ["`"] = "l 0,10 1.2,8.4",
        ["^"] = "l 0,7.6 2,10 4,7.6",
        ["~"] = "s 0,3.6 1.2,5.6 3.2,2.4 4.6,4.6",
        ["_"] = "l 0,-1.5 6,-1.5",
        ["|"] = "l 0,11 0,-2",
        ["<"] = "l 5,7 0,4.2 5,1.4",
        [">"] = "l 0,7 5,4.2 0,1.4",
        ["*"] = "l 2,9.8 2,5.4|l 0.1,8.7 3.9,6.5|l 0.1,6.5 3.9,8.7",
        ["#"] = "l 1.4,1 2.4,9|l 4,1 5,9|l 0.2,3.6 6,3.6|l 0.4,6.4 6.2,6.4",
        ["%"] = "o 0,6.4 0,10 3,10 3,6.4|o 4.6,0 4.6,3.6 7.6,3.6 7.6,0|l 7,10 0.6,0",
        ["&"] = "s 7,0 1.4,6.4 1.4,10 4.6,10 4.6,7 0,4.6 0,0 5,0 6.6,4",
        ["@"] = "o 2.4,2.6 2.4,7 6,7 6,2.6|s 6,7 6,2.4 9,2.4 9,10 0,10 0,-1.6 7,-1.4",
        ["$"] = "s 5.4,8 5,9.4 0.2,9.4 0.2,5.4 5.6,4.8 5.6,0.6 0.4,0.6 0,2.2|l 2.8,11 2.8,-1",
        ["×"] = "l 0,2 4.4,6.4|l 0,6.4 4.4,2",
        ["·"] = "l 0,4 0,4.6",
        ["°"] = "o 0,7.2 0,10 2.8,10 2.8,7.2",
        ["²"] = "s 0.1,9 0.2,10.4 2.9,10.4 2.9,8.2 1.8,7.2 0,5.4|l 0,5.4 3,5.4",
        ["³"] = "s 0.1,9.6 0.3,10.4 2.8,10.4 2.8,8.1 1.3,8.1|s 1.3,8.1 3,8.1 3,5.4 0.2,5.4 0,6.3",
        ["½"] = "l 0.6,9.2 1.7,10.2 1.7,5.8|l 0.4,0 6,10|s 4.3,3.2 4.4,4.6 7.1,4.6 7.1,2.4 6,1.4 4.2,0|l 4.2,0 7.2,0",
        ["¼"] = "l 0.6,9.2 1.7,10.2 1.7,5.8|l 0.4,0 6,10|l 6.4,0 6.4,4.6 4.2,1.4 7.2,1.4",
        ["…"] = "l 0,0 0,0.6|l 2.4,0 2.4,0.6|l 4.8,0 4.8,0.6",
        ["–"] = "l 0,3.8 4.6,3.8",
        ["—"] = "l 0,3.8 7,3.8",
        ["’"] = "l 0.6,10 0,8",
        ["ß"] = "l 0,0 0,7.6|s 0,7.6 0,10 4.8,10 4.8,5.6 2.4,5.6|s 2.4,5.6 5.4,5.6 5.4,0 2,0",
        ["ø"] = Bowl + "|l 0,-0.6 5.2,7.6",
        ["Ø"] = "o 0,0 0,10 7.2,10 7.2,0|l 0,-0.6 7.2,10.6",
        ["æ"] = Bowl + "|l 5.2,3.7 10,3.7|s 10,3.7 10,7 5.2,7 5.2,0 9.6,0 9.9,1.6",
        ["ı"] = "l 0,7 0,0",
    }.ToFrozenDictionary(entry => char.ConvertToUtf32(entry.Key, 0), entry => Parse(entry.Value));

    // Accents over small letters; capitals lift them by three.
    private static readonly FrozenDictionary<int, string> Accents = new Dictionary<int, string>
    {
        [0x300] = "l -1.2,10.2 0.6,8.4",
        [0x301] = "l 1.2,10.2 -0.6,8.4",
        [0x302] = "l -1.6,8.4 0,10.2 1.6,8.4",
        [0x303] = "s -1.8,8.6 -0.8,10.4 0.8,8.2 1.8,9.8",
        [0x304] = "l -1.6,9 1.6,9",
        [0x306] = "s -1.6,10 -1.4,8.4 1.4,8.4 1.6,10",
        [0x307] = "l 0,8.8 0,9.4",
        [0x308] = "l -1.4,8.8 -1.4,9.4|l 1.4,8.8 1.4,9.4",
        [0x30A] = "o -1.1,8.2 -1.1,10.4 1.1,10.4 1.1,8.2",
        [0x30B] = "l 0.4,10.2 -0.9,8.4|l 2,10.2 0.7,8.4",
        [0x30C] = "l -1.6,10.2 0,8.4 1.6,10.2",
        [0x327] = "s 0,0 0.9,-1 0.9,-2.8 -1.2,-2.4",
        [0x328] = "s 1,0 -0.6,-1.6 0.2,-2.8 1.8,-2.4",
    }.ToFrozenDictionary();

    // Letters with their accents apart, pairwise: the platform's own decomposition is not there without its culture data.
    private static readonly FrozenDictionary<int, string> Apart = new Dictionary<char, string>
    {
        ['\u0300'] = "ÀAàaÈEèeÌIìıÒOòoÙUùuǸNǹnẀWẁw",
        ['\u0301'] = "ÁAáaÉEéeÍIíıÓOóoÚUúuÝYýyĆCćcŃNńnŚSśsŹZźzŔRŕrĹLĺl",
        ['\u0302'] = "ÂAâaÊEêeÎIîıÔOôoÛUûuĈCĉcĜGĝgĤHĥhĴJĵjŜSŝsŴWŵwŶYŷy",
        ['\u0303'] = "ÃAãaÑNñnÕOõoĨIĩıŨUũu",
        ['\u0304'] = "ĀAāaĒEēeĪIīıŌOōoŪUūu",
        ['\u0306'] = "ĂAăaĞGğgŬUŭu",
        ['\u0307'] = "ĊCċcĖEėeĠGġgİIŻZżz",
        ['\u0308'] = "ÄAäaËEëeÏIïıÖOöoÜUüuŸYÿy",
        ['\u030A'] = "ÅAåaŮUůu",
        ['\u030B'] = "ŐOőoŰUűu",
        ['\u030C'] = "ČCčcĎDďdĚEěeŇNňnŘRřrŠSšsŤTťtŽZžzǍAǎa",
        ['\u0327'] = "ÇCçcĢGģgĶKķkĻLļlŅNņnŞSşsŢTţt",
        ['\u0328'] = "ĄAąaĘEęeĮIįıŲUųu",
    }.SelectMany(entry => entry.Value.Chunk(2).Select(pair => (Whole: (int)pair[0], Parts: $"{pair[1]}{entry.Key}")))
        .ToFrozenDictionary(letter => letter.Whole, letter => letter.Parts);

    private static readonly Glyph Box = Parse("l 0,0 0,10 6,10 6,0 0,0");

    /// <summary>Width of a line of text, mm.</summary>
    public static double WidthMm(string text, double heightMm)
    {
        var x = 0.0;
        foreach (var (_, advance) in Letters(text)) x += advance;
        return Math.Max(0, x - Between) * heightMm / Capital;
    }

    /// <summary>A line of text as strokes, its foot on y = 0, y down.</summary>
    public static SheetPath Strokes(string text, double heightMm)
    {
        var scale = heightMm / Capital;
        var steps = new List<PathStep>();
        var x = 0.0;
        foreach (var (glyph, advance) in Letters(text))
        {
            var left = x;
            Point Put(Point p) => new((left + p.X) * scale, -p.Y * scale);
            steps.AddRange(glyph.Steps.Select(step => new PathStep(step.Kind, Put(step.A), Put(step.B), Put(step.End))));
            x += advance;
        }

        return new(steps);
    }

    /// <summary>Whether every letter of a text is in the alphabet, alone or with its accents.</summary>
    public static bool Covers(string text) =>
        Decomposed(text).EnumerateRunes().All(rune => rune.Value == ' ' || Glyphs.ContainsKey(rune.Value) || Accents.ContainsKey(rune.Value));

    private static IEnumerable<(Glyph Glyph, double Advance)> Letters(string text)
    {
        Glyph? letter = null;
        var isCapital = false;
        foreach (var rune in Decomposed(text).EnumerateRunes())
        {
            if (letter is not null && Accents.TryGetValue(rune.Value, out var accent))
            {
                letter = letter.With(Parse(accent), isCapital && rune.Value < 0x327 ? 3 : 0);
                continue;
            }

            if (letter is not null) yield return (letter, letter.Width + Between);
            letter = null;
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.Format or UnicodeCategory.EnclosingMark) continue;
            isCapital = Rune.IsUpper(rune);
            if (rune.Value is ' ' or 0xA0) yield return (new([], WordSpace - Between), WordSpace);
            else letter = Glyphs.GetValueOrDefault(rune.Value, Box);
        }

        if (letter is not null) yield return (letter, letter.Width + Between);
    }

    private static string Decomposed(string text)
    {
        var apart = new StringBuilder(text.Length);
        foreach (var rune in Lettering.Safe(text).EnumerateRunes()) apart.Append(Apart.GetValueOrDefault(rune.Value) ?? rune.ToString());
        return apart.ToString();
    }

    private static Glyph Parse(string strokes)
    {
        var steps = new List<PathStep>();
        foreach (var stroke in strokes.Split('|'))
        {
            var points = stroke[2..].Split(' ').Select(pair =>
            {
                var comma = pair.IndexOf(',', StringComparison.Ordinal);
                return new Point(
                    double.Parse(pair.AsSpan(0, comma), CultureInfo.InvariantCulture), double.Parse(pair.AsSpan(comma + 1), CultureInfo.InvariantCulture));
            }).ToArray();
            if (stroke[0] == 'l') steps.AddRange(SheetPath.Polyline(points).Steps);
            else if (stroke[0] == 's') AddSmooth(steps, points);
            else AddSmoothClosed(steps, points);
        }

        return new(steps, steps.Max(step => step.End.X));
    }

    private static void AddSmooth(List<PathStep> steps, Point[] points)
    {
        steps.Add(new(StepKind.Move, default, default, points[0]));
        for (var i = 1; i < points.Length - 1; i++)
            AddQuadratic(steps, points[i], i == points.Length - 2 ? points[^1] : 0.5 * (points[i] + points[i + 1]));
    }

    private static void AddSmoothClosed(List<PathStep> steps, Point[] points)
    {
        steps.Add(new(StepKind.Move, default, default, 0.5 * (points[^1] + points[0])));
        for (var i = 0; i < points.Length; i++) AddQuadratic(steps, points[i], 0.5 * (points[i] + points[(i + 1) % points.Length]));
    }

    // A quadratic with handle c is the cubic whose handles lie two thirds of the way to c.
    private static void AddQuadratic(List<PathStep> steps, Point handle, Point end)
    {
        var start = steps[^1].End;
        steps.Add(new(StepKind.Cubic, start + 2.0 / 3 * (handle - start), end + 2.0 / 3 * (handle - end), end));
    }

    private sealed record Glyph(IReadOnlyList<PathStep> Steps, double Width)
    {
        public Glyph With(Glyph accent, double lift)
        {
            Point by = new(Width / 2, lift);
            return this with
            {
                Steps = [.. Steps, .. accent.Steps.Select(step => new PathStep(step.Kind, step.A + by, step.B + by, step.End + by))],
            };
        }
    }
}
