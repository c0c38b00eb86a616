namespace Paddle.Design.Tests.House;

/// <summary>The files of the repository that the tests run in.</summary>
internal static class Repository
{
    internal static string Root { get; } = FindRoot();

    internal static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Source files below a folder of the repository, build output left out.</summary>
    internal static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "PaddleApi.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests must run inside the repository.");
    }
}
