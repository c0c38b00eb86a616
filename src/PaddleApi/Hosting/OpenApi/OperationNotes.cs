using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Batches;
using PaddleApi.Hosting.Browsers;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Writes what <see cref="Documented"/> noted on an endpoint into its description: examples, headers and what each status means.</summary>
/// <param name="rules">The validators' rules.</param>
internal sealed class OperationNotes(ValidatorRules rules) : IOperationFilter
{
    private const string PathForExamples = "/v1/designs";
    private const string RequestIdForExamples = "01a214cc955d726c9a90e9778111f5f8";

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        var notes = context.ApiDescription.ActionDescriptor.EndpointMetadata;
        DescribeParameters(operation, notes);
        AddQuery(operation, notes);
        AddRequestExamples(operation, notes);
        AddUnforeseen(operation, context);
        foreach (var mark in notes.OfType<ScopeMark>())
        {
            operation.Security = [[], new() { [new OpenApiSecuritySchemeReference(DocumentNotes.KeyScheme, context.Document)] = [] }];
            operation.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
            operation.Extensions["x-scope"] = new JsonNodeExtension(JsonValue.Create(mark.Scope));
        }

        foreach (var (status, response) in operation.Responses!)
        {
            var answer = (OpenApiResponse)response;
            var kinds = notes.OfType<ProblemKind>().Where(kind => IsStatus(status, kind.Status)).Distinct().ToList();
            answer.Description = Meaning(status, kinds, notes);
            answer.Headers = Headers(status, notes);
            AddExamples(answer, status, kinds, notes);
        }

        var sorted = new OpenApiResponses();
        foreach (var (status, response) in operation.Responses.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            sorted[status] = response;
        }

