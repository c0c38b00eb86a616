using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace PaddleApi.Validation;

/// <summary>Names places in JSON, and finds them, by JSON Pointer (RFC 6901).</summary>
internal static partial class JsonPointers
{
    /// <summary>Letters of a pointer, as a regular expression of ECMA-262.</summary>
    public const string Pattern = "^(/([^/~]|~[01])*)*$";

    /// <summary>Longest pointer that is read.</summary>
    public const int Longest = 200;

    /// <summary>Whether a text is a pointer.</summary>
    public static bool IsPointer(string text) => text.Length <= Longest && Pointer().IsMatch(text);

    /// <summary>The value at a pointer; null where there is none.</summary>
    public static JsonElement? Find(JsonElement document, string pointer)
    {
        var place = document;
        foreach (var part in pointer.Split('/').Skip(1))
        {
            if (place.ValueKind == JsonValueKind.Object)
            {
                if (!place.TryGetProperty(Unescape(part), out place)) return null;
            }
            else if (place.ValueKind == JsonValueKind.Array && Index().IsMatch(part) && int.Parse(part, CultureInfo.InvariantCulture) is var index && index < place.GetArrayLength())
            {
                place = place[index];
            }
            else
            {
                return null;
            }
        }

        return place;
    }

    /// <summary>The name that one part of a pointer writes.</summary>
    public static string Unescape(string part) => part.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);

    /// <summary>The pointer of a member below another place.</summary>
    /// <param name="member">Name of the member as it stands in the JSON.</param>
    public static string Append(string place, string member)
    {
        return $"{place}/{member.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";
    }

    /// <summary>The pointer of an item of a list.</summary>
    public static string Append(string place, int index) => string.Create(CultureInfo.InvariantCulture, $"{place}/{index}");

    /// <summary>Turns a property path of the validators, such as <c>Blade.Offsets[3].XMm</c>, into <c>/blade/offsets/3/xMm</c>.</summary>
    public static string FromPropertyPath(string propertyPath)
    {
        var pointer = "";
        foreach (var part in propertyPath.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
        {
            pointer = Append(pointer, JsonNamingPolicy.CamelCase.ConvertName(part));
        }

        return pointer;
    }

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant | RegexOptions.ECMAScript)]
    private static partial Regex Pointer();

    [GeneratedRegex("^(0|[1-9][0-9]{0,5})$", RegexOptions.CultureInvariant)]
    private static partial Regex Index();
}
