namespace Paddle.Design.Fitting;

/// <summary>Shows the trade's length rules for one person beside the service's own geometry.</summary>
internal static class LengthMethods
{
    private const string Quantity = "overallLengthMm";
    private const string BarRule = "bar-on-head-rule";
    private const double NoseErrorMm = 10;

    /// <summary>Every overall-length rule that applies, the service's own first, and how far they lie apart.</summary>
    /// <param name="topHandMm">g, mm.</param>
    /// <param name="usedSpacingMm">S as used (shortened for a bent shaft), mm.</param>
    /// <param name="body">Hand spacing of the body and its error.</param>
    /// <param name="handBreadthMm">h_b, mm.</param>
    /// <param name="freeboardMm">c, mm.</param>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <param name="seatAboveWaterMm">z, mm.</param>
    /// <param name="statureMm">H, mm, or null.</param>
    /// <param name="seated">Heights above the seat, or null.</param>
    /// <returns>Methods and spread. A cap is listed and left out of the spread.</returns>
    public static (IReadOnlyList<MethodResult> Methods, RuleSpread Spread) Show(
        double topHandMm,
        double usedSpacingMm,
        SpacingChoice body,
        double handBreadthMm,
        double freeboardMm,
        double bladeLengthMm,
        double seatAboveWaterMm,
        double? statureMm,
        SeatedBody? seated,
        bool bent)
    {
        var methods = new List<MethodResult>
        {
            new("service-geometry", Quantity, LengthRules.OwnGeometryMm(topHandMm, usedSpacingMm, freeboardMm, bladeLengthMm), Join(body.StandardErrorMm, FreeboardErrorMm), "geometry: grip end to hand + hand spacing + freeboard + blade, hands at their middles; allowances common practice, no source", "used", "service"),
            new(BarRule, Quantity, LengthRules.BarOnHeadMm(topHandMm, body.ValueMm, handBreadthMm, freeboardMm, bladeLengthMm), Join(body.StandardErrorMm, FreeboardErrorMm), "common practice, no source; counts half the lower hand besides the freeboard", "beside", "long-reach"),
        };
        if (statureMm is { } h)
        {
            var low = LengthRules.FloorToChinMm(h);
            var high = LengthRules.FloorToNoseMm(h);
            methods.Add(new("floor-to-chin-or-nose", Quantity, (low + high) / 2, (high - low) / Math.Sqrt(12), "a boating-education course; middle of chin to nose, ratios Drillis and Contini 1966 (from memory) and ANSUR II", "beside", "long-reach"));
        }

        if (seated is not null)
        {
            methods.Add(new("nose-to-seat", Quantity, LengthRules.NoseToSeatMm(seated.EyeHeightMm, bladeLengthMm), Join(seated.EyeHeightErrorMm, NoseErrorMm), "a hobby paddle-making guide; " + seated.Source, "beside", "seated"));
            methods.Add(new("shoulder-to-water", Quantity, LengthRules.ShoulderToWaterMm(seated.ShoulderHeightMm, seatAboveWaterMm, bladeLengthMm), Join(seated.ShoulderHeightErrorMm, MeasurementCatalogue.SeatHeight.TypicalError), "an outfitter's article and a boating-education course; " + seated.Source, "beside", "seated"));
            methods.Add(new("crown-cap", Quantity, LengthRules.CrownCapMm(seated.SittingHeightMm, seatAboveWaterMm, bladeLengthMm), Join(seated.SittingHeightErrorMm, MeasurementCatalogue.SeatHeight.TypicalError), "common practice and assumption, no source; an upper limit", "cap", "cap"));
        }

        var ranked = methods.Where(m => m.Role != "cap").Select(m => m.ValueMm).ToList();
        var spread = ranked.Max() - ranked.Min();
        return (methods, new RuleSpread("service-geometry", Mean(methods, "long-reach"), Mean(methods, "seated"), spread, IsNews(methods, bent)));
    }

    /// <summary>The rules of the two styles always lie 200 mm or more apart: that is no news. News is a length outside what the independent
    /// rules of its own style span, by more than twice their scatter. Bent shafts lie between the styles.</summary>
    private static bool IsNews(IReadOnlyList<MethodResult> methods, bool bent)
    {
        var used = methods.Single(m => m.Role == "used");
        var others = methods.Where(m => m.Role == "beside" && m.Id != BarRule && (bent || m.Group == "long-reach")).ToList();
        return others.Count > 0 && (others.All(m => used.ValueMm > m.ValueMm + Scatter(m)) || others.All(m => used.ValueMm < m.ValueMm - Scatter(m)));

        double Scatter(MethodResult m) =>
            LengthRules.FlaggedStandardErrors * Join(Join(used.StandardErrorMm, m.StandardErrorMm), LengthRules.RuleScatterMm); // theory F39
    }

    /// <summary>Scatter of the freeboard allowance, mm: 25 to 50 taken as even.</summary>
    public static double FreeboardErrorMm => (LengthRules.HighestFreeboardMm - LengthRules.LowestFreeboardMm) / Math.Sqrt(12);

    /// <summary>Two independent errors together: √(a² + b²).</summary>
    /// <param name="firstMm">First standard error, mm.</param>
    /// <param name="secondMm">Second standard error, mm.</param>
    /// <returns>Standard error of the sum, mm.</returns>
    public static double Join(double firstMm, double secondMm) => Math.Sqrt((firstMm * firstMm) + (secondMm * secondMm));

    private static double? Mean(IEnumerable<MethodResult> methods, string group)
    {
        var values = methods.Where(m => m.Group == group).Select(m => m.ValueMm).ToList();
        return values.Count == 0 ? null : values.Average();
    }
}
