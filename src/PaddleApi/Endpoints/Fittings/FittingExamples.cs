using Paddle.Design.Fitting;

namespace PaddleApi.Endpoints.Fittings;

/// <summary>Requests that work, for readers of the description and for tests.</summary>
internal static class FittingExamples
{
    /// <summary>A guest of an invented hire fleet, every member written out; the same as docs/examples/fitting.json.</summary>
    public static FittingRequest Guest { get; } = DocumentedExample.Read<FittingRequest>("fitting.json");

    /// <summary>The least that a fitting can be asked with.</summary>
    public static FittingRequest Least { get; } = new() { Paddler = new() { StatureMm = 1720 } };

    /// <summary>The sizes of an invented hire fleet; the same as docs/examples/size-run.json.</summary>
    public static SizeRunRequest Fleet { get; } = DocumentedExample.Read<SizeRunRequest>("size-run.json");

    /// <summary>A club that knows its members.</summary>
    public static SizeRunRequest Club { get; } = new()
    {
        Sizes = 2,
        StepMm = 25.4,
        Customers =
        [
            new() { HandSpacingMm = 790 }, new() { HandSpacingMm = 815 }, new() { StatureMm = 1690 }, new() { HandSpacingMm = 880 },
            new() { HandSpacingMm = 905 }, new() { OverallLengthMm = 1600 },
        ],
        Drawing = new() { Units = "inch" },
    };
}
