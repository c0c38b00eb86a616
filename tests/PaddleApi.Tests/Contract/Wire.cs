using System.Net.Sockets;
using System.Text;

namespace PaddleApi.Tests.Contract;

/// <summary>Sends bytes as they are: no client tidies them up.</summary>
public static class Wire
{
    /// <summary>An answer as it came.</summary>
    /// <param name="Status">The status; 0 where the connection was closed without one.</param>
    /// <param name="Head">Status line and headers.</param>
    /// <param name="Body">The rest.</param>
    public sealed record Answer(int Status, string Head, string Body);

    /// <summary>Sends a request line with the headers that every request needs, and waits for the end of the connection.</summary>
    public static Task<Answer> AskAsync(Uri server, string requestLine, string headers = "", byte[]? body = null)
    {
        var length = body is null ? "" : $"Content-Length: {body.Length}\r\n";
        var head = Encoding.Latin1.GetBytes($"{requestLine}\r\nHost: {server.Authority}\r\nConnection: close\r\n{length}{headers}\r\n");
        return SendAsync(server, [.. head, .. body ?? []]);
    }

    /// <summary>Sends bytes and waits for the end of the connection.</summary>
    public static async Task<Answer> SendAsync(Uri server, byte[] bytes)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(server.Host, server.Port);
        var stream = client.GetStream();
        using var received = new MemoryStream();
        try
        {
            await stream.WriteAsync(bytes);
            await stream.CopyToAsync(received);
        }
        catch (IOException)
        {
            // The server hangs up on who goes on sending what it will not read; what it has said before counts.
        }

        var text = Encoding.UTF8.GetString(received.ToArray());
        var end = text.IndexOf("\r\n\r\n", StringComparison.Ordinal);
        var head = end < 0 ? text : text[..end];
        return new(head.StartsWith("HTTP/1.1 ", StringComparison.Ordinal) ? int.Parse(head.AsSpan(9, 3), null) : 0, head, end < 0 ? "" : text[(end + 4)..]);
    }
}
