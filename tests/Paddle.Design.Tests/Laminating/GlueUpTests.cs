using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;
using static Paddle.Design.Tests.Laminating.LaminatedDesignTests;

namespace Paddle.Design.Tests.Laminating;

public class GlueUpTests
{
    // Strip list by hand (allowances: common practice, no source): 25 mm of trim at each end, 1 mm planed off each edge and face, 3 mm of kerf; as thick as
    // the thickest column of wood that stands within the strip.
    [Theory]
    [InlineData(36, 60)]
    [InlineData(70, 40)]
    public void A_strip_is_sawn_with_trim_planing_and_kerf(double middleMm, double wingMm)
    {
        var report = Report(Strips(true, ("white-ash", middleMm), ("western-redcedar", wingMm)));
        var stations = report.Stations;
        foreach (var strip in report.Laminate!.GlueLines.Strips)
        {
            var inner = strip.Part == "whole" ? 0 : middleMm / 2;
            var thickest = Enumerable.Range(0, stations.Count).Where(i => stations.X[i] >= strip.FromMm && stations.X[i] <= strip.ToMm && stations.HalfWidth[i] > inner)
                .Max(i => 2 * stations.Section(i).HalfThicknessAtMm(inner / stations.HalfWidth[i]));
            Assert.Equal(strip.WidthMm + 2, strip.CutWidthMm, 9);
            Assert.Equal(strip.WidthMm + 5, strip.BoardWidthMm, 9);
            Assert.InRange(strip.LengthMm - (strip.ToMm - strip.FromMm + 50), 0, 1);
            Assert.Equal(strip.LengthMm, Math.Round(strip.LengthMm));
            Assert.InRange(strip.ThicknessMm - (thickest + 2), -1e-9, 0.1 + 1e-9);
            Assert.Equal(strip.ThicknessMm * 10, Math.Round(strip.ThicknessMm * 10), 6);
        }
    }

    // Pressure of a clamp spreads under 45 degrees from each (common practice, no source): twice the narrowest strip, by fives from 75 to 150 mm apart.
    [Theory]
    [InlineData(36, 60, 120)]
    [InlineData(70, 38, 75)]
    [InlineData(70, 43, 85)]
    [InlineData(70, 90, 150)]
    public void Clamps_stand_twice_the_narrowest_strip_apart_and_press_what_lies_between(double middleMm, double wingMm, double spacingMm)
    {
        var up = Report(Strips(true, ("white-ash", middleMm), ("western-redcedar", wingMm))).Laminate!.GlueLines;
        Assert.Equal(spacingMm, up.ClampSpacingMm);
        StripToCut[] outer = [.. up.Strips.Where(strip => strip.Part != "whole")];
        Assert.Equal(1 + Math.Ceiling(outer.Max(strip => strip.LengthMm) / spacingMm), up.Clamps);
        TestPaddles.AssertRelative(Adhesive.All[0].ClampLeastMPa * spacingMm * outer.Max(strip => strip.ThicknessMm), up.ClampForceN, 0.01);
        TestPaddles.AssertRelative(outer.Sum(strip => strip.Count * strip.LengthMm * strip.ThicknessMm) / 100, up.AreaCm2, 0.01);
    }

    // The worst of all lines, cases and places, looked for again one by one in a paddle whose sides differ.
    [Fact]
    public void The_worst_place_of_all_lines_is_told()
    {
        var laminate = Strips(false, ("western-redcedar", 60), ("white-ash", 36), ("white-ash", 60));
        var report = Report(laminate);
        var (stations, pressure) = (report.Stations, BladePressure.On(report.Stations));
        var all = new List<(double Margin, double Factor, string Case, double AtMm, double LineMm)>();
        foreach (var loadCase in report.Specification.Loads.AlongTheGrain)
        {
            var moments = new double[stations.Count];
            BendingMoments.Fill(stations, pressure, loadCase, report.Strength.BucklingLoadN, moments);
            foreach (var (line, weaker) in laminate.LinesMm.Zip(laminate.Across.Zip(laminate.Across.Skip(1), (a, b) => JointStrength.Between(a.Wood, b.Wood))))
            {
                var profile = GlueLineShear.Profile(stations, pressure, loadCase, moments, line);
                for (var i = 0; i < profile.Length; i++)
                {
                    var used = Math.Sqrt(Math.Pow(profile[i].AlongMPa / weaker.LengthwiseMPa, 2) + Math.Pow(profile[i].AcrossMPa / weaker.RollingMPa, 2)) / loadCase.StrengthShare;
                    all.Add((1 / used / loadCase.LeastFactor, 1 / used, loadCase.Id, stations.X[i], line));
                }
            }
        }

        var (margin, factor, id, at, lineMm) = all.MinBy(one => one.Margin);
        var told = report.Laminate!.Shear!;
        TestPaddles.AssertRelative(margin, told.Margin, 1e-9);
        TestPaddles.AssertRelative(factor, told.SafetyFactor, 1e-9);
        Assert.Equal((id, at, lineMm, Math.Abs(lineMm)), (told.Case, told.AtMm, told.LineMm, told.FromCentreMm));
    }

