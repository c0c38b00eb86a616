using System.Text.Json;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Strength;
using Paddle.Design.Wood;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Tests.Designs;

public sealed class DesignRequestReaderTests
{
    [Fact]
    public void The_least_request_takes_the_custom_of_the_trade()
    {
        var specification = Requests.Read(Requests.Least).Complete().Specification;

        var family = BladeFamilies.Find("ottertail")!;
        Assert.Equal(new(20, 95, 900, 938, 938 + family.DefaultLengthMm), specification.Form.Places);
        Assert.Equal(new(GripStyle.Pear, 64, 95, GripFaces.Matching, 5), specification.Form.Grip);
        Assert.Equal(
            new(family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null),
            specification.Form.Blade);
        Assert.Equal(0, specification.Form.BendDegrees);
        Assert.Equal(new PinnedSizes(), specification.Pinned);
        Assert.Equal(new(BalanceAim.LowerHand, 12, 1.3, null, null, null), specification.Aims);
        Assert.Equal(("white-ash", 12.0, 0.04), (specification.Wood.Species, specification.Wood.MoisturePercent, specification.Wood.SlopeOfGrain));
    }

    [Fact]
    public void Every_member_reaches_its_place_in_the_specification()
    {
        var request = Requests.Read("""
            {"label":"x","handSpacingMm":801,"freeboardMm":31,"overallLengthMm":1401,
             "blade":{"family":"beavertail","lengthMm":552,"widthMm":161,"widestAt":0.61,"fullness":0.79,
               "throatThicknessMm":25,"middleThicknessMm":13,"tipThicknessMm":8,"edgeThicknessMm":5},
             "shaft":{"widthMm":30,"thicknessMm":32,"upperWidthMm":28,"upperThicknessMm":29,"bendDegrees":7},
             "grip":{"style":"palm","widthMm":71,"lengthMm":86,"thicknessMm":27,"faces":"one-sided","hollowDepthMm":3},
             "wood":{"species":"black-cherry","moisturePercent":9,"slopeOfGrain":0.03,"measuredDensityKgM3":555,"boardThicknessMm":44,"measuredModulusMPa":9999,"treatment":"none"},
             "construction":{"kind":"one-piece","strips":null},
             "finish":{"blade":"oil","bladeCoats":4,"shaft":"varnish","shaftCoats":5,"tipReinforcement":"glass-cloth"},
             "aims":{"balanceAt":"throat","balanceToleranceMm":21,"minimumSafetyFactor":1.7,"benchFlexMm":{"min":3,"max":17},"maximumMassG":900},
             "loads":{"duty":"expedition","bodyMassKg":61,"touringStrokeN":81,"hardStrokeN":301,"braceN":302,"pushOffAxialN":303,"pushOffSideN":104,"edgePressN":305},
             "drawing":{"units":"inch"}}
            """);

        var (filled, specification) = request.Complete();

        Assert.Equal(new(17, 86, 818, 849, 1401), specification.Form.Places);
        Assert.Equal(new(BladeFamilies.Find("beavertail"), 552, 161, 0.61, 0.79, null), specification.Form.Blade);
        Assert.Equal(new(GripStyle.Palm, 71, 86, GripFaces.OneSided, 3), specification.Form.Grip);
        Assert.Equal(7, specification.Form.BendDegrees);
        Assert.Equal(new PinnedSizes(30, 32, 28, 29, 25, 13, 8, 5, 27), specification.Pinned);
        Assert.Equal(WoodInUse.Resolve(WoodCatalogue.Find("black-cherry")!, 9, 0.03, 555, 9999), specification.Wood);
        Assert.Equal(61, specification.Loads.BodyMassKg);
        Assert.Equal(Duty.Expedition, specification.Loads.Duty);
        Assert.Equal(new FinishChoice(SurfaceFinish.Oil, 4, SurfaceFinish.Varnish, 5, true), specification.Finish);
        Assert.Equal((44.0, PaddleSpecification.ThirtySecondMm), (specification.BoardThicknessMm!.Value, specification.LatticeMm));
        Assert.Equal([81, 301, 302, 303, 305], specification.Loads.Cases.Select(loadCase => loadCase.ForceN));
        Assert.Equal(104, specification.Loads.Case("push-off").SideForceN);
        Assert.Equal(new Aims(BalanceAim.Throat, 21, 1.7, 3, 17, 900), specification.Aims);
        Assert.Equal(Json(request), Json(filled));
    }

