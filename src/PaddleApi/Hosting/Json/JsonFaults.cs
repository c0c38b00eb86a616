using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Hosting.Json;

/// <summary>What is wrong with a body that could not be read.</summary>
/// <param name="Errors">Place by place, keyed by JSON Pointer.</param>
/// <param name="IsOfValues">Whether its form is good and only its values are not.</param>
internal sealed record JsonDiagnosis(string Detail, IReadOnlyDictionary<string, IReadOnlyList<Fault>> Errors, bool IsOfValues = false);

/// <summary>
/// Finds every fault of a body against the type it should have been. The platform stops at the first and speaks in type names; this reads
/// the body again, only after it has been refused, and speaks in the contract's names.
/// </summary>
internal static class JsonFaults
{
    // Far deeper than StrictJson allows: it only serves to tell "too deep" from "not well formed".
    private const int DiagnosisDepth = 512;

    private static ReadOnlySpan<byte> ByteOrderMark => "\uFEFF"u8;

    /// <summary>Finds the faults.</summary>
    /// <param name="type">Type that the body should have been read as.</param>
    public static JsonDiagnosis Find(ReadOnlyMemory<byte> body, Type type, JsonSerializerOptions options)
    {
        // The reader of requests passes over a byte order mark, the parser does not.
        body = body.Span.StartsWith(ByteOrderMark) ? body[ByteOrderMark.Length..] : body;
        if (body.Span.IndexOfAnyExcept(" \t\r\n"u8) < 0) return At("", "The body is empty; a JSON object is expected.");
        if (!Utf8.IsValid(body.Span)) return At("", NotUtf8(body.Span));

        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = DiagnosisDepth });
            var walk = new JsonShapeWalk(options);
            walk.Visit(document.RootElement, type, allowNull: false, pointer: "", depth: 1);
            return walk.Errors.Count > 0
                ? new JsonDiagnosis(Summary(walk), walk.Errors, walk.IsOnlyTooLong)
                : At("", "The body cannot be read as the JSON this address asks for.");
        }
        catch (JsonException fault)
        {
            // Lines and bytes are counted from 0 by the reader and from 1 by editors.
            return At("", string.Create(
                null, $"This is not well-formed JSON at line {fault.LineNumber + 1 ?? 1}, byte {fault.BytePositionInLine + 1 ?? 1}."));
        }
    }

    private static JsonDiagnosis At(string pointer, string reason) =>
        new(reason, new Dictionary<string, IReadOnlyList<Fault>> { [pointer] = [new Fault(reason, Code: RefusalCodes.NotJson)] });

    // Lines and bytes are counted from 1, as editors do.
    private static string NotUtf8(ReadOnlySpan<byte> body)
    {
        var at = 0;
        while (Rune.DecodeFromUtf8(body[at..], out _, out var length) == OperationStatus.Done) at += length;
        var line = body[..at].Count((byte)'\n') + 1;
        var column = at - body[..at].LastIndexOf((byte)'\n');
        return string.Create(null, $"The body is not UTF-8 at line {line}, byte {column}; JSON is sent in UTF-8 (RFC 8259, 8.1).");
    }

    private static string Summary(JsonShapeWalk walk)
    {
        var (pointer, faults) = walk.Errors.First();
        var first = $"At {(pointer.Length == 0 ? "the body" : pointer)}: {faults[0].Reason}";
        var others = walk.Errors.Values.Sum(list => list.Count) - 1;
        return walk.IsFull ? string.Create(null, $"{first} There are more faults; the first {Problem.MostFaults} are in errors.")
            : others == 0 ? first
            : string.Create(null, $"{first} There {(others == 1 ? "is 1 more fault" : $"are {others} more faults")}; see errors.");
    }
}
