using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;
using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Copying;

/// <summary>A paddle as far as readings can tell.</summary>
internal sealed record CopiedPaddle(PaddleForm Form, PaddleSizes Sizes, double DensityKgM3, double ApparentModulusMPa);

/// <summary>What a paddle of given parameters would read. Theory C1.</summary>
/// <remarks>Parameters are counted in units of their scatter about what is usual, so that every one of them is itself an observation, of
/// nought with an error of one: what readings do not tell stays usual, and its standard error says so.</remarks>
internal sealed class CopyModel
{
    /// <summary>Places of the parameters.</summary>
    public const int Overall = 0, Throat = 1, Freeboard = 2, Sizes = 3, GripLength = Sizes + PaddleSizes.Count, GripWidth = GripLength + 1,
        Hollow = GripWidth + 1, BladeWidth = Hollow + 1, WidestAt = BladeWidth + 1, Fullness = WidestAt + 1, Fairing = Fullness + 1,
        FairingCount = 9, Density = Fairing + FairingCount, Modulus = Density + 1, Count = Modulus + 1;

    // Correlation length of a maker's departures from a family's curve, fraction of the blade (own choice: hands fair over a quarter of it).
    private const double FairingLength = 0.12;
    private const int ShoulderOffsets = 14, TailOffsets = 18;
    private const double FreeboardScatterMm = 10, LengthScatterMm = 20, WidthScatterMm = 10, BladeWidthScatterMm = 20, GripLengthScatterMm = 12, HollowScatterMm = 2;

    private readonly CopyRequest request;
    private readonly GripPattern pattern;
    private readonly BladeFamily family;
    private readonly WoodPrior wood;
    private readonly FinishChoice finish;
    private readonly GripFaces faces;
    private readonly double[] mean = new double[Count], scatter = new double[Count];

    /// <param name="departure">How far the blade may depart from the family's curve, fraction of the half-breadth.</param>
    /// <param name="isOutlineOnly">Whether only widths are looked at.</param>
    public CopyModel(CopyRequest request, CopyReadings readings, WoodPrior wood, BladeFamily family, GripStyle style, double departure, bool isOutlineOnly)
    {
        (this.request, Readings, this.wood, this.family, IsOutlineOnly) = (request, readings, wood, family, isOutlineOnly);
        pattern = GripPattern.Of(style);
        faces = Names.Find<GripFaces>(request.Grip?.Faces ?? "") ?? GripFaces.Matching;
        finish = DesignRequestReader.FinishOf(request.Finish);
        var caliper = readings.All.First(reading => reading.Station >= 0).Error;
        var grip = request.Grip ?? new();
        Usual(Overall, request.OverallLengthMm!.Value, LengthScatterMm);
        Usual(Throat, request.ThroatMm!.Value, LengthScatterMm);
        Usual(Freeboard, Fitting.PaddleLengths.DefaultFreeboardMm, request.HandSpacingMm is null && request.LowerHandMm is null ? FreeboardScatterMm : 0);
        for (var k = 0; k < PaddleSizes.Count; k++)
        {
            var limits = SizeLimits.Solver[k];
            Usual(Sizes + k, (limits.Min + limits.Max) / 2, isOutlineOnly && k is not (0 or 2) ? 0 : limits.Max - limits.Min);
        }

        if (grip.ThicknessMm is { } thick) Usual(Sizes + PaddleSizes.Count - 1, thick, isOutlineOnly ? 0 : caliper);
        Usual(GripLength, grip.LengthMm ?? pattern.LengthMm, grip.LengthMm is null ? GripLengthScatterMm : caliper);
        Usual(GripWidth, grip.WidthMm ?? pattern.WidthMm, grip.WidthMm is null ? WidthScatterMm : caliper);
        Usual(Hollow, grip.HollowDepthMm ?? pattern.HollowDepthMm, isOutlineOnly || grip.HollowDepthMm is not null ? 0 : HollowScatterMm);

        // The second widest: the widest may be a slip.
        var widths = readings.All.Where(reading => reading.Kind == ReadingKind.Width && readings.XsMm[reading.Station] > request.ThroatMm);
        Usual(BladeWidth, widths.Select(reading => reading.Value).OrderDescending().ElementAt(1), BladeWidthScatterMm);
        Usual(WidestAt, family.DefaultWidestAt, Third(family.WidestAtLimits));
        Usual(Fullness, family.DefaultFullness, Third(family.FullnessLimits));
        var sum = 0.0;
        for (var k = 0; k < FairingCount; k++) sum += Waviness(k) * Waviness(k) / 2;
        for (var k = 0; k < FairingCount; k++) Usual(Fairing + k, 0, departure * Waviness(k) / Math.Sqrt(sum));
        Usual(Density, wood.LogDensity, isOutlineOnly ? 0 : wood.DensityScatter);
        Usual(Modulus, wood.LogModulus, isOutlineOnly ? 0 : wood.ModulusScatter);
    }

