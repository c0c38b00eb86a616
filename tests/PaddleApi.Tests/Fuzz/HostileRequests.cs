using System.Buffers.Text;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Fuzz;

/// <summary>A request as a server hands it on.</summary>
/// <param name="Method">Its method.</param>
/// <param name="Target">Path and query as they came.</param>
/// <param name="Headers">Its headers.</param>
/// <param name="Body">Its body; null for none.</param>
internal sealed record HostileRequest(string Method, string Target, IReadOnlyList<(string Name, string Value)> Headers, byte[]? Body)
{
    public void WriteTo(HttpContext context)
    {
        var mark = Target.IndexOf('?', StringComparison.Ordinal);
        var request = context.Request;
        request.Method = Method;
        request.Scheme = "http";
        request.Host = new HostString("localhost");

        // As the server decodes a path: what is no UTF-8 stays, and a slash in a part stays a part's.
        request.Path = new PathString(Uri.UnescapeDataString((mark < 0 ? Target : Target[..mark]).Replace("%2F", "%252F", StringComparison.OrdinalIgnoreCase)));
        request.QueryString = mark < 0 ? QueryString.Empty : new QueryString(Target[mark..]);
        context.Features.GetRequiredFeature<IHttpRequestFeature>().RawTarget = Target;
        foreach (var (name, value) in Headers) request.Headers.Append(name, value);
        if (Body is null) return;
        request.Body = new MemoryStream(Body);
        request.ContentLength = Body.Length;

        // The test server finds out for its own clients only.
        context.Features.Set<IHttpRequestBodyDetectionFeature>(new HasBody());
    }

    public override string ToString() =>
        $"{Method} {Shorten(Target)} [{string.Join("; ", Headers.Select(header => $"{header.Name}: {Shorten(header.Value)}"))}] "
        + Shorten(Body is null ? "" : Encoding.Latin1.GetString(Body));

    private sealed class HasBody : IHttpRequestBodyDetectionFeature
    {
        public bool CanHaveBody => true;
    }

    private static string Shorten(string text) => text.Length <= 600 ? text : $"{text[..600]}…({text.Length})";
}

