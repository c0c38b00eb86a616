namespace Paddle.Drawings.Sheets;

/// <summary>Text in the single-byte code that PDF calls WinAnsiEncoding: Latin letters and the drafting signs used here.</summary>
/// <remarks>ISO 32000-1, annex D, from memory: ASCII and Latin-1 at their own places, some signs of typography between 128 and 159.</remarks>
internal static class WinAnsi
{
    private static readonly Dictionary<char, byte> Signs = new()
    {
        ['€'] = 0x80,
        ['‚'] = 0x82,
        ['„'] = 0x84,
        ['…'] = 0x85,
        ['Š'] = 0x8A,
        ['Œ'] = 0x8C,
        ['Ž'] = 0x8E,
        ['‘'] = 0x91,
        ['’'] = 0x92,
        ['“'] = 0x93,
        ['”'] = 0x94,
        ['•'] = 0x95,
        ['–'] = 0x96,
        ['—'] = 0x97,
        ['š'] = 0x9A,
        ['œ'] = 0x9C,
        ['ž'] = 0x9E,
        ['Ÿ'] = 0x9F,
        ['−'] = 0x2D,
    };

    /// <summary>The bytes; a question mark for each letter that the code does not have.</summary>
    public static byte[] Bytes(string text) => [.. text.EnumerateRunes().Select(rune => rune.IsBmp ? Byte((char)rune.Value) : (byte)'?')];

    private static byte Byte(char letter) => letter is >= ' ' and <= '~' or >= '\u00A0' and <= '\u00FF' ? (byte)letter : Signs.GetValueOrDefault(letter, (byte)'?');
}
