using Paddle.Design.Layout;

namespace PaddleApi.Endpoints.Boards;

/// <summary>Orders that work, for readers of the description and for tests; the rack is that of an invented hire fleet.</summary>
internal static class BoardExamples
{
    private static readonly WantedPaddleRequest[] Fleet =
    [
        new() { Id = "guest", Count = 2, Design = new() { HandSpacingMm = 880, Wood = new() { Species = "white-ash" } } },
        new() { Id = "youth", Design = new() { HandSpacingMm = 760, Wood = new() { Species = "white-ash" } } },
        new() { Id = "spare", Optional = true, Design = new() { HandSpacingMm = 840, Wood = new() { Species = "white-ash" } } },
    ];

    /// <summary>A rack.</summary>
    public static BoardLayoutRequest Rack { get; } = new()
    {
        Label = "Heron Lake hire fleet",
        Boards =
        [
            new() { Id = "A", LengthMm = 1830, WidthMm = 260, ThicknessMm = 33.3, Species = "white-ash", GrainDegrees = 1, Defects = [new() { Kind = "circle", XMm = 900, YMm = 30, RadiusMm = 9 }] },
            new() { Id = "B", LengthMm = 1700, WidthMm = 250, ThicknessMm = 33.3, Species = "white-ash" },
            new() { Id = "C", LengthMm = 2440, WidthMm = 185, ThicknessMm = 36.5, Species = "white-ash", SapwoodFarMm = 15 },
        ],
        Paddles = Fleet,
    };

    /// <summary>What a shop offers.</summary>
    public static BoardLayoutRequest Shop { get; } = new()
    {
        Label = "Heron Lake hire fleet",
        Boards =
        [
            new() { Id = "6/4 x 8 x 72", LengthMm = 1829, WidthMm = 203, ThicknessMm = 33.3, Species = "white-ash", PriceEach = 31 },
            new() { Id = "6/4 x 10 x 72", LengthMm = 1829, WidthMm = 254, ThicknessMm = 33.3, Species = "white-ash", PriceEach = 40 },
            new() { Id = "6/4 x 10 x 144", LengthMm = 3658, WidthMm = 254, ThicknessMm = 33.3, Species = "white-ash", PriceEach = 74 },
        ],
        Paddles = Fleet,
    };
}
