using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using Paddle.Design.Fitting;
using PaddleApi.Endpoints.Fittings;
using PaddleApi.Hosting.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Fittings;

[Collection(HttpTests.Name)]
public sealed class SizeRunHttpTests(ApiFixture api)
{
    private const string Address = "/v1/size-runs";

    [Fact]
    public async Task The_hire_fleet_gets_its_sizes_counts_and_curve()
    {
        var (status, answer) = await api.Client.PostAsync(Address, File.ReadAllText("Examples/size-run.json"));
        var sizes = answer.GetProperty("sizes").EnumerateArray().ToList();

        Assert.Equal(200, status);
        Assert.Equal(3, sizes.Count);
        Assert.All(sizes, size => Assert.Equal(0, size.Number("overallLengthMm") % 25));
        Assert.Equal(1, sizes.Sum(size => size.Number("share")), 2e-4);
        Assert.Equal(24, sizes.Sum(size => size.Number("count")));
        var curve = answer.GetProperty("curve").EnumerateArray().ToList();
        Assert.Equal(8, curve.Count);
        Assert.Equal(answer.Number("meanMisfitMm"), curve[2].Number("meanMisfitMm"));
        Assert.Equal(curve[1].Number("meanMisfitMm") - curve[2].Number("meanMisfitMm"), curve[2].Number("gainMm"), 0.011);
        Assert.InRange(answer.Number("within25MmShare"), 0.5, answer.Number("within50MmShare"));
        Assert.Equal(1, answer.GetProperty("histogram").EnumerateArray().Sum(bar => bar.Number("share")), 0.005);
    }

    // Three customers at 1400 and one at 1500: one size is their median, two sizes miss nobody.
    [Fact]
    public async Task A_run_worked_by_hand_comes_out()
    {
        const string Customers = "[{\"overallLengthMm\":1400},{\"overallLengthMm\":1400},{\"overallLengthMm\":1400},{\"overallLengthMm\":1500}]";
        var (_, one) = await api.Client.PostAsync(Address, $$"""{"sizes":1,"stepMm":25,"customers":{{Customers}}}""");
        var (_, two) = await api.Client.PostAsync(Address, $$"""{"sizes":2,"stepMm":25,"fleetCount":8,"customers":{{Customers}}}""");

        Assert.Equal((1400, 25), (one.GetProperty("sizes")[0].Number("overallLengthMm"), one.Number("meanMisfitMm")));
        Assert.Equal(0.75, one.Number("within25MmShare"));
        Assert.Equal(0, two.Number("meanMisfitMm"));
        Assert.Equal([6.0, 2.0], two.GetProperty("sizes").EnumerateArray().Select(size => size.Number("count")));
        Assert.Equal(25, two.GetProperty("curve")[1].Number("gainMm"));
    }

