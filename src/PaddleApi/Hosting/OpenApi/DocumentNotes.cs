using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Describes the groups of operations and says where the service lives: wherever its description was found.</summary>
internal sealed class DocumentNotes : IDocumentFilter
{
    private static readonly Dictionary<string, string> TagDescriptions = new(StringComparer.Ordinal)
    {
        ["Designs"] = "A paddle designed from a request, and its drawings.",
        ["Fittings"] = "From a person, a boat and a water to a paddle; the sizes a fleet should own; how to measure.",
        ["Woods"] = "Woods, their figures and where each comes from.",
        ["Blade families"] = "Blade shapes known by name.",
        ["Boards"] = "Boards: tested, and laid out for cutting.",
        ["Builds"] = "From board to finished paddle: the stages of the work, and the balance corrected on the way.",
        ["Problems"] = "The kinds of problem the service answers with.",
        ["Health"] = "Whether the service runs and is ready.",
    };

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        swaggerDoc.Servers = [new OpenApiServer { Url = "/", Description = "The server that this description came from" }];

        // Said outright: nobody needs to log in. Whoever wants that puts a gateway in front.
        swaggerDoc.Security = [new OpenApiSecurityRequirement()];
        var used = swaggerDoc.Paths.Values.SelectMany(path => path.Operations?.Values.AsEnumerable() ?? [])
            .SelectMany(operation => operation.Tags ?? new HashSet<OpenApiTagReference>())
            .Select(tag => tag.Name!).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        swaggerDoc.Tags = used.Select(name => new OpenApiTag { Name = name, Description = TagDescriptions.GetValueOrDefault(name) }).ToHashSet();
    }
}
