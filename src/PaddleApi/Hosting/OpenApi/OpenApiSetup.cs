using Microsoft.OpenApi;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>The service's description in OpenAPI 3.1 and a page to try it on.</summary>
public static class OpenApiSetup
{
    /// <summary>Name of the description, and the version of the contract.</summary>
    public const string DocumentName = "v1";

    private const string Route = "/openapi/{documentName}.json";

    private const string About =
        "Designs hand-made wooden single-blade canoe paddles: from a person, a boat, a water and a board to lengths, outline, thicknesses, "
        + "balance, strength, drawings and shaping steps. Stateless: nothing is kept, and the same request gives the same answer. "
        + "Members are camelCase with the unit as suffix; an absent member and null mean the same; unknown members are refused. "
        + "Pages of any origin may call it (CORS) unless its host lists those that may. Every answer carries X-Request-Id. Errors are application/problem+json (RFC 9457), explained below /problems; only "
        + "what the web server itself cannot read, such as a request line over 8 KiB (414), is answered without a body.";

    /// <summary>Adds the description.</summary>
    /// <param name="services">The service collection.</param>
    /// <returns>The same collection.</returns>
    public static IServiceCollection AddDescription(this IServiceCollection services)
    {
        services.ConfigureSwagger(swagger => swagger.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        return services.AddSingleton<ValidatorRules>().AddEndpointsApiExplorer().AddSwaggerGen(generator =>
        {
            generator.SwaggerDoc(DocumentName, new OpenApiInfo
            {
                Title = "PaddleApi",
                Version = DocumentName,
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

            generator.SchemaFilter<SchemaNotes>();
            generator.OperationFilter<OperationNotes>();
            generator.DocumentFilter<DocumentNotes>();
        });
    }

    /// <summary>Maps the description at <c>/openapi/v1.json</c> and the page at <c>/docs</c>; the page brings all it needs with it.</summary>
    /// <param name="app">The application.</param>
    /// <returns>The same application.</returns>
    public static WebApplication MapDescription(this WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.MapSwagger(Route, swagger => swagger.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        app.UseSwaggerUI(page =>
        {
            page.RoutePrefix = "docs";
            page.DocumentTitle = "PaddleApi";
            page.SwaggerEndpoint(Route.Replace("{documentName}", DocumentName, StringComparison.Ordinal), "PaddleApi v1");
            page.EnableTryItOutByDefault();
        });
        return app;
    }
}
