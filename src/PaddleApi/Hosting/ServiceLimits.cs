using System.ComponentModel.DataAnnotations;

namespace PaddleApi.Hosting;

/// <summary>What one request, and all together, may ask of the service. Bound from the section <c>Limits</c> and checked at start.</summary>
internal sealed class ServiceLimits
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

    /// <summary>Bodies of size runs held at once: with the largest of them, 64 MiB. Those that wait for room wait on the line.</summary>
    [Range(1, 4096)]
    public int ConcurrentSizeRunBodies { get; init; } = 16;

    /// <summary>Longest request line, bytes. Design codes travel in it: a design with sixty offsets takes about 1.5 KiB.</summary>
    [Range(1024, 64 * 1024)]
    public int MaxRequestLineBytes { get; init; } = 8 * 1024;

    /// <summary>
    /// Longest time for a body to arrive, seconds: the largest size run in that time asks for a line of 140 kB/s, any other body for 2.
    /// </summary>
    [Range(1, 600)]
    public int UploadTimeoutSeconds { get; init; } = 30;

    /// <summary>Connections open at once; the server closes those beyond. One that is idle costs some kilobytes.</summary>
    [Range(1, 1_000_000)]
    public int MaxConnections { get; init; } = 4096;

    /// <summary>
    /// Longest time for the work of one request, seconds, its body having come. A solve takes well under one; ten means that something is
    /// wrong. Waiting for a place is counted, sending a file is not.
    /// </summary>
    [Range(1, 300)]
    public int RequestTimeoutSeconds { get; init; } = 10;

    /// <summary>Designs solved at once; 0 means one for each processor, since solving does nothing but compute.</summary>
    [Range(0, 1024)]
    public int ConcurrentSolves { get; init; }

    /// <summary>
    /// Heavy files, build sheets, board layouts and size runs made at once; 0 means one for every second processor, at least one: each costs many light
    /// answers, which need a processor too.
    /// </summary>
    [Range(0, 1024)]
    public int ConcurrentFiles { get; init; }

    /// <summary>
    /// Longest wait for a place, seconds. Who would have to wait longer is told at once to come back, and nobody waits longer: a page that
    /// asks for many things in one moment is answered, and a queue that would only be answered after its callers have gone does not grow.
    /// </summary>
    [Range(0, 60)]
    public int MostWaitSeconds { get; init; } = 5;

    /// <summary>Designs that may wait for a place, whatever the time: each holds a connection and its request in memory.</summary>
    [Range(0, 65_536)]
    public int QueuedSolves { get; init; } = 1024;

    /// <summary>Heavy files, build sheets, board layouts and size runs that may wait.</summary>
    [Range(0, 65_536)]
    public int QueuedFiles { get; init; } = 256;

    /// <summary>Most lines of a batch.</summary>
    [Range(1, 100_000_000)]
    public int MaxBatchLines { get; init; } = 100_000;

    /// <summary>Batches answered at once: each reads some lines ahead, two megabytes at most.</summary>
    [Range(1, 1024)]
    public int ConcurrentBatches { get; init; } = 8;

    /// <summary>The least that a refused caller is told to wait, seconds; more where the queue is known to take longer.</summary>
    [Range(1, 3600)]
    public int RetryAfterSeconds { get; init; } = 1;
}
