using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Describes the groups of operations and says where the service lives: wherever its description was found.</summary>
internal sealed class DocumentDescription : IDocumentFilter
{
    /// <summary>Name of the way to show a key.</summary>
    public const string KeyScheme = "key";

    // In the order of the work: who paddles, what is made, of what and how; then what else there is.
    private static readonly (string Name, string Description)[] Tags =
    [
        ("Fittings", "From a person, a boat and a water to a paddle; the sizes a fleet should own; how to measure."),
        ("Designs", "A paddle designed from a request, and its drawings."),
        ("Boards", "Boards: tested, and laid out for cutting."),
        ("Builds", "From board to finished paddle: the stages of the work, and the balance corrected on the way."),
        ("Woods", "Woods, their figures and where each comes from."),
        ("Blade families", "Blade shapes known by name."),
        ("Problems", "The kinds of problem the service answers with."),
        ("Health", "Whether the service runs and is ready."),
    ];

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        swaggerDoc.Servers = [new OpenApiServer { Url = "/", Description = "The server that this description came from" }];

        // Said outright: nobody needs a key, unless the host lets only those who have one solve (OperationDescriptions).
        swaggerDoc.Security = [new OpenApiSecurityRequirement()];
        swaggerDoc.Components!.SecuritySchemes = new Dictionary<string, IOpenApiSecurityScheme>(StringComparer.Ordinal)
        {
            [KeyScheme] = new OpenApiSecurityScheme
            {
                Type = SecuritySchemeType.Http,
                Scheme = "bearer",
                Description = "A key that the host has given out, where it gives out any. Reading needs none; what solves needs one of the scope in x-scope.",
            },
        };
        var used = swaggerDoc.Paths.Values.SelectMany(path => path.Operations?.Values.AsEnumerable() ?? [])
            .SelectMany(operation => operation.Tags ?? new HashSet<OpenApiTagReference>())
            .Select(tag => tag.Name!).ToHashSet(StringComparer.Ordinal);
        swaggerDoc.Tags = Tags.Where(tag => used.Contains(tag.Name)).Select(tag => new OpenApiTag { Name = tag.Name, Description = tag.Description }).ToHashSet();
    }
}
