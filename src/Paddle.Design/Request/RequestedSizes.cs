using Paddle.Design.Solid;

namespace Paddle.Design.Request;

/// <summary>Where the nine sizes stand in a request, in the order of <see cref="PaddleSizes"/>.</summary>
internal static class RequestedSizes
{
    /// <summary>The sizes that a request pins; null where it leaves them open.</summary>
    public static double?[] Sizes(this DesignRequest request) =>
    [
        request.Shaft?.WidthMm, request.Shaft?.ThicknessMm, request.Shaft?.UpperWidthMm, request.Shaft?.UpperThicknessMm,
        request.Blade?.ThroatThicknessMm, request.Blade?.MiddleThicknessMm, request.Blade?.TipThicknessMm, request.Blade?.EdgeThicknessMm, request.Grip?.ThicknessMm,
    ];

    /// <summary>The same request with every size pinned.</summary>
    public static DesignRequest Pin(this DesignRequest request, PaddleSizes sizes) => request with
    {
        Shaft = (request.Shaft ?? new()) with
        {
            WidthMm = sizes.ShaftWidthMm,
            ThicknessMm = sizes.ShaftThicknessMm,
            UpperWidthMm = sizes.UpperWidthMm,
            UpperThicknessMm = sizes.UpperThicknessMm,
        },
        Blade = (request.Blade ?? new()) with
        {
            ThroatThicknessMm = sizes.ThroatThicknessMm,
            MiddleThicknessMm = sizes.MiddleThicknessMm,
            TipThicknessMm = sizes.TipThicknessMm,
            EdgeThicknessMm = sizes.EdgeThicknessMm,
        },
        Grip = (request.Grip ?? new()) with { ThicknessMm = sizes.GripThicknessMm },
    };
}
