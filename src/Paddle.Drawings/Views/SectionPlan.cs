using Paddle.Design;
using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Drawings.Views;

/// <summary>A place where a template of the section helps.</summary>
internal sealed record SectionPlace(string Name, double XMm, bool IsShaft, Section Section);

/// <summary>Where sections are shown: at the sizes that fix the solid, and between them where the shape changes fast.</summary>
internal static class SectionPlan
{
    public static IReadOnlyList<SectionPlace> Of(DesignReport report)
    {
        var form = report.Specification.Form;
        var places = form.Places;
        var wanted = new List<(string Name, double X, bool Shaft)> { ("Grip at its crest", SolidLook.GripCrestMm(report), false) };
        if (form.Grip.HollowDepthMm > 0) wanted.Add(("Grip at its hollow", SolidLook.HollowMm(report), false));
        wanted.Add(("Shaft below the grip", places.GripEndMm, true));
        wanted.Add(("Shaft, half way", (places.GripEndMm + places.LowerHandMm) / 2, true));
        wanted.Add(("Lower hand to throat", places.LowerHandMm, true));
        foreach (var (name, at) in BladePlaces(form.Blade)) wanted.Add((name, places.ThroatMm + at * places.BladeMm, false));

        var ordered = wanted.OrderBy(place => place.X).ToArray();
        var solid = SolidLook.At(report, [.. ordered.Select(place => place.X)]);
        return [.. ordered.Select((place, i) => new SectionPlace(place.Name, place.X, place.Shaft, solid.Section(i)))];
    }

    private static IEnumerable<(string Name, double At)> BladePlaces(BladeShape blade)
    {
        yield return ("Blade below the throat", SpineProfile.Throat);
        yield return ("Blade, shoulder", 0.165);
        yield return ("Blade at a quarter", BladeBlend.ShoulderEnd);
        yield return ("Blade at half", SpineProfile.Middle);
        if (Math.Abs(blade.WidestAt - SpineProfile.Middle) > 0.04 && Math.Abs(blade.WidestAt - BladeBlend.ShoulderEnd) > 0.04)
            yield return ("Blade, widest", blade.WidestAt);
        yield return ("Blade at three quarters", 0.75);
        yield return ("Blade near the tip", SpineProfile.Tip);
    }
}
