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
