using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Contracts.Fittings;

/// <summary>Turns the request of the contract into the engine's.</summary>
internal static class FittingReader
{
    /// <summary>The engine's request.</summary>
    /// <param name="request">A request, valid or not; the engine's own checks follow.</param>
    public static Paddle.Design.Fitting.FittingRequest Read(FittingRequest request)
    {
        return new(
            Paddler(request.Paddler ?? new()),
            Seat(request.Seat ?? new()),
            Water(request.Water ?? new()),
            new OutingPlan(request.Outing?.HoursPerDay, request.Outing?.StrokesPerMinute, request.Outing?.Effort ?? new OutingPlan().Effort, request.Outing?.Purpose),
            new PaddlerPreferences(
                request.Preferences?.SensitiveJoints ?? false,
                request.Preferences?.StraighterWrist ?? false,
                request.Preferences?.LightCarry ?? false,
                request.Preferences?.BentShaft ?? false),
            request.Label,
            DrawingRequest.Read(request.Drawing?.Units));
    }

    private static PaddlerMeasurements Paddler(PaddlerRequest paddler) => new(
        paddler.HandSpacingMm,
        paddler.StatureMm,
        paddler.SittingHeightMm,
        paddler.ShoulderBreadthMm,
        paddler.ArmSpanMm,
        paddler.HandLengthMm,
        paddler.HandBreadthMm,
        paddler.BodyMassKg);

    private static SeatPlan Seat(SeatRequest seat)
    {
        var usual = new SeatPlan();
        return new(seat.Posture ?? usual.Posture, seat.HeightAboveWaterMm, seat.Place ?? usual.Place);
    }

    private static WaterPlan Water(WaterRequest water) => new(water.Kind ?? new WaterPlan().Kind, water.DepthMm, water.TemperatureC);
}
