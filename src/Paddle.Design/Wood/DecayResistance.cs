namespace Paddle.Design.Wood;

/// <summary>
/// How well heartwood resists decay. Source: US Navy manual MO-312 table 2-1 and a reprint of the Forest Products
/// Laboratory list. Sapwood of any species has none.
/// </summary>
internal enum DecayResistance
{
    /// <summary>Slightly resistant or not resistant: the finish, end grain first, is all that keeps rot out.</summary>
    SlightOrNone,
    /// <summary>Moderately resistant.</summary>
    Moderate,
    /// <summary>Resistant or very resistant.</summary>
    Resistant,
}
