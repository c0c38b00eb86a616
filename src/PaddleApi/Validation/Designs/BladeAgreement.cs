using FluentValidation;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;
using Range = Paddle.Design.Outline.Range;

namespace PaddleApi.Validation.Designs;

/// <summary>A blade is either a family with sizes its curve can carry, or a table of offsets.</summary>
internal static class BladeAgreement
{
    private static readonly string[] FamilyIds = [.. BladeFamilies.All.Select(family => family.Id)];

    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        if (request.Blade is not { } blade) return;
        if (blade.Offsets is not null)
        {
            const string Reason = "The offsets give the blade's shape: leave this null, or leave the offsets out.";
            if (blade.Family is { } named) context.AddFault("Blade.Family", new(Reason, FaultValue.Show(named), Code: RefusalCodes.GivenTwice));
            if (blade.WidestAt is { } place) context.AddFault("Blade.WidestAt", new(Reason, FaultValue.Show(place), Code: RefusalCodes.GivenTwice));
            if (blade.Fullness is { } full) context.AddFault("Blade.Fullness", new(Reason, FaultValue.Show(full), Code: RefusalCodes.GivenTwice));
        }
        else if (DesignDefaults.Family(request) is { } family)
        {
            Within(context, "Blade.WidestAt", blade.WidestAt, family.WidestAtLimits,
                $"Places of the widest point that the curve of {family.Id} can carry without losing its character.");
            Within(context, "Blade.Fullness", blade.Fullness, family.FullnessLimits,
                $"Fullnesses that the curve of {family.Id} can carry without losing its character.");
        }
        else
        {
            context.AddFault("Blade.Family", new(
                "There is no blade family of this id; give one of these, or your own shape as offsets.",
                FaultValue.Show(blade.Family),
                Allowed: FamilyIds));
        }
    }

    private static void Within(ValidationContext<DesignRequest> context, string path, double? value, Range limits, string reason)
    {
        if (value is { } given && !limits.Contains(given))
            context.AddFault(path, new Fault(reason, FaultValue.Show(given), limits.Min, limits.Max, "fraction"));
    }
}
