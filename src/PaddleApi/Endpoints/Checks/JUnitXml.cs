using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using PaddleApi.Contracts.Checks;

namespace PaddleApi.Endpoints.Checks;

/// <summary>
/// A catalogue's outcome as the XML of JUnit, which build servers show: a suite for each design, and a test case for each thing expected of it.
/// </summary>
internal static class JUnitXml
{
    /// <summary>Writes it.</summary>
    /// <param name="name">Name of the catalogue.</param>
    public static byte[] Write(string name, DesignCheckResponse outcome)
    {
        XElement[] suites = [.. outcome.Cases.Select(Suite)];
        var root = new XElement("testsuites", new XAttribute("name", name), Sum("tests", suites), Sum("failures", suites), Sum("errors", suites), suites);
        using var made = new MemoryStream();
        using (var writer = XmlWriter.Create(made, new() { Indent = true, Encoding = new UTF8Encoding(false), NewLineChars = "\n" })) root.Save(writer);
        return made.ToArray();
    }

    private static XElement Suite(CheckedDesign design)
    {
        XElement[] cases =
        [
            .. design.Expectations.Select(one => Case(design.Id, one.Pointer, one.Passed, one.Message, one.Message)),
            .. design.Approval is { } approval ? [Case(design.Id, "approved report", approval.Moved == 0, Summary(approval), List(approval))] : Array.Empty<XElement>(),
        ];
        return new("testsuite",
            new XAttribute("name", design.Id),
            new XAttribute("tests", cases.Length),
            new XAttribute("failures", cases.Count(one => one.HasElements)),
            new XAttribute("errors", 0),
            new XElement("properties", new XElement("property", new XAttribute("name", "designCode"), new XAttribute("value", design.DesignCode))),
            cases);
    }

    private static XElement Case(string design, string name, bool passed, string message, string all) => new("testcase",
        new XAttribute("classname", design),
        new XAttribute("name", name.Length == 0 ? "/" : name),
        passed ? null : new XElement("failure", new XAttribute("message", message), new XAttribute("type", "moved"), all));

    private static string Summary(CheckedApproval approval) =>
        string.Create(CultureInfo.InvariantCulture, $"{approval.Moved} of {approval.Compared} figures moved.");

    private static string List(CheckedApproval approval) => string.Join('\n', approval.Figures.Select(figure => string.Create(
        CultureInfo.InvariantCulture,
        $"{figure.Pointer}: {figure.Approved.GetRawText()} was approved, {figure.Value?.GetRawText() ?? "nothing"} is there now, {figure.Tolerance ?? 0}{(figure.Unit is { } unit ? $" {unit}" : "")} is allowed")));

    private static XAttribute Sum(string count, XElement[] suites) => new(count, suites.Sum(suite => (int)suite.Attribute(count)!));
}
