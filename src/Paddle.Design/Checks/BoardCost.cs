using System.Globalization;
using Paddle.Design.Balance;
using Paddle.Design.Units;

namespace Paddle.Design.Checks;

/// <summary>What a board that holds the design back costs, in words.</summary>
internal static class BoardCost
{
    private const double SixteenthMm = DrawnLength.MmPerInch / 16;

    /// <summary>A sentence, with the space before it.</summary>
    /// <param name="binding">The board as a limit that binds: its gain is for a millimetre more.</param>
    internal static string InWords(BindingLimit binding, DrawingUnits units)
    {
        var (step, gain) = units == DrawingUnits.Metric ? ("millimetre", binding.Gain) : ("sixteenth of an inch", binding.Gain * SixteenthMm);
        string Shift(string what) => $"bring the {what} {DrawnLength.Shaving(gain, units)} nearer to what is asked";
        var would = binding.GainUnit switch
        {
            BindingLimitList.Saved => $"save {DrawnAmount.Mass(gain, units)}",
            BindingLimitList.OfSafety => string.Create(CultureInfo.InvariantCulture, $"raise the least safety factor by {gain:0.00}"),
            BindingLimitList.OfBalance => Shift("balance"),
            BindingLimitList.OfFlex => Shift("flex"),
            _ => Shift("shape"),
        };
        return $" It holds the design back: each {step} more would {would}.";
    }
}
