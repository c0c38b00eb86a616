using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace PaddleApi.Benchmarks;

/// <summary>As little of an HTTP client as will do, so that the client does not hide the server.</summary>
internal sealed class PlainClient : IDisposable
{
    private readonly Socket socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
    private readonly byte[] buffer = new byte[1 << 21];

    internal PlainClient(int port) => socket.Connect(IPAddress.Loopback, port);

    /// <summary>Posts a body several times; microseconds a request.</summary>
    internal double Post(string path, byte[] body, int times)
    {
        var head = $"POST {path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n";
        return Send(path, [.. Encoding.ASCII.GetBytes(head), .. body], "200", times);
    }

    /// <summary>Gets an address several times; microseconds a request.</summary>
    internal double Get(string path, string headers, string status, int times) =>
        Send(path, Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: localhost\r\n{headers}\r\n"), status, times);

    private double Send(string path, byte[] request, string status, int times)
    {
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < times; i++)
        {
            socket.Send(request);
            ReadAnswer(path, status);
        }

        return watch.Elapsed.TotalMicroseconds / times;
    }

    public void Dispose() => socket.Dispose();

    private void ReadAnswer(string path, string status)
    {
        var filled = 0;
        var headEnd = -1;
        while (true)
        {
            var got = socket.Receive(buffer, filled, buffer.Length - filled, SocketFlags.None);
            if (got == 0) throw new InvalidOperationException("The server closed the connection.");
            filled += got;
            var seen = buffer.AsSpan(0, filled);
            if (headEnd < 0)
            {
                headEnd = seen.IndexOf("\r\n\r\n"u8);
                if (headEnd < 0) continue;
                var line = Encoding.ASCII.GetString(seen[..60]);
                if (!line.StartsWith($"HTTP/1.1 {status}", StringComparison.Ordinal)) throw new InvalidOperationException($"{path}: {line}");
            }

            if (IsComplete(seen, headEnd)) return;
        }
    }

    private static bool IsComplete(ReadOnlySpan<byte> answer, int headEnd)
    {
        var head = Encoding.ASCII.GetString(answer[..headEnd]);
        if (head.StartsWith("HTTP/1.1 304", StringComparison.Ordinal)) return true;
        var length = head.IndexOf("Content-Length: ", StringComparison.OrdinalIgnoreCase);
        if (length < 0) return answer.EndsWith("0\r\n\r\n"u8);
        var text = head.AsSpan(length + "Content-Length: ".Length);
        var end = text.IndexOf('\r');
        return answer.Length >= headEnd + 4 + int.Parse(end < 0 ? text : text[..end], System.Globalization.CultureInfo.InvariantCulture);
    }
}
