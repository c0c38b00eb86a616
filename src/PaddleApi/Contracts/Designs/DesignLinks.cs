using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Contracts.Designs;

/// <summary>Where to fetch a design again, how to make it, and every file that it can be had as.</summary>
/// <param name="Self">Path of the report.</param>
/// <param name="Build">Path of the build sheet's figures.</param>
/// <param name="BuildSheet">Path of the build sheet to print.</param>
/// <param name="BuildSheetPdf">Path of the build sheet as a PDF.</param>
/// <param name="Files">Path of each file under its name of <see cref="DesignFileNames.Link"/>; written beside <paramref name="Self"/>.</param>
[JsonConverter(typeof(DesignLinksConverter))]
internal sealed record DesignLinks(
    string Self, string Build, string BuildSheet, string BuildSheetPdf, [property: JsonIgnore] IReadOnlyList<KeyValuePair<string, string>> Files);

/// <summary>Writes links as one flat object, so that a caller says <c>links.outline</c> and a new file needs no new member.</summary>
internal sealed class DesignLinksConverter : JsonConverter<DesignLinks>
{
    /// <summary>Name of the report's own link.</summary>
    public const string Self = "self";

    /// <summary>Name of the link to the build sheet's figures.</summary>
    public const string Build = "build";

    /// <summary>Name of the link to the build sheet to print.</summary>
    public const string BuildSheet = "buildSheet";

    /// <summary>Name of the link to the build sheet as a PDF.</summary>
    public const string BuildSheetPdf = "buildSheetPdf";

    public override DesignLinks Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject) throw new JsonException("Links are an object.");
        string? self = null, build = null, sheet = null, pdf = null;
        var files = new List<KeyValuePair<string, string>>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            var path = reader.GetString() ?? throw new JsonException("A link is a text.");
            if (name == Self) self = path;
            else if (name == Build) build = path;
            else if (name == BuildSheet) sheet = path;
            else if (name == BuildSheetPdf) pdf = path;
            else files.Add(new(name, path));
        }

        return new(Required(self, Self), Required(build, Build), Required(sheet, BuildSheet), Required(pdf, BuildSheetPdf), files);
    }

    public override void Write(Utf8JsonWriter writer, DesignLinks value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString(Self, value.Self);
        writer.WriteString(Build, value.Build);
        writer.WriteString(BuildSheet, value.BuildSheet);
        writer.WriteString(BuildSheetPdf, value.BuildSheetPdf);
        foreach (var (name, path) in value.Files) writer.WriteString(name, path);
        writer.WriteEndObject();
    }

    private static string Required(string? path, string name) => path ?? throw new JsonException($"Links have a member {name}.");
}
