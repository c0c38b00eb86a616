using System.Globalization;
using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Copying;

/// <summary>From readings off a paddle to the design that explains them.</summary>
public static class PaddleCopier
{
    private const int Candidates = 5;

    // A parameter whose scatter the readings left nearly as it was is known by custom alone.
    private const double Told = 0.7;

    /// <summary>Finds the design.</summary>
    /// <param name="request">Readings that their validator has passed.</param>
    public static CopyReport Copy(CopyRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var readings = CopyReadings.Of(request);
        var prior = WoodPrior.Of(request.Species);
        var fit = CopyFitter.Find(request, readings, prior, cancellation);
        var woods = prior.Judge(fit);
        var design = Design(request, fit, request.Species ?? woods[0].Species);
        var specification = design.Complete().Specification;
        var report = PaddleDesigner.Design(specification, cancellation);
        var predicted = fit.Model.Predict(new CopiedPaddle(specification.Form, report.Sizes, specification.Wood.DensityKgM3, specification.Wood.ApparentModulusMPa));
        var units = specification.Units;
        CopyReading[] rows = [.. readings.All.Select((reading, i) => Row(fit, i, predicted[i]))];
        CopyDoubt[] doubts = [.. rows.Select((row, i) => (row, i)).Where(one => one.row.Verdict == "measure-again").Select(one => Doubt(fit, one.i, predicted[one.i], units))];
        var wood = Wood(fit, specification, woods);
        return new(
            CopyWords.Of(fit, wood, doubts, report), Quality(fit), rows, doubts, Sizes(fit, design), Outline(fit, design), wood, design, CopyFigures.Of(report),
            CopyVariants.Of(request, design, report, cancellation));
    }

    private static CopyReading Row(CopyFit fit, int i, double predicted)
    {
        var reading = fit.Model.Readings.All[i];
        return new(
            reading.JsonPointer, reading.Value, Math.Round(predicted, 2), Math.Round(reading.Value - predicted, 2), Math.Round(fit.Errors[i], 3),
            fit.IsChecked(i) ? Math.Round(fit.Studentised(i, predicted), 2) : null, reading.Unit,
            !fit.IsKept[i] ? "measure-again" : fit.IsChecked(i) ? "fits" : "not-checked");
    }

    private static CopyDoubt Doubt(CopyFit fit, int i, double predicted, DrawingUnits units)
    {
        var (reading, readings) = (fit.Model.Readings.All[i], fit.Model.Readings);
        var name = reading.Name(reading.Station < 0 ? 0 : readings.XsMm[reading.Station], units);
        return new(
            reading.JsonPointer, reading.Value, Math.Round(predicted, 2), Math.Round(fit.ForecastError(i), 2), reading.Unit,
            $"Measure {name} again: {reading.Show(reading.Value, units)} was read, and all else makes it {reading.Show(predicted, units)}.");
    }

    private static CopyQuality Quality(CopyFit fit) => new(
        Math.Round(fit.ChiSquare, 1), Math.Round(fit.DegreesOfFreedom, 1), Math.Round(100 * fit.Chance, 2), Math.Round(fit.Growth, 3), fit.Model.Family.Id,
        Names.Of(fit.Model.Style));