    // White ash shears at 13.2 MPa at 12 % (Wood Handbook, table 5-3a), of which the 5th percentile is 1 - 1.645 · 14 % (table 5-6); 3 % for each percent of
    // moisture, drier stronger (ANC-18, from memory).
    [Fact]
    public void Drier_wood_beside_a_line_is_stronger()
    {
        JointStrength At(double moisture) => JointStrength.Between(TestPaddles.Wood("white-ash", moisture), TestPaddles.Wood("white-ash", moisture));
        TestPaddles.AssertRelative(13.2 * (1 - 1.645 * 0.14), At(12).LengthwiseMPa, 1e-3);
        TestPaddles.AssertRelative(Math.Pow(1.03, 8), At(8).LengthwiseMPa / At(16).LengthwiseMPa, 1e-6);
        Assert.Equal(2 * TestPaddles.Wood("white-ash", 8).CrossGrainStrengthMPa, At(8).RollingMPa, 9);
    }

    // Quadrature apart from the engine's: columns of the widest section, each with its own wood's modulus.
    [Fact]
    public void Sides_differ_by_what_their_columns_do()
    {
        Assert.Equal(0, Report(Strips(true, ("white-ash", 36), ("western-redcedar", 60))).Laminate!.SidesDifferPercent, 1e-9);

        var report = Report(Strips(false, ("western-redcedar", 60), ("white-ash", 36), ("white-ash", 60)));
        var stations = report.Stations;
        var section = stations.Section(Array.IndexOf(stations.HalfWidth, stations.HalfWidth.Max()));
        double ash = TestPaddles.Ash.ModulusMPa, cedar = TestPaddles.Wood("western-redcedar").ModulusMPa, left = 0, right = 0;
        const int Columns = 40000;
        for (var k = 0; k < Columns; k++)
        {
            var u = (k + 0.5) / Columns;
            var cube = Math.Pow(section.HalfThicknessAtMm(u), 3);
            left += cube * (u * section.HalfWidthMm > 18 ? cedar : ash);
            right += cube * ash;
        }

        TestPaddles.AssertRelative(100 * (right - left) / (right + left), report.Laminate!.SidesDifferPercent, 1e-4);
    }

    [Fact]
    public void The_worst_neighbours_are_found_wherever_they_lie()
    {
        foreach (var strips in (string[][])[["white-ash", "white-ash", "western-redcedar"], ["western-redcedar", "white-ash", "white-ash"]])
        {
            var worst = SwellingMismatch.Of(Strips(false, [.. strips.Select(wood => (wood, 40.0))]));
            Assert.Equal(["western-redcedar", "white-ash"], new[] { worst.Species, worst.OtherSpecies }.Order());
            Assert.True(worst.StressMPa > 0);
        }
    }

    // Hand formula: a thin sheet is stretched by all that the strip beneath swells more, at its own modulus across the grain; maple 9.9 % and redcedar
    // 5.0 % from green to ovendry (Wood Handbook table 4-3), from 12 to 16 % 4/(3000/9.9 - 18) and 4/(3000/5.0 - 18).
    [Fact]
    public void Formula_a_sheet_follows_the_strip_beneath_it()
    {
        var (maple, cedar) = (TestPaddles.Wood("sugar-maple"), TestPaddles.Wood("western-redcedar"));
        var pair = SwellingMismatch.OnFace(cedar, maple);
        var strain = 4 / (3000 / 9.9 - 18) - 4 / (3000 / 5.0 - 18);
        TestPaddles.AssertRelative(100 * strain, pair.StrainPercent, 0.005);
        TestPaddles.AssertRelative(strain * Laminate.AcrossMPa(maple), pair.StressMPa, 0.005);
        foreach (var one in (SwellingMismatch[])[pair, SwellingMismatch.Between(cedar, maple), SwellingMismatch.Between(maple, cedar)])
        {
            Assert.Equal(Math.Min(maple.CrossGrainStrengthMPa, cedar.CrossGrainStrengthMPa), one.StrengthMPa, 12);

            // Half of the stress creeps away (common practice, no source): from half of the strength on the maker is warned.
            Assert.False((one with { StressMPa = 0.49 * one.StrengthMPa }).IsRisky);
            Assert.True((one with { StressMPa = 0.51 * one.StrengthMPa }).IsRisky);
        }

        Assert.Equal(6.0 / 1.5, new PartStress("hard-stroke", 1200, 10, 60, 1.5).Margin, 12);
    }

