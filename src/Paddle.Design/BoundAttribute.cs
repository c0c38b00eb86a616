namespace Paddle.Design;

/// <summary>
/// What a number of a request may be, and why, written beside the member it holds for. Everything that needs a range reads it here: the rules that
/// refuse, the description of the service and the page of bounds.
/// </summary>
/// <param name="least">Smallest value taken, in the unit.</param>
/// <param name="most">Largest value taken, in the unit.</param>
/// <param name="unit">Unit of the member; empty for a plain number.</param>
/// <param name="why">Why the range ends there, a clause without its full stop.</param>
[AttributeUsage(AttributeTargets.Property)]
public class BoundAttribute(double least, double most, string unit, string why) : Attribute
{
    /// <summary>Source of a range that the trade keeps to.</summary>
    public const string Trade = "common practice, no source";

    /// <summary>Smallest value taken, in the unit.</summary>
    public double Least => least;
    /// <summary>Largest value taken, in the unit.</summary>
    public double Most => most;
    /// <summary>Unit of the member; empty for a plain number.</summary>
    public string Unit => unit;
    /// <summary>Where the range comes from; null where the reason itself says so.</summary>
    public string? Source { get; init; } = "service's own limit";
    /// <summary>What is meant where the member is left out; not a number where that depends on other members.</summary>
    public double Usual { get; init; } = double.NaN;
    /// <summary>Why the range ends there, as a sentence with its source.</summary>
    public string Reason => Source is null ? $"{why}." : $"{why} ({Source}).";
    /// <summary>How far past the largest a value is still taken, for an end such as 1/12 that callers write out with a few digits.</summary>
    public double RoundOff { get; init; }

    /// <summary>Whether the range holds a value; what is not a number it never holds.</summary>
    public bool Holds(double value) => value >= least && value <= most + RoundOff;
}
