using System.Net;
using PaddleApi.Hosting.Problems;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class ProblemPageTests(ApiFixture api)
{
    [Fact]
    public async Task Every_type_of_problem_leads_to_its_explanation()
    {
        foreach (var kind in ProblemKinds.All)
        {
            using var answer = await api.Client.GetAsync(kind.Type);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
    }
}
