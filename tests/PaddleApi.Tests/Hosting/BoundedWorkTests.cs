using System.Text;
using System.Text.Json;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation.Builds;

namespace PaddleApi.Tests.Hosting;

/// <summary>A hostile body costs work in proportion to its size, and its answer costs no more than an answer may.</summary>
public sealed class BoundedWorkTests
{
    private const int Some = 2000, Many = 8000;

    public static TheoryData<string> Shapes =>
    [
        """{"name":"a",%"widthMm":1}""" + "#\"widthMm\":1,",
        """{%"widthMm":1}""" + "#\"x\":1,",
        """{"parts":[%{}]}""" + "#5,",
        """{"parts":[%{}]}""" + "#{\"y\":1,\"y\":2},",
        """{"name":"a","widthMm":100,"part":{%"xMm":1}}""" + "#\"xMm\":1,",
        """{"name":"a","widthMm":100,"kind":"%"}""" + "#xxxxxxxx",
        """{"%":1}""" + "#xxxxxxxx",
        """{%"\ud800":1}""" + "#\"\\ud800\":1,",
    ];

    [Theory, MemberData(nameof(Shapes))]
    public void Four_times_the_body_is_at_most_about_four_times_the_work(string shape)
    {
        // The first time fills the pools of the runtime, which later runs draw on.
        Diagnose(shape, Some);
        Diagnose(shape, Many);
        var (some, _) = Diagnose(shape, Some);
        var (many, diagnosis) = Diagnose(shape, Many);

        // What is allocated is counted by the runtime, and every copy of a growing list would show in it.
        Assert.InRange(many, 0, 4.4 * some + 20_000);
        Assert.InRange(diagnosis.Errors.Values.Sum(faults => faults.Count), 1, Problem.MostFaults);
        Assert.InRange(JsonSerializer.SerializeToUtf8Bytes(diagnosis, StrictJson.Options).Length, 1, 16 * 1024);
    }

    [Theory]
    [InlineData("""{"name":"a","widthMm":1,"widthMm":2,"widthMm":3,"colour":1}""", "/widthMm")]
    [InlineData("""{"colour":1,"colour":2,"colour":3,"shade":1}""", "/colour")]
    public void A_member_given_twice_ends_the_search(string body, string place)
    {
        var diagnosis = JsonFaults.Find(Encoding.UTF8.GetBytes(body), typeof(Sample), StrictJson.Options);

        Assert.Equal([place], diagnosis.Errors.Keys);
        Assert.Equal("This member is given twice.", diagnosis.Errors[place][^1].Reason);
    }

    [Fact]
    public void More_faults_than_are_listed_are_said_to_be_there()
    {
        var body = $"{{\"parts\":[{string.Join(',', Enumerable.Repeat("5", 100))}]}}";

        var diagnosis = JsonFaults.Find(Encoding.UTF8.GetBytes(body), typeof(Sample), StrictJson.Options);

        Assert.Equal(Problem.MostFaults, diagnosis.Errors.Count);
        Assert.EndsWith($"There are more faults; the first {Problem.MostFaults} are in errors.", diagnosis.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Broken_rules_are_listed_up_to_a_number_and_counted_beyond()
    {
        var refusal = Validated.Refusal([.. Enumerable.Range(0, 500).Select(index => ($"/list/{index}", new Fault("No.")))]);

        Assert.Equal(Problem.MostFaults, refusal.Errors!.Count);
        Assert.Equal($"500 values cannot be used; the first {Problem.MostFaults} are in errors.", refusal.Detail);
    }

    [Fact]
    public void A_list_that_is_too_long_is_not_looked_into()
    {
        var request = new BalanceCorrectionRequest
        {
            DesignCode = "p1",
            Stage = "sawn",
            MassG = 900,
            BalanceMm = 800,
            Readings = [.. Enumerable.Repeat(new ThicknessReadingRequest(), 20_000)],
        };

        var failure = Assert.Single(new BalanceCorrectionValidator().Validate(request).Errors);

        Assert.Equal(nameof(BalanceCorrectionRequest.Readings), failure.PropertyName);
    }

    private static (double Bytes, JsonDiagnosis Diagnosis) Diagnose(string shape, int times)
    {
        var parts = shape.Split('#');
        var body = Encoding.UTF8.GetBytes(parts[0].Replace("%", string.Concat(Enumerable.Repeat(parts[1], times)), StringComparison.Ordinal));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var diagnosis = JsonFaults.Find(body, typeof(Sample), StrictJson.Options);
        return (GC.GetAllocatedBytesForCurrentThread() - before, diagnosis);
    }
}
