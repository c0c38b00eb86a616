using Paddle.Design.Balance;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Tests.Designs;

/// <summary>One row for each rule: what breaks it, the place named, the range told and the reason given.</summary>
public sealed class DesignValidationTests
{
    private static readonly DesignRequestValidator Validator = new();

    [Theory]
    [InlineData("/label=\"two\\nlines\"", "/label", 0, 80, "characters", "print on one line")]
    [InlineData("/label=\"turned \\u202e about\"", "/label", 0, 80, "characters", "print on one line")]
    [InlineData("/label=\"123456789 123456789 123456789 123456789 123456789 123456789 123456789 123456789 !\"", "/label", 0, 80, "characters", "80")]
    [InlineData("/handSpacingMm=399.9", "/handSpacingMm", 400, 1100, "mm", "person")]
    [InlineData("/handSpacingMm=1100.1", "/handSpacingMm", 400, 1100, "mm", "person")]
    [InlineData("/freeboardMm=-0.1", "/freeboardMm", 0, 150, "mm", "throat")]
    [InlineData("/freeboardMm=150.1", "/freeboardMm", 0, 150, "mm", "throat")]
    [InlineData("/overallLengthMm=799", "/overallLengthMm", 800, 2100, "mm", "single-blade")]
    [InlineData("/overallLengthMm=2100.5", "/overallLengthMm", 800, 2100, "mm", "single-blade")]
    [InlineData("/handSpacingMm=null", "/handSpacingMm", null, null, null, "handSpacingMm, overallLengthMm, or both")]
    [InlineData("/blade/family=\"otter\"", "/blade/family", null, null, null, "no blade family")]
    [InlineData("/blade/lengthMm=349", "/blade/lengthMm", 350, 1000, "mm", "Blade lengths")]
    [InlineData("/blade/lengthMm=1001", "/blade/lengthMm", 350, 1000, "mm", "Blade lengths")]
    [InlineData("/blade/widthMm=69", "/blade/widthMm", 70, 240, "mm", "Blade widths")]
    [InlineData("/blade/widthMm=241", "/blade/widthMm", 70, 240, "mm", "Blade widths")]
    [InlineData("/blade/widestAt=0.1", "/blade/widestAt", 0.22, 0.48, "fraction", "ottertail")]
    [InlineData("/blade/family=\"beavertail\"; /blade/widestAt=0.8", "/blade/widestAt", 0.45, 0.75, "fraction", "beavertail")]
    [InlineData("/blade/fullness=0.9", "/blade/fullness", 0.64, 0.77, "fraction", "ottertail")]
    [InlineData("/blade/throatThicknessMm=9", "/blade/throatThicknessMm", 10, 45, "mm", "no longer a paddle")]
    [InlineData("/blade/middleThicknessMm=3.9", "/blade/middleThicknessMm", 4, 40, "mm", "the solver chooses between")]
    [InlineData("/blade/tipThicknessMm=31", "/blade/tipThicknessMm", 3, 30, "mm", "no longer a paddle")]
    [InlineData("/blade/edgeThicknessMm=1.4", "/blade/edgeThicknessMm", 1.5, 20, "mm", "no longer a paddle")]
    [InlineData("/shaft/widthMm=19", "/shaft/widthMm", 20, 45, "mm", "no longer a paddle")]
    [InlineData("/shaft/thicknessMm=46", "/shaft/thicknessMm", 20, 45, "mm", "no longer a paddle")]
    [InlineData("/shaft/upperWidthMm=17", "/shaft/upperWidthMm", 18, 45, "mm", "no longer a paddle")]
    [InlineData("/shaft/upperThicknessMm=46", "/shaft/upperThicknessMm", 18, 45, "mm", "no longer a paddle")]
    [InlineData("/shaft/bendDegrees=15.5", "/shaft/bendDegrees", 0, 15, "degrees", "bend")]
    [InlineData("/shaft/bendDegrees=-1", "/shaft/bendDegrees", 0, 15, "degrees", "bend")]
    [InlineData("/shaft/widthMm=29; /shaft/upperWidthMm=30", "/shaft/upperWidthMm", null, 29, "mm", "widen")]
    [InlineData("/shaft/thicknessMm=29; /shaft/upperThicknessMm=30", "/shaft/upperThicknessMm", null, 29, "mm", "thicken")]
    [InlineData("/shaft/thicknessMm=25; /blade/throatThicknessMm=26", "/blade/throatThicknessMm", null, 25, "mm", "throat may not be thicker than the shaft")]
    [InlineData("/shaft/thicknessMm=25; /blade/tipThicknessMm=26", "/blade/tipThicknessMm", null, 25, "mm", "tip may not be thicker than the shaft")]
    [InlineData("/blade/middleThicknessMm=9; /blade/edgeThicknessMm=10", "/blade/edgeThicknessMm", null, 9, "mm", "edge may not be thicker than the middle")]
    [InlineData("/grip/style=\"tee\"", "/grip/style", null, null, null, "styles")]
    [InlineData("/grip/faces=\"both\"", "/grip/faces", null, null, null, "palm")]
    [InlineData("/grip/widthMm=86", "/grip/widthMm", 45, 85, "mm", "pear grip")]
    [InlineData("/grip/style=\"t\"; /grip/widthMm=79", "/grip/widthMm", 80, 130, "mm", "t grip")]
    [InlineData("/grip/lengthMm=69", "/grip/lengthMm", 70, 140, "mm", "pear grip")]
    [InlineData("/grip/thicknessMm=17", "/grip/thicknessMm", 18, 50, "mm", "no longer a paddle")]
    [InlineData("/grip/hollowDepthMm=15.1; /grip/thicknessMm=50", "/grip/hollowDepthMm", 0, 15, "mm", "no longer a grip")]
    [InlineData("/grip/hollowDepthMm=6; /grip/thicknessMm=20", "/grip/hollowDepthMm", 0, 5.25, "mm", "hollowed on two faces")]
    [InlineData("/grip/hollowDepthMm=11; /grip/thicknessMm=20; /grip/faces=\"one-sided\"", "/grip/hollowDepthMm", 0, 10.5, "mm", "hollowed on one face")]
    [InlineData("/wood=null", "/wood/species", null, null, null, "species is required")]
    [InlineData("/wood/species=null", "/wood/species", null, null, null, "species is required")]
    [InlineData("/wood/species=\"white-asj\"", "/wood/species", null, null, null, "nearest are white-ash")]
    [InlineData("/wood/species=\"yew\"", "/wood/species", null, null, null, "Poisonous")]
    [InlineData("/wood/treatment=\"creosoted\"", "/wood/treatment", null, null, null, "Creosote")]
    [InlineData("/wood/treatment=\"moonlight\"", "/wood/treatment", null, null, null, "not known")]
    [InlineData("/wood/moisturePercent=5.9", "/wood/moisturePercent", 6, 20, "percent", "20 %")]
    [InlineData("/wood/moisturePercent=20.1", "/wood/moisturePercent", 6, 20, "percent", "20 %")]
    [InlineData("/wood/slopeOfGrain=-0.01", "/wood/slopeOfGrain", 0, 1 / 12.0, "rise over run", "throat")]
    [InlineData("/wood/slopeOfGrain=0.09", "/wood/slopeOfGrain", 0, 1 / 12.0, "rise over run", "throat")]
    [InlineData("/wood/measuredDensityKgM3=199", "/wood/measuredDensityKgM3", 200, 1100, "kg/m3", "balsa")]
    [InlineData("/wood/measuredModulusMPa=25001", "/wood/measuredModulusMPa", 3000, 25000, "MPa", "Clear wood")]
    [InlineData("/wood/boardThicknessMm=27; /shaft/thicknessMm=26.5", "/shaft/thicknessMm", null, 26, "mm", "The board holds no more")]
    [InlineData("/wood/boardThicknessMm=22; /grip/thicknessMm=22", "/grip/thicknessMm", null, 21, "mm", "The board holds no more")]
    [InlineData("/construction/kind=\"folded\"", "/construction/kind", null, null, null, "one of these ways")]
    [InlineData("/construction/strips=[{\"species\":\"white-ash\",\"widthMm\":20}]", "/construction/strips", null, null, null, "belongs to a laminated paddle")]
    [InlineData("/construction={\"isMirrored\":false}", "/construction/isMirrored", null, null, null, "belongs to a laminated paddle")]
    [InlineData("/construction={\"adhesive\":\"epoxy\"}", "/construction/adhesive", null, null, null, "belongs to a laminated paddle")]
    [InlineData("/construction={\"tipPiece\":{\"species\":\"sugar-maple\",\"lengthMm\":20}}", "/construction/tipPiece", null, null, null, "belongs to a laminated paddle")]
    [InlineData("/construction={\"kind\":\"laminated\",\"tipPiece\":{\"species\":\"sugar-maple\",\"lengthMm\":200},\"strips\":[{\"widthMm\":36},{\"widthMm\":60}]}", "/construction/tipPiece/lengthMm", 10, 80, "mm", "own grain")]
    [InlineData("/construction={\"kind\":\"laminated\",\"facing\":{\"species\":\"sugar-maple\"},\"strips\":[{\"widthMm\":36},{\"widthMm\":60}]}", "/construction/facing/thicknessMm", 0.4, 1.2, "mm", "required")]
    [InlineData("/construction={\"kind\":\"laminated\",\"facing\":{\"thicknessMm\":0.8},\"strips\":[{\"widthMm\":36},{\"widthMm\":60}]}", "/construction/facing/species", null, null, null, "required")]
    [InlineData("/construction={\"kind\":\"laminated\"}", "/construction/strips", 2, 15, "strips", "needs its strips")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":200}]}", "/construction/strips", 2, 15, "strips", "one alone is one-piece")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"species\":\"white-ash\"}]}", "/construction/strips/1/widthMm", 3, 240, "mm", "needs its width")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":2},{\"widthMm\":100}]}", "/construction/strips/0/widthMm", 3, 240, "mm", "veneer")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"species\":\"yew\",\"widthMm\":70}]}", "/construction/strips/1/species", null, null, null, "Poisonous")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"species\":\"black-chery\",\"widthMm\":70}]}", "/construction/strips/1/species", null, null, null, "nearest are black-cherry")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"species\":\"black-cherry\",\"widthMm\":36},{\"widthMm\":70}]}", "/construction/strips/0/species", null, null, null, "on the centre line")]
    [InlineData("/construction={\"kind\":\"laminated\",\"isMirrored\":false,\"strips\":[{\"widthMm\":60},{\"species\":\"black-cherry\",\"widthMm\":40},{\"widthMm\":60}]}", "/construction/strips/1/species", null, null, null, "on the centre line")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"widthMm\":55}]}", "/construction/strips", 148, null, "mm", "fill the greatest width")]
    [InlineData("/construction={\"kind\":\"laminated\",\"isMirrored\":false,\"strips\":[{\"widthMm\":70},{\"widthMm\":70}]}", "/construction/strips", 148, null, "mm", "fill the greatest width")]
    [InlineData("/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"widthMm\":60},{\"widthMm\":20}]}", "/construction/strips/2/widthMm", null, null, null, "outside the paddle")]
    [InlineData("/construction={\"kind\":\"laminated\",\"adhesive\":\"hide\",\"strips\":[{\"widthMm\":36},{\"widthMm\":60}]}", "/construction/adhesive", null, null, null, "by their class")]
    [InlineData("/aims/balanceAt=\"middle\"", "/aims/balanceAt", null, null, null, "Balance")]
    [InlineData("/aims/balanceToleranceMm=0.9", "/aims/balanceToleranceMm", 1, 100, "mm", "weighed")]
    [InlineData("/aims/minimumSafetyFactor=0.7", "/aims/minimumSafetyFactor", 0.8, 5, "", "breaks")]
    [InlineData("/aims/maximumMassG=2501", "/aims/maximumMassG", 200, 2500, "g", "Masses")]
    [InlineData("/aims/benchFlexMm={\"min\":0.4}", "/aims/benchFlexMm/min", 0.5, 200, "mm", "rule")]
    [InlineData("/aims/benchFlexMm={\"max\":201}", "/aims/benchFlexMm/max", 0.5, 200, "mm", "rule")]
    [InlineData("/aims/benchFlexMm={\"min\":9,\"max\":9}", "/aims/benchFlexMm/max", 9, null, "mm", "above the least")]
    [InlineData("/loads/bodyMassKg=11", "/loads/bodyMassKg", 12, 250, "kg", "child")]
    [InlineData("/loads/touringStrokeN=9", "/loads/touringStrokeN", 10, 2000, "N", "person")]
    [InlineData("/loads/hardStrokeN=2001", "/loads/hardStrokeN", 10, 2000, "N", "person")]
    [InlineData("/loads/braceN=0", "/loads/braceN", 10, 2000, "N", "person")]
    [InlineData("/loads/pushOffAxialN=9", "/loads/pushOffAxialN", 10, 2000, "N", "person")]
    [InlineData("/loads/pushOffSideN=9", "/loads/pushOffSideN", 10, 2000, "N", "person")]
    [InlineData("/loads/edgePressN=-9", "/loads/edgePressN", 10, 2000, "N", "person")]
    [InlineData("/drawing/units=\"cubits\"", "/drawing/units", null, null, null, "lettered")]
    public void A_broken_rule_is_named_with_its_range_and_reason(
        string changes, string place, object? min, object? max, string? unit, string reason)
    {
        var faults = Faults(changes);

        var (at, fault) = Assert.Single(faults);
        Assert.Equal(place, at);
        Assert.Equal((Number(min), Number(max), unit), (fault.Min, fault.Max, fault.Unit));
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets", "fair curve")]
    [InlineData("[{\"xMm\":-1,\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/0/xMm", "from the throat")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":100,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/1/xMm", "follow one another")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":121},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/1/halfBreadthMm", "widest blade")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":-1},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/1/halfBreadthMm", "widest blade")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":0},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/1/halfBreadthMm", "the tip")]
    [InlineData("[{\"xMm\":100},{\"xMm\":200,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/0/halfBreadthMm", "needs its half-breadth")]
    [InlineData("[{\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/0/xMm", "needs its distance")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":40},{\"xMm\":200,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":340,\"halfBreadthMm\":0}]", "/blade/offsets/3/xMm", "blade's length")]
    [InlineData("[{\"xMm\":100,\"halfBreadthMm\":20},{\"xMm\":200,\"halfBreadthMm\":30},{\"xMm\":300,\"halfBreadthMm\":34},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets", "blade's width")]
    [InlineData("[{\"xMm\":0,\"halfBreadthMm\":9},{\"xMm\":200,\"halfBreadthMm\":60},{\"xMm\":300,\"halfBreadthMm\":75},{\"xMm\":600,\"halfBreadthMm\":0}]", "/blade/offsets/0/halfBreadthMm", "half the shaft's width")]
    public void A_table_of_offsets_must_be_one_blade(string offsets, string place, string reason)
    {
        var (at, fault) = Assert.Single(Faults($"/blade/offsets={offsets}"));
        Assert.Equal(place, at);
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/blade/family=\"ottertail\"", "/blade/family", "offsets give the blade's shape")]
    [InlineData("/blade/widestAt=0.4", "/blade/widestAt", "offsets give the blade's shape")]
    [InlineData("/blade/fullness=0.7", "/blade/fullness", "offsets give the blade's shape")]
    [InlineData("/blade/lengthMm=621", "/blade/lengthMm", "last station")]
    [InlineData("/blade/widthMm=151", "/blade/widthMm", "Twice the largest")]
    public void Offsets_and_other_members_must_agree(string change, string place, string reason)
    {
        var (at, fault) = Assert.Single(Faults($"/blade/offsets={Requests.Offsets}; {change}"));
        Assert.Equal(place, at);
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_station_at_the_throat_and_a_pinned_shaft_must_agree()
    {
        var table = Requests.Offsets.Replace("[{", """[{"xMm":0,"halfBreadthMm":15},{""", StringComparison.Ordinal);
        Assert.Empty(Faults($"/blade/offsets={table}; /shaft/widthMm=30"));
        var (at, fault) = Assert.Single(Faults($"/blade/offsets={table}; /shaft/widthMm=31"));
        Assert.Equal(("/shaft/widthMm", 30.0), (at, fault.Max));
    }

    [Fact]
    public void A_hollow_must_fit_the_thickest_grip_that_the_solver_may_choose()
    {
        var deepest = (SizeLimits.Solver[8].Max - 9.5) / 2;
        Assert.Empty(Faults(string.Create(null, $"/grip/hollowDepthMm={deepest}")));

        var (at, fault) = Assert.Single(Faults(string.Create(null, $"/grip/hollowDepthMm={deepest + 0.1}")));

        Assert.Equal(("/grip/hollowDepthMm", deepest), (at, fault.Max));
        Assert.Contains("the solver may choose", fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_that_do_not_add_up_are_named_each()
    {
        var faults = Faults("/freeboardMm=38; /overallLengthMm=1570; /blade/lengthMm=650");

        Assert.Equal(["/blade/lengthMm", "/freeboardMm", "/handSpacingMm", "/overallLengthMm"], faults.Select(fault => fault.Pointer).Order());
        Assert.All(faults, fault => Assert.Equal((2.0, 5.0, 60.0), (fault.Fault.Value, fault.Fault.Min, fault.Fault.Max)));
    }

    [Fact]
    public void The_narrowest_blade_on_the_widest_shaft_still_has_a_shoulder()
    {
        Assert.Empty(Faults("/blade/widthMm=70; /shaft/widthMm=45"));
        Assert.True(70 > SizeLimits.Pinned[0].Max + 20);
    }

    [Fact]
    public void All_broken_rules_come_at_once()
    {
        var faults = Faults("/handSpacingMm=1; /blade/family=\"x\"; /wood/species=\"x\"; /aims/minimumSafetyFactor=9; /loads/braceN=1; /drawing/units=\"x\"");

        Assert.Equal(
            ["/aims/minimumSafetyFactor", "/blade/family", "/drawing/units", "/handSpacingMm", "/loads/braceN", "/wood/species"],
            faults.Select(fault => fault.Pointer).Order());
    }

    [Fact]
    public void The_value_given_and_the_names_allowed_are_told()
    {
        var (_, fault) = Assert.Single(Faults("/blade/family=\"otter\""));
        Assert.Equal("otter", fault.Value);
        Assert.Contains("ottertail", fault.Allowed!);
        Assert.Equal(1.0, Assert.Single(Faults("/loads/braceN=1")).Fault.Value);
        Assert.Contains("white-ash", Assert.Single(Faults("/wood/species=\"white-asj\"")).Fault.Allowed!);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void What_is_no_finite_number_is_out_of_any_range(double value)
    {
        var request = Requests.Read(Requests.Least);
        request = request with
        {
            HandSpacingMm = value,
            Blade = new() { WidthMm = value, WidestAt = value, EdgeThicknessMm = value },
            Grip = new() { HollowDepthMm = value },
            Wood = request.Wood! with { SlopeOfGrain = value, MeasuredDensityKgM3 = value },
            Loads = new() { BraceN = value },
        };

        var pointers = Validator.Validate(request).Errors.Select(error => JsonPointers.FromPropertyPath(error.PropertyName)).ToHashSet();

        Assert.Superset(
            new HashSet<string>
            {
                "/handSpacingMm", "/blade/widthMm", "/blade/widestAt", "/blade/edgeThicknessMm", "/grip/hollowDepthMm", "/wood/slopeOfGrain",
                "/wood/measuredDensityKgM3", "/loads/braceN",
            },
            pointers);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/handSpacingMm=500; /freeboardMm=0; /blade/lengthMm=480")]
    [InlineData("/handSpacingMm=845; /freeboardMm=38; /overallLengthMm=1550; /blade/lengthMm=650")]
    [InlineData("/label=\"Grün \\uD83D\\uDEF6 日本\"")]
    [InlineData("/wood/slopeOfGrain=0.08333333333333333; /wood/moisturePercent=20")]
    [InlineData("/grip/style=\"t\"; /grip/faces=\"one-sided\"; /grip/hollowDepthMm=14.5")]
    [InlineData("/shaft/thicknessMm=30; /blade/throatThicknessMm=30; /blade/middleThicknessMm=30; /blade/tipThicknessMm=30; /blade/edgeThicknessMm=20")]
    [InlineData("/blade/offsets=" + Requests.Offsets + "; /blade/lengthMm=620; /blade/widthMm=150")]
    [InlineData("/aims/benchFlexMm={\"min\":5,\"max\":6}")]
    [InlineData("/construction=" + Requests.Wings)]
    [InlineData("/construction={\"kind\":\"laminated\",\"isMirrored\":false,\"strips\":[{\"species\":\"black-cherry\",\"widthMm\":60},{\"widthMm\":30},{\"widthMm\":58}]}")]
    public void A_request_within_the_rules_passes(string changes) => Assert.Empty(Faults(changes));

    private static double? Number(object? value) => value is null ? null : Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture);

    private static List<(string Pointer, Fault Fault)> Faults(string changes) =>
    [
        .. Validator.Validate(Requests.Read(Requests.With(changes))).Errors
            .Select(error => (JsonPointers.FromPropertyPath(error.PropertyName), error.CustomState as Fault ?? new Fault(error.ErrorMessage))),
    ];
}