/// <summary>Makes hostile requests of the operations that the description names: the same number gives the same request.</summary>
/// <param name="seed">Where chance begins.</param>
internal sealed class HostileRequests(int seed)
{
    private static readonly string[] Methods = ["GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "get", "X"];

    private static readonly string[] Parts =
    [
        "no-such-thing", "%00", "%2F", "..%2f..%2fetc", "%ff%fe", "%C3%28", "%F0%9F%9B%B6", "a%20b", "%0d%0aX:y", "null", "-1", "p1", "p1A", "p1!!!!", "p2AAAA", "white-ash%00",
        "WHITE-ASH", "%77hite-ash", "outline.svg", "{designCode}", "*", "%", "%zz", "~", ";a=b",
    ];

    private static readonly string[] QueryValues =
        ["", "1", "33.3", "-1", "1e308", "1e309", "4,0", "NaN", "%00", "%ff", "inch", "INCH", "metric", "a4", "letter", "roll", "+5", "%2B5", "5%20", "band-saw", "0", "99999999999999999999"];

    private static readonly (string Name, string[] Values)[] Headers =
    [
        ("Accept", ["*/*", "application/json", "image/svg+xml", "text/html;q=0", "x", "a/b;q=9", "*/*;q=0", ",,,", "application/json;q=nan", "\u00ff"]),
        ("Accept-Encoding", ["br", "gzip", "identity;q=0", "*;q=0", "zstd, br;q=2", ";;;", "deflate"]),
        ("Range", ["bytes=0-0", "bytes=-1", "bytes=5-2", "bytes=0-0,5-9", "bytes=99999999999999999999-", "bytes=-0", "bytes=", "lines=1-2", "bytes=1000000000-", "bytes=a-b"]),
        ("If-None-Match", ["*", "\"x\"", "W/\"x\"", "\"", ",", "x", "\"a\", \"b\", *"]),
        ("If-Match", ["*", "\"x\"", "\""]),
        ("If-Range", ["\"x\"", "Thu, 01 Jan 1970 00:00:00 GMT", "x", "W/\"x\""]),
        ("If-Modified-Since", ["Thu, 01 Jan 1970 00:00:00 GMT", "x", "Thu, 99 Jan 9999 99:99:99 GMT"]),
        ("Content-Type", ["application/json", "application/json; charset=utf-16", "application/json; charset=\"utf-8\"", "text/plain", "", "application/JSON;;", "application/problem+json", "multipart/form-data"]),
        ("Content-Encoding", ["gzip", "br", "identity", "x", ""]),
        ("X-Request-Id", ["a", "has space", "<script>", "é", ""]),
        ("Origin", ["https://paddles.example", "null", "x", "https://a,https://b"]),
        ("Access-Control-Request-Method", ["GET", "X", ""]),
        ("Transfer-Encoding", ["chunked", "gzip"]),
        ("Expect", ["100-continue", "x"]),
        ("Cookie", ["a=b", "\u0001"]),
        ("X-Forwarded-For", ["1.2.3.4", "x, y, z", "[::1]:99999"]),
        ("X-Forwarded-Proto", ["https", "x"]),
        ("X-Forwarded-Prefix", ["/x", "//evil.example"]),
        ("X-HTTP-Method-Override", ["DELETE"]),
        ("Upgrade", ["h2c", "websocket"]),
    ];

    private readonly HostileJson json = new(Committed.Description.Root);
    private readonly IReadOnlyList<ApiOperation> operations = Committed.Description.Operations;
    private readonly byte[] canonical = Unpacked(Committed.Description.Operations.Single(operation => operation.Id == "getDesign").ExamplePath().Split('/')[^1]);

    public HostileRequest Number(int number)
    {
        var random = new Random(HashCode(seed, number));
        var operation = operations[random.Next(operations.Count)];

        // Bodies are where most can be wrong.
        if (random.Next(2) == 0) operation = operations.Where(one => one.HasBody).ElementAt(random.Next(operations.Count(one => one.HasBody)));
        var method = random.Next(25) == 0 ? Methods[random.Next(Methods.Length)] : operation.Method == "GET" && random.Next(10) == 0 ? "HEAD" : operation.Method;
        var headers = new List<(string Name, string Value)>();
        byte[]? body = null;
        if (operation.HasBody || random.Next(40) == 0)
        {
            body = operation.HasBody ? json.Body(random, operation.Node) : "{}"u8.ToArray();
            if (operation.HasBody && random.Next(6) == 0) body = WithCode(random, body);
            if (random.Next(12) > 0) headers.Add(("Content-Type", "application/json"));
        }

        if (operation.IsBatch)
        {
            var one = operations.Single(other => other.HasBody && other.Template == operation.Template.Replace("-batches", "s", StringComparison.Ordinal));
            body = [.. Enumerable.Range(0, random.Next(4)).SelectMany(_ => (IEnumerable<byte>)[.. json.Body(random, one.Node), (byte)'\n'])];
            headers.Add(("Content-Type", "application/x-ndjson"));
        }

        for (var times = random.Next(4) == 0 ? 1 + random.Next(4) : 0; times > 0; times--)
        {
            var (name, values) = Headers[random.Next(Headers.Length)];
            headers.Add((name, random.Next(12) == 0 ? new string('a', random.Next(8000)) : values[random.Next(values.Length)]));
        }

        return new(method, Target(random, operation), headers, body);
    }

    // The same on every run and machine, which the platform's own hash is not.
    private static int HashCode(int seed, int number) => unchecked(seed * 397 ^ number * 486187739);

    private string Target(Random random, ApiOperation operation)
    {
        var path = operation.Template;
        foreach (var name in operation.ParameterNames)
            path = path.Replace($"{{{name}}}", name == "designCode" ? Code(random, mostGood: operation.Documents(503) ? 7 : 10) : Parts[random.Next(Parts.Length)], StringComparison.Ordinal);
        path = random.Next(60) switch
        {
            0 => path + "/",
            1 => path.ToUpperInvariant(),
            2 => "/" + path,
            3 => path + "/" + Parts[random.Next(Parts.Length)],
            4 => path.Replace("v1", "%76%31", StringComparison.Ordinal),
            5 => path + new string('x', random.Next(3000)),
            _ => path,
        };
        return random.Next(operation.HasBody ? 20 : 3) > 0 ? path : path + Query(random, operation);
    }

    private static string Query(Random random, ApiOperation operation)
    {
        string[] names = [.. operation.QueryNames, .. operation.QueryNames, "x", "", "units", "%00", "Units"];
        var parts = Enumerable.Range(0, 1 + random.Next(3)).Select(_ => random.Next(10) switch
        {
            0 => "",
            1 => names[random.Next(names.Length)],
            _ => $"{names[random.Next(names.Length)]}={QueryValues[random.Next(QueryValues.Length)]}",
        });
        return $"?{string.Join('&', parts)}";
    }

    // A code that is right in every letter may still hold what no solver chose. Heavy files are asked for with bad ones mostly.
    private string Code(Random random, int mostGood = 10)
    {
        var code = Packed(random.Next(8) == 0 ? canonical : Renumbered(random));
        return random.Next(mostGood) switch
        {
            0 => Parts[random.Next(Parts.Length)],
            1 => code[..random.Next(code.Length)],
            2 => code + "AAAA",
            3 => Uri.EscapeDataString(Encoding.Latin1.GetString(HostileJson.Damaged(random, Encoding.Latin1.GetBytes(code)))),
            4 => Packed(HostileJson.Damaged(random, canonical)),
            5 => Packed(new byte[random.Next(200_000)]),
            6 when mostGood > 7 || random.Next(4) > 0 => $"p1{new string('A', random.Next(6000))}",
            _ => code,
        };
    }

    // Digits of the canonical text changed: a design that reads well and may be of any sizes.
    private byte[] Renumbered(Random random)
    {
        var text = (byte[])canonical.Clone();
        var digits = Enumerable.Range(0, text.Length).Where(i => char.IsAsciiDigit((char)text[i])).ToList();
        if (digits.Count == 0) return text;
        for (var times = 1 + random.Next(3); times > 0; times--) text[digits[random.Next(digits.Count)]] = (byte)('0' + random.Next(10));
        return text;
    }

    private byte[] WithCode(Random random, byte[] body)
    {
        try
        {
            if (JsonNode.Parse(body) is not JsonObject members || !members.ContainsKey("designCode")) return body;
            members["designCode"] = Uri.UnescapeDataString(Code(random));
            return Encoding.UTF8.GetBytes(members.ToJsonString());
        }
        catch (Exception fault) when (fault is System.Text.Json.JsonException or ArgumentException or InvalidOperationException)
        {
            return body;
        }
    }

    private static byte[] Unpacked(string code)
    {
        using var unpacking = new BrotliStream(new MemoryStream(Base64Url.DecodeFromChars(code.AsSpan(2))[3..]), CompressionMode.Decompress);
        using var text = new MemoryStream();
        unpacking.CopyTo(text);
        return text.ToArray();
    }

    private static string Packed(byte[] text)
    {
        var packed = new byte[BrotliEncoder.GetMaxCompressedLength(text.Length) + 16];
        BrotliEncoder.TryCompress(text, packed, out var length, 3, 10);
        return $"p1{Base64Url.EncodeToString([.. SHA256.HashData(text).AsSpan(0, 3), .. packed.AsSpan(0, length)])}";
    }
}
