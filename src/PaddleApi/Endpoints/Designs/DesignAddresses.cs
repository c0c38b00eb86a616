using Paddle.Drawings;
using PaddleApi.Contracts.Designs;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Addresses of designs.</summary>
internal static class DesignAddresses
{
    /// <summary>Where designs live.</summary>
    public const string Root = "/v1/designs";

    /// <summary>Last part of the address of a design's build sheet.</summary>
    public const string Build = "build";

    /// <summary>Last part of the address of the build sheet to print.</summary>
    public const string BuildSheet = "build-sheet.html";

    /// <summary>Last part of the address of the build sheet as a PDF.</summary>
    public const string BuildSheetPdf = "build-sheet.pdf";

    private static readonly (string Name, string FileName)[] Files =
        [.. DesignFiles.All.Select(file => (DesignFileNames.Link(file), file.FileName))];

    /// <summary>Where a design can be had again. Paths, not whole addresses: what a proxy calls this service is not known here.</summary>
    public static DesignLinks Links(PathString pathBase, string code)
    {
        var self = $"{pathBase.ToUriComponent()}{Root}/{code}";
        return new(
            self,
            $"{self}/{Build}",
            $"{self}/{BuildSheet}",
            $"{self}/{BuildSheetPdf}",
            Array.ConvertAll(Files, file => KeyValuePair.Create(file.Name, $"{self}/{file.FileName}")));
    }
}
