using System.Text.Json;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Tests.Contract;

/// <summary>How a caller reads answers.</summary>
public static class TestJson
{
    /// <summary>As strict as the service, but a member that is null may be absent: that is how answers are written.</summary>
    public static JsonSerializerOptions Reading { get; } = new(StrictJson.Options) { RespectRequiredConstructorParameters = false };
}
