using FluentValidation;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation.Designs;

/// <summary>A maker's own table of offsets must be one blade: stations in order, no width below nothing, closing at most at the tip.</summary>
internal static class OffsetTable
{
    /// <summary>Stations of a table.</summary>
    internal const int FewestStations = 4, MostStations = 60;

    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        if (request.Blade is not { Offsets: { } offsets } blade) return;
        if (offsets.Count is < FewestStations or > MostStations)
        {
            context.AddFault("Blade.Offsets", new(
                "Fewer stations do not fix a fair curve; more than this and the curve follows the pencil, not the blade.",
                offsets.Count, FewestStations, MostStations, "stations"));
            return;
        }

        var sound = true;
        for (var i = 0; i < offsets.Count; i++) sound &= CheckStation(offsets, i, context);
        if (sound) CheckWhole(request, blade, offsets, context);
    }

    private static bool CheckStation(IReadOnlyList<OffsetRequest> offsets, int i, ValidationContext<DesignRequest> context)
    {
        var sound = true;
        void Refuse(string member, Fault fault)
        {
            context.AddFault($"Blade.Offsets[{i}].{member}", fault);
            sound = false;
        }

        // What is missing or out of bounds has been refused already; nothing follows from it.
        if (offsets[i] is not { XMm: { } x, HalfBreadthMm: { } half } || Bounds.Broken(offsets[i]).Any()) return false;
        if (i > 0 && offsets[i - 1].XMm is { } before && !(x > before))
            Refuse("XMm", new("Stations must follow one another from throat to tip.", FaultValue.Show(x), before, Unit: "mm"));

        if (half == 0 && i < offsets.Count - 1)
            Refuse("HalfBreadthMm", new("Only the last station, the tip, may close to nothing.", 0.0));
        return sound;
    }

    private static void CheckWhole(
        DesignRequest request, BladeRequest blade, IReadOnlyList<OffsetRequest> offsets, ValidationContext<DesignRequest> context)
    {
        var length = offsets[^1].XMm!.Value;
        var width = 2 * offsets.Max(offset => offset.HalfBreadthMm!.Value);
        var lengths = PaddleLengths.BladeLengthLimitsMm;
        if (!lengths.Contains(length))
        {
            context.AddFault($"Blade.Offsets[{offsets.Count - 1}].XMm", new(
                "The last station is the tip, so it is the blade's length.", length, lengths.Min, lengths.Max, "mm"));
        }

        if (blade.LengthMm is { } asked && asked != length)
            context.AddFault("Blade.LengthMm", new("The last station is the blade's length: leave this null or the same.", asked, length, length, "mm", Code: RefusalCodes.GivenTwice));
        var limits = Bounds.Of<BladeRequest>(nameof(blade.WidthMm));
        if (!limits.Holds(width))
        {
            context.AddFault("Blade.Offsets", new(
                "Twice the largest half-breadth is the blade's width.", width, limits.Least, limits.Most, "mm"));
        }

        if (blade.WidthMm is { } wide && wide != width)
        {
            context.AddFault("Blade.WidthMm", new(
                "Twice the largest half-breadth is the blade's width: leave this null or the same.", wide, width, width, "mm", Code: RefusalCodes.GivenTwice));
        }

        CheckShaftStation(request, blade, context);
    }

    private static void CheckShaftStation(DesignRequest request, BladeRequest blade, ValidationContext<DesignRequest> context)
    {
        if (DesignDefaults.ShaftWidthOfOffsets(blade) is not { } shaft) return;
        var limits = SizeLimits.Pinned[PaddleSizes.ShaftWidth];
        if (!limits.Contains(shaft))
        {
            context.AddFault("Blade.Offsets[0].HalfBreadthMm", new(
                "The station at the throat is half the shaft's width.", shaft / 2, limits.Min / 2, limits.Max / 2, "mm"));
        }

        if (request.Shaft?.WidthMm is { } pinned && pinned != shaft)
        {
            context.AddFault("Shaft.WidthMm", new(
                "The station at the throat gives half the shaft's width: leave this null or the same.", pinned, shaft, shaft, "mm", Code: RefusalCodes.GivenTwice));
        }
    }
}
