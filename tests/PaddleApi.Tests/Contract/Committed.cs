namespace PaddleApi.Tests.Contract;

/// <summary>The description that is committed beside the code.</summary>
public static class Committed
{
    public static string FilePath { get; } = Path.Combine(Root(), "openapi", "paddle-api.v1.json");

    /// <summary>The description as it was last released, without its words and examples.</summary>
    public static string ReleasedPath { get; } = Path.Combine(Root(), "openapi", "released.json");

    public static string ChangelogPath { get; } = Path.Combine(Root(), "docs", "changelog.md");

    private static readonly Lazy<ApiDescription> Read = new(() => new ApiDescription(File.ReadAllText(FilePath)));

    public static ApiDescription Description => Read.Value;

    // The test runs somewhere below the folder that holds the solution.
    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "PaddleApi.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run below the folder of the solution.");
        }

        return folder.FullName;
    }
}
