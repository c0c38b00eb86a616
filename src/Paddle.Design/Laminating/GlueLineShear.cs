using System.Text.Json.Serialization;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Laminating;

/// <summary>Shear in the glue lines where it is nearest to the strength of the wood beside them.</summary>
/// <param name="Case">The load case.</param>
/// <param name="AtMm">Where, mm from the top of the grip.</param>
/// <param name="LineMm">Which line, mm from the centre line; negative on the one side.</param>
/// <param name="LengthwiseMPa">Shear along the paddle, MPa.</param>
/// <param name="CrosswiseMPa">Shear square to the faces, MPa.</param>
/// <param name="SafetyFactor">How many times both could grow before the weaker wood beside the line shears.</param>
/// <param name="LeastFactor">Least factor asked of the case.</param>
public sealed record GlueLineShear(
    string Case, double AtMm, [property: JsonIgnore] double LineMm, double LengthwiseMPa, double CrosswiseMPa, double SafetyFactor, double LeastFactor)
{
    // How far neighbours for the differences lie, as in theory L19: stress spreads no faster.
    private const double ReachOfHalfWidth = 0.5, LeastReachMm = 10;

    // A wing that has only just begun is a feather of a millimetre.
    private const double LeastWingMm = 1;

    // Stress spreads to the sides within a length of about the width; an outline that widens faster leaves it behind. Half is more than finite elements
    // found of nine paddles. Theory J8.
    private const double LeastSpread = 0.5, SpreadLostWithSlope = 2;

    /// <summary>The line's distance from the centre line, mm.</summary>
    public double FromCentreMm => Math.Abs(LineMm);
    /// <summary>Safety factor over the least factor asked of the case.</summary>
    internal double Margin => SafetyFactor / LeastFactor;

    /// <summary>The worst place of all lines under all cases; null where no outline reaches a line.</summary>
    /// <param name="stations">The solid at close places.</param>
    internal static GlueLineShear? Of(PaddleSolid stations, BladePressure pressure, double bucklingN, Laminate laminate, Loads loads)
    {
        GlueLineShear? worst = null;
        Span<double> moments = stackalloc double[stations.Count];
        var lines = laminate.LinesMm;
        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(stations, pressure, loadCase, bucklingN, moments);
            for (var k = 0; k < lines.Count; k++)
            {
                var profile = Profile(stations, pressure, loadCase, moments, lines[k]);
                var strength = JointStrength.Between(laminate.Across[k].Wood, laminate.Across[k + 1].Wood);
                for (var i = 0; i < stations.Count; i++)
                {
                    var (along, across) = profile[i];
                    var share = loadCase.StrengthShare;
                    var used = Math.Sqrt(Square(along / (share * strength.LengthwiseMPa)) + Square(across / (share * strength.RollingMPa))); // theory J9
                    if (used > 0 && (worst is null || used * loadCase.LeastFactor > 1 / worst.Margin))
                        worst = new(loadCase.Id, stations.X[i], lines[k], along, across, 1 / used, loadCase.LeastFactor);
                }
            }
        }

        return worst;
    }

    /// <summary>Shear along the paddle and square to its faces in one line at every place, MPa; 0 where the outline does not reach it.</summary>
    internal static (double AlongMPa, double AcrossMPa)[] Profile(
        PaddleSolid solid, BladePressure pressure, LoadCase loadCase, ReadOnlySpan<double> moments, double lineMm)
    {
        var beyond = Beyond.Of(solid, lineMm);
        var profile = new (double, double)[solid.Count];
        for (var i = 0; i < profile.Length; i++)
        {
            // A piece across the tip has no lines along the paddle.
            if (solid.Form.StripsAt(solid.X[i]) is { IsAcross: true }) break;
            if (solid.HalfWidth[i] >= Math.Abs(lineMm) + LeastWingMm && moments[i] > 0)
                profile[i] = At(solid, pressure, loadCase, moments, beyond, lineMm, i);
        }

        return profile;
    }

    // At one place of one line. Theory J7–J8.
    private static (double AlongMPa, double AcrossMPa) At(
        PaddleSolid solid, BladePressure pressure, LoadCase loadCase, ReadOnlySpan<double> moments, Beyond beyond, double lineMm, int i)
    {
        double x = solid.X[i], w = solid.HalfWidth[i];
        var d = Math.Max(ReachOfHalfWidth * w, LeastReachMm);
        var section = solid.Section(i);
        var h = section.HalfThicknessAtMm(Math.Abs(lineMm) / w);
        double Share(double at) => Between(solid.X, beyond.Share, at);
        double before = Share(x - d), here = beyond.Share[i], after = Share(x + d);
        double slope = (after - before) / (2 * d), bend = (after - 2 * here + before) / (d * d);
        var momentSlope = (Between(solid.X, moments, x + d) - Between(solid.X, moments, x - d)) / (2 * d);
        var strip = i >= solid.Grid.FirstBladePlace ? 2 * w * PressureMPa(pressure, loadCase, x) : 0;
        var ofWidth = (w - Math.Abs(lineMm)) / (2 * w);
        var across = Math.Abs(strip * (ofWidth - here) - 2 * momentSlope * slope - moments[i] * bend); // theory J7, N/mm
        var widening = Math.Abs(Between(solid.X, solid.HalfWidth, x + d) - Between(solid.X, solid.HalfWidth, x - d)) / (2 * d);
        var spread = Math.Max(LeastSpread, 1 - SpreadLostWithSlope * widening);
        var face = beyond.ModulusRatio * moments[i] * h / beyond.Stiffness[i];
        return (spread * face * widening * Math.Abs(lineMm) / w, 1.5 * across / (2 * h)); // theory J8
    }

    private static double PressureMPa(BladePressure pressure, LoadCase loadCase, double x) => loadCase.Action switch
    {
        LoadAction.TipThrust => 0,
        LoadAction.EvenPressure => loadCase.ForceN / pressure.AreaMm2,
        _ => pressure.StrokePressureMPa(x, loadCase.ForceN, loadCase.PivotMm),
    };

    // Beyond both ends there is nothing.
    private static double Between(ReadOnlySpan<double> x, ReadOnlySpan<double> values, double at) =>
        at < x[0] || at > x[^1] ? 0 : ElasticCurve.At(x, values, at);

    private static double Square(double value) => value * value;

    /// <summary>What lies beyond a glue line at every place.</summary>
    /// <param name="Share">Its share of the bending stiffness. Theory J6.</param>
    /// <param name="Stiffness">Second moment of the whole section, weighted with the moduli, mm⁴. Theory J3.</param>
    /// <param name="ModulusRatio">Mean of those of the two woods beside the line.</param>
    private sealed record Beyond(double[] Share, double[] Stiffness, double ModulusRatio)
    {
        internal static Beyond Of(PaddleSolid solid, double lineMm)
        {
            double[] share = new double[solid.Count], stiffness = new double[solid.Count];
            for (var i = 0; i < share.Length; i++)
            {
                var section = solid.Section(i);
                if (section.HalfWidthMm <= Math.Abs(lineMm) || solid.FlatSecondMoment[i] <= 0) continue;
                // Sheets on the faces bridge the lines; without them these bear more. Theory J12.
                var whole = solid.Form.Strips!.Numbers(section.Moments, section.HalfWidthMm).Stiff.FlatSecondMomentMm4(section);
                StripNumbers beyond = default;
                foreach (var strip in solid.Form.Strips!.Strips)
                {
                    if (lineMm <= 0 ? strip.ToMm > lineMm : strip.FromMm < lineMm) continue;
                    beyond = beyond.Plus(strip.ModulusRatio, StripLayup.Part(section.Moments, section.HalfWidthMm, strip.FromMm, strip.ToMm));
                }

                share[i] = beyond.FlatSecondMomentMm4(section) / whole;
                stiffness[i] = whole;
            }

            return new(share, stiffness, solid.Form.Strips!.Strips.Where(strip => strip.FromMm == lineMm || strip.ToMm == lineMm).Average(strip => strip.ModulusRatio));
        }
    }
}

