using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace PaddleApi.Tests.Fittings;

/// <summary>Sends a body and reads what comes back.</summary>
internal static class Asking
{
    public static async Task<(int Status, JsonElement Body)> PostAsync(this HttpClient client, string path, string body)
    {
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), new StringContent(body, Encoding.UTF8, "application/json"));
        return ((int)answer.StatusCode, await ReadAsync(answer));
    }

    public static async Task<HttpResponseMessage> PostForAsync(this HttpClient client, string path, string body, string accept)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        ask.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(accept));
        return await client.SendAsync(ask);
    }

    public static async Task<JsonElement> ReadAsync(HttpResponseMessage answer)
    {
        using var document = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        return document.RootElement.Clone();
    }

    /// <summary>The reason under a JSON Pointer of a problem; fails when there is none.</summary>
    public static JsonElement Fault(this JsonElement problem, string place)
    {
        Assert.True(problem.GetProperty("errors").TryGetProperty(place, out var faults), problem.GetRawText());
        return faults[0];
    }

    public static IEnumerable<string> Texts(this JsonElement list, string member) =>
        list.EnumerateArray().Select(item => item.GetProperty(member).GetString()!);

    public static double Number(this JsonElement root, params string[] members) =>
        members.Aggregate(root, (at, member) => at.GetProperty(member)).GetDouble();
}
