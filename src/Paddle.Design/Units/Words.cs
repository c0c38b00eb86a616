namespace Paddle.Design.Units;

/// <summary>Small helps for sentences.</summary>
internal static class Words
{
    /// <summary>A name of a thing with its indefinite article.</summary>
    /// <returns>The two together, such as <c>an ottertail</c>.</returns>
    public static string WithArticle(string name) => ("aeiouAEIOU".Contains(name[0], StringComparison.Ordinal) ? "an " : "a ") + name;

    /// <summary>Words with a capital letter in front, to begin a sentence.</summary>
    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>Words with a small letter in front, to go on within a sentence.</summary>
    public static string Small(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
