using System.Text.Json;
using Paddle.Drawings;

namespace PaddleApi.Contracts.Designs;

/// <summary>What the contract calls the files of a design; all of it follows from their file names.</summary>
internal static class DesignFileNames
{
    private static readonly string[] ForPeople = [".svg", ".pdf", ".csv"];

    /// <summary>
    /// Name among the links: what it shows for a file that people read (<c>half-template.svg</c> is <c>halfTemplate</c>), the format for one
    /// that machines read (<c>template.dxf</c> is <c>dxf</c>).
    /// </summary>
    /// <param name="file">The file.</param>
    public static string Link(IDesignFile file)
    {
        var form = Path.GetExtension(file.FileName);
        return JsonNamingPolicy.CamelCase.ConvertName(
            ForPeople.Contains(form) ? Pascal(Path.GetFileNameWithoutExtension(file.FileName)) : form[1..]);
    }

    /// <summary>Name of the operation in generated clients, such as <c>getDesignHalfTemplate</c>.</summary>
    /// <param name="file">The file.</param>
    public static string Operation(IDesignFile file) => $"getDesign{Pascal(Link(file))}";

    private static string Pascal(string words) =>
        string.Concat(words.Split('-').Select(word => string.Concat(char.ToUpperInvariant(word[0]).ToString(), word.AsSpan(1))));
}
