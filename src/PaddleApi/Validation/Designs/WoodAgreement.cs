using FluentValidation;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation.Designs;

/// <summary>The wood must be known, and safe to shape and to hold.</summary>
internal static class WoodAgreement
{
    // Finding the nearest ids compares letter by letter; a name longer than any wood's is not worth the time.
    private const int LongestName = 64;

    internal static void Check(DesignRequest request, ValidationContext<DesignRequest> context)
    {
        if (request.Wood?.Species is { } species) CheckSpecies("Wood.Species", species, context);
        else context.AddFault("Wood.Species", new("A species is required: density, stiffness and strength come from it.", Code: RefusalCodes.Missing));
        if (request.Wood?.Treatment is { } treatment && WoodSafety.RefusalOfTreatment(treatment) is { } refusal)
        {
            context.AddFault("Wood.Treatment", new Fault(
                $"{refusal.Reason} Source: {refusal.Source}.", FaultValue.Show(treatment), Allowed: [WoodSafety.NoTreatment], Code: RefusalCodes.UnsafeWood));
        }
    }

    /// <summary>Refuses a wood that is poisonous or unknown.</summary>
    /// <param name="path">Path of the member that names it, in C# names.</param>
    internal static void CheckSpecies(string path, string species, ValidationContext<DesignRequest> context)
    {
        if (WoodSafety.RefusalOfSpecies(species) is { } refusal)
            context.AddFault(path, new($"{refusal.Reason} Source: {refusal.Source}.", FaultValue.Show(species), Code: RefusalCodes.UnsafeWood));
        else if (WoodCatalogue.Find(species) is null)
            context.AddFault(path, Unknown(species));
    }

    private static Fault Unknown(string species)
    {
        var nearest = species.Length <= LongestName ? WoodCatalogue.NearestIds(species) : [];
        return nearest.Count == 0
            ? new("No wood has this id; all ids are listed at /v1/woods.", FaultValue.Show(species), Code: RefusalCodes.UnknownName)
            : new($"No wood has this id; the nearest are {string.Join(", ", nearest)}. All ids are listed at /v1/woods.", FaultValue.Show(species), Allowed: nearest);
    }
}
