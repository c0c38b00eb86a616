using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Adds to each number the unit that its name ends in, for readers that are programs.</summary>
internal sealed class SchemaNotes : ISchemaFilter
{
    // Longest suffix first: "KgM3" must not be taken for "M3".
    private static readonly (string Suffix, string Unit)[] Units =
    [
        ("KgM2", "kg·m²"), ("KgM3", "kg/m³"), ("Degrees", "°"), ("Percent", "%"), ("MPa", "MPa"), ("Cm2", "cm²"), ("Cm3", "cm³"), ("Mm", "mm"),
        ("Nm", "N·m"), ("Hz", "Hz"), ("Kg", "kg"), ("MS", "m/s"), ("G", "g"), ("N", "N"), ("J", "J"),
    ];

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (context.MemberInfo is { } member && schema is OpenApiSchema own && IsNumber(own) && UnitOf(member.Name) is { } unit)
        {
            own.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
            own.Extensions["x-unit"] = new JsonNodeExtension(JsonValue.Create(unit));
        }
    }

    /// <summary>The unit in a member's name, or null for a plain ratio or count.</summary>
    public static string? UnitOf(string name)
    {
        foreach (var (suffix, unit) in Units)
        {
            // The letter before must be small or a digit, or "…PSIN" would be newtons.
            if (name.EndsWith(suffix, StringComparison.Ordinal) && name.Length > suffix.Length && !char.IsUpper(name[^(suffix.Length + 1)]))
            {
                return unit;
            }
        }

        return null;
    }

    private static bool IsNumber(OpenApiSchema schema) =>
        schema.Type is { } type && (type.HasFlag(JsonSchemaType.Number) || type.HasFlag(JsonSchemaType.Integer));
}
