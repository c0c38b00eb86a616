namespace Paddle.Design.Tests.Validation;

/// <summary>
/// The engine against three-dimensional finite elements (FiniteElements.json; how they were made stands in its head). The bounds are what
/// a beam cannot show: the wings of a short, wide, thin blade lag behind its spine, and a bench load spread over the width bends them too.
/// </summary>
public class FiniteElementTests
{
    public static TheoryData<string> Names => [.. FiniteElementCase.All.Select(c => c.Name)];

    [Fact]
    public void The_table_covers_seven_families_and_hard_and_soft_woods()
    {
        var cases = FiniteElementCase.All;
        Assert.True(cases.Count >= 24);
        Assert.Equal(cases.Count, cases.Select(c => c.Name).Distinct().Count());
        Assert.Equal(7, cases.Select(c => c.Family).Distinct().Count(family => Paddle.Design.Outline.BladeFamilies.Find(family) is not null));
        foreach (var family in cases.GroupBy(c => c.Family)) Assert.True(family.Select(c => c.Species).Distinct().Count() >= 3, family.Key);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Mass_and_stiffness(string name)
    {
        var (theirs, ours) = Pair(name);
        AssertRatio(0.999, 1.001, ours.VolumeCm3 / theirs.VolumeCm3, "volume");
        Assert.Equal(theirs.CentreOfMassMm, ours.CentreOfMassMm, 0.3);
        AssertRatio(0.96, 1.01, ours.Flex.BenchFlexMm / theirs.BenchFlexMm, "bench flex");
        AssertRatio(0.975, 1.01, ours.Flex.TipDeflectionMm / theirs.TipDeflectionMm, "tip deflection");
        if (theirs.FlatwiseHz is { } hertz) AssertRatio(0.985, 1.02, ours.Flex.FirstFrequencyHz / hertz, "frequency");
    }

    // Never more than 5 % short of the elements: at no place that could decide, and not in the largest stress of all.
    [Theory]
    [MemberData(nameof(Names))]
    public void Stress_along_the_grain(string name)
    {
        var (theirs, ours) = Pair(name);
        AssertRatio(0.95, 1.15, ours.LargestMPa / theirs.LargestMPa, "largest stress");
        AssertRatio(0.95, double.MaxValue, ours.ShortestRatio, $"stress at {ours.ShortestAtMm} mm");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Stress_across_the_grain(string name)
    {
        var (theirs, ours) = Pair(name);
        AssertRatio(0.95, 1.9, ours.AcrossMPa / theirs.AcrossMPa, "stress across the grain");
    }

    private static (FiniteElementCase Theirs, OwnFigures Ours) Pair(string name)
    {
        var theirs = FiniteElementCase.All.Single(c => c.Name == name);
        return (theirs, theirs.Ours());
    }

    private static void AssertRatio(double least, double most, double ratio, string what) =>
        Assert.True(ratio >= least && ratio <= most, $"{what}: ours is {ratio:0.0000} of the elements', allowed {least} to {most}");
}
