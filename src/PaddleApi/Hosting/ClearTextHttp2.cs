using System.Buffers;
using System.IO.Pipelines;
using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace PaddleApi.Hosting;

/// <summary>
/// Lets callers inside a network speak HTTP/2 without TLS on the address that also takes HTTP/1.1 (RFC 9113, 3.3: prior knowledge). The
/// server decides between the two by what TLS negotiates, and without TLS takes HTTP/1.1; here the first bytes decide, for an HTTP/2 caller
/// begins with a request line that no HTTP/1.1 caller may send (RFC 9113, 3.4).
/// </summary>
internal static class ClearTextHttp2
{
    // The server asks each connection for this feature before its own setting; it is not public, so a server that has another name for it
    // answers HTTP/1.1 alone as before. A test holds the two together.
    private static readonly Type? Choice =
        typeof(KestrelServerOptions).Assembly.GetType("Microsoft.AspNetCore.Server.Kestrel.Core.Internal.HttpProtocolsFeature");

    private static ReadOnlySpan<byte> Preface => "PRI "u8;

    /// <summary>Looks at the first bytes of each connection of an address.</summary>
    /// <param name="patience">How long a connection may be silent; the server counts only from when it has been given one.</param>
    public static void UseClearTextHttp2(this ListenOptions listen, TimeSpan patience)
    {
        if (Choice is null) return;
        listen.Use(next => async connection =>
        {
            // A service that is told to stop does not wait for who has said nothing yet.
            var stopping = connection.Features.Get<IConnectionLifetimeNotificationFeature>()?.ConnectionClosedRequested ?? default;
            using var silence = CancellationTokenSource.CreateLinkedTokenSource(connection.ConnectionClosed, stopping);
            silence.CancelAfter(patience);
            try
            {
                if (await StartsWithPrefaceAsync(connection.Transport.Input, silence.Token))
                    connection.Features[Choice] = Activator.CreateInstance(Choice, HttpProtocols.Http2);
            }
            catch (Exception fault) when (fault is OperationCanceledException or IOException)
            {
                // It said nothing, or hung up before it did; there is nobody to answer, and the server closes what is left to it.
                return;
            }

            await next(connection);
        });
    }

    // What is looked at is left where it is: the server reads the same bytes again.
    private static async Task<bool> StartsWithPrefaceAsync(PipeReader input, CancellationToken cancellation)
    {
        while (true)
        {
            var read = await input.ReadAsync(cancellation);
            var (isDecided, isPreface) = Compare(read.Buffer);
            isDecided |= read.IsCompleted;
            input.AdvanceTo(read.Buffer.Start, isDecided ? read.Buffer.Start : read.Buffer.End);
            if (isDecided) return isPreface;
        }
    }

    private static (bool IsDecided, bool IsPreface) Compare(ReadOnlySequence<byte> begun)
    {
        Span<byte> first = stackalloc byte[Preface.Length];
        var seen = first[..(int)Math.Min(begun.Length, first.Length)];
        begun.Slice(0, seen.Length).CopyTo(seen);
        var isPreface = Preface.StartsWith(seen);
        return (!isPreface || seen.Length == Preface.Length, isPreface && seen.Length == Preface.Length);
    }
}
