namespace Paddle.Design.Units;

/// <summary>How drawings and shop papers are written.</summary>
public sealed record DrawingRequest
{
    /// <summary><c>metric</c> (when null) or <c>inch</c>.</summary>
    public string? Units { get; init; }

    /// <summary>Units by their name; metric when left out or when none have that name.</summary>
    internal static DrawingUnits Read(string? name) => Names.Find<DrawingUnits>(name ?? "") ?? DrawingUnits.Metric;
}
