using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.RegularExpressions;
using PaddleApi.Hosting;
using PaddleApi.Tests.Contract;
using YamlDotNet.RepresentationModel;

namespace PaddleApi.Tests.Deploy;

/// <summary>The files of docs/deploy hold together, and with the service: what can be known without a cluster.</summary>
public sealed partial class DeployTests
{
    private static readonly Dictionary<string, YamlNode> Manifests = Documents().ToDictionary(one => one["kind"].ToString());

    [Fact]
    public void Every_object_of_the_cluster_means_the_same_instances()
    {
        var labels = At(Manifests["Deployment"], "spec", "template", "metadata", "labels");
        Assert.Equal(labels, At(Manifests["Deployment"], "spec", "selector", "matchLabels"));
        Assert.Equal(labels, At(Manifests["Service"], "spec", "selector"));
        Assert.Equal(labels, At(Manifests["PodDisruptionBudget"], "spec", "selector", "matchLabels"));
        Assert.Equal(At(Manifests["Deployment"], "metadata", "name"), At(Manifests["HorizontalPodAutoscaler"], "spec", "scaleTargetRef", "name"));
        var least = Number(Manifests["HorizontalPodAutoscaler"], "spec", "minReplicas");
        Assert.Equal(least, Number(Manifests["Deployment"], "spec", "replicas"));
        Assert.True(Number(Manifests["PodDisruptionBudget"], "spec", "minAvailable") < least, "no node could ever be emptied");
    }

    [Fact]
    public void Ports_and_probes_are_those_of_the_image()
    {
        var container = Container();
        var port = Number(container, "ports", "0", "containerPort");
        Assert.Contains($"EXPOSE {port}", Text("Dockerfile"), StringComparison.Ordinal);
        Assert.Equal("http", At(Manifests["Service"], "spec", "ports", "0", "targetPort").ToString());
        Assert.Equal("http", At(container, "ports", "0", "name").ToString());
        Assert.Equal("/health/ready", At(container, "startupProbe", "httpGet", "path").ToString());
        Assert.Equal("/health/ready", At(container, "readinessProbe", "httpGet", "path").ToString());
        Assert.Equal("/health/live", At(container, "livenessProbe", "httpGet", "path").ToString());
    }

    [Fact]
    public void What_has_begun_is_finished_before_an_instance_is_killed()
    {
        var grace = Number(Manifests["Deployment"], "spec", "template", "spec", "terminationGracePeriodSeconds");
        var pause = Number(Container(), "lifecycle", "preStop", "sleep", "seconds");
        var limits = new ServiceLimits();
        Assert.True(grace >= pause + limits.MostWaitSeconds + limits.RequestTimeoutSeconds, $"{grace} s");
    }

    [Fact]
    public void Every_setting_named_is_one_of_the_service()
    {
        foreach (var variable in ((YamlSequenceNode)At(Container(), "env")).Select(one => (Name: one["name"].ToString(), Value: one["value"].ToString())))
        {
            if (!variable.Name.StartsWith("Limits__", StringComparison.Ordinal)) continue;
            var property = typeof(ServiceLimits).GetProperty(variable.Name["Limits__".Length..]);
            Assert.True(property is not null, variable.Name);
            Assert.True(property.GetCustomAttribute<RangeAttribute>()!.IsValid(int.Parse(variable.Value)), variable.Name);
        }
    }

    // Braces in pairs and a semicolon at the end of every line that opens none; nginx itself reads it in the load test that kills an instance.
    [Fact]
    public void The_proxy_takes_what_the_service_takes()
    {
        var lines = Text("docs/deploy/nginx.conf").Split('\n').Select(line => Comment().Replace(line, "").Trim()).Where(line => line.Length > 0).ToList();
        Assert.Equal(lines.Count(line => line.EndsWith('{')), lines.Count(line => line == "}"));
        Assert.All(lines, line => Assert.True(line[^1] is '{' or '}' or ';', line));
        Assert.Contains($"client_max_body_size {new ServiceLimits().MaxSizeRunBodyBytes / (1024 * 1024)}m;", lines);
        Assert.Contains($"client_body_timeout {new ServiceLimits().UploadTimeoutSeconds}s;", lines);
    }

    private static string Text(string path) => File.ReadAllText(Path.Combine(Committed.Root(), path));

    private static YamlNode Container() => At(Manifests["Deployment"], "spec", "template", "spec", "containers", "0");

    private static int Number(YamlNode node, params string[] path) => int.Parse(At(node, path).ToString());

    private static YamlNode At(YamlNode node, params string[] path)
    {
        foreach (var step in path) node = node is YamlSequenceNode list ? list[int.Parse(step)] : node[step];
        return node;
    }

    private static IEnumerable<YamlNode> Documents()
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(Text("docs/deploy/kubernetes.yaml")));
        return stream.Documents.Select(document => document.RootNode);
    }

    [GeneratedRegex("#.*$")]
    private static partial Regex Comment();
}
