using System.ComponentModel.DataAnnotations;

namespace PaddleApi.Hosting;

/// <summary>What one request, and all together, may ask of the service. Bound from the section <c>Limits</c> and checked at start.</summary>
public sealed class ServiceLimits
{
    /// <summary>Name of the configuration section.</summary>
    public const string Section = "Limits";

    /// <summary>
    /// Largest body, bytes. A design with every member given and sixty offsets takes 6 KiB, a list of boards stays below 30. Twice that
    /// leaves room for white space. Size runs have a limit of their own.
    /// </summary>
    [Range(1024, 1024 * 1024)]
    public int MaxRequestBodyBytes { get; init; } = 64 * 1024;

    /// <summary>
    /// Largest body of a size run, bytes: it may list 100 000 customers. Each takes 25 bytes on one line and 36 indented, 3.6 MB in all.
    /// </summary>
    [Range(1024, 16 * 1024 * 1024)]
    public int MaxSizeRunBodyBytes { get; init; } = 4 * 1024 * 1024;

    /// <summary>Longest request line, bytes. Design codes travel in it: a design with sixty offsets takes about 1.5 KiB.</summary>
    [Range(1024, 64 * 1024)]
    public int MaxRequestLineBytes { get; init; } = 8 * 1024;

    /// <summary>Longest time for one request, seconds. A solve takes well under one; ten means that something is wrong.</summary>
    [Range(1, 300)]
    public int RequestTimeoutSeconds { get; init; } = 10;

    /// <summary>Designs solved at once; 0 means one for each processor, since solving does nothing but compute.</summary>
    [Range(0, 1024)]
    public int ConcurrentSolves { get; init; }

    /// <summary>
    /// Designs that may wait for a place. With a solve far below a second, sixteen still wait less than a caller's patience; more would
    /// only be answered after the caller has gone.
    /// </summary>
    [Range(0, 4096)]
    public int QueuedSolves { get; init; } = 16;

    /// <summary>What a refused caller is told to wait, seconds: about the time in which the queue empties.</summary>
    [Range(1, 3600)]
    public int RetryAfterSeconds { get; init; } = 1;
}
