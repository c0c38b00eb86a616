using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;

namespace PaddleApi.Hosting.Batches;

/// <summary>A line of a body.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Text">What it holds; null where it is longer than lines are read.</param>
internal readonly record struct BodyLine(int Number, byte[]? Text);

/// <summary>Takes a body in line by line, as it comes. Blank lines are passed over, but counted.</summary>
internal static class BodyLines
{
    /// <summary>Reads the lines; no more is taken in than one of them.</summary>
    /// <param name="mostBytes">Longest line that is kept.</param>
    public static async IAsyncEnumerable<BodyLine> ReadAsync(PipeReader body, int mostBytes, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var (number, isTooLong) = (0, false);
        while (true)
        {
            var read = await body.ReadAsync(cancellation);
            var rest = read.Buffer;
            var isSearched = false;
            try
            {
                while (rest.PositionOf((byte)'\n') is { } end || (read.IsCompleted && (rest.Length > 0 || isTooLong) && (end = rest.End) is var _))
                {
                    var line = rest.Slice(0, end);
                    rest = end.Equals(rest.End) ? rest.Slice(end) : rest.Slice(rest.GetPosition(1, end));
                    number++;
                    if (isTooLong || line.Length > mostBytes) yield return new(number, null);
                    else if (!IsBlank(line)) yield return new(number, line.ToArray());
                    isTooLong = false;
                }

                if (rest.Length > mostBytes)
                {
                    isTooLong = true;
                    rest = rest.Slice(rest.End);
                }

                isSearched = true;
            }
            finally
            {
                // At the end too, and when no more lines are wanted: a body that was not given back takes its connection with it.
                body.AdvanceTo(rest.Start, isSearched ? rest.End : rest.Start);
            }

            if (read.IsCompleted) yield break;
        }
    }

    private static bool IsBlank(ReadOnlySequence<byte> line)
    {
        foreach (var part in line)
            if (part.Span.IndexOfAnyExcept(" \t\r"u8) >= 0) return false;
        return true;
    }
}