    /// <summary>The request for the paddle found, rounded as a caliper reads and in the order that a spine thins.</summary>
    private static DesignRequest Design(CopyRequest request, CopyFit fit, string species)
    {
        var found = fit.Model.Paddle(fit.Fit.Parameters);
        var (form, places) = (found.Form, found.Form.Places);
        double Tenth(double value) => Math.Round(value, 1);
        double overall = Tenth(places.OverallMm), throat = Tenth(places.ThroatMm), lower = Tenth(places.LowerHandMm), top = Tenth(places.TopHandMm);
        var blade = Tenth(Math.Clamp(overall - throat, Fitting.PaddleLengths.BladeLengthLimitsMm.Min, Fitting.PaddleLengths.BladeLengthLimitsMm.Max));
        overall = Tenth(throat + blade);
        var sizes = SizesInOrder(found.Sizes);
        var grip = request.Grip ?? new();
        var gripWidth = Within(grip.WidthMm ?? form.Grip.WidthMm, GripPattern.Of(form.Grip.Style).WidthLimitsMm);
        sizes[PaddleSizes.UpperWidth] = Math.Min(sizes[PaddleSizes.UpperWidth], gripWidth);
        var offsets = form.Blade.Offsets!;
        var curve = new HalfBreadthCurve(form.BladePlan.Draw(0, found.Sizes.ShaftWidthMm / 2));
        var read = fit.Model.Readings;
        return new DesignRequest
        {
            Label = request.Label,
            HandSpacingMm = Tenth(lower - top),
            FreeboardMm = Tenth(throat - lower),
            OverallLengthMm = overall,
            Blade = new()
            {
                Offsets = [.. offsets.Select((offset, j) => Station(j == offsets.Count - 1, offset))],
            },
            Shaft = new() { BendDegrees = request.BendDegrees },
            Grip = new()
            {
                Style = Names.Of(form.Grip.Style),
                WidthMm = gripWidth,
                LengthMm = Within(form.Grip.LengthMm, GripPattern.Of(form.Grip.Style).LengthLimitsMm),
                Faces = Names.Of(form.Grip.Faces),
                HollowDepthMm = Math.Floor(10 * Math.Clamp(form.Grip.HollowDepthMm, 0, Math.Max(0, (sizes[PaddleSizes.Grip] - SizeLimits.LeastGripCoreMm) / form.Grip.HollowedFaces)) + 1e-6) / 10,
            },
            Wood = new()
            {
                Species = species,
                MeasuredDensityKgM3 = read.Has(ReadingKind.Mass) ? Math.Round(Math.Clamp(found.DensityKgM3, 200, 1100), 1) : null,
                MeasuredModulusMPa = read.Has(ReadingKind.Flex) || read.Has(ReadingKind.Tap) ? Math.Round(Math.Clamp(found.ApparentModulusMPa, 3000, 25000)) : null,
            },
            Finish = request.Finish,
            Drawing = request.Drawing,
        }.Pin(PaddleSizes.FromVector(sizes));

        double Within(double value, Outline.Range limits) => Tenth(Math.Clamp(value, limits.Min, limits.Max));

        // Half-breadths where the rounded station lies.
        OffsetRequest Station(bool isTip, Offset offset)
        {
            var x = isTip ? blade : Tenth(offset.XMm);
            return new() { XMm = x, HalfBreadthMm = isTip ? 0 : Math.Clamp(Math.Round(curve.HalfBreadthMm(x), 2), 0.01, 120) };
        }
    }

    // Readings have errors, and a paddle's sizes an order: what would break it by an error's breadth is level.
    private static double[] SizesInOrder(PaddleSizes found)
    {
        var sizes = new double[PaddleSizes.Count];
        found.CopyTo(sizes);
        return SizesInOrder(sizes);
    }

    /// <summary>Sizes rounded to a tenth, within what is a paddle, none thicker than what it thins from.</summary>
    internal static double[] SizesInOrder(double[] sizes)
    {
        for (var k = 0; k < sizes.Length; k++) sizes[k] = Math.Round(Math.Clamp(sizes[k], SizeLimits.Pinned[k].Min, SizeLimits.Pinned[k].Max), 1);
        InOrder(sizes);
        return sizes;
    }

    /// <summary>Lowers sizes to those that they thin from.</summary>
    internal static void InOrder(double[] sizes)
    {
        sizes[PaddleSizes.UpperWidth] = Math.Min(sizes[PaddleSizes.UpperWidth], sizes[PaddleSizes.ShaftWidth]);
        sizes[PaddleSizes.Upper] = Math.Min(sizes[PaddleSizes.Upper], sizes[PaddleSizes.Shaft]);
        sizes[PaddleSizes.Throat] = Math.Min(sizes[PaddleSizes.Throat], sizes[PaddleSizes.Shaft]);
        for (var k = PaddleSizes.Middle; k <= PaddleSizes.Edge; k++) sizes[k] = Math.Min(sizes[k], sizes[k - 1]);
    }

    private static CopySize[] Sizes(CopyFit fit, DesignRequest design)
    {
        CopySize Size(string name, double? value, int parameter) => new(
            name, value!.Value, Math.Round(fit.ErrorOf(parameter), 2),
            fit.Model.IsOpen(parameter) && fit.Fit.Covariance[parameter, parameter] > Told * Told ? "usual" : "readings");
        var values = design.Complete().Specification.Pinned.ToVector();
        return
        [
            Size("overallLengthMm", design.OverallLengthMm, CopyModel.Overall),
            Size("freeboardMm", design.FreeboardMm, CopyModel.Freeboard),
            .. SizeLimits.Names.Select((name, k) => Size(name, values[k], CopyModel.Sizes + k)),
            Size("grip.widthMm", design.Grip!.WidthMm, CopyModel.GripWidth),
            Size("grip.lengthMm", design.Grip.LengthMm, CopyModel.GripLength),
            Size("grip.hollowDepthMm", design.Grip.HollowDepthMm, CopyModel.Hollow),
        ];
    }

