using System.Net.Http.Json;
using Paddle.Design.Outline;
using PaddleApi.Contracts.Blades;
using PaddleApi.Contracts.Problems;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class BladeFamilyTests(ApiFixture api)
{
    [Fact]
    public async Task The_list_leads_to_every_family_with_the_same_defaults()
    {
        var list = await api.Client.GetFromJsonAsync<BladeFamilyList>("/v1/blade-families", TestJson.Reading);

        Assert.Equal(BladeFamilies.All.Select(family => family.Id), list!.BladeFamilies.Select(family => family.Id));
        foreach (var family in list.BladeFamilies)
        {
            var detail = await api.Client.GetFromJsonAsync<BladeFamilyDetail>(family.Href, TestJson.Reading);
            Assert.Equal(family.Defaults, detail!.Defaults);
            Assert.InRange(detail.Defaults.WidestAt, detail.Limits.WidestAt.Min, detail.Limits.WidestAt.Max);
            Assert.InRange(detail.Defaults.LengthMm, detail.Usual.LengthMm.Min, detail.Usual.LengthMm.Max);
        }
    }

    [Fact]
    public async Task A_family_that_is_not_here_is_answered_with_all_there_are()
    {
        using var answer = await api.Client.GetAsync("/v1/blade-families/otter");
        var problem = await answer.Content.ReadFromJsonAsync<Problem>(TestJson.Reading);

        Assert.All(BladeFamilies.All, family => Assert.Contains(family.Id, problem!.Detail, StringComparison.Ordinal));
    }
}
