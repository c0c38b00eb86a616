namespace Paddle.Design.Build;

/// <summary>Limits of readings that a caller may want to state.</summary>
internal static class BalanceReadingLimits
{
    /// <summary>Most that one earlier cut may have taken off a zone, mm. Own choice.</summary>
    public const double MostTakenMm = 10;
}

/// <summary>Refuses readings and options that cannot be.</summary>
internal static class BalanceReadingChecks
{
    internal static void Require(DesignReport report, BalanceReading reading, CorrectionOptions options)
    {
        Positive(reading.MassG, nameof(reading.MassG));
        Positive(reading.BalanceMm, nameof(reading.BalanceMm));
        Positive(reading.MassErrorG, nameof(reading.MassErrorG));
        Positive(reading.BalanceErrorMm, nameof(reading.BalanceErrorMm));
        Positive(reading.ThicknessErrorMm, nameof(reading.ThicknessErrorMm));
        var overall = report.Specification.Form.Places.OverallMm;
        if (reading.BalanceMm >= overall)
            throw new ArgumentOutOfRangeException(nameof(reading), reading.BalanceMm, "The balance point must lie on the paddle.");
        foreach (var thickness in reading.Readings ?? [])
        {
            if (!(thickness.ThicknessMm >= 0) || !double.IsFinite(thickness.ThicknessMm))
                throw new ArgumentOutOfRangeException(nameof(reading), thickness.ThicknessMm, "A thickness must be 0 or more.");
            if (!(thickness.XMm >= 0 && thickness.XMm <= overall))
                throw new ArgumentOutOfRangeException(nameof(reading), thickness.XMm, "A reading must lie on the paddle.");
        }

        foreach (var cut in reading.EarlierRemovals ?? [])
        {
            if (!(cut.ThicknessMm is >= 0 and <= BalanceReadingLimits.MostTakenMm))
                throw new ArgumentOutOfRangeException(nameof(reading), cut.ThicknessMm, "An earlier cut must lie in 0 to 10 mm.");
        }

        if (!(options.Confidence is >= 0.5 and <= 0.99))
            throw new ArgumentOutOfRangeException(nameof(options), options.Confidence, "Confidence must lie in 0.5 to 0.99.");
    }

    private static void Positive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value)) throw new ArgumentOutOfRangeException(name, value, "Must be above 0.");
    }
}
