using System.Globalization;
using System.Text.Json;

namespace PaddleApi.Validation;

/// <summary>Names places in a request by JSON Pointer (RFC 6901).</summary>
internal static class JsonPointers
{
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
}
