using System.Text.Json.Serialization;
using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;
using Paddle.Design.Water;
using Paddle.Design.Wood;

namespace PaddleApi.Contracts.Designs;

/// <summary>A finished design: what the engine reports, with its code and addresses.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DesignCode">The design itself, every size pinned, in letters that fit a URL.</param>
/// <param name="Links">Where to fetch it again.</param>
/// <param name="Design">The request with every default filled in; sizes that the solver chose are still null.</param>
/// <param name="Lengths">Places along the paddle.</param>
/// <param name="Sizes">The nine sizes of the finished paddle.</param>
/// <param name="Stations">Cross-sections from the top of the grip to the tip.</param>
/// <param name="Wood">The values of the wood that were used.</param>
/// <param name="Mass">Mass, balance point and swing.</param>
/// <param name="Balance">How the finished paddle balances.</param>
/// <param name="Strength">Every load case.</param>
/// <param name="Flex">Bench flex and first frequency.</param>
/// <param name="Stroke">In the water.</param>
/// <param name="Outcome"><c>met</c>, or <c>closest</c> when an aim is missed.</param>
/// <param name="UnmetAims">The aims missed, the gravest first, with what to do.</param>
/// <param name="Checks">Every figure held against its limit.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
/// <param name="Construction">How a laminated paddle is glued up, and one of one piece beside it; absent of one piece.</param>
internal sealed record DesignResponse(
    string EngineVersion,
    string DesignCode,
    DesignLinks Links,
    DesignRequest Design,
    PaddlePlaces Lengths,
    PaddleSizes Sizes,
    [property: JsonConverter(typeof(StationsConverter))] IReadOnlyList<DesignStation> Stations,
    WoodInUse Wood,
    DesignMass Mass,
    BalanceResult Balance,
    StrengthCheck Strength,
    Flex Flex,
    StrokeFigures Stroke,
    string Outcome,
    IReadOnlyList<UnmetAim> UnmetAims,
    IReadOnlyList<DesignCheck> Checks,
    IReadOnlyList<Caution> Cautions,
    LaminateReport? Construction)
{
    /// <summary>The answer to a request.</summary>
    /// <param name="resolved">The request read.</param>
    /// <param name="report">Its report.</param>
    /// <param name="designCode">Code of the design.</param>
    /// <param name="links">Where to fetch it again.</param>
    public static DesignResponse Of(ResolvedDesign resolved, DesignReport report, string designCode, DesignLinks links) => new(
        Contracts.EngineVersion.Text, designCode, links, resolved.Request, report.Specification.Form.Places, report.Sizes, DesignStation.Of(report.Stations),
        report.Specification.Wood, new(report.Mass, report.Finished), report.Balance, report.Strength, report.Flex, report.Stroke, report.Outcome.Word,
        report.Outcome.Unmet, report.Checks, report.Cautions, LaminateReport.Compared(report));
}

/// <summary>Mass, balance point and swing.</summary>
internal sealed class DesignMass(MassProperties bare, FinishedMass finished)
{
    /// <summary>Mass, g.</summary>
    public double TotalG => bare.TotalG;
    /// <summary>Mass of the grip, g.</summary>
    public double GripG => bare.GripG;
    /// <summary>Mass of the shaft, g.</summary>
    public double ShaftG => bare.ShaftG;
    /// <summary>Mass of the blade, g.</summary>
    public double BladeG => bare.BladeG;
    /// <summary>Volume, cm³.</summary>
    public double VolumeCm3 => bare.VolumeCm3;
    /// <summary>Density of the paddle, kg/m³.</summary>
    public double DensityKgM3 => 1000 * bare.TotalG / bare.VolumeCm3;
    /// <summary>Balance point, mm from the top of the grip along the shaft's line.</summary>
    public double CentreOfMassMm => bare.CentreOfMassMm;
    /// <summary>Moment of inertia about the balance point, kg·m².</summary>
    public double InertiaCentreKgM2 => bare.InertiaCentreKgM2;
    /// <summary>Moment of inertia about the grip hand, kg·m².</summary>
    public double InertiaTopHandKgM2 => bare.InertiaTopHandKgM2;
    /// <summary>Moment of inertia about the lower hand, kg·m².</summary>
    public double InertiaLowerHandKgM2 => bare.InertiaLowerHandKgM2;
    /// <summary>Surface, cm².</summary>
    public double SurfaceCm2 => bare.SurfaceCm2;
    /// <summary>Surface of the grip, cm².</summary>
    public double GripSurfaceCm2 => bare.GripSurfaceCm2;
    /// <summary>Surface of the shaft, cm².</summary>
    public double ShaftSurfaceCm2 => bare.ShaftSurfaceCm2;
    /// <summary>Surface of the blade, both faces and edges, cm².</summary>
    public double BladeSurfaceCm2 => bare.BladeSurfaceCm2;
    /// <summary>Whether the bare wood floats in fresh water.</summary>
    public bool Floats => DensityKgM3 < FreshWater.DensityKgM3(FreshWater.DefaultTemperatureC);
    /// <summary>Finish that stays on, cloth included, g.</summary>
    public double FinishG => finished.Load.MassG;
    /// <summary>Mass finished, g; the others above are those of the bare wood.</summary>
    public double FinishedG => finished.MassG;
    /// <summary>Balance point finished, mm.</summary>
    public double FinishedCentreOfMassMm => finished.CentreOfMassMm;
    /// <summary>Moment of inertia about it finished, kg·m².</summary>
    public double FinishedInertiaCentreKgM2 => finished.InertiaCentreKgM2;
    /// <summary>Moment of inertia about the grip hand finished, kg·m².</summary>
    public double FinishedInertiaTopHandKgM2 => finished.InertiaTopHandKgM2;
    /// <summary>Moment of inertia about the lower hand finished, kg·m².</summary>
    public double FinishedInertiaLowerHandKgM2 => finished.InertiaLowerHandKgM2;
}
