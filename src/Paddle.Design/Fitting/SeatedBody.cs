namespace Paddle.Design.Fitting;

/// <summary>Heights above the seat, mm, each with its standard error.</summary>
/// <param name="SittingHeightMm">Crown.</param>
/// <param name="EyeHeightMm">Eye.</param>
/// <param name="ShoulderHeightMm">Shoulder (acromion).</param>
/// <param name="SittingHeightErrorMm">Standard error of the crown's height.</param>
/// <param name="EyeHeightErrorMm">Standard error of the eye's height.</param>
/// <param name="ShoulderHeightErrorMm">Standard error of the shoulder's height.</param>
/// <param name="Source">Where the heights come from.</param>
internal sealed record SeatedBody(
    double SittingHeightMm,
    double EyeHeightMm,
    double ShoulderHeightMm,
    double SittingHeightErrorMm,
    double EyeHeightErrorMm,
    double ShoulderHeightErrorMm,
    string Source)
{
    /// <summary>Heights of a person: from the sitting height where measured (less the survey's mean distance of eye and shoulder below the
    /// crown), else from stature by the survey's pooled lines, else unknown.</summary>
    /// <returns>The heights, or null where neither sitting height nor stature is known.</returns>
    /// <remarks>Source: ANSUR II. With a measured sitting height the scatter of eye and shoulder is taken as that of the stature lines (assumption, an upper bound).</remarks>
    public static SeatedBody? Of(PaddlerMeasurements paddler)
    {
        var crown = Survey.PooledLine(Survey.SittingHeightLines);
        var eye = Survey.PooledLine(Survey.EyeHeightSittingLines);
        var shoulder = Survey.PooledLine(Survey.ShoulderHeightSittingLines);
        if (paddler.SittingHeightMm is { } measured)
        {
            var crownMean = Survey.PooledMean(Survey.SittingHeight);
            return new SeatedBody( // theory F26
                measured,
                measured - (crownMean - Survey.PooledMean(Survey.EyeHeightSitting)),
                measured - (crownMean - Survey.PooledMean(Survey.ShoulderHeightSitting)),
                MeasurementCatalogue.SittingHeight.TypicalError,
                eye.StandardErrorMm,
                shoulder.StandardErrorMm,
                "measured sitting height less the mean distances of " + Survey.Source);
        }

        return paddler.StatureMm is { } stature
            ? new SeatedBody(
                crown.At(stature), eye.At(stature), shoulder.At(stature),
                crown.StandardErrorMm, eye.StandardErrorMm, shoulder.StandardErrorMm,
                Survey.Source + ", lines from stature, both sexes")
            : null;
    }
}
