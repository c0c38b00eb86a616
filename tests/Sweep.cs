/// <summary>
/// How far a test that tries many cases goes. Every build tries enough to catch what breaks; CI tries them all besides:
/// <c>SWEEP=full dotnet test --filter Sweep=full</c>.
/// </summary>
internal static class Sweep
{
    /// <summary>The trait of such tests: <c>[Trait(Sweep.Name, Sweep.Full)]</c>.</summary>
    public const string Name = "Sweep", Full = "full";

    private static readonly bool IsFull = Environment.GetEnvironmentVariable("SWEEP") == Full;

    /// <summary>Few as a rule, all in a full sweep.</summary>
    public static T Of<T>(T few, T all) => IsFull ? all : few;
}
