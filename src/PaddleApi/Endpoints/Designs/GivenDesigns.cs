using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Designs that stand in a larger request: by their codes, or by requests that are solved here.</summary>
internal static class GivenDesigns
{
    private static readonly DesignRequestValidator Rules = new();

    /// <summary>Makes the designs of a list, or says what is wrong with each.</summary>
    /// <param name="list">JSON Pointer of the list.</param>
    public static (IReadOnlyList<ComputedDesign> Designs, IReadOnlyList<(string Place, Fault Fault)> Faults) Make(
        IReadOnlyList<IGivesDesign> given, string list, CancellationToken cancellation)
    {
        var (designs, faults) = (new List<ComputedDesign>(), new List<(string Place, Fault Fault)>());
        for (var k = 0; k < given.Count; k++)
        {
            var (design, own) = Make(given[k], JsonPointers.Append(list, k), cancellation);
            faults.AddRange(own);
            if (design is not null) designs.Add(design);
        }

        return (designs, faults);
    }

    /// <summary>Makes one design, or says what is wrong with it.</summary>
    /// <param name="place">JSON Pointer of the part that names it.</param>
    public static (ComputedDesign? Design, IReadOnlyList<(string Place, Fault Fault)> Faults) Make(
        IGivesDesign given, string place, CancellationToken cancellation)
    {
        if (given.DesignCode is { } code)
        {
            var (read, problem) = DesignService.Read(code);
            return problem is null
                ? (DesignService.Evaluate(read!, code), [])
                : (null, [(JsonPointers.Append(place, "designCode"), new(problem.Detail, FaultValue.Show(code)))]);
        }

        var faults = Faults(given.Design!, JsonPointers.Append(place, "design"));
        return faults.Count == 0 ? (DesignService.Compute(given.Design!, cancellation), faults) : (null, faults);
    }

    /// <summary>What is wrong with a request for a design that stands in another body.</summary>
    public static IReadOnlyList<(string Place, Fault Fault)> Faults(DesignRequest design, string place) =>
        [.. Rules.Validate(design).Errors.Select(failure => (place + JsonPointers.FromPropertyPath(failure.PropertyName), failure.ToFault()))];
}
