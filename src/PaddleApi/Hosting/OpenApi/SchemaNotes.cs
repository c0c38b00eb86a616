using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.OpenApi;
using Paddle.Design;
using Paddle.Drawings;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Numbers;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>Completes schemas: the unit that a number's name ends in, "or null" where it is allowed, and what each name of an enumeration means.</summary>
/// <param name="rules">The validators' rules.</param>
internal sealed partial class SchemaNotes(ValidatorRules rules) : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema own)
        {
            return;
        }

        if (context.MemberInfo is { } member && IsNumber(own)) StateUnit(own, member);

        if (context.MemberInfo is { } checkedMember)
        {
            StateRules(own, checkedMember);
        }

        if (context.Type == typeof(DesignLinks) && context.MemberInfo is null)
        {
            ListLinks(own);
        }

        AllowNullReferences(own, context.Type);
        StateRequired(own, context.Type);
        if (context.Type.IsEnum && context.MemberInfo is null)
        {
            own.Description = $"{Breaks().Replace(own.Description ?? "", " ")}\n\n{string.Join('\n', Enum.GetNames(context.Type)
                .Select(name => $"- `{Names.Spell(name)}`: {XmlSummaries.OfField(context.Type, name)}"))}";
        }
        else if (own.Description is { } text)
        {
            own.Description = Breaks().Replace(text, " ");
        }
    }

    // The links follow from the list of files, and no member of the record stands for each.
    private static void ListLinks(OpenApiSchema schema)
    {
        schema.Properties = new Dictionary<string, IOpenApiSchema>(StringComparer.Ordinal)
        {
            [DesignLinksConverter.Self] = Link("Path of the report."),
            [DesignLinksConverter.Build] = Link("Path of the build sheet: from board to finished paddle, stage by stage."),
            [DesignLinksConverter.BuildSheet] = Link("Path of the build sheet as a page to print."),
            [DesignLinksConverter.BuildSheetPdf] = Link("Path of the build sheet as a PDF, six pages at most."),
        };
        foreach (var file in DesignFiles.All)
        {
            schema.Properties[DesignFileNames.Link(file)] = Link($"Path of {file.FileName}: {file.Description}");
        }

        schema.Required = new HashSet<string>(schema.Properties.Keys, StringComparer.Ordinal);
    }

    private static OpenApiSchema Link(string description) => new() { Type = JsonSchemaType.String, Description = description };

    /// <summary>States the unit in a member's name, if there is one.</summary>
    public static void StateUnit(OpenApiSchema schema, MemberInfo member)
    {
        if (UnitNames.Of(member.Name) is not { } unit) return;
        schema.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
        schema.Extensions["x-unit"] = new JsonNodeExtension(JsonValue.Create(unit));
    }

    /// <summary>States a rule's range, if there is one.</summary>
    public static void StateRange(OpenApiSchema schema, (double Min, double Max)? range)
    {
        schema.Minimum = range?.Min.ToString(CultureInfo.InvariantCulture) ?? schema.Minimum;
        schema.Maximum = range?.Max.ToString(CultureInfo.InvariantCulture) ?? schema.Maximum;
    }

    /// <summary>States how long a text may be and its letters, if there are rules for them.</summary>
    public static void StateText(OpenApiSchema schema, MemberInfo member, ValidatorRules rules)
    {
        schema.MaxLength = rules.LengthOf(member)?.Longest ?? schema.MaxLength;
        schema.Pattern = rules.PatternOf(member) ?? schema.Pattern;
    }

    private void StateRules(OpenApiSchema schema, MemberInfo member)
    {
        if (IsNumber(schema)) StateRange(schema, rules.RangeOf(member));

        if (member.GetCustomAttribute<BoundAttribute>() is { Usual: var usual } && !double.IsNaN(usual))
            schema.Description = $"{schema.Description} When null: {usual.ToString(CultureInfo.InvariantCulture)}.".TrimStart();
        if (rules.IsRequired(member)) schema.Type &= ~JsonSchemaType.Null;
        StateText(schema, member, rules);
        if (rules.CountOf(member) is { } count)
        {
            schema.MinItems = count.Fewest > 0 ? count.Fewest : null;
            schema.MaxItems = count.Most;
        }

        if (rules.NamesOf(member) is { } names)
        {
            schema.Enum = [.. names.Select(name => (JsonNode)JsonValue.Create(name))];
            if (schema.Type is { } type && type.HasFlag(JsonSchemaType.Null))
            {
                schema.Enum.Add(JsonNullSentinel.JsonNull);
            }
        }
    }

    // What may not be left out may not be null either: both mean the same.
    private void StateRequired(OpenApiSchema schema, Type type)
    {
        foreach (var member in schema.Properties is null ? [] : type.GetProperties().Where(rules.IsRequired))
        {
            schema.Required ??= new HashSet<string>(StringComparer.Ordinal);
            schema.Required.Add(JsonNamingPolicy.CamelCase.ConvertName(member.Name));
        }
    }

    // A reference alone does not let null through, though the reader does where the member may be left out.
    private void AllowNullReferences(OpenApiSchema schema, Type type)
    {
        var nullability = new NullabilityInfoContext();
        foreach (var member in schema.Properties is null ? [] : type.GetProperties())
        {
            var name = JsonNamingPolicy.CamelCase.ConvertName(member.Name);
            if (schema.Properties!.TryGetValue(name, out var value) && value is OpenApiSchemaReference reference
                && nullability.Create(member).ReadState == NullabilityState.Nullable && !rules.IsRequired(member))
            {
                schema.Properties[name] = new OpenApiSchema
                {
                    Description = reference.Description,
                    OneOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, new OpenApiSchemaReference(reference.Reference.Id!)],
                };
            }
        }
    }

    private static bool IsNumber(OpenApiSchema schema) =>
        schema.Type is { } type && (type.HasFlag(JsonSchemaType.Number) || type.HasFlag(JsonSchemaType.Integer));

    [GeneratedRegex(@"\s*\n\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Breaks();
}
