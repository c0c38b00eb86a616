namespace Paddle.Design.Balance;

/// <summary>Which aim a limit belongs to; aims that clash give way in the reverse of this order.</summary>
internal enum LimitGroup
{
    /// <summary>The paddle thins from the lower hand to the tip and to the grip. The sizes' own limits always leave room for it.</summary>
    Thinning,
    /// <summary>Safety factors.</summary>
    Strength,
    /// <summary>What hands and eyes expect of the shape.</summary>
    Comfort,
    /// <summary>Balance within its tolerance.</summary>
    Balance,
    /// <summary>Bench flex within the asked range.</summary>
    Flex,
}

/// <summary>One limit of the design problem: a row that must not turn negative.</summary>
/// <param name="Id">Name to print.</param>
/// <param name="Group">The aim it belongs to.</param>
/// <param name="Unit">Unit in which it is loosened.</param>
/// <param name="RowPerUnit">How much the row gains when the limit is loosened by one unit.</param>
internal readonly record struct Limit(string Id, LimitGroup Group, string Unit, double RowPerUnit);
