using System.Reflection;
using System.Text.Json;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Hosting.Describing;

/// <summary>What an endpoint tells its readers beside what its types say already.</summary>
public static class Documented
{
    /// <summary>Names and describes an endpoint.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="operationId">Its name in generated clients, camelCase, such as <c>listWoods</c>.</param>
    /// <param name="summary">One line.</param>
    /// <param name="description">What it does, in plain words.</param>
    /// <returns>The same endpoint.</returns>
    public static RouteHandlerBuilder Describe(this RouteHandlerBuilder endpoint, string operationId, string summary, string description) =>
        endpoint.WithName(operationId).WithSummary(summary).WithDescription(description);

    /// <summary>Describes a parameter and gives one value that works.</summary>
    /// <typeparam name="TBuilder">Kind of builder.</typeparam>
    /// <param name="builder">The endpoint or group.</param>
    /// <param name="name">Name of the parameter.</param>
    /// <param name="description">What it is.</param>
    /// <param name="example">Makes a value that works.</param>
    /// <param name="text">The member whose validator says the letters and the length of a text, if there is one.</param>
    /// <returns>The same builder.</returns>
    public static TBuilder Parameter<TBuilder>(this TBuilder builder, string name, string description, Func<string> example, PropertyInfo? text = null)
        where TBuilder : IEndpointConventionBuilder =>
        builder.WithMetadata(new ParameterNote(name, description, example, text));

    /// <summary>Describes an optional query parameter that takes one of a few names, or a text; the handler reads it from the request.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="name">Name of the parameter.</param>
    /// <param name="description">What it is, and what holds when it is left out.</param>
    /// <param name="example">A name that works.</param>
    /// <param name="allowed">The names; empty for any text.</param>
    /// <returns>The same endpoint.</returns>
    public static RouteHandlerBuilder Query(
        this RouteHandlerBuilder endpoint, string name, string description, string example, IEnumerable<string> allowed) =>
        endpoint.WithMetadata(new QueryNote(name, description, example, [.. allowed]));

    /// <summary>Describes an optional query parameter that takes a number; the handler reads it from the request.</summary>
    /// <typeparam name="T">What the parameter is a member of; its validator says the range.</typeparam>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="member">Name of the member; the parameter has the same in camelCase.</param>
    /// <param name="description">What it is, and what holds when it is left out.</param>
    /// <param name="example">A number that works.</param>
    /// <returns>The same endpoint.</returns>
    public static RouteHandlerBuilder Query<T>(this RouteHandlerBuilder endpoint, string member, string description, string example) =>
        endpoint.WithMetadata(new QueryNote(
            JsonNamingPolicy.CamelCase.ConvertName(member), description, example, [], typeof(T).GetProperty(member)));

    /// <summary>Shows a body that works. A test sends every such body and asks for a good answer.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="name">Name of the example: lower-case words joined by hyphens.</param>
    /// <param name="summary">What the example shows.</param>
    /// <param name="body">
    /// Makes the body: a contract object, or JSON in an anonymous object to leave members out. It is read when the description is written: it
    /// would be a good part of the time that the service takes to start.
    /// </param>
    /// <returns>The same endpoint.</returns>
    public static RouteHandlerBuilder RequestExample(this RouteHandlerBuilder endpoint, string name, string summary, Func<object> body) =>
        endpoint.WithMetadata(new RequestExample(name, summary, body));

    /// <summary>Shows a good answer. It is computed when the description is written, so it is never out of date.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="name">Name of the example: lower-case words joined by hyphens.</param>
    /// <param name="summary">What the example shows.</param>
    /// <param name="body">Computes the answer.</param>
    /// <returns>The same endpoint.</returns>
    public static RouteHandlerBuilder ResponseExample(this RouteHandlerBuilder endpoint, string name, string summary, Func<object> body) =>
        endpoint.WithMetadata(new ResponseExample(name, summary, body));

    /// <summary>Documents that an endpoint, or a group, may answer with a kind of problem.</summary>
    /// <typeparam name="TBuilder">Kind of builder.</typeparam>
    /// <param name="builder">The endpoint or group.</param>
    /// <param name="kind">The kind.</param>
    /// <returns>The same builder.</returns>
    public static TBuilder Refuses<TBuilder>(this TBuilder builder, ProblemKind kind)
        where TBuilder : IEndpointConventionBuilder
    {
        ArgumentNullException.ThrowIfNull(kind);
        return builder
            .WithMetadata(kind)
            .WithMetadata(new ProducesResponseTypeMetadata(kind.Status, typeof(Problem), [ProblemResult.MediaType]));
    }
}

/// <summary>A parameter described.</summary>
internal sealed record ParameterNote(string Name, string Description, Func<string> Example, PropertyInfo? Text);

/// <summary>An optional query parameter described. Parameters that no note of the endpoint names are refused.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is.</param>
/// <param name="Example">A value that works.</param>
/// <param name="Allowed">The names it takes; empty for a number or a text.</param>
/// <param name="Number">The member whose validator says a number's range; null for names and texts.</param>
internal sealed record QueryNote(
    string Name, string Description, string Example, IReadOnlyList<string> Allowed, PropertyInfo? Number = null);

/// <summary>Mark on endpoints whose answer is a file; the description of the service lists the headers.</summary>
internal sealed record DownloadMark;

/// <summary>A body that works.</summary>
internal sealed record RequestExample(string Name, string Summary, Func<object> Body);

/// <summary>A good answer.</summary>
internal sealed record ResponseExample(string Name, string Summary, Func<object> Body);
