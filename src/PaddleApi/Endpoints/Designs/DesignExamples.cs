using System.Text.Json;
using Paddle.Design.Request;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Requests that work, for readers of the description, for the trial at start and for tests.</summary>
internal static class DesignExamples
{
    private const string Resource = "hire-paddle.json";

    /// <summary>A paddle of an invented hire fleet, every member written out; the same as docs/examples/hire-paddle.json.</summary>
    public static DesignRequest HirePaddle { get; } = Read();

    /// <summary>The least that can be asked.</summary>
    public static DesignRequest Least { get; } = new() { HandSpacingMm = 880, Wood = new() { Species = "white-ash" } };

    private static DesignRequest Read()
    {
        using var file = typeof(DesignExamples).Assembly.GetManifestResourceStream(Resource)!;
        return JsonSerializer.Deserialize<DesignRequest>(file, StrictJson.Options)!;
    }
}