    // Three at 1400 and one at 1500 mm: one size is 25 mm off on average, 31.5 thirty-seconds of an inch.
    [Theory]
    [InlineData("metric", "a customer is 25 mm off")]
    [InlineData("inch", "a customer is 31/32 in off")]
    public async Task The_reasons_are_in_the_shops_units(string units, string said)
    {
        const string Customers = "[{\"overallLengthMm\":1400},{\"overallLengthMm\":1400},{\"overallLengthMm\":1400},{\"overallLengthMm\":1500}]";
        var (_, answer) = await api.Client.PostAsync(Address, $$$"""{"sizes":1,"stepMm":25,"customers":{{{Customers}}},"drawing":{"units":"{{{units}}}"}}""");

        Assert.Contains(said, answer.GetProperty("reasons")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Groups_and_the_population_are_one_mix()
    {
        // ANSUR II: men's hand spacing 891.8 ± 47.7 mm; said by name or by figures it is the same group.
        var (_, named) = await api.Client.PostAsync(Address, """{"sizes":2,"population":{"men":1}}""");
        var (_, given) = await api.Client.PostAsync(
            Address, """{"sizes":2,"groups":[{"share":9,"meanMm":891.8,"standardDeviationMm":47.7,"quantity":"hand-spacing"}]}""");
        var (_, mixed) = await api.Client.PostAsync(
            Address, """{"sizes":2,"population":{"men":1},"groups":[{"share":1,"meanMm":891.8,"standardDeviationMm":47.7}]}""");

        Assert.Equal(named.GetRawText(), given.GetRawText());
        Assert.Equal(named.GetRawText(), mixed.GetRawText());
    }

    public static TheoryData<string, string, string> Refused => new()
    {
        { """{"sizes":3}""", "/customers", "not neither" },
        { """{"sizes":3,"population":{"men":1},"customers":[{"statureMm":1700}]}""", "/customers", "not both" },
        { """{"sizes":3,"customers":[]}""", "/customers", "outside 1 to 100000" },
        { """{"sizes":9,"population":{"men":1}}""", "/sizes", "outside 1 to 8" },
        { """{"sizes":0,"population":{"men":1}}""", "/sizes", "outside 1 to 8" },
        { """{"sizes":3,"stepMm":101,"population":{"men":1}}""", "/stepMm", "outside 1 to 100" },
        { """{"sizes":3,"fleetCount":0,"population":{"men":1}}""", "/fleetCount", "at least one paddle" },
        { """{"sizes":3,"population":{"men":0,"women":0}}""", "/population", "above 0" },
        { """{"sizes":3,"population":{}}""", "/population", "needs one" },
        { """{"sizes":3,"population":{"men":-1,"women":2}}""", "/population/men", "none negative" },
        { """{"sizes":3,"population":{"women":-2,"men":3}}""", "/population/women", "none negative" },
        { """{"sizes":3,"groups":[]}""", "/groups", "needs one" },
        { """{"sizes":3,"population":{"men":1},"groups":[{"share":1,"meanMm":5,"standardDeviationMm":40}]}""", "/groups/0/meanMm", "outside 400 to 1100" },
        { """{"sizes":3,"groups":[{"share":1,"meanMm":880,"standardDeviationMm":0}]}""", "/groups/0/standardDeviationMm", "alike" },
        { """{"sizes":3,"customers":[{"statureMm":1700},{"statureMm":1700,"handSpacingMm":880}]}""", "/customers/1", "exactly one" },
        { """{"sizes":3,"customers":[{"statureMm":170}]}""", "/customers/0/statureMm", "outside 900 to 2200" },
        { """{"sizes":3,"population":{"men":1},"shortestStockMm":1600,"longestStockMm":1500}""", "/shortestStockMm", "longer than the longest" },
        { """{"sizes":3,"population":{"men":1},"shortestStockMm":1501,"longestStockMm":1503}""", "/longestStockMm", "No multiple" },
        { """{"sizes":3,"population":{"men":1},"drawing":{"units":"cubits"}}""", "/drawing/units", "lettered" },
        { """{"sizes":3,"population":{"men":1},"label":"a\tb"}""", "/label", "print on one line" },
    };

    [Theory, MemberData(nameof(Refused))]
    public async Task A_run_without_an_answer_is_refused_with_its_place(string body, string place, string why)
    {
        var (status, problem) = await api.Client.PostAsync(Address, body);

        Assert.Equal(422, status);
        Assert.Contains(why, problem.Fault(place).GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Matches("^[a-z]+(-[a-z]+)+$", problem.Fault(place).GetProperty("code").GetString());
        Assert.Single(problem.GetProperty("errors").EnumerateObject());
    }

    [Theory]
    [InlineData("""{"population":{"men":1}}""", "/sizes")]
    [InlineData("""{"sizes":2.5,"population":{"men":1}}""", "/sizes")]
    [InlineData("""{"sizes":3,"groups":[{"share":1,"meanMm":880}]}""", "/groups/0/standardDeviationMm")]
    [InlineData("""{"sizes":3,"customers":[null]}""", "/customers/0")]
    public async Task Json_of_another_shape_is_refused_with_its_place(string body, string place)
    {
        var (status, problem) = await api.Client.PostAsync(Address, body);

        Assert.Equal(400, status);
        problem.Fault(place);
    }

    // Over sockets, where the limits on bodies hold: the list is forty times what other addresses take.
    [Fact]
    public async Task A_hundred_thousand_customers_are_answered()
    {
        var random = new Random(5);
        var customers = Enumerable.Range(0, 100_000)
            .Select(_ => string.Create(CultureInfo.InvariantCulture, $"    {{ \"handSpacingMm\": {700 + 300 * random.NextDouble():0.0} }}"));
        var body = $"{{ \"sizes\": 8, \"fleetCount\": 500, \"customers\": [\n{string.Join(",\n", customers)}\n] }}";
        using var factory = new ApiFactory();
        using var client = factory.SocketClient();

        var (status, answer) = await client.PostAsync(Address, body);

        Assert.True(status == 200, answer.GetRawText());
        Assert.Equal(500, answer.GetProperty("sizes").EnumerateArray().Sum(size => size.Number("count")));

        // Even from 700 to 1000 mm: eight sizes a step of 37.5 apart, a customer a quarter of that off, a little more on a lattice of 25.
        Assert.InRange(answer.Number("meanMisfitMm"), 37.5 / 4, 11);
    }

    [Fact]
    public async Task One_customer_too_many_is_refused_by_count()
    {
        var body = $"{{\"sizes\":8,\"customers\":[{string.Join(',', Enumerable.Repeat("{\"statureMm\":1700}", 100_001))}]}}";

        var (status, problem) = await api.Client.PostAsync(Address, body);

        Assert.Equal(422, status);
        Assert.Equal(100_000, problem.Fault("/customers").Number("max"));
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("inch")]
    public async Task The_histogram_shows_every_bar_and_every_size_in_its_place(string units)
    {
        var body = $$$"""{"label":"Heron Lake <b> & \"c\"","sizes":4,"fleetCount":30,"population":{"men":1,"women":1},"drawing":{"units":"{{{units}}}"}}""";
        var (_, answer) = await api.Client.PostAsync(Address, body);
        using var drawn = await api.Client.PostForAsync(Address, body, "image/svg+xml");
        var svg = XDocument.Parse(await drawn.Content.ReadAsStringAsync()).Root!;

        Assert.Equal("image/svg+xml", drawn.Content.Headers.ContentType!.MediaType);
        Assert.Contains("Accept", drawn.Headers.Vary);
        var bars = Boxes(svg, "bar");
        var histogram = answer.GetProperty("histogram").EnumerateArray().ToList();
        Assert.Equal(histogram.Count, bars.Count);

        // Heights are as the shares.
        var tallest = histogram.Max(bar => bar.Number("share"));
        var most = bars.Max(bar => bar.Height);
        foreach (var (bar, drawing) in histogram.Zip(bars)) Assert.Equal(bar.Number("share") / tallest, drawing.Height / most, 2e-3);

        // A size stands between the bars as its length lies between theirs.
        double perMm = (bars[^1].Right - bars[0].Left) / (histogram[^1].Number("highMm") - histogram[0].Number("lowMm"));
        var sizes = answer.GetProperty("sizes").EnumerateArray().ToList();
        var lines = Boxes(svg, "size");
        Assert.Equal(sizes.Count, lines.Count);
        foreach (var (size, line) in sizes.Zip(lines))
            Assert.Equal(bars[0].Left + perMm * (size.Number("overallLengthMm") - histogram[0].Number("lowMm")), line.Left, 0.01);

        var texts = svg.Descendants().Where(node => node.Name.LocalName == "text").Select(node => node.Value).ToList();
        Assert.Contains("Heron Lake <b> & \"c\"", texts);
        Assert.Equal(sizes.Count, texts.Count(text => text.Contains(" × ", StringComparison.Ordinal)));
        Assert.Contains(units == "metric" ? "Overall length that fits, mm" : "Overall length that fits, in", texts);
    }

    [Theory]
    [InlineData("""{"sizes":8,"customers":[{"overallLengthMm":1500}]}""")]
    [InlineData("""{"sizes":8,"stepMm":1,"customers":[{"overallLengthMm":900},{"overallLengthMm":2200}]}""")]
    [InlineData("""{"sizes":2,"population":{"men":1},"shortestStockMm":900,"longestStockMm":1000}""")]
    [InlineData("""{"sizes":8,"stepMm":100,"groups":[{"share":1,"meanMm":880,"standardDeviationMm":1}]}""")]
    public async Task Runs_at_the_ends_are_drawn_with_finite_figures_on_the_sheet(string body)
    {
        using var drawn = await api.Client.PostForAsync(Address, body, "image/svg+xml");
        var text = await drawn.Content.ReadAsStringAsync();
        var width = double.Parse(XDocument.Parse(text).Root!.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture);

        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        foreach (var box in Boxes(XDocument.Parse(text).Root!, "bar").Concat(Boxes(XDocument.Parse(text).Root!, "size")))
        {
            Assert.InRange(box.Left, 0, width);
            Assert.InRange(box.Right, 0, width);
        }
    }

    [Fact]
    public void The_example_shown_is_the_file_of_the_docs() => Assert.Equal(
        JsonSerializer.Serialize(JsonSerializer.Deserialize<SizeRunRequest>(File.ReadAllText("Examples/size-run.json"), StrictJson.Options), StrictJson.Options),
        JsonSerializer.Serialize(FittingExamples.Fleet, StrictJson.Options));

    private sealed record Box(double Left, double Right, double Height);

    private static List<Box> Boxes(XElement svg, string css) =>
    [
        .. svg.Descendants().Where(node => node.Name.LocalName == "path" && node.Parent!.Attribute("class")!.Value.Split(' ').Contains(css))
            .Select(node =>
            {
                double[] numbers = [.. node.Attribute("d")!.Value.Split([' ', 'M', 'L', 'Z'], StringSplitOptions.RemoveEmptyEntries).Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
                var xs = numbers.Where((_, index) => index % 2 == 0).ToList();
                var ys = numbers.Where((_, index) => index % 2 == 1).ToList();
                return new Box(xs.Min(), xs.Max(), ys.Max() - ys.Min());
            }),
    ];
}