    /// <summary>The readings.</summary>
    public CopyReadings Readings { get; }
    public bool IsOutlineOnly { get; }
    public BladeFamily Family => family;
    public GripStyle Style => pattern.Style;

    /// <summary>Scatter of a parameter in its own unit; 0 where it is known.</summary>
    public double Scatter(int parameter) => scatter[parameter];

    /// <summary>Whether a parameter may move.</summary>
    public bool IsOpen(int parameter) => scatter[parameter] > 0;

    /// <summary>A parameter in its own unit.</summary>
    public double Value(double[] z, int parameter) => mean[parameter] + scatter[parameter] * z[parameter];

    private void Usual(int parameter, double value, double about) => (mean[parameter], scatter[parameter]) = (value, about);

    private static double Third(Range limits) => (limits.Max - limits.Min) / 3;

    // Theory C5: departures are waves that vanish at the throat, the short ones rarer: the spectrum of a squared-exponential covariance.
    private static double Frequency(int k) => (k + 0.5) * Math.PI;

    private static double Waviness(int k) => Math.Exp(-Math.Pow(Frequency(k) * FairingLength, 2) / 4);

    /// <summary>The paddle of given parameters.</summary>
    public CopiedPaddle Paddle(double[] z)
    {
        var sizes = new double[PaddleSizes.Count];
        for (var k = 0; k < sizes.Length; k++) sizes[k] = Size(z, k);
        var places = Places(z);
        var hollow = Math.Clamp(Value(z, Hollow), 0, Math.Max(0, (sizes[^1] - SizeLimits.LeastGripCoreMm) / (faces == GripFaces.Matching ? 2 : 1)));
        var grip = new GripShape(pattern.Style, Math.Max(Value(z, GripWidth), sizes[2]), places.GripEndMm, faces, hollow);
        var offsets = Offsets(z, places.BladeMm, sizes[0]);
        var (width, widestAt) = OffsetsOutline.Widest(offsets);
        var form = new PaddleForm(places, grip, new(null, places.BladeMm, width, widestAt, 0, offsets), request.BendDegrees ?? 0);
        return new(form, PaddleSizes.FromVector(sizes), Math.Exp(Value(z, Density)), Math.Exp(Value(z, Modulus)));
    }

    private double Size(double[] z, int size) => Math.Max(Value(z, Sizes + size), 0.5);

    // Hands where they are known to be, else where the grip and custom put them.
    private PaddlePlaces Places(double[] z)
    {
        var overall = Value(z, Overall);
        var throat = Math.Min(Value(z, Throat), overall - 100);
        var (freeboard, gripLength) = (Value(z, Freeboard), Value(z, GripLength));
        var spacing = request.HandSpacingMm;
        var lower = request.LowerHandMm ?? (spacing is { } apart ? pattern.HandMm + apart : throat - freeboard);
        lower = Math.Min(lower, throat - 0.5);
        var top = spacing is { } known && request.LowerHandMm is not null ? request.LowerHandMm.Value - known : pattern.HandMm;
        return new(top, Math.Clamp(gripLength, pattern.LengthLimitsMm.Min, pattern.LengthLimitsMm.Max), lower, throat, overall);
    }

    /// <summary>The blade's table of offsets: the family's curve with the maker's departures from it. Theory C5.</summary>
    public Offset[] Offsets(double[] z, double bladeMm, double shaftWidthMm)
    {
        var plan = Plan(z, bladeMm, shaftWidthMm);
        var widest = plan.WidestAt;
        var curve = new HalfBreadthCurve(BladePlan.For(plan).Draw(0, shaftWidthMm / 2));
        const int Stations = ShoulderOffsets + TailOffsets;
        var (xs, halves, parameters) = (new double[Stations], new double[Stations], new double[Stations]);
        for (var j = 0; j < Stations; j++)
        {
            // A station at the widest point, or the table would cut it off; close ones at the tip, which turns the corner there.
            var tail = 1 - Math.Pow(1 - (j + 1 - ShoulderOffsets) / (double)TailOffsets, 1.6);
            xs[j] = bladeMm * (j < ShoulderOffsets ? widest * (j + 1) / ShoulderOffsets : widest + (1 - widest) * tail);
        }

        xs[^1] = bladeMm;
        curve.Sample(xs, halves, parameters);
        var offsets = new Offset[Stations];
        for (var j = 0; j < Stations - 1; j++) offsets[j] = new(xs[j], halves[j] * (1 + Departure(z, xs[j] / bladeMm)));
        offsets[^1] = new(bladeMm, 0);
        return offsets;
    }

    // The family's own curve.
    private BladeShape Plan(double[] z, double bladeMm, double shaftWidthMm) => new(
        family, bladeMm, Math.Max(Value(z, BladeWidth), shaftWidthMm + 10), Math.Clamp(Value(z, WidestAt), family.WidestAtLimits.Min, family.WidestAtLimits.Max),
        Math.Clamp(Value(z, Fullness), family.FullnessLimits.Min, family.FullnessLimits.Max), null);

