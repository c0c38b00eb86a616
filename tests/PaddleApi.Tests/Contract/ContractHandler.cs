using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Xunit.Sdk;

namespace PaddleApi.Tests.Contract;

/// <summary>Holds every answer that any test receives against the description, and notes that it was seen.</summary>
public sealed class ContractHandler(Func<ApiDescription> description) : DelegatingHandler
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var response = await base.SendAsync(request, cancellationToken);
        var path = request.RequestUri!.AbsolutePath;
        if (!path.StartsWith("/openapi/", StringComparison.Ordinal) && !path.StartsWith("/docs", StringComparison.Ordinal))
        {
            await response.Content.LoadIntoBufferAsync(cancellationToken);
            await CheckAsync(request, response, path, cancellationToken);
        }

        return response;
    }

    private async Task CheckAsync(HttpRequestMessage request, HttpResponseMessage response, string path, CancellationToken cancellation)
    {
        var status = (int)response.StatusCode;
        var where = $"{request.Method} {path} -> {status}";
        var (operation, pathIsKnown) = description().Match(request.Method.Method, path);
        Require(response.Headers.Contains("X-Request-Id"), $"{where}: no X-Request-Id");
        if (operation is null)
        {
            Require(status == (pathIsKnown ? 405 : 404), $"{where}: an address outside the description answers 404, and a method outside it 405");
            Require(MediaTypeOf(response) == "application/problem+json" || request.Method == HttpMethod.Head, $"{where}: the refusal is no problem+json");
            return;
        }

        var key = status.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var documented = operation.Responses[key] ?? (status >= 500 ? operation.Responses["default"] : null);
        Require(documented is not null, $"{where}: this status is not documented for {operation.Id}");
        RequireHeaders(documented!, response, where);
        if (request.Method != HttpMethod.Head)
        {
            await RequireBodyAsync(documented!, response, where, cancellation);
        }

        Coverage.Saw(operation, key);
    }

    private static void RequireHeaders(JsonNode documented, HttpResponseMessage response, string where)
    {
        foreach (var header in documented["headers"]?.AsObject() ?? [])
        {
            // The validating collections refuse to be asked for a header that belongs to the other one.
            var present = response.Headers.NonValidated.Contains(header.Key) || response.Content.Headers.NonValidated.Contains(header.Key);
            Require(present || header.Value!["required"]?.GetValue<bool>() != true, $"{where}: the documented header {header.Key} is missing");
        }
    }

    private async Task RequireBodyAsync(JsonNode documented, HttpResponseMessage response, string where, CancellationToken cancellation)
    {
        var bytes = await response.Content.ReadAsByteArrayAsync(cancellation);
        var content = documented["content"]?.AsObject();
        if (content is null || content.Count == 0)
        {
            Require(bytes.Length == 0, $"{where}: a body where none is documented");
            return;
        }

        var mediaType = MediaTypeOf(response);
        Require(mediaType is not null && content.ContainsKey(mediaType), $"{where}: the media type {mediaType} is not documented");
        Require(bytes.Length > 0, $"{where}: no body where {mediaType} is documented");
        if (response.Content.Headers.ContentEncoding.Count > 0 || response.StatusCode == HttpStatusCode.PartialContent)
        {
            return;
        }

        var form = FileForms.Fault(mediaType!, bytes);
        Require(form is null, $"{where}: the body is no {mediaType}: {form}");
        if (mediaType!.EndsWith("json", StringComparison.Ordinal) && mediaType != "application/x-ndjson")
        {
            using var body = JsonDocument.Parse(bytes);
            var faults = description().Faults(content[mediaType]!["schema"]!, body.RootElement);
            Require(faults.Length == 0, $"{where}: the body does not fit its schema: {faults}");
            if (mediaType == "application/problem+json") RequireCodes(body.RootElement, where);
        }
    }

    // A program goes by the code of a refusal; the words may change.
    private static void RequireCodes(JsonElement problem, string where)
    {
        if (!problem.TryGetProperty("errors", out var errors)) return;
        foreach (var place in errors.EnumerateObject())
        {
            foreach (var fault in place.Value.EnumerateArray())
                Require(fault.TryGetProperty("code", out var code) && code.GetString()!.Length > 0, $"{where}: a fault at {place.Name} has no code: {fault}");
        }
    }

    private static string? MediaTypeOf(HttpResponseMessage response) => response.Content.Headers.ContentType?.MediaType;

    private static void Require(bool holds, string fault)
    {
        if (!holds)
        {
            throw new XunitException(fault);
        }
    }
}
