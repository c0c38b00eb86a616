using Paddle.Design.Request;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Requests that work, for readers of the description, for the trial at start and for tests.</summary>
internal static class DesignExamples
{
    /// <summary>A paddle of an invented hire fleet, every member written out; the same as docs/examples/hire-paddle.json.</summary>
    public static DesignRequest HirePaddle { get; } = DocumentedExample.Read<DesignRequest>("hire-paddle.json");

    /// <summary>One glued up of a light shaft and hard wings; the same as docs/examples/laminated-paddle.json.</summary>
    public static DesignRequest LaminatedPaddle { get; } = DocumentedExample.Read<DesignRequest>("laminated-paddle.json");

    /// <summary>The least that can be asked.</summary>
    public static DesignRequest Least { get; } = new() { HandSpacingMm = 880, Wood = new() { Species = "white-ash" } };
}
