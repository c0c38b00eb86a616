namespace PaddleApi.Tests.Contract;

[Collection(CoverageCount.Name)]
public sealed class CoverageTests
{
    /// <summary>Only meaningful after all others: run the whole project, not this test alone.</summary>
    [Fact]
    public void Every_documented_answer_was_received_by_some_test()
    {
        var unseen = Coverage.Unseen(ApiFactory.Description);

        Assert.True(unseen.Count == 0, $"Documented, but no test received it:\n{string.Join('\n', unseen)}");
    }
}
