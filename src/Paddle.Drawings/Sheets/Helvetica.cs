using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using PdfSharp.Pdf;

namespace Paddle.Drawings.Sheets;

/// <summary>The face that every reader of PDF has without its being in the file: codes and widths of its letters, upright and bold.</summary>
/// <remarks>Standard 14 fonts and WinAnsiEncoding: ISO 32000-1, 9.6.2.2 and annex D, from memory. Widths: Adobe core 14 font metrics
/// (Helvetica.afm, Helvetica-Bold.afm), as PdfPig carries them. A letter with an accent that the code lacks is set as letter and accent;
/// one that the face lacks prints as a question mark. Whoever copies or hears either is told the letter itself.</remarks>
internal static class Helvetica
{
    private const int FirstCode = 32;
    private const char Unknown = '?';
    private const int FirstMore = 15;
    private const int AccentWidth = 333;
    // How far over a small letter's accent that of a tall one stands: capital height less small height, thousandths.
    private const int Lift = 195;

    // Letters of the standard Latin set that WinAnsiEncoding leaves out, and accents as they are set over others: codes before its first.
    private static readonly (char Letter, string Name, int Upright, int Bold)[] More =
    [
        ('ı', "dotlessi", 278, 278), ('Ł', "Lslash", 556, 611), ('ł', "lslash", 222, 278), ('−', "minus", 584, 584),
        .. new (char, string)[]
        {
            ('\u0300', "grave"), ('\u0301', "acute"), ('\u0302', "circumflex"), ('\u0303', "tilde"), ('\u0304', "macron"), ('\u0306', "breve"),
            ('\u0307', "dotaccent"), ('\u0308', "dieresis"), ('\u030A', "ring"), ('\u030B', "hungarumlaut"), ('\u030C', "caron"),
            ('\u0327', "cedilla"), ('\u0328', "ogonek"),
        }.Select(accent => (accent.Item1, accent.Item2, AccentWidth, AccentWidth)),
    ];

    // Codes 128 to 159; a question mark where there is no letter.
    private const string Signs = "€?‚ƒ„…†‡ˆ‰Š‹Œ?Ž??‘’“”•–—˜™š›œ?žŸ";

    private static readonly FrozenDictionary<int, byte> Codes = AllCodes().ToFrozenDictionary(code => (int)code.Letter, code => code.Code);

