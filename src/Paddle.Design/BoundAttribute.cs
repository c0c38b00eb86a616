namespace Paddle.Design;

/// <summary>
/// What a number of a request may be, and why, written beside the member it holds for. Everything that needs a range reads it here: the rules that
/// refuse, the description of the service, the list of measurements and the page of bounds.
/// </summary>
/// <param name="least">Smallest value taken, in the unit.</param>
/// <param name="most">Largest value taken, in the unit.</param>
/// <param name="unit">Unit of the member; empty for a plain number.</param>
/// <param name="why">Why the range ends there, a clause without its full stop.</param>
[AttributeUsage(AttributeTargets.Property)]
public class BoundAttribute(double least, double most, string unit, string why) : Attribute
{
    /// <summary>A range that is the service's own choice.</summary>
    public const string Own = "service's own limit";
    /// <summary>A range that the trade keeps to, without a source.</summary>
    public const string Trade = "common practice, no source";

    /// <summary>Smallest value taken, in the unit.</summary>
    public double Least => least;
    /// <summary>Largest value taken, in the unit.</summary>
    public double Most => most;
    /// <summary>Unit of the member; empty for a plain number.</summary>
    public string Unit => unit;
    /// <summary>Where the range comes from; null where the reason itself says so.</summary>
    public string? Source { get; init; } = Own;
    /// <summary>What is meant where the member is left out; not a number where that depends on other members.</summary>
    public double Usual { get; init; } = double.NaN;
    /// <summary>Why the range ends there, as a sentence with its source.</summary>
    public string Reason => Source is null ? $"{why}." : $"{why} ({Source}).";
    /// <summary>The range.</summary>
    public Outline.Range Range => new(least, most);

    /// <summary>Whether the range holds a value; what is not a number it never holds.</summary>
    public bool Holds(double value) => value >= least && value <= most;
}

/// <summary>The range of a force on a paddle.</summary>
public sealed class ForceBoundAttribute() : BoundAttribute(10, 2000, "N", "Forces that a person can put on a paddle");

/// <summary>The range of a reading's own standard error.</summary>
/// <inheritdoc cref="BoundAttribute"/>
public sealed class ReadingErrorBoundAttribute(double least, double most, string unit)
    : BoundAttribute(least, most, unit, least > 0 ? "Nothing is read without error, and a reading worse than this says nothing" : "A reading worse than this says nothing");
