using Paddle.Design.Outline;

namespace Paddle.Design.Stroke;

/// <summary>Each family's usual blade, summed once, so that it can be scaled to any area. Theory K6.</summary>
internal static class FamilyTable
{
    private static readonly GaussRule Gauss = new(8);

    internal static IReadOnlyList<FamilyBlade> Blades { get; } = [.. BladeFamilies.All.Select(Sum)];

    private static FamilyBlade Sum(BladeFamily family)
    {
        var shape = new BladeShape(
            family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
        var moments = new double[4];
        foreach (var piece in BladePlan.For(shape).Draw(0, BladeShape.NominalShaftHalfWidthMm))
        {
            for (var k = 0; k < Gauss.Abscissas.Length; k++)
            {
                var s = Gauss.Abscissas[k];
                var strip = 2 * Gauss.Weights[k] * piece.Y(s) * piece.DX(s);
                for (var power = 0; power < moments.Length; power++) moments[power] += strip * Math.Pow(piece.X(s), power);
            }
        }

        return new(family.Id, family.DefaultLengthMm, family.DefaultWidthMm, moments[0], moments[1], moments[2], moments[3]);
    }
}

/// <summary>A family's usual blade: its sizes (mm) and ∫x^k dA over its face from the throat (mm^(k+2)).</summary>
internal sealed record FamilyBlade(string Family, double LengthMm, double WidthMm, double M0, double M1, double M2, double M3)
{
    /// <summary>Centre of pressure (mm from the throat) of the blade stretched along and across, pivot above the throat.</summary>
    /// <param name="along">Factor on its length.</param>
    /// <param name="pivotMm">Distance of the stroke's pivot above the throat, mm.</param>
    /// <remarks>A factor on the width changes all moments alike and drops out.</remarks>
    internal double CentreOfPressureMm(double along, double pivotMm)
    {
        var p = pivotMm / along;
        return along * (M3 + 2 * p * M2 + p * p * M1) / (M2 + 2 * p * M1 + p * p * M0);
    }
}