    private double Departure(double[] z, double t)
    {
        var sum = 0.0;
        for (var k = 0; k < FairingCount; k++) sum += Value(z, Fairing + k) * Math.Sin(Frequency(k) * t);
        return Math.Max(sum, -0.9);
    }

    /// <summary>What each reading would be; of the widths alone where nothing else is looked at.</summary>
    /// <param name="shiftMm">Added to the place of every station: how readings change along the paddle.</param>
    public double[] Predict(double[] z, double shiftMm = 0) => IsOutlineOnly ? Widths(z, shiftMm) : Predict(Paddle(z), shiftMm);

    // The curve itself, where no table of it is wanted.
    private double[] Widths(double[] z, double shiftMm)
    {
        var places = Places(z);
        var (shaft, upper) = (Size(z, 0), Size(z, 2));
        var grip = new GripShape(pattern.Style, Math.Max(Value(z, GripWidth), upper), places.GripEndMm, faces, 0);
        var (xs, halves) = (Shifted(places, shiftMm), new double[Readings.XsMm.Length]);
        PaddleOutline.Draw(places, grip, BladePlan.For(Plan(z, places.BladeMm, shaft)), shaft, upper).Sample(xs, halves, new double[xs.Length]);
        return
        [
            .. Readings.All.Select(reading => reading.Kind switch
            {
                ReadingKind.Overall => places.OverallMm,
                ReadingKind.Throat => places.ThroatMm,
                ReadingKind.Width => 2 * halves[reading.Station] * (1 + Departure(z, Math.Max(0, (xs[reading.Station] - places.ThroatMm) / places.BladeMm))),
                _ => 0,
            }),
        ];
    }

    private double[] Shifted(PaddlePlaces places, double shiftMm) => [.. Readings.XsMm.Select(x => Math.Clamp(x + shiftMm, 0, places.OverallMm))];

    /// <summary>What each reading of a paddle would be.</summary>
    public double[] Predict(CopiedPaddle paddle, double shiftMm = 0)
    {
        var (form, sizes, density, apparent) = paddle;
        var outline = form.Outline(sizes);
        var xs = Shifted(form.Places, shiftMm);
        var halfWidths = new double[xs.Length];
        outline.Sample(xs, halfWidths, new double[xs.Length]);
        var slopes = SpineSlopes.Of(sizes);
        PaddleSolid? fine = null;
        var modulus = ElasticConstants.TrueModulusMPa(apparent);
        FinishedMass? finished = null;
        var predicted = new double[Readings.All.Count];
        for (var i = 0; i < predicted.Length; i++)
        {
            var reading = Readings.All[i];
            predicted[i] = reading.Kind switch
            {
                ReadingKind.Overall => form.Places.OverallMm,
                ReadingKind.Throat => form.Places.ThroatMm,
                ReadingKind.Width => 2 * halfWidths[reading.Station],
                ReadingKind.Thickness => Thickness(xs[reading.Station]),
                ReadingKind.Edge => Edge(xs[reading.Station]),
                ReadingKind.Mass => Finished().MassG,
                ReadingKind.Balance => Finished().CentreOfMassMm,
                ReadingKind.Flex => BenchFlexMm(Fine(), modulus),
                _ => Flex.FrequencyHz(PaddleSolid.Shape(form, sizes, outline, form.PrintedGrid()), density, modulus),
            };
        }

        return predicted;

        double Thickness(double x)
        {
            var (segment, coordinate) = StationGrid.SegmentAt(form.Lengths, x);
            return ThicknessWeights.At(segment, coordinate).Sum(sizes, slopes, form.Grip.HollowedFaces * form.Grip.HollowDepthMm);
        }

        double Edge(double x) =>
            x <= form.Places.ThroatMm ? 0 : BladeBlend.EdgeShare((x - form.Places.ThroatMm) / form.Places.BladeMm) * sizes.EdgeThicknessMm;

        PaddleSolid Fine() => fine ??= PaddleSolid.Shape(form, sizes, outline, StationGrid.Fine);
        FinishedMass Finished() => finished ??= FinishedMass.Of(form.Places, MassProperties.Of(Fine(), density), FinishLoad.On(Fine(), finish));
    }

    // Theory L12 with the caller's supports, weight and place.
    private double BenchFlexMm(PaddleSolid fine, double modulusMPa)
    {
        var bench = request.BenchFlex!;
        var places = fine.Form.Places;
        var held = places with
        {
            TopHandMm = bench.UpperSupportMm ?? places.TopHandMm,
            LowerHandMm = Math.Min(bench.LowerSupportMm ?? places.LowerHandMm, places.ThroatMm),
        };
        var at = bench.LoadAtMm ?? BladePressure.On(fine).CentreOfPressureMm(StrokePivots.TouringMm);
        return (bench.LoadN ?? Loads.BenchN) * Flex.PerNewtonMm(fine, held, at, modulusMPa, wood.ShearOverModulus * modulusMPa);
    }
}
