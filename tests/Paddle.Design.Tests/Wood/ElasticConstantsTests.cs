using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class ElasticConstantsTests
{
    [Fact] // USDA Wood Handbook table 5-3 footnote c says 10 %; beam theory at E/G 16 and 14 depths gives 9.80 %
    public void Shear_share_at_14_depths_is_the_handbooks_10_percent()
    {
        var share = ElasticConstants.ShearShareOfSag(ElasticConstants.DefaultModulusOverShearModulus, 14);
        Assert.Equal(0.0980, share, 0.000051);
        // The footnote's figure is a whole percent.
        Assert.Equal(ElasticConstants.TrueOverApparent, 1 + share, 0.005);
    }

    [Fact] // sugar maple GLR/EL 0.111, GLT/EL 0.063, read on a Wood Handbook data page
    public void Shear_modulus_is_the_mean_of_both_planes() => Assert.Equal(
        13860 * 0.087, ElasticConstants.ShearModulusMPa(WoodCatalogue.Find("sugar-maple")!, ElasticConstants.TrueModulusMPa(12600)), 1e-9);

    [Theory]
    [InlineData("butternut")] // neither ratio published
    [InlineData("white-oak")] // only one
    public void Shear_modulus_without_both_ratios_is_a_sixteenth(string id) =>
        Assert.Equal(1000.0, ElasticConstants.ShearModulusMPa(WoodCatalogue.Find(id)!, 16000), 1e-9);
}
