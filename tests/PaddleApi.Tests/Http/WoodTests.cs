using System.Net.Http.Json;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Problems;
using PaddleApi.Contracts.Woods;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class WoodTests(ApiFixture api)
{
    [Fact]
    public async Task The_list_leads_to_every_wood()
    {
        var list = await api.Client.GetFromJsonAsync<WoodList>("/v1/woods", TestJson.Reading);

        Assert.Equal(WoodCatalogue.All.Select(species => species.Id), list!.Woods.Select(wood => wood.Id));
        foreach (var wood in list.Woods)
        {
            var detail = await api.Client.GetFromJsonAsync<WoodDetail>(wood.Href, TestJson.Reading);
            Assert.Equal(wood.Id, detail!.Id);
            Assert.Equal(wood.ModulusOfRupture12MPa, detail.Figures.ModulusOfRupture12MPa);
            Assert.All(detail.Figures.Sources, figure => Assert.False(string.IsNullOrWhiteSpace(figure.Source)));
        }
    }

    [Fact]
    public async Task White_ash_has_the_figures_of_the_handbook()
    {
        var ash = await api.Client.GetFromJsonAsync<WoodDetail>("/v1/woods/white-ash", TestJson.Reading);

        // USDA Wood Handbook table 5-3a, white ash at 12 %: G 0.60, MOE 12 000 MPa, MOR 103 MPa; 0.60 · 1.12 · 1000 = 672 kg/m3.
        Assert.Equal(0.60, ash!.Figures.SpecificGravity12);
        Assert.Equal(12000, ash.Figures.ApparentModulus12MPa);
        Assert.Equal(13200, ash.Figures.Modulus12MPa, 1e-6); // the table's footnote: 10 % more once shear counts apart
        Assert.Equal(103, ash.Figures.ModulusOfRupture12MPa);
        Assert.Equal(672, ash.DensityAt12KgM3);
    }

    [Theory]
    [InlineData("whit-ash", "white-ash")]
    [InlineData("White-Ash", "white-ash")]
    [InlineData("ash", "white-ash")]
    [InlineData("yew", "heart")]
    public async Task A_wood_that_is_not_here_is_answered_with_help(string id, string help)
    {
        using var answer = await api.Client.GetAsync($"/v1/woods/{id}");
        var problem = await answer.Content.ReadFromJsonAsync<Problem>(TestJson.Reading);

        Assert.Equal(404, problem!.Status);
        Assert.Contains(help, problem.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_long_id_is_not_echoed_whole()
    {
        using var answer = await api.Client.GetAsync($"/v1/woods/{new string('x', 3000)}");
        var problem = await answer.Content.ReadFromJsonAsync<Problem>(TestJson.Reading);

        Assert.True(problem!.Detail.Length < 300);
    }
}
