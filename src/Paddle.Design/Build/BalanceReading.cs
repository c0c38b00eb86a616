namespace Paddle.Design.Build;

/// <summary>A thickness read with a caliper on the centre line.</summary>
/// <param name="XMm">Place from the top of the grip, mm.</param>
internal sealed record ThicknessReading(double XMm, double ThicknessMm);

/// <summary>A cut of an earlier correction that has been taken.</summary>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm.</param>
internal sealed record EarlierRemoval(CorrectionZone Zone, double ThicknessMm);

/// <summary>A paddle weighed and balanced while it is being made.</summary>
/// <param name="Stage">The stage just done.</param>
/// <param name="BalanceMm">Balance point, mm from the finished top of the grip, along the shaft's line.</param>
/// <param name="Readings">Thickness readings, or none.</param>
/// <param name="MassErrorG">Standard uncertainty of the mass, g.</param>
/// <param name="BalanceErrorMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ThicknessErrorMm">Standard uncertainty of a thickness reading, mm.</param>
/// <param name="EarlierRemovals">Wood taken beyond the plan by earlier corrections, or none.</param>
/// <param name="MeasuredAgain">Whether the readings have been taken again and hold.</param>
internal sealed record BalanceReading(
    BuildStage Stage,
    double MassG,
    double BalanceMm,
    IReadOnlyList<ThicknessReading>? Readings = null,
    double MassErrorG = 1,
    double BalanceErrorMm = 2,
    double ThicknessErrorMm = 0.2,
    IReadOnlyList<EarlierRemoval>? EarlierRemovals = null,
    bool MeasuredAgain = false);

/// <summary>What the correction aims for.</summary>
/// <param name="Confidence">
/// How sure the maker wants to be of ending in tolerance, 0.5 to 0.99: the aim is drawn in from the tolerance by so many standard
/// uncertainties. At 0.5 the best estimate alone decides.
/// </param>
/// <param name="CountFinish">Whether the aim is for the paddle with its varnish and oil on; the design's own aim is the finished paddle.</param>
/// <param name="Build">Board, saw and coats as on the build sheet; null for the defaults.</param>
internal sealed record CorrectionOptions(double Confidence = 0.95, bool CountFinish = true, BuildOptions? Build = null);