/// <summary>Strength of the wood beside a sound glue line, which is as strong as the wood, MPa: 5th percentile of a five-minute test. Theory
/// J9.</summary>
/// <param name="LengthwiseMPa">Shear along the grain.</param>
/// <param name="RollingMPa">Shear that rolls the fibres.</param>
internal readonly record struct JointStrength(double LengthwiseMPa, double RollingMPa)
{
    // Coefficient of variation: Wood Handbook table 5-6. Change with moisture: ANC-18, from memory. Share of the bending strength where no
    // shear strength is published: below the published of every wood here, common practice, no source.
    private const double ShearVariation = 0.14, PerPercent = 0.03, ShearOfBending = 0.07;

    // EN 1995-1-1, 6.1.7: rolling shear may be taken as twice the tension strength across the grain (from memory).
    private const double RollingOfTension = 2;

    internal static JointStrength Between(WoodInUse one, WoodInUse other)
    {
        var (a, b) = (Of(one), Of(other));
        return new(Math.Min(a.LengthwiseMPa, b.LengthwiseMPa), Math.Min(a.RollingMPa, b.RollingMPa));
    }

    private static JointStrength Of(WoodInUse wood)
    {
        var species = WoodCatalogue.Find(wood.Species);
        var mean = species?.ShearParallel12MPa is { } published
            ? published * Math.Pow(1 + PerPercent, 12 - wood.MoisturePercent)
            : ShearOfBending * wood.MeanBendingStrengthMPa;
        return new(Scatter.FifthPercentile(mean, ShearVariation), RollingOfTension * wood.CrossGrainStrengthMPa);
    }
}
