namespace Paddle.Design.Checks;

/// <summary>How a check came out.</summary>
public enum CheckStatus
{
    /// <summary>Within its limit.</summary>
    Pass,
    /// <summary>Worth a look.</summary>
    Warn,
    /// <summary>Outside its limit.</summary>
    Fail,
}

/// <summary>One figure held against its limit.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Status">How it came out.</param>
/// <param name="Value">The figure.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Message">What it means, in plain words.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record DesignCheck(string Id, CheckStatus Status, double Value, double Limit, string Unit, string Message, string Source);
