using PaddleApi.Contracts.Builds;

namespace PaddleApi.Endpoints.Builds;

/// <summary>Requests about making a paddle that work.</summary>
internal static class BuildExamples
{
    private const string Resource = "balance-correction.json";

    /// <summary>
    /// A paddle of an invented hire fleet, weighed and balanced with its blade planed; the same as
    /// docs/examples/balance-correction.json. Its code is fixed, as a code kept by a caller is: the engine that reads it may be newer.
    /// </summary>
    public static BalanceCorrectionRequest Weighed { get; } = DocumentedExample.Read<BalanceCorrectionRequest>(Resource);
}
