/// <summary>Reads what is printed for an inch rule, as a maker would.</summary>
internal static class InchRule
{
    /// <summary>Millimetres of a figure such as <c>1 5/32</c>, of an inch of 25.4 mm.</summary>
    public static double Read(string figure)
    {
        var inches = 0.0;
        foreach (var part in figure.Split(' '))
        {
            var slash = part.Split('/').Select(int.Parse).ToArray();
            Assert.True(slash.Length == 1 || (slash[0] % 2 == 1 && slash[0] < slash[1]), $"{figure} is not reduced");
            inches += slash.Length == 1 ? slash[0] : slash[0] / (double)slash[1];
        }

        return inches * 25.4;
    }
}
