using Paddle.Design.Fitting;

namespace PaddleApi.Contracts.SizeRuns;

/// <summary>The few sizes that fit a fleet's customers best.</summary>
/// <param name="EngineVersion">Version of the engine that answered.</param>
/// <param name="Sizes">The sizes, shortest first.</param>
/// <param name="MeanMisfitMm">Mean distance between a customer's length and the nearest size, mm; no other choice on the step has less.</param>
/// <param name="Within25MmShare">Share of the customers within 25 mm of their size, 0 to 1.</param>
/// <param name="Within50MmShare">Share of the customers within 50 mm of their size, 0 to 1.</param>
/// <param name="Curve">Least misfit against number of sizes: what one more size buys.</param>
/// <param name="Histogram">The customers by overall length; the shares add up to 1, the end bars hold the tails.</param>
/// <param name="Reasons">What the figures say, in plain words.</param>
internal sealed record SizeRunResponse(
    string EngineVersion,
    IReadOnlyList<SizeOfRun> Sizes,
    double MeanMisfitMm,
    double Within25MmShare,
    double Within50MmShare,
    IReadOnlyList<CurvePoint> Curve,
    IReadOnlyList<HistogramBar> Histogram,
    IReadOnlyList<string> Reasons);

/// <summary>One size of the run.</summary>
/// <param name="OverallLengthMm">Overall length, mm.</param>
/// <param name="HandSpacingMm">Hand spacing that it fits, mm.</param>
/// <param name="Share">Share of the customers for whom it is the nearest, 0 to 1.</param>
/// <param name="Count">Paddles of this size in the fleet; left out when no fleet was given.</param>
internal sealed record SizeOfRun(double OverallLengthMm, double HandSpacingMm, double Share, int? Count);

/// <summary>The best choice with one number of sizes.</summary>
/// <param name="Sizes">Number of sizes.</param>
/// <param name="MeanMisfitMm">Its mean misfit, mm.</param>
/// <param name="GainMm">What the last of them takes off the misfit, mm; left out for the first.</param>
/// <param name="SizesMm">The sizes, mm.</param>
internal sealed record CurvePoint(int Sizes, double MeanMisfitMm, double? GainMm, IReadOnlyList<double> SizesMm);

/// <summary>A bar of the histogram.</summary>
/// <param name="LowMm">Lower end, not in the bar, mm.</param>
/// <param name="HighMm">Upper end, in the bar, mm.</param>
/// <param name="Share">Share of the customers, 0 to 1.</param>
internal sealed record HistogramBar(double LowMm, double HighMm, double Share);

/// <summary>Turns the engine's advice into the answer of the contract.</summary>
internal static class SizeRunResponses
{
    private const int ShareDigits = 4;
    private const int LengthDigits = 2;

    /// <summary>The answer.</summary>
    /// <param name="advice">The advice.</param>
    public static SizeRunResponse From(SizeRunAdvice advice)
    {
        return new(
            EngineVersion.Text,
            [.. advice.Sizes.Select(size => new SizeOfRun(size.OverallLengthMm, size.HandSpacingMm, Share(size.Share), size.Count))],
            Length(advice.MeanMisfitMm),
            Share(advice.ShareWithin25Mm),
            Share(advice.ShareWithin50Mm),
            [
                .. advice.Curve.Select(point => new CurvePoint(
                    point.Sizes, Length(point.MeanMisfitMm), point.GainMm is { } gain ? Length(gain) : null, point.SizesMm)),
            ],
            [.. advice.Histogram.Select(bin => new HistogramBar(bin.LowMm, bin.HighMm, Share(bin.Share)))],
            advice.Reasons);
    }

    private static double Share(double share) => Math.Round(share, ShareDigits);

    private static double Length(double lengthMm) => Math.Round(lengthMm, LengthDigits);
}
