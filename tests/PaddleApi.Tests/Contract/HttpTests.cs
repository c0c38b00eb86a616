using Xunit.Abstractions;

[assembly: CollectionBehavior(DisableTestParallelization = true)]
[assembly: TestCollectionOrderer("PaddleApi.Tests.Contract.CoverageLast", "PaddleApi.Tests")]

namespace PaddleApi.Tests.Contract;

/// <summary>The service that the HTTP tests share, and a client for it.</summary>
public sealed class ApiFixture : IDisposable
{
    public ApiFixture()
    {
        Factory = new ApiFactory();
        Client = Factory.Client();
    }

    public ApiFactory Factory { get; }

    public HttpClient Client { get; }

    public void Dispose()
    {
        Client.Dispose();
        Factory.Dispose();
    }
}

/// <summary>Services with settings of their own, each started once for the tests of a class.</summary>
public sealed class OwnServices : IDisposable
{
    private readonly Dictionary<string, (ApiFactory Factory, HttpClient Client)> started = [];

    /// <summary>The service with these settings, and a client for it, over real sockets where only the real server will do.</summary>
    public (ApiFactory Factory, HttpClient Client) With(bool overSockets, params (string Key, string Value)[] settings)
    {
        var name = $"{overSockets} {string.Join(' ', settings)}";
        if (started.TryGetValue(name, out var known)) return known;
        var factory = new ApiFactory(settings.ToDictionary(setting => setting.Key, setting => setting.Value));
        return started[name] = (factory, overSockets ? factory.SocketClient() : factory.Client());
    }

    public void Dispose()
    {
        foreach (var (factory, client) in started.Values)
        {
            client.Dispose();
            factory.Dispose();
        }
    }
}

/// <summary>Every test class that sends requests belongs here: <c>[Collection(HttpTests.Name)]</c>.</summary>
[CollectionDefinition(Name)]
public sealed class HttpTests : ICollectionFixture<ApiFixture>
{
    public const string Name = "HTTP";
}

/// <summary>The collection of the one test that counts what the others have seen.</summary>
[CollectionDefinition(Name)]
public sealed class CoverageCount
{
    public const string Name = "Coverage";
}

/// <summary>Runs the count after everything else.</summary>
public sealed class CoverageLast : ITestCollectionOrderer
{
    public IEnumerable<ITestCollection> OrderTestCollections(IEnumerable<ITestCollection> testCollections) =>
        testCollections.OrderBy(collection => collection.DisplayName == CoverageCount.Name ? 1 : 0)
            .ThenBy(collection => collection.DisplayName, StringComparer.Ordinal);
}
