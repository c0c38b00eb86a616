using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Hosting.Json;

/// <summary>
/// One strict way to read and write JSON, used everywhere. A slip of the pen in a request must be refused, not guessed at: wood cannot
/// be put back.
/// </summary>
internal static class StrictJson
{
    /// <summary>
    /// Deepest nesting that is read. The deepest request nests five levels; the rest is room to grow, and far below what could tire the
    /// reader's stack.
    /// </summary>
    public const int MaxDepth = 16;

    /// <summary>The options, for code that reads or writes JSON outside a request.</summary>
    public static JsonSerializerOptions Options { get; } = Create();

    /// <summary>Makes every endpoint read and write JSON strictly, and report what cannot be read instead of guessing.</summary>
    public static IServiceCollection AddStrictJson(this IServiceCollection services) => services
        .ConfigureHttpJsonOptions(json => Configure(json.SerializerOptions))
        .Configure<RouteHandlerOptions>(route => route.ThrowOnBadRequest = true);

    /// <summary>Applies the strict rules to a set of options.</summary>
    public static void Configure(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.DictionaryKeyPolicy = null;
        options.PropertyNameCaseInsensitive = false;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.AllowDuplicateProperties = false;
        options.AllowTrailingCommas = false;
        options.ReadCommentHandling = JsonCommentHandling.Disallow;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.RespectNullableAnnotations = true;
        options.RespectRequiredConstructorParameters = true;
        options.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        options.MaxDepth = MaxDepth;

        // The cautious encoder writes an apostrophe as \u0027 for the sake of JSON pasted into HTML. Answers are sent as JSON with
        // "nosniff", so people may read them plain.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new FiniteNumberConverter());
        options.Converters.Add(new ExactEnumConverter());
        options.Converters.Add(new FilledListConverter());
        options.TypeInfoResolverChain.Insert(0, DesignJson.Default);
        for (var i = 0; i < options.TypeInfoResolverChain.Count; i++)
            options.TypeInfoResolverChain[i] = options.TypeInfoResolverChain[i].WithAddedModifier(PrintedNumbers.Round);
    }

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web) { TypeInfoResolver = new DefaultJsonTypeInfoResolver() };
        Configure(options);
        options.MakeReadOnly();
        return options;
    }
}
