namespace PaddleApi.Hosting;

/// <summary>Media types that several addresses answer in.</summary>
internal static class MediaTypes
{
    /// <summary>JSON.</summary>
    public const string Json = "application/json";

    /// <summary>SVG.</summary>
    public const string Svg = "image/svg+xml";
}
