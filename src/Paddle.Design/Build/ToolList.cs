using System.Globalization;
using Paddle.Design.Finishing;
using Paddle.Design.Laminating;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>What to have at hand before the first cut, one line a kind of work. Common practice, no source.</summary>
internal static class ToolList
{
    /// <param name="glued">The glue-up; null of one piece.</param>
    internal static IReadOnlyList<string> For(BuildFacts facts, FinishPlan finish, IReadOnlyList<SandingStep> sanding, LaminateReport? glued)
    {
        var (units, choice) = (facts.Units, facts.Finish);
        var pots = string.Join(", ", ((string?[])
        [
            finish.VarnishLitres > 0 ? $"varnish {DrawnAmount.Volume(finish.BuyVarnishLitres, units)} and thinner {DrawnAmount.Volume(finish.ThinnerLitres, units)}, brush" : null,
            finish.OilLitres > 0 ? $"drying oil {DrawnAmount.Volume(finish.OilLitres, units)}, rags and a lidded metal can of water for them" : null,
            choice.TipReinforcement ? $"glass cloth {DrawnAmount.Cloth(facts.Tip.ClothGM2, units)}, epoxy {DrawnAmount.Mass(facts.Tip.ResinG, units)}, thick nitrile gloves" : null,
            finish.MaskingLineMm is null ? null : "masking tape",
        ]).OfType<string>());
        return
        [
            $"To mark and measure: {(units == DrawingUnits.Metric ? "steel rule and tape in millimetres" : "steel rule in 1/32 in and tape")}, caliper, square, pencil, half template, "
                + $"scale that reads {(units == DrawingUnits.Metric ? "1 g" : "a tenth of an ounce")}, thin edge to balance on",
            $"To saw: {(facts.Saw == OutlineSaw.Jigsaw ? "jigsaw with a long blade for thick wood" : "band saw or hand saw")}, fine back saw for the grip's kerf",
            .. glued is null
                ? (string[])[]
                : [string.Create(CultureInfo.InvariantCulture, $"To glue up: {glued.GlueLines.Clamps} clamps, battens and release film, {glued.Laminate.Adhesive.Name} {DrawnAmount.Mass(glued.GlueLines.GlueG, units)}, spreader, nitrile gloves")],
            "To hold: bench, vice with soft jaws, two clamps",
            $"To shape: block plane, spokeshave, cabinet scraper, chisel, half-round rasp, spar gauge with {facts.Gauge.Between(units)} between its fences; if you like, power plane and router",
            $"To sand: sanding block, {string.Join(", ", sanding.SelectMany(step => step.Grits).Distinct().Order().Select(grit => string.Create(CultureInfo.InvariantCulture, $"P{grit}")))}",
            pots.Length > 0 ? $"To finish: {pots}" : "To finish: nothing",
            "For yourself: eye and hearing protection, dust mask, first-aid kit",
        ];
    }
}
