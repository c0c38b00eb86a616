namespace Paddle.Design.Solid;

/// <summary>Mass, balance and swing of a solid, by zone and in all. Theory S11.</summary>
/// <param name="VolumeCm3">Volume, cm³.</param>
/// <param name="CentreOfMassMm">Balance point along the shaft's line from the top of the grip, mm.</param>
/// <param name="InertiaCentreKgM2">Moment of inertia about the centre of mass, kg·m².</param>
/// <param name="InertiaTopHandKgM2">Moment of inertia about the grip hand, kg·m².</param>
/// <param name="InertiaLowerHandKgM2">Moment of inertia about the lower hand, kg·m².</param>
/// <param name="GripSurfaceCm2">Surface of the grip, cm².</param>
/// <param name="ShaftSurfaceCm2">Surface of the shaft, cm².</param>
/// <param name="BladeSurfaceCm2">Surface of the blade, both faces and edges, cm².</param>
public sealed record MassProperties(
    double GripG,
    double ShaftG,
    double BladeG,
    double VolumeCm3,
    double CentreOfMassMm,
    double InertiaCentreKgM2,
    double InertiaTopHandKgM2,
    double InertiaLowerHandKgM2,
    double GripSurfaceCm2,
    double ShaftSurfaceCm2,
    double BladeSurfaceCm2)
{
    public double TotalG => GripG + ShaftG + BladeG;
    /// <summary>Surface in all, cm².</summary>
    public double SurfaceCm2 => GripSurfaceCm2 + ShaftSurfaceCm2 + BladeSurfaceCm2;

    /// <summary>Sums a solid given on a Gauss grid.</summary>
    /// <param name="solid">The solid on a grid with quadrature weights.</param>
    /// <param name="densityKgM3">Density of the wood, kg/m³; of strips the middle one's.</param>
    /// <remarks>A swinging paddle is taken as a line of mass: the sections' own spread adds less than 0.1 % to the moments of
    /// inertia.</remarks>
    public static MassProperties Of(PaddleSolid solid, double densityKgM3)
    {
        var form = solid.Form;
        Span<double> volume = stackalloc double[3], weighted = stackalloc double[3], surface = stackalloc double[3];
        volume.Clear();
        weighted.Clear();
        surface.Clear();
        double first = 0, firstAcross = 0, second = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var weight = solid.WeightMm(i);
            if (weight <= 0) continue;
            var zone = (int)solid.Grid.Patterns[i].Segment.Zone;
            var slice = weight * solid.MassArea[i];
            double along = form.AlongShaftMm(solid.X[i]), across = solid.CentreOffsetMm(i);
            volume[zone] += weight * solid.Area[i];
            weighted[zone] += slice;
            first += slice * along;
            firstAcross += slice * across;
            second += slice * (along * along + across * across);
            surface[zone] += weight * solid.Grid.Patterns[i].Perimeter.LengthMm(
                solid.HalfWidth[i], solid.HalfThickness[i], solid.EdgeHalfThickness[i]);
        }

        var total = weighted[0] + weighted[1] + weighted[2];
        var gramsPerMm3 = densityKgM3 * 1e-6;
        double centre = first / total, centreAcross = firstAcross / total;
        var toKgM2 = gramsPerMm3 * 1e-9;
        var aboutCentre = (second - total * (centre * centre + centreAcross * centreAcross)) * toKgM2;
        double About(double at) => aboutCentre + total * ((centre - at) * (centre - at) + centreAcross * centreAcross) * toKgM2;
        return new(
            weighted[0] * gramsPerMm3, weighted[1] * gramsPerMm3, weighted[2] * gramsPerMm3, (volume[0] + volume[1] + volume[2]) / 1000, centre, aboutCentre,
            About(form.Places.TopHandMm), About(form.Places.LowerHandMm), surface[0] / 100, surface[1] / 100, surface[2] / 100);
    }
}
