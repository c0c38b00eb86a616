namespace Paddle.Design.Wood;

/// <summary>How well a wood serves for a canoe paddle: a judgement, not a measurement; the reason stands beside it.</summary>
internal enum Suitability
{
    /// <summary>A good paddle wood on every count that matters.</summary>
    Recommended,
    /// <summary>Makes a sound paddle if its stated weakness is respected.</summary>
    Usable,
    /// <summary>Possible, but something about it needs a second thought first.</summary>
    Caution,
}
