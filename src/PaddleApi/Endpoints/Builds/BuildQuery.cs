using System.Globalization;
using System.Text.Json;
using Paddle.Design;
using Paddle.Design.Build;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Builds;

/// <summary>The query of a build sheet's address, read; its values are as yet anybody's.</summary>
/// <param name="Faults">What could not be read, by parameter.</param>
internal sealed record BuildQuery(BuildChoices Choices, BoardSizes Board, ServiceClimate Climate, IReadOnlyList<(string Place, Fault Fault)> Faults)
{
    /// <summary>Name of the parameter for the saw.</summary>
    internal const string Saw = "saw";

    /// <summary>
    /// The query that asks for the same, written in one way: what is the default anyway is left out. It is in links and in the tag, so that
    /// stating a default is no other sheet.
    /// </summary>
    internal QueryString Canonical => QueryString.Create(OfChoices().Concat(OfClimate()).Where(pair => pair.Value is not null));

    /// <summary>The same for the sheets to print, which have no climate.</summary>
    internal QueryString OfSheet => QueryString.Create(OfChoices().Where(pair => pair.Value is not null));

    /// <summary>Reads the query.</summary>
    /// <param name="query">The query; the endpoint has refused parameters that it does not know.</param>
    internal static BuildQuery Read(IQueryCollection query)
    {
        var values = new QueryValues(query);
        var choices = new BuildChoices
        {
            BoardThicknessMm = values.Number(Name(nameof(BuildChoices.BoardThicknessMm))),
            Saw = values.Choice<OutlineSaw>(Saw) is { } saw ? Names.Of(saw) : null,
        };
        var board = new BoardSizes
        {
            BoardLengthMm = values.Number(Name(nameof(BoardSizes.BoardLengthMm))),
            BoardWidthMm = values.Number(Name(nameof(BoardSizes.BoardWidthMm))),
        };
        var climate = new ServiceClimate
        {
            UsedMoisturePercent = values.Number(Name(nameof(ServiceClimate.UsedMoisturePercent))),
            TemperatureC = values.Number(Name(nameof(ServiceClimate.TemperatureC))),
            RelativeHumidityPercent = values.Number(Name(nameof(ServiceClimate.RelativeHumidityPercent))),
        };
        return new(choices, board, climate, values.Faults);
    }

    private IEnumerable<KeyValuePair<string, string?>> OfChoices()
    {
        var (asked, usual) = (BuildReading.Options(Choices), new BuildOptions());
        yield return Pair(nameof(BuildChoices.BoardThicknessMm), Text(Choices.BoardThicknessMm));
        yield return Pair(nameof(BoardSizes.BoardLengthMm), Text(Board.BoardLengthMm));
        yield return Pair(nameof(BoardSizes.BoardWidthMm), Text(Board.BoardWidthMm));
        yield return new(Saw, asked.Saw == usual.Saw ? null : Names.Of(asked.Saw));
    }

    private IEnumerable<KeyValuePair<string, string?>> OfClimate()
    {
        yield return Pair(nameof(ServiceClimate.UsedMoisturePercent), Text(Climate.UsedMoisturePercent));
        yield return Pair(nameof(ServiceClimate.TemperatureC), Text(Climate.TemperatureC));
        yield return Pair(nameof(ServiceClimate.RelativeHumidityPercent), Text(Climate.RelativeHumidityPercent));
    }

    private static KeyValuePair<string, string?> Pair(string member, string? value) => new(Name(member), value);

    private static string Name(string member) => JsonNamingPolicy.CamelCase.ConvertName(member);

    private static string? Text(double? value) => value?.ToString(CultureInfo.InvariantCulture);
}
