using Paddle.Design.Fitting;
using Paddle.Design.Request;

namespace Paddle.Design;

/// <summary>Fits a paddle to a person, and tries it: calls the steps of a fitting, then a design for each paddle suggested.</summary>
public static class PaddleFitter
{
    /// <summary>Answers a fitting.</summary>
    /// <param name="request">The person, seat, water, outing and preferences.</param>
    /// <returns>The advice, or the refusals with what to measure instead. The same request always gives the same answer.</returns>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public static AnswerOrRefusals<FittingReport> Fit(FittingRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var (advice, refusals) = FittingAdvisor.Advise(request, design => TriedShaft.Settle(design, cancellation));
        return new(advice is null ? null : new FittingReport(advice), refusals);
    }
}