    // Letters with their accents apart, pairwise: the platform's own decomposition is not there without its culture data.
    private static readonly FrozenDictionary<int, (char Base, char Accent)> Apart = new Dictionary<char, string>
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
    }.SelectMany(entry => entry.Value.Chunk(2).Select(pair => (Whole: pair[0], Base: pair[1], Accent: entry.Key)))
        .ToFrozenDictionary(letter => (int)letter.Whole, letter => (letter.Base, letter.Accent));

    private static readonly int[] Upright =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, 0,
        556, 350, 222, 556, 333, 1000, 556, 556, 333, 1000, 667, 333, 1000, 350, 611, 350, 350, 222, 222, 333, 333, 350, 556, 1000, 333, 1000, 500, 333, 944, 350, 500, 667,
        278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333, 400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611,
        667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, 722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
        556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278, 556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500,
    ];

    private static readonly int[] Bold =
    [
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
        975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
        333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584, 0,
        556, 350, 278, 556, 500, 1000, 556, 556, 333, 1000, 667, 333, 1000, 350, 611, 350, 350, 278, 278, 500, 500, 350, 556, 1000, 333, 1000, 556, 333, 944, 350, 500, 667,
        278, 333, 556, 556, 556, 556, 280, 556, 333, 737, 370, 556, 584, 333, 737, 333, 400, 584, 333, 333, 333, 611, 556, 278, 333, 333, 365, 556, 834, 834, 834, 611,
        722, 722, 722, 722, 722, 722, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, 722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
        556, 556, 556, 556, 556, 556, 889, 556, 556, 556, 556, 556, 278, 278, 278, 278, 611, 611, 611, 611, 611, 611, 611, 584, 611, 611, 611, 611, 611, 556, 611, 556,
    ];

    /// <summary>Name of the upright and of the bold face in a page's resources.</summary>
    public static string Name(bool strong) => strong ? "F2" : "F1";

    /// <summary>Width of a line of text, mm.</summary>
    public static double WidthMm(string text, double heightMm, bool strong = false) =>
        Letters(text).Sum(letter => Width(letter.Code, strong)) * heightMm / Lettering.CapitalShare / 1000;

    /// <summary>Width of a letter, thousandths of the font size.</summary>
    public static int Width(byte code, bool strong)
    {
        if (code >= FirstCode) return (strong ? Bold : Upright)[code - FirstCode];
        var (_, _, upright, bold) = More[code - FirstMore];
        return strong ? bold : upright;
    }

    /// <summary>Whether every letter is one of the code, so that what is copied from a page is what was written.</summary>
    public static bool Reads(string text) => text.EnumerateRunes().All(rune => Codes.ContainsKey(rune.Value) && !IsUnseen(rune));

    /// <summary>The letters' codes, each with that of an accent to set over it, or 0, and how far to lift that, thousandths.</summary>
    public static List<(byte Code, byte Accent, int Lift)> Letters(string text)
    {
        var letters = new List<(byte Code, byte Accent, int Lift)>(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Codes.TryGetValue(rune.Value, out var code))
            {
                if (!IsUnseen(rune)) letters.Add((code, 0, 0));
                else if (letters.Count > 0) letters[^1] = Accented((char)letters[^1].Code, (char)rune.Value);
            }
            else if (Apart.TryGetValue(rune.Value, out var parts)) letters.Add(Accented(parts.Base, parts.Accent));
            else if (!IsUnseen(rune)) letters.Add((Codes[Unknown], 0, 0));
        }

        return letters;
    }

    private static (byte Code, byte Accent, int Lift) Accented(char letter, char accent) =>
        (Codes.GetValueOrDefault(letter, (byte)letter), Codes[accent], accent < '\u0327' && (char.IsUpper(letter) || "bdfhklt".Contains(letter)) ? Lift : 0);

    /// <summary>Adds both faces to a document.</summary>
    /// <returns>Resources for all of its pages.</returns>
    public static PdfDictionary Resources(PdfDocument document)
    {
        PdfDictionary Add(PdfDictionary dictionary)
        {
            document.Internals.AddObject(dictionary);
            return dictionary;
        }

        var encoding = new PdfDictionary(document);
        encoding.Elements.SetName("/Type", "/Encoding");
        encoding.Elements.SetName("/BaseEncoding", "/WinAnsiEncoding");
        encoding.Elements["/Differences"] = new PdfArray(document, [new PdfInteger(FirstMore), .. More.Select(letter => new PdfName("/" + letter.Name))]);
        Add(encoding);
        var fonts = new PdfDictionary(document);
        foreach (var strong in (bool[])[false, true])
        {
            var font = new PdfDictionary(document);
            font.Elements.SetName("/Type", "/Font");
            font.Elements.SetName("/Subtype", "/Type1");
            font.Elements.SetName("/BaseFont", strong ? "/Helvetica-Bold" : "/Helvetica");
            font.Elements.SetReference("/Encoding", encoding);
            fonts.Elements.SetReference("/" + Name(strong), Add(font));
        }

        var resources = new PdfDictionary(document);
        resources.Elements.SetObject("/Font", fonts);
        return Add(resources);
    }

    private static IEnumerable<(char Letter, byte Code)> AllCodes()
    {
        for (var i = 0; i < More.Length; i++) yield return (More[i].Letter, (byte)(FirstMore + i));
        for (var letter = ' '; letter <= '~'; letter++) yield return (letter, (byte)letter);
        for (var i = 0; i < Signs.Length; i++)
        {
            if (Signs[i] != Unknown) yield return (Signs[i], (byte)(128 + i));
        }

        for (var letter = '\u00A0'; letter <= '\u00FF'; letter++) yield return (letter, (byte)letter);
    }

    // Marks that stand over the letter before them, and signs that steer a line.
    private static bool IsUnseen(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark || (rune.Value != 0xAD && Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format);
}
