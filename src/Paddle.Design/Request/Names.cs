using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Strength;
using Paddle.Design.Units;

namespace Paddle.Design.Request;

/// <summary>The contract's names for the values of an enumeration.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal sealed class NameTable<T>
    where T : struct, Enum
{
    private readonly (string Name, T Value)[] entries;

    /// <summary>Lists the names.</summary>
    public NameTable(params (string Name, T Value)[] entries) => this.entries = entries;

    /// <summary>The names in the order listed.</summary>
    public IEnumerable<string> Names => entries.Select(entry => entry.Name);

    /// <summary>The value of a name, or null when there is none of that name.</summary>
    public T? Find(string name)
    {
        foreach (var entry in entries)
        {
            if (entry.Name == name) return entry.Value;
        }

        return null;
    }

    public string NameOf(T value)
    {
        foreach (var entry in entries)
        {
            if (EqualityComparer<T>.Default.Equals(entry.Value, value)) return entry.Name;
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "Has no name in the contract.");
    }
}

/// <summary>How a paddle is put together.</summary>
internal enum ConstructionKind
{
    /// <summary>From one piece of wood.</summary>
    OnePiece,
    /// <summary>Glued up of strips side by side across the width.</summary>
    Laminated,
}

/// <summary>What is laid over the tip.</summary>
internal enum TipFacing
{
    /// <summary>Nothing.</summary>
    None,
    /// <summary>Glass cloth on both faces.</summary>
    GlassCloth,
}

/// <summary>All names that a design request may use.</summary>
internal static class Names
{
    public static NameTable<GripStyle> GripStyles { get; } = new(("pear", GripStyle.Pear), ("palm", GripStyle.Palm), ("t", GripStyle.T));

    public static NameTable<GripFaces> GripFaces { get; } =
        new(("matching", Paddle.Design.Outline.GripFaces.Matching), ("one-sided", Paddle.Design.Outline.GripFaces.OneSided));

    /// <summary>Places to balance at.</summary>
    public static NameTable<BalanceAim> BalanceAims { get; } =
        new(("lower-hand", BalanceAim.LowerHand), ("throat", BalanceAim.Throat));

    /// <summary>Ways of putting a paddle together.</summary>
    public static NameTable<ConstructionKind> Constructions { get; } = new(("one-piece", ConstructionKind.OnePiece), ("laminated", ConstructionKind.Laminated));
    public static NameTable<Duty> Duties { get; } = new([.. DutyRule.All.Select(rule => (rule.Id, rule.Duty))]);

    public static NameTable<SurfaceFinish> Finishes { get; } =
        new(("varnish", SurfaceFinish.Varnish), ("oil", SurfaceFinish.Oil), ("none", SurfaceFinish.None));

    /// <summary>Reinforcements of the tip.</summary>
    public static NameTable<TipFacing> TipFacings { get; } = new(("none", TipFacing.None), ("glass-cloth", TipFacing.GlassCloth));
    /// <summary>Saws for the outline.</summary>
    public static NameTable<OutlineSaw> Saws { get; } = new(("band-saw", OutlineSaw.BandSaw), ("jigsaw", OutlineSaw.Jigsaw));
    /// <summary>Systems of measure.</summary>
    public static NameTable<DrawingUnits> Units { get; } = new(("metric", DrawingUnits.Metric), ("inch", DrawingUnits.Inch));
}
