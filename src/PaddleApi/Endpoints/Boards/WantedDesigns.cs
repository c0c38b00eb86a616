using Paddle.Design;
using Paddle.Design.Layout;
using Paddle.Design.Request;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Validation;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Endpoints.Boards;

/// <summary>The designs that an order names: by their codes, or by requests that are solved here.</summary>
internal static class WantedDesigns
{
    private static readonly DesignRequestValidator Rules = new();

    /// <summary>Reads them, or says what is wrong with each.</summary>
    public static (IReadOnlyList<DesignReport> Designs, IReadOnlyList<(string Place, Fault Fault)> Faults) Of(
        IReadOnlyList<WantedPaddleRequest> paddles, CancellationToken cancellation)
    {
        var (designs, faults) = (new List<DesignReport>(), new List<(string Place, Fault Fault)>());
        for (var k = 0; k < paddles.Count; k++)
        {
            var place = JsonPointers.Append("/paddles", k);
            if (paddles[k].DesignCode is { } code)
            {
                var (read, problem) = DesignService.Read(code);
                if (problem is null) designs.Add(DesignService.Evaluate(read!, code).Report);
                else faults.Add((JsonPointers.Append(place, "designCode"), new(problem.Detail, FaultValue.Show(code))));
                continue;
            }

            var own = Faults(paddles[k].Design!, JsonPointers.Append(place, "design"));
            faults.AddRange(own);
            if (own.Count == 0) designs.Add(DesignService.Compute(paddles[k].Design!, cancellation).Report);
        }

        return (designs, faults);
    }

    /// <summary>What is wrong with a request for a design that stands in another body.</summary>
    public static IReadOnlyList<(string Place, Fault Fault)> Faults(DesignRequest design, string place) =>
        [.. Rules.Validate(design).Errors.Select(failure => (place + JsonPointers.FromPropertyPath(failure.PropertyName), Validated.ToFault(failure)))];
}
