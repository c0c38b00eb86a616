using System.Globalization;
using Paddle.Design.Balance;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Copying;

/// <summary>A copy with one thing changed, and what that costs.</summary>
internal static class CopyVariants
{
    public const string Longer = "longer", Lighter = "lighter", BalanceLower = "balance-lower", Species = "species";

    /// <summary>By how much when nothing is said: 2 in, 50 g, 20 mm.</summary>
    public const double LongerMm = 2 * DrawnLength.MmPerInch, LighterG = 50, BalanceLowerMm = 20;

    // What rounding nine sizes to a tenth of a millimetre may leave.
    private const double RoundingG = 1.5, RoundingMm = 1.5;

    // Less than this no rule shows, mm, and no scale, g.
    private const double Unseen = 0.4;

    private const int Steps = 40;

    /// <summary>Changes that are known.</summary>
    public static IReadOnlyList<string> Changes { get; } = [Longer, Lighter, BalanceLower, Species, .. SizeLimits.Names];

    /// <summary>The variants asked for, or the four usual ones.</summary>
    public static IReadOnlyList<CopyVariant> Of(CopyRequest request, DesignRequest copy, DesignReport report, CancellationToken cancellation)
    {
        var other = copy.Wood!.Species == "black-cherry" ? "white-ash" : "black-cherry";
        var asked = request.Variants ?? [new() { Change = Longer }, new() { Change = Species, Species = other }, new() { Change = Lighter }, new() { Change = BalanceLower }];
        return [.. asked.Select(one => Variant(one, copy, report, cancellation))];
    }

    private static CopyVariant Variant(CopyVariantRequest asked, DesignRequest copy, DesignReport report, CancellationToken cancellation)
    {
        var units = report.Specification.Units;
        string Length(double mm) => DrawnLength.Text(Math.Abs(mm), units);
        var size = SizeLimits.Names.ToList().IndexOf(asked.Change!);
        var value = asked.Value ?? (asked.Change switch { Longer => LongerMm, Lighter => LighterG, BalanceLower => BalanceLowerMm, _ => 0 });
        var finished = report.Finished;
        var (name, design, miss) = asked.Change switch
        {
            Longer => ($"The shaft {Length(value)} {(value < 0 ? "shorter" : "longer")}", WithSpacing(copy, value), null),
            Species => ($"In {WoodCatalogue.Find(asked.Species!)!.CommonName.ToLowerInvariant()}", copy with { Wood = new() { Species = asked.Species } }, null),
            Lighter => Reached(
                $"{DrawnAmount.Mass(Math.Abs(value), units)} {(value < 0 ? "heavier" : "lighter")}", finished.MassG - value, one => one.MassG, RoundingG, copy, report, cancellation),
            BalanceLower => Reached(
                $"Balanced {Length(value)} {(value < 0 ? "higher" : "lower")}", finished.CentreOfMassMm + value, one => one.CentreOfMassMm, RoundingMm, copy, report, cancellation),
            _ => ($"{asked.Change} at {Length(value)}", WithSizes(copy, size, value), null),
        };
        var refused = design is null ? miss : PaddleLengthsClash(design);
        if (refused is not null) return new(asked.Change!, name, null, null, null, $"{name} cannot be made: {refused}");
        var made = PaddleDesigner.Design(design!.Complete().Specification, cancellation);
        CopyFigures now = CopyFigures.Of(made), before = CopyFigures.Of(report);
        var difference = new CopyDifference(
            Math.Round(now.MassG - before.MassG, 1), Math.Round(now.BalanceMm - before.BalanceMm, 1), Math.Round(now.BenchFlexMm - before.BenchFlexMm, 2),
            Math.Round(now.LeastFactor - before.LeastFactor, 2));
        return new(asked.Change!, name, design, now, difference, Cost(name, before, now, difference, made, units) + miss);
    }

    private static string? PaddleLengthsClash(DesignRequest design)
    {
        var spacing = design.HandSpacingMm!.Value;
        var limits = PaddleLengths.HandSpacingLimitsMm;
        if (!limits.Contains(spacing)) return string.Create(CultureInfo.InvariantCulture, $"hands {spacing:0.#} mm apart lie outside {limits.Min:0} to {limits.Max:0} mm.");
        return DesignDefaults.Lengths(design).Conflicts is [var conflict, ..] ? conflict.Reason : null;
    }

