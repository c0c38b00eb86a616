namespace Paddle.Design.Balance;

/// <summary>What being off balance counts for, in grams: nothing near the aim, and never more a millimetre than ballast is worth to a
/// maker. Theory B9.</summary>
internal static class BallastPrice
{
    /// <summary>Most that a millimetre of balance may cost, g/mm. Own choice: 10 mm, which a hand feels, for 30 g, which it feels as well.</summary>
    internal const double MostGPerMm = 3;

    /// <summary>Offset at which that price is reached, mm.</summary>
    internal const double FullAtMm = 8;

    /// <summary>Price (g) of an offset (mm) and its rate (g/mm): a parabola, then straight.</summary>
    internal static (double PriceG, double RateGPerMm) Of(double offsetMm)
    {
        var off = Math.Abs(offsetMm);
        return off <= FullAtMm
            ? (MostGPerMm * off * off / (2 * FullAtMm), MostGPerMm * offsetMm / FullAtMm)
            : (MostGPerMm * (off - FullAtMm / 2), MostGPerMm * Math.Sign(offsetMm));
    }
}
