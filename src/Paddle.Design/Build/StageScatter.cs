using Paddle.Design.Finishing;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>How far a stage's mass and balance may differ from the prediction, nine times in ten. Theory M9.</summary>
internal static class StageScatter
{
    /// <summary>Coefficient of variation of density when the maker weighed the board: reading errors. Common practice, no source.</summary>
    public const double MeasuredVariation = 0.02;

    /// <summary>Standard deviation of the density's change from one end of a board to the other, as a fraction of the mean. Assumption, no
    /// published figure found: half the coefficient of variation of specific gravity between boards.</summary>
    public const double EndToEndVariation = Scatter.SpecificGravityVariation / 2;

    /// <summary>Coefficient of variation of the design's density: the book's 10 % (Wood Handbook table 5-6, read in a survey), or <see
    /// cref="MeasuredVariation"/> when the design's density is not the book's.</summary>
    public static double DensityVariation(WoodInUse wood) =>
        WoodCatalogue.Find(wood.SpeciesId) is { } species
            && Math.Abs(WoodDensity.KgM3(species, wood.MoisturePercent) - wood.DensityKgM3) <= 1e-9 * wood.DensityKgM3
            ? Scatter.SpecificGravityVariation
            : MeasuredVariation;

    /// <summary>Mass and balance of a stage with their bands.</summary>
    /// <remarks>
    /// Independent errors add as squares: the wood's density, its change along the board (which moves the balance point by the
    /// change per length times the spread of mass about it), and the faces of grip, shaft and blade being off each on their own.
    /// </remarks>
    public static (StageFigure MassG, StageFigure BalanceMm) Of(StageSolid solid, WoodInUse wood, OutlineSaw saw)
    {
        var tolerance = StageAllowance.After(solid.Stage, saw).FaceToleranceMm;
        Span<double> volume = stackalloc double[3], shift = stackalloc double[3];
        volume.Clear();
        shift.Clear();
        double spread = 0;
        foreach (var node in solid.Nodes)
        {
            var arm = node.AlongMm - solid.CentreMm;
            var zone = (int)node.Pattern.Segment.Zone;
            var faces = 2 * tolerance * node.WeightMm * node.Section.AreaPerThickness;
            volume[zone] += faces;
            shift[zone] += faces * arm / solid.VolumeMm3;
            spread += node.WeightMm * node.Section.AreaMm2 * arm * arm / solid.VolumeMm3;
        }

        const double Z = Scatter.FifthPercentileZ;
        var massG = solid.MassG(wood.DensityKgM3);
        var massSquare = Square(Z * DensityVariation(wood) * massG);
        var balanceSquare = Square(Z * EndToEndVariation * spread / solid.Blank.LengthMm);
        for (var zone = 0; zone < 3; zone++)
        {
            massSquare += Square(wood.DensityKgM3 * 1e-6 * volume[zone]);
            balanceSquare += Square(shift[zone]);
        }

        return (StageFigure.Around(massG, Math.Sqrt(massSquare)), StageFigure.Around(solid.CentreMm, Math.Sqrt(balanceSquare)));
    }

    /// <summary>The same figures once the finish is on: what it adds is known to the coverage's spread, and errors add as squares.</summary>
    public static (StageFigure MassG, StageFigure BalanceMm) WithFinish((StageFigure MassG, StageFigure BalanceMm) bare, FinishedMass finished)
    {
        double Half(StageFigure figure, double added) =>
            Math.Sqrt(Square(figure.High - figure.Value) + Square(FinishPlan.CoverageVariation * added));
        return (
            StageFigure.Around(finished.MassG, Half(bare.MassG, finished.Load.MassG)),
            StageFigure.Around(finished.CentreOfMassMm, Half(bare.BalanceMm, finished.ShiftMm))); // theory M9
    }

    private static double Square(double x) => x * x;
}
