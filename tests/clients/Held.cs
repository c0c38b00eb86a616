namespace Paddle.Clients;

/// <summary>What must hold of an answer; the program stops at the first that does not.</summary>
internal static class Held
{
    public static void That(bool holds, string what)
    {
        if (!holds) throw new InvalidOperationException($"It does not hold that {what}.");
    }

    public static async Task<byte[]> BytesAsync(Stream? stream)
    {
        That(stream is not null, "a file came");
        using var bytes = new MemoryStream();
        await stream!.CopyToAsync(bytes);
        return bytes.ToArray();
    }

    public static void StartsWith(byte[] bytes, string start) =>
        That(bytes.AsSpan().StartsWith(System.Text.Encoding.ASCII.GetBytes(start)), $"the file starts with {start}");
}