    // Theory C3: errors of the half-breadths follow from those of the parameters by the slopes between them.
    private static CopyOffset[] Outline(CopyFit fit, DesignRequest design)
    {
        var (model, at) = (fit.Model, fit.Fit.Parameters);
        double[] Halves(double[] z)
        {
            var paddle = model.Paddle(z);
            var curve = paddle.Form.Outline(paddle.Sizes);
            return [.. design.Blade!.Offsets!.Select(offset => curve.HalfBreadthMm(Math.Min(paddle.Form.Places.ThroatMm + offset.XMm!.Value, paddle.Form.Places.OverallMm)))];
        }

        var slopes = LeastSquares.Jacobian(z => [.. Halves(z), .. z], at, model.IsOpen);
        var last = design.Blade!.Offsets!.Count - 1; // the tip is where the blade ends: its error is the length's

        return
        [
            .. design.Blade.Offsets.Select((offset, j) => new CopyOffset(
                offset.XMm!.Value, offset.HalfBreadthMm!.Value, j == last ? 0 : Math.Round(fit.Growth * Math.Sqrt(slopes.Row(j) * fit.Fit.Covariance * slopes.Row(j)), 2))),
        ];
    }

    private static CopyWood Wood(CopyFit fit, PaddleSpecification specification, IReadOnlyList<LikelyWood> woods)
    {
        var wood = specification.Wood;
        var (weighed, bent) = (fit.Model.Readings.Has(ReadingKind.Mass), fit.Model.Readings.Has(ReadingKind.Flex) || fit.Model.Readings.Has(ReadingKind.Tap));
        return new(
            wood.Species, Math.Round(wood.DensityKgM3, 1), Math.Round(wood.DensityKgM3 * fit.ErrorOf(CopyModel.Density), 1), weighed ? "readings" : "book",
            Math.Round(wood.ModulusMPa), Math.Round(wood.ModulusMPa * fit.ErrorOf(CopyModel.Modulus)), Math.Round(wood.ApparentModulusMPa), bent ? "readings" : "book",
            [.. woods.Take(Candidates)]);
    }
}

/// <summary>A copy told in sentences.</summary>
internal static class CopyWords
{
    public static IReadOnlyList<string> Of(CopyFit fit, CopyWood wood, IReadOnlyList<CopyDoubt> doubts, DesignReport report)
    {
        var units = report.Specification.Units;
        string Show(double value, string format = "0") => value.ToString(format, CultureInfo.InvariantCulture);
        var count = fit.IsKept.Count(kept => kept);
        var words = new List<string>
        {
            fit.Chance >= CopyFitter.FalseAlarm
                ? $"This paddle explains {count} of {fit.IsKept.Length} readings within their errors."
                : $"No paddle of this kind explains the readings within their errors: they lie {Show(fit.Growth, "0.0")} times as far off as stated. The errors below are widened by as much.",
            $"Its blade comes nearest to {Article(fit.Model.Family.Name)}; the table of offsets is its own.",
        };
        words.AddRange(doubts.Select(doubt => doubt.Message));
        var density = $"{DrawnAmount.Density(wood.DensityKgM3, units)} ± {Show(wood.DensityErrorKgM3)} kg/m³";
        var book = wood.Candidates.FirstOrDefault(one => one.Species == wood.Species);
        words.Add(wood.DensityFrom == "book"
            ? $"It was not weighed: its wood is taken as the book has it, {density}."
            : $"Its wood weighs {density}" + (book is null ? ", which is far from what the book has for it." : $"; the book has {Show(book.DensityKgM3)} kg/m³ ± {Show(0.1 * book.DensityKgM3)} for {book.Name.ToLowerInvariant()}."));
        if (wood.ModulusFrom == "book") words.Add("It was neither bent nor tapped: its stiffness is the book's.");
        if (!report.Outcome.IsMet) words.AddRange(report.Outcome.Unmet.Select(aim => $"As it is, it misses an aim of new designs: {aim.Message}"));
        return words;
    }

    /// <summary>A name with its article.</summary>
    private static string Article(string name) => ("AEIOU".Contains(name[0]) ? "an " : "a ") + name.ToLowerInvariant();
}
