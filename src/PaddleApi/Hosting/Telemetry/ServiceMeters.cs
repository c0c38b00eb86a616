using System.Diagnostics.Metrics;
using System.Text.RegularExpressions;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Hosting.Telemetry;

/// <summary>
/// What the service counts beside what the platform counts of requests: designs and how they came out, answers that a caller held already,
/// refusals by rule, and the gates. No tag holds a caller's word or a design.
/// </summary>
internal sealed partial class ServiceMeters
{
    /// <summary>Name of the meter.</summary>
    public const string Name = "PaddleApi";

    private readonly Histogram<double> solves;
    private readonly Counter<long> held;
    private readonly Counter<long> refusals;

    /// <summary>The meters of a service.</summary>
    public ServiceMeters(IMeterFactory factory, SolveGate solving, FileGate files, BodyGate bodies)
    {
        var meter = factory.Create(Name);
        solves = meter.CreateHistogram("paddle.solve.duration", "s", "Time to solve a design, by outcome.", advice: new InstrumentAdvice<double>
        {
            HistogramBucketBoundaries = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5],
        });
        held = meter.CreateCounter<long>("paddle.answers.held", "{answer}", "Answers of 304: the caller, or a cache before it, held them already.");
        refusals = meter.CreateCounter<long>("paddle.refusals", "{refusal}", "Refusals by kind of problem, and by place where a value breaks a rule.");
        (string Name, WorkGate Gate)[] gates = [("solving", solving), ("files", files), ("bodies", bodies)];
        meter.CreateObservableGauge("paddle.gate.waiting", () => gates.Select(one => Measured(one.Gate.Waiting, one.Name)), "{request}", "Requests that wait at a gate.");
        meter.CreateObservableGauge("paddle.gate.busy", () => gates.Select(one => Measured(one.Gate.Busy, one.Name)), "{request}", "Places of a gate that are taken.");
        meter.CreateObservableGauge(
            "paddle.gate.expected_wait", () => gates.Select(one => Measured(one.Gate.ExpectedWait.TotalSeconds, one.Name)), "s", "Wait to expect at a gate.");
    }

    /// <summary>Counts a design solved.</summary>
    public void Solved(TimeSpan took, bool isMet) => solves.Record(took.TotalSeconds, new KeyValuePair<string, object?>("outcome", isMet ? "met" : "closest"));

    /// <summary>Counts an answer that the caller held already.</summary>
    public void Held() => held.Add(1);

    /// <summary>Counts a refusal.</summary>
    /// <param name="place">Where a value breaks a rule of the contract, as a JSON Pointer; null where it could hold a caller's own words.</param>
    public void Refused(string kind, string? place)
    {
        var kindTag = new KeyValuePair<string, object?>("kind", kind);
        if (place is null) refusals.Add(1, kindTag);
        else refusals.Add(1, kindTag, new("place", Index().Replace(place, "/#")));
    }

    private static Measurement<T> Measured<T>(T value, string gate)
        where T : struct => new(value, new KeyValuePair<string, object?>("gate", gate));

    [GeneratedRegex("/[0-9]+", RegexOptions.CultureInvariant)]
    private static partial Regex Index();
}
