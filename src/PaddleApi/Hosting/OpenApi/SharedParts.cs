using System.Globalization;
using Microsoft.OpenApi;
using PaddleApi.Hosting.Problems;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>
/// Moves what operations say alike under <c>components</c>, so that it is said once and a generated client has one type for it: every refusal
/// with its example, and each header, parameter, example and answer that stands more than once. Where two things would take one name the
/// second stays where it is.
/// </summary>
internal sealed class SharedParts : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var operations = swaggerDoc.Paths.Values.SelectMany(path => path.Operations?.Values.AsEnumerable() ?? []).ToList();
        var responses = operations.SelectMany(operation => operation.Responses ?? []).Select(pair => pair.Value).ToList();
        var parts = swaggerDoc.Components ??= new();
        new OpenApiWalker(new OwnWords(parts.Schemas ?? new Dictionary<string, IOpenApiSchema>())).Walk(swaggerDoc);

        // From the inside out: an answer is like another once its headers and examples are.
        parts.Examples = Share(
            responses.SelectMany(response => response.Content ?? new Dictionary<string, IOpenApiMediaType>())
                .Where(content => content.Value.Examples is not null)
                .SelectMany(content => content.Value.Examples!.Select(example => new Place<IOpenApiExample>(
                    Words(example.Key), example.Value, content.Key == ProblemResult.MediaType, part => content.Value.Examples![example.Key] = part))),
            name => new OpenApiExampleReference(name, swaggerDoc));
        parts.Headers = Share(
            responses.SelectMany(response => (response.Headers ?? new Dictionary<string, IOpenApiHeader>()).Select(header => new Place<IOpenApiHeader>(
                Words(header.Key), header.Value, false, part => response.Headers![header.Key] = part))),
            name => new OpenApiHeaderReference(name, swaggerDoc));
        parts.Parameters = Share(
            operations.SelectMany(operation => (operation.Parameters ?? []).Select((parameter, index) => new Place<IOpenApiParameter>(
                Words(parameter.Name!), parameter, false, part => operation.Parameters![index] = part))),
            name => new OpenApiParameterReference(name, swaggerDoc));
        parts.Responses = Share(
            operations.SelectMany(operation => (operation.Responses ?? []).Select(pair => new Place<IOpenApiResponse>(
                NameOf(pair.Key, pair.Value), pair.Value, IsRefusal(pair.Value), part => operation.Responses![pair.Key] = part))),
            name => new OpenApiResponseReference(name, swaggerDoc));
    }

    private static SortedDictionary<string, T> Share<T>(IEnumerable<Place<T>> places, Func<string, T> reference)
        where T : IOpenApiSerializable
    {
        var shared = new SortedDictionary<string, T>(StringComparer.Ordinal);
        foreach (var alike in places.GroupBy(place => TextOf(place.Part), StringComparer.Ordinal).ToList())
        {
            var first = alike.First();
            if ((alike.Count() == 1 && !first.IsAlwaysShared) || !shared.TryAdd(first.Name, first.Part)) continue;
            foreach (var place in alike) place.Put(reference(first.Name));
        }

        return shared;
    }

    private static bool IsRefusal(IOpenApiResponse response) => response.Content?.ContainsKey(ProblemResult.MediaType) == true;

    // A refusal is called by its kinds, a file by what it holds.
    private static string NameOf(string status, IOpenApiResponse response)
    {
        var (mediaType, content) = response.Content?.FirstOrDefault() ?? default;
        return mediaType is null ? status == "304" ? "NotModified" : $"Empty{status}"
            : IsRefusal(response) ? string.Join("Or", content!.Examples!.Keys.Select(Words))
            : $"{Words(mediaType.Split('/')[1].Split('+')[0])}{(status == "206" ? "Part" : "File")}";
    }

    // "X-Request-Id" becomes RequestId, "not-found" NotFound.
    private static string Words(string name) => string.Concat(
        name.Split('-', '.').Where(word => word is not ("X" or "vnd")).Select(word => char.ToUpper(word[0], CultureInfo.InvariantCulture) + word[1..]));

    private static string TextOf(IOpenApiSerializable part)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        part.SerializeAsV31(new OpenApiJsonWriter(text));
        return text.ToString();
    }

    /// <summary>Takes from references to schemas the words that the schema says itself.</summary>
    private sealed class OwnWords(IDictionary<string, IOpenApiSchema> schemas) : OpenApiVisitorBase
    {
        public override void Visit(IOpenApiReferenceHolder referenceHolder)
        {
            if (referenceHolder is not OpenApiSchemaReference { Reference: { Id: { } id, Description: { } words } } reference) return;
            if (OneLine(words) == OneLine(schemas[id].Description ?? "")) reference.Reference.Description = null;
        }

        private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>Where a part stands.</summary>
    /// <param name="Name">What it is called under <c>components</c>.</param>
    /// <param name="Part">The part.</param>
    /// <param name="IsAlwaysShared">Whether it is moved even if it stands once.</param>
    /// <param name="Put">Puts another in its place.</param>
    private sealed record Place<T>(string Name, T Part, bool IsAlwaysShared, Action<T> Put);
}
