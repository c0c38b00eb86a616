using System.Text.Json.Serialization;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Designs;

/// <summary>Reading and writing of designs, generated at build time so that the first caller does not wait for it.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(DesignRequest))]
[JsonSerializable(typeof(DesignResponse))]
internal sealed partial class DesignJson : JsonSerializerContext;
