using PaddleApi.Contracts.Designs;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Addresses of designs.</summary>
public static class DesignAddresses
{
    /// <summary>Where designs live.</summary>
    public const string Root = "/v1/designs";

    /// <summary>Last part of the outline's address.</summary>
    public const string Outline = "outline.svg";

    /// <summary>Where a design can be had again. Paths, not whole addresses: what a proxy calls this service is not known here.</summary>
    /// <param name="pathBase">Path that the service is mounted on.</param>
    /// <param name="code">Code of the design.</param>
    public static DesignLinks Links(PathString pathBase, string code)
    {
        var self = $"{pathBase.ToUriComponent()}{Root}/{code}";
        return new(self, $"{self}/{Outline}");
    }
}
