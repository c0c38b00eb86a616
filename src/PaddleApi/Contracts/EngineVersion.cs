using System.Reflection;
using Paddle.Design;
using Paddle.Drawings;

namespace PaddleApi.Contracts;

/// <summary>Which engine computed an answer.</summary>
internal static class EngineVersion
{
    /// <summary>The version, as in the member <c>engineVersion</c> of an answer.</summary>
    public static string Text { get; } =
        typeof(PaddleDesigner).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <summary>
    /// Marks the exact build of the code that makes answers. Builds are deterministic, so the mark changes only when the code does: two
    /// servers of one build agree, and an old tag dies with its build even when nobody remembered to raise the version.
    /// </summary>
    public static string Build { get; } = string.Join(
        '.',
        new[] { typeof(PaddleDesigner).Assembly, typeof(DesignFiles).Assembly, typeof(EngineVersion).Assembly }
            .Select(part => part.ManifestModule.ModuleVersionId.ToString("N")));
}
