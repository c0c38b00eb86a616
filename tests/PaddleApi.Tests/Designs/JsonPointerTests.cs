using System.Text.Json;
using PaddleApi.Validation;

namespace PaddleApi.Tests.Designs;

/// <summary>The document and the answers of RFC 6901, section 5.</summary>
public sealed class JsonPointerTests
{
    private const string Document =
        """{ "foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4, "i\\j": 5, "k\"l": 6, " ": 7, "m~n": 8 }""";

    [Theory]
    [InlineData("/foo", """["bar", "baz"]""")]
    [InlineData("/foo/0", "\"bar\"")]
    [InlineData("/", "0")]
    [InlineData("/a~1b", "1")]
    [InlineData("/c%d", "2")]
    [InlineData("/e^f", "3")]
    [InlineData("/g|h", "4")]
    [InlineData("/i\\j", "5")]
    [InlineData("/k\"l", "6")]
    [InlineData("/ ", "7")]
    [InlineData("/m~0n", "8")]
    [InlineData("", Document)]
    public void Finds_what_the_standard_finds(string place, string value)
    {
        using JsonDocument document = JsonDocument.Parse(Document), expected = JsonDocument.Parse(value);
        Assert.True(JsonElement.DeepEquals(expected.RootElement, JsonPointers.Find(document.RootElement, place)!.Value));
    }

    [Theory]
    [InlineData("/foo/2")]
    [InlineData("/foo/01")]
    [InlineData("/foo/-")]
    [InlineData("/foo/bar")]
    [InlineData("/foo/0/x")]
    [InlineData("/foo/99999999999")]
    public void Finds_nothing_where_there_is_nothing(string place)
    {
        using var document = JsonDocument.Parse(Document);
        Assert.Null(JsonPointers.Find(document.RootElement, place));
    }

    [Theory]
    [InlineData("foo", false)]
    [InlineData("/a~2", false)]
    [InlineData("/a~", false)]
    [InlineData("", true)]
    [InlineData("/a~1b/~0", true)]
    public void Tells_a_pointer_from_other_text(string text, bool isPointer) => Assert.Equal(isPointer, JsonPointers.IsPointer(text));
}
