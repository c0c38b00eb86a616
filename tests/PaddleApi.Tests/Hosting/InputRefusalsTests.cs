using Paddle.Design.Fitting;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Tests.Hosting;

public sealed class InputRefusalsTests
{
    [Fact]
    public void A_refusal_of_the_engine_reads_like_one_of_the_validators()
    {
        InputRefusal[] refusals =
        [
            InputRefusal.OutOfRange("/paddler/armSpanMm", 5000, 900, 2400, "mm", "no person spans it."),
            new("", RefusalCodes.NoWayToHandSpacing, "Nothing to go by.", MeasureInstead: ["armSpanMm", "statureMm"]),
        ];

        var problem = Validated.Refusal([.. refusals.Select(refusal => (refusal.JsonPointer, refusal.ToFault()))]);

        Assert.Equal(422, problem.StatusCode);
        Assert.Equal(["", "/paddler/armSpanMm"], problem.Errors!.Keys);
        var fault = problem.Errors["/paddler/armSpanMm"].Single();
        Assert.Equal((5000.0, 900.0, 2400.0, "mm"), (fault.Value, fault.Min, fault.Max, fault.Unit));
        Assert.Equal("out-of-range", fault.Code);
        Assert.Equal("no-way-to-hand-spacing", problem.Errors[""].Single().Code);
        Assert.Equal(["armSpanMm", "statureMm"], problem.Errors[""].Single().MeasureInstead);
        Assert.EndsWith("To be measured: arm span, stature.", problem.Errors[""].Single().Reason, StringComparison.Ordinal);
    }
}
