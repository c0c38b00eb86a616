using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Contracts.Designs;

/// <summary>Where to fetch a design again, and every file that it can be had as.</summary>
/// <param name="Self">Path of the report.</param>
/// <param name="Files">Path of each file under its name of <see cref="DesignFileNames.Link"/>; written beside <paramref name="Self"/>.</param>
[JsonConverter(typeof(DesignLinksConverter))]
public sealed record DesignLinks(string Self, [property: JsonIgnore] IReadOnlyList<KeyValuePair<string, string>> Files);

/// <summary>Writes links as one flat object, so that a caller says <c>links.outline</c> and a new file needs no new member.</summary>
internal sealed class DesignLinksConverter : JsonConverter<DesignLinks>
{
    /// <summary>Name of the report's own link.</summary>
    public const string Self = "self";

    public override DesignLinks Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject) throw new JsonException("Links are an object.");
        string? self = null;
        var files = new List<KeyValuePair<string, string>>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            var path = reader.GetString() ?? throw new JsonException("A link is a text.");
            if (name == Self) self = path;
            else files.Add(new(name, path));
        }

        return new(self ?? throw new JsonException("Links have a member self."), files);
    }

    public override void Write(Utf8JsonWriter writer, DesignLinks value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString(Self, value.Self);
        foreach (var (name, path) in value.Files) writer.WriteString(name, path);
        writer.WriteEndObject();
    }
}
