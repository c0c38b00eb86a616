namespace Paddle.Design.Finishing;

/// <summary>What a surface is finished with.</summary>
public enum SurfaceFinish
{
    /// <summary>Spar varnish: keeps water out.</summary>
    Varnish,
    /// <summary>Drying oil: kind to the hand.</summary>
    Oil,
    /// <summary>Bare wood.</summary>
    None,
}

/// <summary>The finish of a paddle, part of its design: what weighs on the blade moves the balance.</summary>
/// <param name="TipReinforcement">Whether glass cloth is laid over the tip.</param>
public sealed record FinishChoice(SurfaceFinish Blade, int BladeCoats, SurfaceFinish Shaft, int ShaftCoats, bool TipReinforcement)
{
    /// <summary>Most coats of a surface.</summary>
    public const int MostCoats = 12;

    /// <summary>The trade's: blade varnished, shaft and grip oiled. 3-6 coats of varnish are usual on boats (Wood Handbook FPL-GTR-190, ch.
    /// 16, read); three of oil are common practice, no source.</summary>
    public static FinishChoice Usual { get; } = new(SurfaceFinish.Varnish, UsualCoats(SurfaceFinish.Varnish), SurfaceFinish.Oil, UsualCoats(SurfaceFinish.Oil), false);

    /// <summary>Whether anything goes on at all.</summary>
    public bool IsBare => !TipReinforcement && On(Blade, BladeCoats) == SurfaceFinish.None && On(Shaft, ShaftCoats) == SurfaceFinish.None;
    /// <summary>Whether two finishes meet, at the end of the shaft: only there is a masking line to draw.</summary>
    public bool Meet => On(Blade, BladeCoats) != On(Shaft, ShaftCoats);

    /// <summary>What is on a surface: a finish in no coats is none.</summary>
    internal static SurfaceFinish On(SurfaceFinish finish, int coats) => coats > 0 ? finish : SurfaceFinish.None;

    /// <summary>What is done, such as <c>blade varnished, shaft and grip oiled</c>.</summary>
    public string InWords()
    {
        static string Done(SurfaceFinish finish) => finish switch
        {
            SurfaceFinish.Varnish => "varnished",
            SurfaceFinish.Oil => "oiled",
            _ => "bare",
        };
        string blade = Done(On(Blade, BladeCoats)), shaft = Done(On(Shaft, ShaftCoats));
        var surfaces = blade == shaft ? (IsBare ? "left bare" : $"{blade} all over") : $"blade {blade}, shaft and grip {shaft}";
        return TipReinforcement ? $"tip reinforced, {surfaces}" : surfaces;
    }

    /// <summary>Coats of a finish when none are stated.</summary>
    public static int UsualCoats(SurfaceFinish finish) => finish switch
    {
        SurfaceFinish.Varnish => 6,
        SurfaceFinish.Oil => 3,
        _ => 0,
    };

    /// <summary>Dry finish that stays on a surface, g/m². Theory M13.</summary>
    public static double DryGPerM2(SurfaceFinish finish, int coats) => finish switch
    {
        SurfaceFinish.Varnish => FinishPlan.DryVarnishG(1, coats),
        SurfaceFinish.Oil => FinishPlan.OilGPerM2Coat * coats,
        _ => 0,
    };
}