    // A sheet strained with the strip beneath it bears its modulus's share of the strip's stress (mechanics of composite beams): it is as near to its own
    // strength as the ratios say, along the grain and across it; across it a softer sheet is asked no less than the strip.
    [Theory]
    [InlineData("sugar-maple", "sitka-spruce")]
    [InlineData("western-redcedar", "white-ash")]
    public void Ratios_of_a_sheet_are_those_of_its_wood(string sheet, string strip)
    {
        var (face, wood) = (TestPaddles.Wood(sheet), TestPaddles.Wood(strip));
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var laid = (Strips(true, (strip, 36), (strip, 60)) with { Facing = new(face, 0.8), TipPiece = new(face, 30) }).Layup(wood, form.Places);
        var ratios = laid.At(form.Places.OverallMm - 100).Sheet!.Value;
        Assert.Equal(face.BendingStrengthMPa, ratios.StrengthRatio * wood.BendingStrengthMPa, 9);
        Assert.Equal(face.ModulusMPa, ratios.ModulusRatio * wood.ModulusMPa, 6);
        Assert.Equal(face.ShearModulusMPa, ratios.ShearRatio * wood.ShearModulusMPa, 6);
        var stiffer = Laminate.AcrossMPa(face) / Laminate.AcrossMPa(wood);
        Assert.Equal(face.CrossGrainStrengthMPa, ratios.CrossStrengthRatio * wood.CrossGrainStrengthMPa * (stiffer > 1 ? stiffer : 1), 9);

        // The piece across the tip, its grain turned: along the paddle it is as stiff as its wood across the grain, and across the blade as along it.
        var tip = Assert.Single(laid.At(form.Places.OverallMm - 10).Strips);
        Assert.Equal(face.DensityKgM3, tip.MassRatio * wood.DensityKgM3, 6);
        Assert.Equal(Laminate.AcrossMPa(face), tip.ModulusRatio * wood.ModulusMPa, 6);
        Assert.Equal(face.ModulusMPa, tip.CrossModulusRatio * Laminate.AcrossMPa(wood), 6);
        Assert.Equal(face.ShearModulusMPa, tip.ShearRatio * wood.ShearModulusMPa, 6);
        Assert.Equal(face.BendingStrengthMPa, tip.CrossStrengthRatio * wood.CrossGrainStrengthMPa, 6);
    }

    [Fact]
    public void Ratios_of_a_wing_are_those_of_its_wood()
    {
        var (cedar, ash) = (TestPaddles.Wood("western-redcedar"), TestPaddles.Ash);
        var wing = CedarWings.Layup(ash).Strips[0];
        Assert.Equal(cedar.DensityKgM3, wing.MassRatio * ash.DensityKgM3, 6);
        Assert.Equal(cedar.ModulusMPa, wing.ModulusRatio * ash.ModulusMPa, 6);
        Assert.Equal(cedar.ShearModulusMPa, wing.ShearRatio * ash.ShearModulusMPa, 6);
        Assert.Equal(cedar.BendingStrengthMPa, wing.StrengthRatio * ash.BendingStrengthMPa, 6);
        Assert.Equal(cedar.CrossGrainStrengthMPa, wing.CrossStrengthRatio * ash.CrossGrainStrengthMPa, 6);
        Assert.Equal(Laminate.AcrossMPa(cedar), wing.CrossModulusRatio * Laminate.AcrossMPa(ash), 6);
    }

    // Property: bent by the most that is allowed, the part that governs bears just its own strength; sheet, middle and wing govern in turn.
    [Theory]
    [InlineData(1.4, 0.6)]
    [InlineData(3, 1.5)]
    [InlineData(0.5, 2)]
    public void Property_the_most_bending_brings_what_governs_to_its_strength(double sheetModulus, double sheetStrength)
    {
        var section = new Section(66, 9, 2.5, SectionMoments.For(1.2, 0.9));
        foreach (var wing in (double[])[0.3, 1, 2.5])
        {
            var layup = new StripLayup([new(-1000, -18, 0.6, wing, 0.5, 0.8, 1, 1), new(-18, 18, 1, 1, 1, 1, 1, 1), new(18, 1000, 0.6, wing, 0.5, 0.8, 1, 1)])
            {
                Sheet = new(0.8, 1.2, sheetModulus, 1, sheetStrength, 1),
            };
            var most = layup.MostBendingMPa(section, 40, 3);
            var (stress, ratio, _) = layup.Governing(section, most, 3);
            Assert.Equal(40, stress / ratio, 9);
        }
    }

