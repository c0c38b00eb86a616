using Paddle.Design.Copying;

namespace PaddleApi.Endpoints.Copies;

/// <summary>Readings that work, for readers of the description and for tests: a paddle of an invented hire fleet that the guests ask for.</summary>
internal static class CopyExamples
{
    /// <summary>A paddle read with tape, caliper, kitchen scale and a bench; docs/examples/copy.json is the same.</summary>
    public static CopyRequest Favourite { get; } = new()
    {
        Label = "Heron Lake, number 7",
        OverallLengthMm = 1565,
        ThroatMm = 936,
        Stations =
        [
            At(15, 56.3, 22.0), At(32, 63.5, 21.8), At(55, 50.9, 12.5),
            At(110, 22.3, 21.4), At(480, 24.8, 25.0), At(890, 27.9, 28.1),
            At(930, 28.3, 28.0), At(965, 31.2, 25.8), At(1000, 45.9, 22.5),
            At(1050, 97.9, 18.6), At(1110, 136.5, 16.0, 5.1), At(1170, 143.5, 12.5, 5.1),
            At(1240, 142.9, 10.7, 4.9), At(1320, 124.8, 9.0, 5.3), At(1400, 106.1, 8.4, 5.0),
            At(1470, 82.8, 8.2, 4.8), At(1520, 58.9, 8.1, 5.0), At(1550, 33.9, 8.0, 5.0),
        ],
        MassG = 661,
        BalanceMm = 890,
        BenchFlex = new() { LoadN = 50, DeflectionMm = 16.0 },
        LowerHandMm = 895,
        Species = "black-cherry",
        Grip = new() { Style = "pear" },
    };

    private static CopyStationRequest At(double x, double width, double thickness, double? edge = null) =>
        new() { XMm = x, WidthMm = width, ThicknessMm = thickness, EdgeThicknessMm = edge };
}
