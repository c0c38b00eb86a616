namespace PaddleApi.Contracts.Numbers;

/// <summary>The units that names of members end in.</summary>
internal static class UnitNames
{
    // Longest suffix first: "KgM3" must not be taken for "M3".
    private static readonly (string Suffix, string Unit)[] Units =
    [
        ("KgM2", "kg·m²"), ("KgM3", "kg/m³"), ("Degrees", "°"), ("Percent", "%"), ("MPa", "MPa"), ("Cm2", "cm²"), ("Cm3", "cm³"), ("Mm", "mm"),
        ("Nm", "N·m"), ("Hz", "Hz"), ("Kg", "kg"), ("MS", "m/s"), ("G", "g"), ("N", "N"), ("J", "J"),
    ];

    /// <summary>The unit in a member's name, or null for a plain ratio or count.</summary>
    public static string? Of(string name) => Split(name).Unit;

    /// <summary>A member's name without its unit, and the unit; null for a plain ratio or count.</summary>
    public static (string Name, string? Unit) Split(string name)
    {
        foreach (var (suffix, unit) in Units)
        {
            // The letter before must be small or a digit, or "…PSIN" would be newtons; a name of one letter, such as X, may be either.
            var letters = name.Length - suffix.Length;
            if (name.EndsWith(suffix, StringComparison.Ordinal) && letters > 0 && (letters == 1 || !char.IsUpper(name[letters - 1])))
            {
                return (name[..^suffix.Length], unit);
            }
        }

        return (name, null);
    }
}