    // Calculus: a cut that deepens evenly, 1 mm in 100 mm of spine, slopes each face by half of that more.
    [Fact]
    public void A_deepening_cut_slopes_the_faces()
    {
        var stations = Report(null).Stations;
        double[] removed = [.. stations.X.Select(x => 0.01 * Math.Max(0, x - 1000))];
        var thinned = stations.Thinned(removed);
        for (var i = 1; i < stations.Count - 1; i++)
            if (stations.X[i - 1] > 1000 && stations.X[i + 1] > stations.X[i - 1]) Assert.Equal(0.005, thinned.FaceSlope[i] - stations.FaceSlope[i], 9);
            else if (stations.X[i + 1] < 1000) Assert.Equal(stations.FaceSlope[i], thinned.FaceSlope[i], 12);
    }

    // Sheets on both faces from a quarter of the blade to the tip, by thin strips of the drawn half-breadths; they take glue as the joints do, a fifth of it
    // left in the pot (common practice, no source).
    [Fact]
    public void Sheets_cover_both_faces_and_take_their_glue()
    {
        var plain = Report(CedarWings).Laminate!;
        var report = Report(CedarWings with { Facing = new(TestPaddles.Wood("sugar-maple"), 0.8) });
        var (places, facing) = (report.Specification.Form.Places, report.Laminate!.Facing!);
        double from = places.ThroatMm + places.BladeMm / 4, step = (places.OverallMm - from) / 20000, face = 0, widest = 0;
        for (var x = from + step / 2; x < places.OverallMm; x += step)
        {
            face += 2 * report.Outline.HalfBreadthMm(x) * step;
            widest = Math.Max(widest, 2 * report.Outline.HalfBreadthMm(x));
        }

        TestPaddles.AssertRelative(2 * face / 100, facing.AreaCm2, 0.005);
        TestPaddles.AssertRelative(widest, facing.WidthMm, 0.002);
        Assert.Equal((from, places.OverallMm - from), (facing.FromMm, facing.LengthMm));
        var up = report.Laminate.GlueLines;
        TestPaddles.AssertRelative(plain.GlueLines.AreaCm2, up.AreaCm2, 1e-9);
        TestPaddles.AssertRelative(1.2 * (up.AreaCm2 + 2 * face / 100) * 1e-4 * Adhesive.All[0].SpreadGM2, up.GlueG, 0.004);
        foreach (var part in (PartStress[])[facing.Sheet, facing.Core, facing.Shear])
        {
            Assert.True(part.StressMPa > 0 && part.AtMm < places.OverallMm, part.ToString());
            TestPaddles.AssertRelative(part.StrengthMPa / part.StressMPa, part.SafetyFactor, 1e-9);
        }
    }

    // The piece across the tip is sawn along its grain: as long as the blade is wide there with 25 mm at each end, as wide as it reaches up the blade.
    [Fact]
    public void A_tip_piece_is_sawn_across()
    {
        var report = Report(CedarWings with { TipPiece = new(TestPaddles.Wood("sugar-maple"), 40) });
        var (stations, overall) = (report.Stations, report.Specification.Form.Places.OverallMm);
        int[] places = [.. Enumerable.Range(0, stations.Count).Where(i => stations.X[i] >= overall - 40)];
        var tip = report.Laminate!.GlueLines.Strips[^1];
        Assert.Equal(("sugar-maple", 1, "tip", 40.0, 42.0, 45.0), (tip.Species, tip.Count, tip.Part, tip.WidthMm, tip.CutWidthMm, tip.BoardWidthMm));
        Assert.InRange(tip.LengthMm - (2 * places.Max(i => stations.HalfWidth[i]) + 50), -1e-9, 1);
        Assert.InRange(tip.ThicknessMm - (2 * places.Max(i => stations.HalfThickness[i]) + 2), -1e-9, 0.1 + 1e-9);
        Assert.Equal((overall - 40, overall), (tip.FromMm, tip.ToMm));
    }

    private static DesignReport Report(Laminate? laminate) => PaddleDesigner.Design(Asked(laminate, TestPaddles.UsualSizes));
}