        operation.Responses = sorted;
    }

    private void DescribeParameters(OpenApiOperation operation, IList<object> notes)
    {
        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            if (notes.OfType<ParameterNote>().LastOrDefault(note => note.Name == parameter.Name) is { } note)
            {
                parameter.Description = note.Description;
                parameter.Example = IsNumber(parameter.Schema) ? JsonNode.Parse(note.Example()) : JsonValue.Create(note.Example());
                if (note.Text is not null && parameter.Schema is OpenApiSchema schema) SchemaNotes.StateText(schema, note.Text, rules);
            }
        }
    }

    private void AddQuery(OpenApiOperation operation, IList<object> notes)
    {
        foreach (var note in notes.OfType<QueryNote>())
        {
            operation.Parameters ??= [];
            operation.Parameters.Add(new OpenApiParameter
            {
                Name = note.Name,
                In = ParameterLocation.Query,
                Description = note.Description,
                Schema = note.Number is { } member ? NumberSchema(member) : NameSchema(note),
                Example = note.Number is null ? JsonValue.Create(note.Example) : JsonNode.Parse(note.Example),
            });
        }
    }

    private static OpenApiSchema NameSchema(QueryNote note) => new()
    {
        Type = JsonSchemaType.String,
        Enum = note.Allowed.Count == 0 ? null : [.. note.Allowed.Select(name => (JsonNode)JsonValue.Create(name))],
    };

    private OpenApiSchema NumberSchema(PropertyInfo member)
    {
        var isWhole = (Nullable.GetUnderlyingType(member.PropertyType) ?? member.PropertyType) == typeof(int);
        var schema = new OpenApiSchema
        {
            Type = isWhole ? JsonSchemaType.Integer : JsonSchemaType.Number,
            Format = isWhole ? "int32" : "double",
        };
        SchemaNotes.StateRange(schema, rules.RangeOf(member));
        SchemaNotes.StateUnit(schema, member);
        return schema;
    }

    private static void AddRequestExamples(OpenApiOperation operation, IList<object> notes)
    {
        foreach (var (mediaType, body) in operation.RequestBody?.Content ?? new Dictionary<string, IOpenApiMediaType>())
        {
            if (body is not OpenApiMediaType content) continue;
            if (IsFile(mediaType)) content.Schema = FileSchema();
            content.Examples = notes.OfType<RequestExample>()
                .ToDictionary(example => example.Name, example => (IOpenApiExample)Example(example.Summary, example.Body()), StringComparer.Ordinal);
        }
    }

    private static void AddExamples(OpenApiResponse answer, string status, List<ProblemKind> kinds, IList<object> notes)
    {
        foreach (var (mediaType, body) in answer.Content ?? new Dictionary<string, IOpenApiMediaType>())
        {
            if (body is not OpenApiMediaType content)
            {
                continue;
            }

            // An answer in several media types has one schema in the platform's eyes, but a file is no JSON.
            if (IsFile(mediaType)) content.Schema = FileSchema();

            content.Examples = mediaType == ProblemResult.MediaType
                ? (status == "default" ? [ProblemKinds.Internal] : kinds)
                    .ToDictionary(kind => kind.Type[ProblemKinds.Root.Length..], kind => (IOpenApiExample)Example(kind.Title, Sample(kind)), StringComparer.Ordinal)
                : mediaType == MediaTypes.Json && status.StartsWith('2')
                    ? notes.OfType<ResponseExample>()
                        .ToDictionary(example => example.Name, example => (IOpenApiExample)Example(example.Summary, example.Body()), StringComparer.Ordinal)
                    : null;
        }
    }

    // 5xx are not told apart in the description, but for those a caller can plan for.
    private static void AddUnforeseen(OpenApiOperation operation, OperationFilterContext context) =>
        operation.Responses!["default"] = new OpenApiResponse
        {
            Content = new Dictionary<string, IOpenApiMediaType>
            {
                [ProblemResult.MediaType] = new OpenApiMediaType
                {
                    Schema = context.SchemaGenerator.GenerateSchema(typeof(Problem), context.SchemaRepository),
                },
            },
        };

    private static string Meaning(string status, List<ProblemKind> kinds, IList<object> notes) => status switch
    {
        "200" when notes.OfType<DownloadMark>().Any() => "The file.",
        "200" => notes.OfType<ResponseExample>().FirstOrDefault()?.Summary is { } summary ? $"The answer, such as: {summary}." : "The answer.",
        "206" => "The part of the file that the header Range asks for.",
        "304" => "The caller's copy, named by If-None-Match, is current.",
        "default" => "Something went wrong inside the service (500), or the work took too long (504).",
        _ => string.Join(" ", kinds.Select(kind => $"{kind.Meaning} {kind.Remedy}").DefaultIfEmpty("The request is refused.")),
    };

    private static Dictionary<string, IOpenApiHeader> Headers(string status, IList<object> notes)
    {
        var headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal)
        {
            [RequestIds.Header] = Header("Identifier of the request: the caller's own where it sent one, else a new one.", RequestIdForExamples),
        };
        if (status is "200" or "206" or "304" && notes.OfType<FixedContentMark>().Any())
        {
            headers["ETag"] = Header("Strong entity tag; send it back in If-None-Match.", "\"V9uGo5nFqSyb1m3GdBqLOw\"");
            headers["Cache-Control"] = Header("How long a cache may answer without asking.", $"public, max-age={FixedContent.MaxAgeSeconds}");
        }
        else if (status is "429" or "503")
        {
            headers["Retry-After"] = Header("When to try again, seconds.", "1");
        }

        if (status is "200" or "206" && notes.OfType<DownloadMark>().Any())
        {
            headers["Content-Disposition"] = Header(
                "Name to save the file under, made from the design's label (RFC 6266).",
                "inline; filename=\"hire-paddle-m-outline.svg\"; filename*=UTF-8''Hire%20paddle%20M%20outline.svg");
            headers["Accept-Ranges"] = Header("Parts of the file may be asked for, in bytes.", "bytes");
            headers["Content-Security-Policy"] = Header(
                "What the file may do when opened as a page: a drawing shows itself, and nothing is shown in a frame.",
                ("drawing", SecurityHeaders.PolicyOf(MediaTypes.Svg)), ("other", SecurityHeaders.PolicyOf(null)));
        }

        if (status == "429")
        {
            headers["RateLimit"] = Header("Requests left (r) and seconds until the count begins again (t).", "\"default\";r=0;t=42");
            headers["RateLimit-Policy"] = Header("Requests (q) in so many seconds (w).", "\"default\";q=600;w=60");
        }
        else if (status is "401" or "403")
        {
            headers["WWW-Authenticate"] = Header("What is asked for (RFC 6750).", "Bearer realm=\"PaddleApi\", scope=\"design\"");
        }

        if (status is "206" or "416")
        {
            headers["Content-Range"] = Header("Which bytes these are, and of how many.", ("part", "bytes 0-99/4321"), ("outside", "bytes */4321"));
        }

        return headers;
    }

    private static OpenApiHeader Header(string description, string example) => new()
    {
        Description = description,
        Required = true,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Example = JsonValue.Create(example),
    };

    private static OpenApiHeader Header(string description, params (string Name, string Value)[] examples) => new()
    {
        Description = description,
        Required = true,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Examples = examples.ToDictionary(
            example => example.Name, example => (IOpenApiExample)new OpenApiExample { Value = JsonValue.Create(example.Value) }, StringComparer.Ordinal),
    };

    // The same for every operation, so that it is shown once.
    private static Problem Sample(ProblemKind kind) => new(kind.Type, kind.Title, kind.Status, kind.Meaning, PathForExamples, RequestIdForExamples);

    private static OpenApiExample Example(string summary, object body) => new()
    {
        Summary = summary,
        Value = JsonSerializer.SerializeToNode(body, StrictJson.Options),
    };

    // Drawings and tables too, though they are text: a client is generated to read a plain string as JSON, and to hand these bytes over as they are.
    private static OpenApiSchema FileSchema() => new() { Type = JsonSchemaType.String, Format = "binary" };

    private static bool IsFile(string mediaType) => !mediaType.EndsWith("json", StringComparison.Ordinal) || mediaType == BatchMedia.Ndjson;

    private static bool IsNumber(IOpenApiSchema? schema) =>
        schema?.Type is { } type && (type.HasFlag(JsonSchemaType.Number) || type.HasFlag(JsonSchemaType.Integer));

    private static bool IsStatus(string text, int status) => text == status.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