    [Theory]
    [InlineData(Requests.Least)]
    [InlineData("""{"overallLengthMm":1501.3,"wood":{"species":"sitka-spruce"},"blade":{"family":"teardrop"},"shaft":{"bendDegrees":12},"grip":{"style":"t"},"loads":{"bodyMassKg":63.7}}""")]
    [InlineData("""{"handSpacingMm":812.7,"wood":{"species":"white-ash"},"blade":{"offsets":[{"xMm":0,"halfBreadthMm":15},{"xMm":150,"halfBreadthMm":50.3},{"xMm":340,"halfBreadthMm":75.05},{"xMm":520.7,"halfBreadthMm":58},{"xMm":620.1,"halfBreadthMm":0}]}}""")]
    public void The_echo_given_back_is_the_same_design(string json)
    {
        var first = Requests.Read(json).Complete();
        var again = first.Request.Complete();

        Assert.Equal(Json(first.Request), Json(again.Request));
        Assert.Equal(first.Specification.Form.Places, again.Specification.Form.Places);
        Assert.Equal(first.Specification.Pinned, again.Specification.Pinned);
        Assert.Equal(first.Specification.Loads.Cases, again.Specification.Loads.Cases);
        Assert.Equal(first.Specification.Wood, again.Specification.Wood);
    }

    [Fact]
    public void Usual_forces_scale_with_body_mass_and_are_those_the_echo_shows()
    {
        var resolved = Requests.Read(Requests.With("/loads/bodyMassKg=60")).Complete().Specification;
        var loads = resolved.Loads;
        var usual = Loads.For(Duty.Touring, 60, resolved.Form.BladeAreaMm2());

        Assert.Equal(60, loads.BodyMassKg);
        Assert.All(usual.Cases.Zip(loads.Cases), pair =>
        {
            Assert.Equal(Math.Round(pair.First.ForceN, 1), pair.Second.ForceN);
            Assert.Equal(Math.Round(pair.First.SideForceN, 1), pair.Second.SideForceN);
        });
    }

    [Fact]
    public void The_edge_is_pressed_with_the_hard_stroke_unless_told_otherwise() =>
        Assert.Equal(444, Requests.Read(Requests.With("/loads/hardStrokeN=444")).Complete().Specification.Loads.Case("edge-press").ForceN);

    [Fact]
    public void Offsets_give_length_width_widest_point_and_shaft()
    {
        var table = Requests.Offsets.Replace("[{", """[{"xMm":0,"halfBreadthMm":15.5},{""", StringComparison.Ordinal);
        var (filled, specification) = Requests.Read(Requests.With($"/blade/offsets={table}")).Complete();

        var blade = specification.Form.Blade;
        Assert.Equal((620, 150, 340 / 620.0), (blade.LengthMm, blade.WidthMm, blade.WidestAt));
        Assert.Null(blade.Family);
        Assert.Equal(31, specification.Pinned.ShaftWidthMm);
        Assert.Equal((null, 620.0, 150.0, 31.0), (filled.Blade!.Family, filled.Blade.LengthMm, filled.Blade.WidthMm, filled.Shaft!.WidthMm));
        Assert.Equal(new(340, 75), blade.Offsets![3]);
    }

    [Fact]
    public void The_example_in_the_docs_is_the_example_of_the_description()
    {
        var path = Path.Combine(AppContext.BaseDirectory, "Examples", "hire-paddle.json");
        Assert.Equal(Json(Requests.Read(File.ReadAllText(path))), Json(DesignExamples.HirePaddle));
    }

    private static string Json(DesignRequest request) => JsonSerializer.Serialize(request, StrictJson.Options);
}
