namespace Paddle.Design.Build;

/// <summary>The stages of making a one-piece paddle, in the order of the work.</summary>
/// <remarks>
/// Source of the order: edges first, then the blade from the edges towards the spine, the shaft last because square it can be
/// held in a vice (a woodworking magazine, no. 142, August 2004, pp. 32-40); the rest common practice, no source.
/// </remarks>
public enum BuildStage
{
    /// <summary>The board cut to length and width.</summary>
    Blank,
    /// <summary>The outline sawn at the board's full thickness.</summary>
    Sawn,
    /// <summary>Edges planed square to the line and the edge thickness marked round them.</summary>
    EdgeLined,
    /// <summary>The blade thinned with coarse tools.</summary>
    BladeRoughed,
    BladePlaned,
    /// <summary>The shaft thinned to size and its corners taken off to eight sides.</summary>
    ShaftEightSided,
    /// <summary>The shaft taken to sixteen sides.</summary>
    ShaftSixteenSided,
    /// <summary>The shaft rounded, the throat faired and the blade scraped.</summary>
    ShaftRounded,
    /// <summary>The grip cut and faired into the shaft.</summary>
    GripCut,
    /// <summary>Sanded to the last grit: bare wood at its designed sizes, the last stage of the wood.</summary>
    Sanded,
    /// <summary>The same wood with its finish on, as it goes on the water; the solid is that of <see cref="Sanded"/>.</summary>
    Finished,
}

/// <summary>Names of the stages.</summary>
internal static class BuildStages
{
    /// <summary>All stages in the order of the work.</summary>
    public static IReadOnlyList<BuildStage> All { get; } = Enum.GetValues<BuildStage>();

    /// <summary>The contract's name of a stage.</summary>
    public static string Id(BuildStage stage) => stage switch
    {
        BuildStage.Blank => "blank",
        BuildStage.Sawn => "sawn",
        BuildStage.EdgeLined => "edge-lined",
        BuildStage.BladeRoughed => "blade-roughed",
        BuildStage.BladePlaned => "blade-planed",
        BuildStage.ShaftEightSided => "shaft-eight-sided",
        BuildStage.ShaftSixteenSided => "shaft-sixteen-sided",
        BuildStage.ShaftRounded => "shaft-rounded",
        BuildStage.GripCut => "grip-cut",
        BuildStage.Sanded => "sanded",
        _ => "finished",
    };

    /// <summary>A stage's title for a heading.</summary>
    public static string Title(BuildStage stage) => stage switch
    {
        BuildStage.Blank => "Blank cut to length and width",
        BuildStage.Sawn => "Outline sawn",
        BuildStage.EdgeLined => "Edges planed and lined",
        BuildStage.BladeRoughed => "Blade roughed out",
        BuildStage.BladePlaned => "Blade planed",
        BuildStage.ShaftEightSided => "Shaft eight-sided",
        BuildStage.ShaftSixteenSided => "Shaft sixteen-sided",
        BuildStage.ShaftRounded => "Shaft rounded, blade scraped",
        BuildStage.GripCut => "Grip cut",
        BuildStage.Sanded => "Sanded: bare wood at its sizes",
        _ => "Finished",
    };
}
