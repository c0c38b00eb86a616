using System.Text.Json;

namespace PaddleApi.Validation;

/// <summary>Looks through JSON of any form, which no type has checked.</summary>
internal static class AnyJson
{
    /// <summary>Whether every number in it is finite, and every text, names of members too, is Unicode.</summary>
    public static bool IsPlain(JsonElement value)
    {
        try
        {
            return value.ValueKind switch
            {
                JsonValueKind.Object => value.EnumerateObject().All(member => member.Name is not null && IsPlain(member.Value)),
                JsonValueKind.Array => value.EnumerateArray().All(IsPlain),
                JsonValueKind.Number => double.IsFinite(value.GetDouble()),
                JsonValueKind.String => value.GetString() is not null,
                _ => true,
            };
        }
        catch (InvalidOperationException)
        {
            // An escape such as \ud800 alone is well-formed JSON but no text.
            return false;
        }
    }
}
