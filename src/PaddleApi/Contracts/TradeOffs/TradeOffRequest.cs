using System.Text.Json;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.TradeOffs;

/// <summary>A design, what of it is to vary, and what is wished more and less of.</summary>
internal sealed record TradeOffRequest
{
    /// <summary>Most designs of one request.</summary>
    internal const int MostDesigns = 400;

    /// <summary>The design that varies; it must be one by itself. Required.</summary>
    public DesignRequest? Base { get; init; }
    /// <summary>One to three inputs; every combination of their values is designed.</summary>
    public IReadOnlyList<VariedInput>? Vary { get; init; }
    /// <summary>JSON Pointers into the answer of <c>/v1/designs</c>, such as <c>/mass/finishedG</c>, of numbers that are wished small.</summary>
    public IReadOnlyList<string>? Minimise { get; init; }
    /// <summary>The same of numbers that are wished large.</summary>
    public IReadOnlyList<string>? Maximise { get; init; }
}

/// <summary>An input that varies.</summary>
internal sealed record VariedInput
{
    /// <summary>JSON Pointer of the input in a request for a design, such as <c>/blade/widthMm</c>; required.</summary>
    public string? Pointer { get; init; }
    /// <summary>What it is to be by turns: numbers, texts, true or false; at least one.</summary>
    public IReadOnlyList<JsonElement>? Values { get; init; }
}
