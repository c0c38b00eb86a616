using System.Text.Json;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Endpoints;

/// <summary>Requests of docs/examples, which the service carries with it: readers of the description, tests and the trial at start use the same.</summary>
internal static class DocumentedExample
{
    /// <summary>Reads one.</summary>
    /// <param name="file">Its file name.</param>
    public static T Read<T>(string file)
    {
        using var text = typeof(DocumentedExample).Assembly.GetManifestResourceStream(file)!;
        return JsonSerializer.Deserialize<T>(text, StrictJson.Options)!;
    }
}
