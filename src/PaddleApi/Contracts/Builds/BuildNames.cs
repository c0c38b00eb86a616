using Paddle.Design.Build;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Builds;

/// <summary>Names that the addresses about making a paddle use.</summary>
internal static class BuildNames
{
    /// <summary>Stages of the work in their order.</summary>
    public static NameTable<BuildStage> Stages { get; } = new([.. BuildStages.All.Select(stage => (BuildStages.Id(stage), stage))]);

    /// <summary>Zones that a correction takes wood from.</summary>
    public static NameTable<CorrectionZone> Zones { get; } = new([.. CorrectionZones.All.Select(zone => (CorrectionZones.Id(zone), zone))]);
}
