namespace Paddle.Design.Fitting;

/// <summary>Small helps for sentences.</summary>
internal static class Words
{
    /// <summary>A name of a thing with its indefinite article.</summary>
    /// <param name="name">Name that is spoken as it is written.</param>
    /// <returns>The two together, such as <c>an ottertail</c>.</returns>
    public static string WithArticle(string name) => ("aeiouAEIOU".Contains(name[0], StringComparison.Ordinal) ? "an " : "a ") + name;
}
