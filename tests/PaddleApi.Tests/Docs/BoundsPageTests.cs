using System.Globalization;
using System.Text;
using System.Text.Json;
using Paddle.Design;
using Paddle.Design.Request;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Docs;

/// <summary>The page of bounds is written by the code: every range of a request, from the same place as the rules.</summary>
public sealed class BoundsPageTests
{
    private const string Page = "docs/bounds.md";

    [Fact]
    public void The_page_of_bounds_is_the_one_the_code_writes()
    {
        var written = Render();
        var path = Path.Combine(Committed.Root(), Page);
        if (Environment.GetEnvironmentVariable("UPDATE_GUIDE") == "1") File.WriteAllText(path, written);
        Assert.True(written == File.ReadAllText(path), $"{Page} is not what the code writes. UPDATE_GUIDE=1 dotnet test tests/PaddleApi.Tests --filter BoundsPage rewrites it.");
    }

    [Fact]
    public void A_usual_value_lies_within_its_bounds() => Assert.All(
        Records().SelectMany(record => Bounds.Of(record)).Where(member => !double.IsNaN(member.Bound.Usual)),
        member => Assert.True(member.Bound.Holds(member.Bound.Usual), member.Member.Name));

    private static string Render()
    {
        var page = new StringBuilder("""
            # What a request may hold

            Every number of a request that has a range of its own, by the record it stands in. The rules that refuse, the description at
            `/openapi/v1.json` and this page read one declaration beside each member; a test writes the page. Ranges that depend on other members,
            such as a grip's width by its style or a thickness by the board, are told by the refusal itself. How to take the
            measurements of a person and a boat is told at `/v1/measurements`.

            """);
        foreach (var record in Records().OrderBy(type => type.Name, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {record.Name}\n\n| member | least | most | unit | when null | why |\n| --- | --- | --- | --- | --- | --- |\n");
            foreach (var (member, bound) in Bounds.Of(record).Select(one => (JsonNamingPolicy.CamelCase.ConvertName(one.Member.Name), one.Bound)))
            {
                page.Append(CultureInfo.InvariantCulture, $"| `{member}` | {Number(bound.Least)} | {Number(bound.Most)} | {bound.Unit} | {(double.IsNaN(bound.Usual) ? "" : Number(bound.Usual))} | {bound.Reason} |\n");
            }
        }

        return page.ToString();
    }

    private static string Number(double value) => value.ToString("#,0.#####", CultureInfo.InvariantCulture).Replace(",", " ", StringComparison.Ordinal);

    private static IEnumerable<Type> Records() =>
        typeof(DesignRequest).Assembly.GetTypes().Concat(typeof(Contracts.Boards.BoardTestRequest).Assembly.GetTypes()).Where(type => Bounds.Of(type).Count > 0);
}
