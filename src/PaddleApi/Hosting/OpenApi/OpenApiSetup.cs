using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;
using PaddleApi.Hosting.Caching;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>The service's description in OpenAPI 3.1 and a page to try it on.</summary>
public static class OpenApiSetup
{
    /// <summary>Name of the description, as in the paths that it describes.</summary>
    public const string DocumentName = "v1";

    /// <summary>
    /// Version of the contract, not of the engine: the first number rises when something is taken away or narrowed, the second when something is
    /// added, the third when only words change (semver.org, 2.0.0).
    /// </summary>
    public const string ContractVersion = "1.3.1";

    private const string Address = $"/openapi/{DocumentName}.json";

    private const string About =
        "Designs hand-made wooden single-blade canoe paddles: from a person, a boat, a water and a board to lengths, outline, thicknesses, "
        + "balance, strength, drawings and shaping steps. Stateless: nothing is kept, and the same request gives the same answer. "
        + "Members are camelCase with the unit as suffix; an absent member and null mean the same; unknown members and parameters are "
        + "refused. Each address has one spelling, and a parameter one value, its numbers written as in JSON. "
        + "Pages of any origin may call it (CORS) unless its host lists those that may. Every answer carries X-Request-Id. Errors are application/problem+json (RFC 9457), explained below /problems; only "
        + "what the web server itself cannot read, such as a request line over 8 KiB (414), is answered without a body.";

    /// <summary>Adds the description.</summary>
    /// <param name="services">The service collection.</param>
    /// <returns>The same collection.</returns>
    public static IServiceCollection AddDescription(this IServiceCollection services)
    {
        services.ConfigureSwagger(swagger => swagger.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        return services.AddSingleton<ValidatorRules>().AddSingleton<DescriptionText>().AddEndpointsApiExplorer().AddSwaggerGen(generator =>
        {
            generator.SwaggerDoc(DocumentName, new OpenApiInfo
            {
                Title = "PaddleApi",
                Version = ContractVersion,
                Summary = "Design service for wooden canoe paddles",
                Description = About,
                License = new OpenApiLicense { Name = "MIT", Identifier = "MIT" },
            });

            // One endpoint answers GET and HEAD; a description of HEAD would only repeat that of GET.
            generator.DocInclusionPredicate((_, operation) => !HttpMethods.IsHead(operation.HttpMethod!));
            generator.SupportNonNullableReferenceTypes();
            generator.NonNullableReferenceTypesAsRequired();
            foreach (var documentation in Directory.EnumerateFiles(AppContext.BaseDirectory, "Paddle*.xml"))
            {
                generator.IncludeXmlComments(documentation);
            }

            generator.SchemaFilter<SchemaDescriptions>();
            generator.OperationFilter<OperationDescriptions>();
            generator.DocumentFilter<DocumentDescription>();
            generator.DocumentFilter<SharedParts>();
        });
    }

    /// <summary>Maps the description at <c>/openapi/v1.json</c>.</summary>
    /// <param name="routes">Where to map it.</param>
    /// <returns>The endpoint.</returns>
    public static IEndpointConventionBuilder MapDescription(this IEndpointRouteBuilder routes) =>
        // It is written once, and whoever asks first on a busy machine had better wait than be told that it took too long.
        routes.MapMethods(Address, Routes.Reading, Description).ExcludeFromDescription().DisableRequestTimeout();

    /// <summary>Serves the page at <c>/docs</c>; it brings all it needs with it.</summary>
    /// <param name="app">The application.</param>
    /// <returns>The same application.</returns>
    public static IApplicationBuilder UseDescriptionPage(this IApplicationBuilder app) => app.UseSwaggerUI(page =>
    {
        page.RoutePrefix = "docs";
        page.DocumentTitle = "PaddleApi";
        page.SwaggerEndpoint(Address, "PaddleApi v1");
        page.EnableTryItOutByDefault();
    });

    private static async Task<IResult> Description(HttpContext context, DescriptionText text)
    {
        var (bytes, tag) = await text.GetAsync();
        return FixedContent.Stamp(context, tag, HeaderNames.AcceptEncoding)
            ? TypedResults.StatusCode(StatusCodes.Status304NotModified)
            : TypedResults.Bytes(bytes, "application/json; charset=utf-8");
    }
}
