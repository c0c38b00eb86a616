namespace Paddle.Design.Request;

/// <summary>A part of a larger request that names a design: by the code of one made before, or by a request for one.</summary>
public interface IGivesDesign
{
    /// <summary>Code of a design that was made before.</summary>
    string? DesignCode { get; }

    /// <summary>A design to be made.</summary>
    DesignRequest? Design { get; }
}