    private static string Cost(string name, CopyFigures before, CopyFigures now, CopyDifference difference, DesignReport made, DrawingUnits units)
    {
        string Length(double mm) => DrawnLength.Text(Math.Abs(mm), units);
        string Than(double by, string amount, string more, string less) => Math.Abs(by) < Unseen ? "the same" : $"{amount} {(by > 0 ? more : less)}";
        var words = string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: weight {Than(difference.MassG, DrawnAmount.Mass(Math.Abs(difference.MassG), units), "more", "less")}, balance point {Than(difference.BalanceMm, Length(difference.BalanceMm), "nearer the tip", "nearer the grip")}, give on the bench {Than(difference.BenchFlexMm, Length(difference.BenchFlexMm), "more", "less")}; safety factor {now.LeastFactor:0.00}, was {before.LeastFactor:0.00}.");
        return made.Outcome.IsTooWeak ? words + " " + made.Outcome.Unmet.First(aim => aim.IsStrength).Message : words;
    }

    // Hands farther apart by as much, the blade as it was.
    private static DesignRequest WithSpacing(DesignRequest copy, double byMm) => copy with
    {
        HandSpacingMm = Math.Round(copy.HandSpacingMm!.Value + byMm, 1),
        OverallLengthMm = Math.Round(copy.OverallLengthMm!.Value + byMm, 1),
    };

    private static DesignRequest WithSizes(DesignRequest copy, int size, double valueMm)
    {
        var sizes = VectorOf(copy);
        sizes[size] = valueMm;
        return With(copy, sizes);
    }

    private static double[] VectorOf(DesignRequest copy) => [.. copy.Complete().Specification.Pinned.ToVector().Select(size => size!.Value)];

    private static DesignRequest With(DesignRequest copy, double[] sizes)
    {
        var s = PaddleCopier.SizesInOrder(sizes);
        var grip = copy.Grip!;
        var faces = Names.Find<GripFaces>(grip.Faces!) == GripFaces.OneSided ? 1 : 2;
        s[PaddleSizes.UpperWidth] = Math.Min(s[PaddleSizes.UpperWidth], grip.WidthMm!.Value);
        var hollowed = copy with
        {
            Grip = grip with
            {
                HollowDepthMm = Math.Min(grip.HollowDepthMm!.Value, Math.Floor(10 * Math.Max(0, (s[PaddleSizes.Grip] - SizeLimits.LeastGripCoreMm) / faces)) / 10),
            },
        };
        return hollowed.Pin(PaddleSizes.FromVector(s));
    }

    /// <summary>The sizes nearest to the copy's with which a figure of the finished paddle is reached, each counted in the breadth of what makers
    /// carve: along the figure's slopes, a size at its limit staying there. Theory C7.</summary>
    private static (string Name, DesignRequest? Design, string? Miss) Reached(
        string name, double target, Func<Finishing.FinishedMass, double> figure, double tolerance, DesignRequest copy, DesignReport report, CancellationToken cancellation)
    {
        var form = report.Specification.Form;
        var (wood, finish) = (report.Specification.Wood, report.Specification.Finish);
        double At(double[] sizes)
        {
            var of = PaddleSizes.FromVector(sizes);
            var fine = PaddleSolid.Shape(form, of, form.Outline(of), StationGrid.Fine);
            return figure(Finishing.FinishedMass.Of(form.Places, MassProperties.Of(fine, wood.DensityKgM3), Finishing.FinishLoad.On(fine, finish)));
        }

        var start = VectorOf(copy);
        var (low, high) = (new double[start.Length], new double[start.Length]);
        for (var k = 0; k < start.Length; k++)
        {
            var carved = SizeLimits.Solver[k];
            (low[k], high[k]) = (Math.Min(carved.Min, start[k]), Math.Max(carved.Max, start[k]));
        }

        var sizes = (double[])start.Clone();
        for (var step = 0; step < Steps && Math.Abs(At(sizes) - target) > 0.01; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            var (gap, slope, square) = (target - At(sizes), new double[sizes.Length], 0.0);
            for (var k = 0; k < sizes.Length; k++)
            {
                const double Nudge = 0.05;
                var moved = (double[])sizes.Clone();
                moved[k] += Nudge;
                slope[k] = (At(moved) - (target - gap)) / Nudge;
                var isStuck = slope[k] * gap > 0 ? sizes[k] >= high[k] : sizes[k] <= low[k];
                if (isStuck) slope[k] = 0;
                square += Math.Pow(slope[k] * Breadth(k), 2);
            }

            if (square == 0) break;
            for (var k = 0; k < sizes.Length; k++) sizes[k] = Math.Clamp(sizes[k] + gap * slope[k] * Breadth(k) * Breadth(k) / square, low[k], high[k]);
            PaddleCopier.InOrder(sizes);
        }

        var reached = With(copy, sizes);
        var off = At(VectorOf(reached)) - target;
        return (name, reached, Math.Abs(off) <= tolerance ? null : " Sizes that makers carve reach no further.");
    }

    // The throat's is what makers let it thin, not how far throats differ: it carries the paddle.
    private static double Breadth(int size) =>
        size == PaddleSizes.Throat ? SizeLimits.MostThroatThinningMm : SizeLimits.Solver[size].Max - SizeLimits.Solver[size].Min;
}
