using System.Net;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Paddle.Drawings;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Designs;

/// <summary>What people write in a label, and what does not print as it was written.</summary>
[Collection(HttpTests.Name)]
public sealed class LabelTests(ApiFixture api)
{
    // Words and sequences as they are spelled; the joined emoji from emoji-zwj-sequences of Unicode (from memory).
    public static TheoryData<string, string> Written => new()
    {
        { "family, four people joined", "\U0001F468\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466" },
        { "woman rowing, dark skin", "\U0001F6A3\U0001F3FF\u200D\u2640\uFE0F" },
        { "rainbow flag", "\U0001F3F3\uFE0F\u200D\U0001F308" },
        { "flag of Scotland", "\U0001F3F4\U000E0067\U000E0062\U000E0073\U000E0063\U000E0074\U000E007F" },
        { "heart on fire", "\u2764\uFE0F\u200D\U0001F525" },
        { "Persian, I want", "\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645" },
        { "Persian, fifth, in digits", "\u06F5\u200C\u0627\u0645" },
        { "Persian, of the solar calendar", "\u0647\u200D.\u0634." },
        { "Malayalam, an old chillu", "\u0D28\u0D4D\u200D" },
        { "Sinhala, Sri", "\u0DC1\u0DCA\u200D\u0DBB\u0DD3" },
        { "Hindi, ksha kept apart", "\u0915\u094D\u200C\u0937" },
        { "Hebrew with points", "\u05DE\u05B8\u05E9\u05C1\u05D5\u05B9\u05D8" },
        { "a keycap", "5\uFE0F\u20E3" },
        { "German, a canoe, Japanese", "Gr\u00FCn \U0001F6F6 \u65E5\u672C" },
    };

    [Theory, MemberData(nameof(Written))]
    public async Task What_people_write_is_kept_as_it_is(string what, string label)
    {
        var (answer, design) = await PostAsync(label);

        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{what}: {design.GetRawText()}");
        Assert.Equal(label, design.GetProperty("design").GetProperty("label").GetString());
        using var drawing = await api.Client.GetAsync(design.GetProperty("links").GetProperty("outline").GetString());
        var title = XDocument.Parse(await drawing.Content.ReadAsStringAsync()).Descendants().First(element => element.Name.LocalName == "title");
        Assert.StartsWith(label, title.Value, StringComparison.Ordinal);
        Assert.Contains(label.Replace("\uFE0F", "", StringComparison.Ordinal)[..1], Uri.UnescapeDataString(drawing.Content.Headers.ContentDisposition!.FileNameStar!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_file_of_a_joined_label_is_made()
    {
        var (_, design) = await PostAsync("\U0001F468\u200D\U0001F467 \u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645");
        foreach (var file in DesignFiles.All)
        {
            using var answer = await api.Client.GetAsync($"{design.GetProperty("links").GetProperty("self").GetString()}/{file.FileName}");
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
    }

    [Theory]
    [InlineData("turned \u202E about", "Character 8, U+202E, is refused: it is invisible")]
    [InlineData("\u2066isolated\u2069", "Character 1, U+2066")]
    [InlineData("marked\u200F", "Character 7, U+200F")]
    [InlineData("soft\u00ADhyphen", "Character 5, U+00AD")]
    [InlineData("\uFEFFmark", "Character 1, U+FEFF")]
    [InlineData("a\u200Bb", "Character 2, U+200B")]
    [InlineData("\u200Dalone", "Character 1, U+200D, is refused: it joins")]
    [InlineData("a \u200Db", "Character 3, U+200D")]
    [InlineData("a\u200D\u200Db", "Character 3, U+200D")]
    [InlineData("a\u200C\u200Db", "Character 3, U+200D")]
    [InlineData("\U0001F6F6\U000E0067", "Character 2, U+E0067")]
    [InlineData("\U0001F3F4\U000E007F\U000E0067", "Character 3, U+E0067")]
    [InlineData("tab\t", "Character 4, U+0009, is refused: it is a control character")]
    [InlineData("two\u2028lines", "Character 4, U+2028, is refused: it breaks the line")]
    [InlineData("own \uE000", "Character 5, U+E000, is refused: it is for private use")]
    [InlineData("not yet \U000E0FFF", "Character 9, U+E0FFF, is refused: it is no character")]
    [InlineData("\U0001F6F6\U0001F6F6\u0000", "Character 3, U+0000")]
    public async Task What_does_not_print_as_written_is_refused_by_character(string label, string why)
    {
        var (answer, problem) = await PostAsync(label);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var reason = problem.GetProperty("errors").GetProperty("/label")[0].GetProperty("reason").GetString();
        Assert.Contains("print on one line", reason, StringComparison.Ordinal);
        Assert.Contains(why, reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, HttpStatusCode.OK)]
    [InlineData(81, HttpStatusCode.UnprocessableEntity)]
    public async Task Characters_are_counted_and_not_the_halves_they_are_kept_in(int count, HttpStatusCode status)
    {
        var (answer, body) = await PostAsync(string.Concat(Enumerable.Repeat("\U0001F6F6", count)));

        Assert.True(answer.StatusCode == status, body.GetRawText());
    }

    [Theory]
    [InlineData("DesignRequest", 80)]
    [InlineData("SizeRunRequest", 80)]
    [InlineData("FittingRequest", 60)]
    public void The_description_says_how_long_a_label_may_be(string schema, int longest) => Assert.Equal(
        longest, ApiFactory.Description.Root["components"]!["schemas"]![schema]!["properties"]!["label"]!["maxLength"]!.GetValue<int>());

    private async Task<(HttpResponseMessage Answer, JsonElement Body)> PostAsync(string label)
    {
        var body = JsonSerializer.Serialize(new { label, handSpacingMm = 880, wood = new { species = "white-ash" } });
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), content);
        using var document = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        return (answer, document.RootElement.Clone());
    }
}
