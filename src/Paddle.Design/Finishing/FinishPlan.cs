using System.Text.Json.Serialization;
using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Finishing;

/// <summary>One coat.</summary>
/// <param name="Number">Number of the coat of its finish.</param>
/// <param name="Finish">Varnish or oil.</param>
/// <param name="Zone">Where it goes.</param>
/// <param name="ThinnerPercent">Thinner, percent of the coat's volume.</param>
/// <param name="Litres">Finish to pour for this coat with its loss, L.</param>
/// <param name="ThinnerLitres">Thinner for this coat, L.</param>
/// <param name="StartDay">Day on which it goes on, counted from the first coat.</param>
/// <param name="WaitDays">Days to wait after it.</param>
internal sealed record Coat(
    int Number, string Finish, string Zone, double ThinnerPercent, double Litres, [property: JsonIgnore] double ThinnerLitres, double StartDay, double WaitDays);

/// <summary>Varnish and oil, each where it is chosen: quantities, mass and schedule. Theory M12 and M13.</summary>
/// <param name="VarnishAreaM2">Varnished surface, m².</param>
/// <param name="OilAreaM2">Oiled surface, m².</param>
/// <param name="VarnishLitres">Varnish, L, never under 0.1.</param>
/// <param name="OilLitres">Oil, L.</param>
/// <param name="ThinnerLitres">Thinner with 0.25 L for the brushes, L.</param>
/// <param name="BuyVarnishLitres">Tin to buy, L.</param>
/// <param name="VarnishDryG">Dry varnish that stays on, g.</param>
/// <param name="OilDryG">Oil that stays in, g.</param>
/// <param name="MaskingLineMm">
/// Where the tape's edge lies, mm from the top of the grip: on the shaft, 25 mm above the throat; absent where no two finishes meet.
/// </param>
/// <param name="Coats">Every coat in order of time.</param>
/// <param name="ReadyDay">Day on which the paddle may be used, counted from the first coat.</param>
/// <param name="Notes">How to work, with sources.</param>
internal sealed record FinishPlan(
    [property: JsonIgnore] double VarnishAreaM2, [property: JsonIgnore] double OilAreaM2, double VarnishLitres, double OilLitres, double ThinnerLitres, double BuyVarnishLitres,
    double VarnishDryG, double OilDryG, double? MaskingLineMm, IReadOnlyList<Coat> Coats, double ReadyDay, IReadOnlyList<string> Notes)
{
    /// <summary>Varnished surface, cm².</summary>
    public double VarnishAreaCm2 => 1e4 * VarnishAreaM2;
    /// <summary>Oiled surface, cm².</summary>
    public double OilAreaCm2 => 1e4 * OilAreaM2;

    /// <summary>Area that a litre of varnish covers, m². Common practice within makers' sheets of 9.8-24.5; take it as ± 30 %.</summary>
    public const double VarnishM2PerLitre = 12;
    /// <summary>The same for the first coat, which soaks in.</summary>
    public const double FirstVarnishM2PerLitre = 10;
    /// <summary>The same for oil: 400 square feet a US gallon, a maker's sheet, read.</summary>
    public const double OilM2PerLitre = 9.8;
    /// <summary>Loss in brush and cup, as a share of what stays on. Common practice, no source.</summary>
    public const double Loss = 0.25;
    /// <summary>How far coverage may be off either way, as a share: makers' sheets differ by 2.5 to 1.</summary>
    public const double CoverageVariation = 0.3;
    /// <summary>Dry film of one coat, mm: 25-37 µm on a maker's sheet for the coverage above, its thick end taken.</summary>
    public const double DryFilmMm = 0.0375;
    /// <summary>Density of dry varnish, kg/m³. Common practice, no source.</summary>
    public const double DryVarnishKgM3 = 1100;
    /// <summary>Share of the film sanded off between coats: common practice, 10-20 %, no source.</summary>
    public const double SandedOff = 1.0 / 6;
    /// <summary>Oil that stays in the wood, g per m² and coat: 10-20 g on 0.107 m² in three coats, common practice, no source.</summary>
    public const double OilGPerM2Coat = 15 / 0.107 / 3;
    private const double MaskingUpShaftMm = 25;

    // A boat-owners' association's schedule thins the first three coats so; the waits are its own, shortened (common practice).
    private static readonly double[] Thinner = [50, 20, 10];

    /// <summary>The plan of a paddle.</summary>
    public static FinishPlan For(MassProperties mass, double throatMm, FinishChoice choice, DrawingUnits units = DrawingUnits.Metric)
    {
        Surface[] surfaces =
        [
            new("blade", mass.BladeSurfaceCm2 * 1e-4, choice.Blade, choice.BladeCoats),
            new("shaft and grip", (mass.ShaftSurfaceCm2 + mass.GripSurfaceCm2) * 1e-4, choice.Shaft, choice.ShaftCoats),
        ];
        double Sum(SurfaceFinish finish, Func<Surface, double> of) => surfaces.Where(s => s.Finish == finish && s.Coats > 0).Sum(of);
        var coats = AllCoats(surfaces);
        var varnish = Sum(SurfaceFinish.Varnish, s => VarnishLitresFor(s.AreaM2, s.Coats));
        if (varnish > 0) varnish = Math.Max(0.1, varnish);
        return new(
            Sum(SurfaceFinish.Varnish, s => s.AreaM2),
            Sum(SurfaceFinish.Oil, s => s.AreaM2),
            varnish,
            Sum(SurfaceFinish.Oil, s => OilLitresFor(s.AreaM2, s.Coats)),
            varnish > 0 ? coats.Sum(coat => coat.ThinnerLitres) + 0.25 : 0,
            varnish > 0.25 ? Math.Ceiling(2 * varnish) / 2 : varnish > 0 ? 0.25 : 0,
            Sum(SurfaceFinish.Varnish, s => DryVarnishG(s.AreaM2, s.Coats)),
            Sum(SurfaceFinish.Oil, s => OilGPerM2Coat * s.AreaM2 * s.Coats),
            choice.Meet ? throatMm - MaskingUpShaftMm : null,
            coats,
            coats.Select(coat => coat.StartDay + coat.WaitDays).DefaultIfEmpty().Max(),
            Advice(choice, units));
    }

    /// <summary>Varnish with its loss, L: <c>(A/10 + A (n - 1)/12)(1 + loss)</c>. Theory M12.</summary>
    /// <param name="areaM2">A, m².</param>
    /// <param name="coats">n.</param>
    public static double VarnishLitresFor(double areaM2, int coats) =>
        (areaM2 / FirstVarnishM2PerLitre + areaM2 * (coats - 1) / VarnishM2PerLitre) * (1 + Loss); // theory M12

    /// <summary>Oil with its loss, L: <c>A n/9.8 (1 + loss)</c>. Theory M12.</summary>
    /// <param name="areaM2">A, m².</param>
    /// <param name="coats">n.</param>
    public static double OilLitresFor(double areaM2, int coats) => areaM2 * coats / OilM2PerLitre * (1 + Loss); // theory M12

    /// <summary>Dry varnish that stays on, g: <c>A n film density (1 - sanded off)</c>. Theory M13.</summary>
    /// <param name="areaM2">A, m².</param>
    /// <param name="coats">n.</param>
    public static double DryVarnishG(double areaM2, int coats) =>
        areaM2 * coats * DryFilmMm * DryVarnishKgM3 * (1 - SandedOff); // theory M13: m² · mm · kg/m³ = g

    private sealed record Surface(string Zone, double AreaM2, SurfaceFinish Finish, int Coats);

    // Oil under varnish stops it bonding: what is oiled waits until the last coat of varnish no longer takes a finger's mark. Surfaces
    // of the same finish are coated on the same days.
    private static List<Coat> AllCoats(IReadOnlyList<Surface> surfaces)
    {
        const double HardenDays = 7;
        var coats = new List<Coat>();
        var day = 0.0;
        foreach (var finish in (SurfaceFinish[])[SurfaceFinish.Varnish, SurfaceFinish.Oil])
        {
            Surface[] coated = [.. surfaces.Where(surface => surface.Finish == finish && surface.Coats > 0)];
            var most = coated.Select(surface => surface.Coats).DefaultIfEmpty().Max();
            for (var k = 1; k <= most; k++)
            {
                var wait = 0.0;
                foreach (var surface in coated.Where(surface => surface.Coats >= k))
                {
                    var coat = finish == SurfaceFinish.Varnish ? Varnished(surface, k, day) : Oiled(surface, k, day);
                    coats.Add(k == surface.Coats ? coat with { WaitDays = HardenDays } : coat);
                    wait = coat.WaitDays;
                }

                day += wait;
            }
        }

        return coats;
    }

    private static Coat Varnished(Surface surface, int number, double day)
    {
        var thinner = number <= Thinner.Length ? Thinner[number - 1] : 0;
        var litres = surface.AreaM2 / (number == 1 ? FirstVarnishM2PerLitre : VarnishM2PerLitre) * (1 + Loss);
        return new(number, "spar varnish", surface.Zone, thinner, litres, litres * thinner / 100, day, number <= 3 ? 1 : 2);
    }

    private static Coat Oiled(Surface surface, int number, double day) =>
        new(number, "drying oil", surface.Zone, 0, surface.AreaM2 / OilM2PerLitre * (1 + Loss), 0, day, 1);

    private static string[] Advice(FinishChoice choice, DrawingUnits units)
    {
        SurfaceFinish blade = FinishChoice.On(choice.Blade, choice.BladeCoats), shaft = FinishChoice.On(choice.Shaft, choice.ShaftCoats);
        bool varnish = blade == SurfaceFinish.Varnish || shaft == SurfaceFinish.Varnish, oil = blade == SurfaceFinish.Oil || shaft == SurfaceFinish.Oil;
        if (!varnish && !oil)
            return ["Bare wood takes up water: it swells, grows heavier and greys; a worn finish is better than none (common practice, no source)."];
        var notes = new List<string>
        {
            $"Work at {DrawnAmount.Temperatures(15, 25, units)} and at most 65 % humidity, one thin coat a day at most (finish makers' sheets, read).",
        };
        if (varnish && oil)
        {
            notes.Add(
                $"Tape right round the shaft at the masking line; varnish the {(blade == SurfaceFinish.Varnish ? "blade" : "shaft")} first and oil the "
                + $"{(blade == SurfaceFinish.Varnish ? "shaft" : "blade")} after it, so that no oil gets under the varnish (common practice, no source).");
        }
        else if (choice.Meet) notes.Add("Tape right round the shaft at the masking line (common practice, no source).");

        if (oil) notes.Add("Wipe the oil dry after a quarter of an hour: what stays on top stays sticky (common practice, no source).");
        notes.Add(
            "Three coats of spar varnish kept out about 30 % of the moisture that bare wood takes up in 14 days at 90 % humidity, linseed "
            + "oil none and tung oil 2 %: oil is for the hand, not against water (Forest Products Laboratory RP-462, 1985, quoted).");
        notes.Add($"Coverage on makers' sheets differs by 2.5 to 1: take the {(units == DrawingUnits.Metric ? "millilitres" : "ounces")} as plus or minus {100 * CoverageVariation:0} %.");
        return [.. notes];
    }
}
