namespace PaddleApi.Page.Tests;

/// <summary>A test in a real browser; where the machine has none it is skipped and says so, and never passes unrun.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.WhyNot;
}

/// <summary>The same over a table of cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.WhyNot;
}

/// <summary>The machine's own Chromium: none is fetched.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    /// <summary>Where it is; null where there is none.</summary>
    public static string? Path { get; } = Names
        .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
            .Where(folder => folder.Length > 0).Select(folder => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

    /// <summary>Why no test can run; null where they can.</summary>
    public static string? WhyNot => Path is null ? "No Chromium on this machine: install Debian's package chromium to run the tests of the page." : null;
}
