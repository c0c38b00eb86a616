namespace Paddle.Design.Strength;

/// <summary>The load cases that bend the paddle along its length.</summary>
public enum LoadCase
{
    /// <summary>An easy stroke, repeated a million times.</summary>
    TouringStroke,

    /// <summary>A strong paddler's hardest stroke.</summary>
    HardStroke,

    /// <summary>Leaning on the flat blade, pried over the lower hand.</summary>
    Brace,

    /// <summary>Pushing off the bottom with the tip.</summary>
    PushOff,

    /// <summary>Water pressure bending the blade across the grain.</summary>
    EdgePress,
}

/// <summary>Names of the load cases in the contract.</summary>
public static class LoadCases
{
    /// <summary>The cases that bend the paddle along its length.</summary>
    public static IReadOnlyList<LoadCase> AlongTheGrain { get; } =
        [LoadCase.TouringStroke, LoadCase.HardStroke, LoadCase.Brace, LoadCase.PushOff];

    /// <summary>The contract's name of a case.</summary>
    public static string Id(LoadCase loadCase) => loadCase switch
    {
        LoadCase.TouringStroke => "touring-stroke",
        LoadCase.HardStroke => "hard-stroke",
        LoadCase.Brace => "brace",
        LoadCase.PushOff => "push-off",
        _ => "edge-press",
    };

    /// <summary>Where a case's force comes from.</summary>
    public static string Source(LoadCase loadCase) => loadCase switch
    {
        LoadCase.TouringStroke =>
            "5.0 N per kg^(2/3) of body mass: assumption from a 20 N hull drag per paddler at 1.5 m/s; fatigue fraction 0.40, "
            + "Wood Handbook table of cyclic results, from memory",
        LoadCase.HardStroke =>
            "21.1 N per kg^(2/3): mean + 1 SD of elite single-blade peaks, Ho, Smith and O'Meara 2009, J Sports Sci 27:37-47 (abstract)",
        LoadCase.Brace => "half the body weight on the flat blade: engineering assumption, no published figure found",
        LoadCase.PushOff =>
            "half the body weight along the shaft, off the axis by half the shaft's depth, with 125 N sideways at 75 kg: engineering "
            + "assumption, no published figure found",
        _ => "pressure of the hard stroke on a strip across the blade, held at the spine: cantilever plate strip, elementary mechanics",
    };
}
