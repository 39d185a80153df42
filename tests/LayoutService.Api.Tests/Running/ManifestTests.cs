using System.Text.Json;
using YamlDotNet.Serialization;

namespace LayoutService.Api.Tests.Running;

/// <summary>
/// The Kubernetes manifests of the docs, by what they must hold. Pod Security "restricted" as its standard lists it, from
/// memory and secondary texts: https://kubernetes.io/docs/concepts/security/pod-security-standards/
/// Members and their types by Kubernetes' own client for C# (package KubernetesClient), which has the types of its API.
/// </summary>
public class ManifestTests
{
    private static readonly Dictionary<string, JsonElement> ByKind = Read();

    private static JsonElement Pod => ByKind["Deployment"].GetProperty("spec").GetProperty("template").GetProperty("spec");

    private static JsonElement Container => Assert.Single(Pod.GetProperty("containers").EnumerateArray());

    [Fact]
    public void Each_file_that_the_list_names_is_there_and_none_besides()
    {
        Assert.Equal(
            ["Deployment", "HorizontalPodAutoscaler", "Kustomization", "Namespace", "NetworkPolicy", "PodDisruptionBudget", "Service"],
            ByKind.Keys.Order(StringComparer.Ordinal));
        var named = ByKind["Kustomization"].GetProperty("resources").EnumerateArray().Select(name => name.GetString()!);
        var there = Directory.GetFiles(Folder, "*.yaml").Select(Path.GetFileName).Where(name => name != "kustomization.yaml");
        Assert.Equal(there.Order(StringComparer.Ordinal), named.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("runAsNonRoot", "true")]
    [InlineData("seccompProfile", """{"type":"RuntimeDefault"}""")]
    public void The_pod_runs_without_rights(string member, string value) =>
        Assert.Equal(value, Pod.GetProperty("securityContext").GetProperty(member).GetRawText());

    [Theory]
    [InlineData("allowPrivilegeEscalation", "false")]
    [InlineData("readOnlyRootFilesystem", "true")]
    [InlineData("capabilities", """{"drop":["ALL"]}""")]
    public void The_container_can_gain_none(string member, string value) =>
        Assert.Equal(value, Container.GetProperty("securityContext").GetProperty(member).GetRawText());

    [Fact]
    public void The_pod_shares_nothing_of_its_host()
    {
        Assert.DoesNotContain(Pod.EnumerateObject(), member => member.Name.StartsWith("host", StringComparison.Ordinal));
        Assert.All(Container.GetProperty("ports").EnumerateArray(), port => Assert.False(port.TryGetProperty("hostPort", out _)));
        Assert.False(Container.GetProperty("securityContext").TryGetProperty("privileged", out _));
        Assert.All(Pod.GetProperty("volumes").EnumerateArray(), volume => Assert.True(volume.TryGetProperty("emptyDir", out _)));
        Assert.False(Pod.GetProperty("automountServiceAccountToken").GetBoolean());
    }

    [Fact]
    public void The_namespace_enforces_restricted() =>
        Assert.Equal("restricted", ByKind["Namespace"].GetProperty("metadata").GetProperty("labels").GetProperty("pod-security.kubernetes.io/enforce").GetString());

    [Theory]
    [InlineData("startupProbe", "/health/startup")]
    [InlineData("readinessProbe", "/health/ready")]
    [InlineData("livenessProbe", "/health/live")]
    public void Each_probe_asks_the_port_that_is_served(string probe, string path)
    {
        var asks = Container.GetProperty(probe).GetProperty("httpGet");
        Assert.Equal(path, asks.GetProperty("path").GetString());
        var port = Assert.Single(Container.GetProperty("ports").EnumerateArray());
        Assert.Equal(port.GetProperty("name").GetString(), asks.GetProperty("port").GetString());
        Assert.Contains($"EXPOSE {port.GetProperty("containerPort")}", File.ReadAllText(Path.Combine(Repository.Root, "Dockerfile")), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_manifest_is_one_of_the_types_of_Kubernetes_and_has_no_member_that_they_lack()
    {
        var kinds = Directory.GetFiles(Folder, "*.yaml").Where(file => Path.GetFileName(file) != "kustomization.yaml")
            .Select(file => Assert.IsAssignableFrom<k8s.IKubernetesObject>(Assert.Single(k8s.KubernetesYaml.LoadAllFromString(File.ReadAllText(file), null, true))))
            .Select(manifest => manifest.Kind);
        Assert.Equal(ByKind.Keys.Except(["Kustomization"]).Order(StringComparer.Ordinal), kinds.Order(StringComparer.Ordinal));
        var misspelt = File.ReadAllText(Path.Combine(Folder, "deployment.yaml")).Replace("runAsNonRoot", "runAsNonRot", StringComparison.Ordinal);
        Assert.ThrowsAny<Exception>(() => k8s.KubernetesYaml.LoadAllFromString(misspelt, null, true));
    }

    [Fact]
    public void Whatever_chooses_pods_chooses_these()
    {
        var labels = ByKind["Deployment"].GetProperty("spec").GetProperty("template").GetProperty("metadata").GetProperty("labels").GetRawText();
        Assert.Equal(labels, ByKind["Deployment"].GetProperty("spec").GetProperty("selector").GetProperty("matchLabels").GetRawText());
        Assert.Equal(labels, ByKind["Service"].GetProperty("spec").GetProperty("selector").GetRawText());
        Assert.Equal(labels, ByKind["PodDisruptionBudget"].GetProperty("spec").GetProperty("selector").GetProperty("matchLabels").GetRawText());
        Assert.Equal(labels, ByKind["NetworkPolicy"].GetProperty("spec").GetProperty("podSelector").GetProperty("matchLabels").GetRawText());
        var scaled = ByKind["HorizontalPodAutoscaler"].GetProperty("spec");
        Assert.Equal(ByKind["Deployment"].GetProperty("metadata").GetProperty("name").GetString(), scaled.GetProperty("scaleTargetRef").GetProperty("name").GetString());
        Assert.Equal("cpu", scaled.GetProperty("metrics")[0].GetProperty("resource").GetProperty("name").GetString());
        Assert.True(scaled.GetProperty("minReplicas").GetInt32() > ByKind["PodDisruptionBudget"].GetProperty("spec").GetProperty("maxUnavailable").GetInt32());
    }

    [Fact]
    public void Nothing_goes_out()
    {
        var policy = ByKind["NetworkPolicy"].GetProperty("spec");
        Assert.Equal("""["Ingress","Egress"]""", policy.GetProperty("policyTypes").GetRawText());
        Assert.Equal("[]", policy.GetProperty("egress").GetRawText());
    }

    [Fact]
    public void A_pod_has_the_time_that_its_settings_ask_for()
    {
        var settings = Container.GetProperty("env").EnumerateArray()
            .ToDictionary(e => e.GetProperty("name").GetString()!, e => int.Parse(e.GetProperty("value").ToString(), System.Globalization.CultureInfo.InvariantCulture));
        var grace = Pod.GetProperty("terminationGracePeriodSeconds").GetInt32();
        Assert.True(grace > settings["Service__DrainSeconds"] + settings["Service__BulkDrainSeconds"] + 20);
        var probe = Container.GetProperty("readinessProbe");
        Assert.True(settings["Service__DrainSeconds"] > probe.GetProperty("periodSeconds").GetInt32() * probe.GetProperty("failureThreshold").GetInt32());
        foreach (var bound in new[] { "requests", "limits" })
        {
            Assert.True(Container.GetProperty("resources").GetProperty(bound).TryGetProperty("memory", out _));
            Assert.True(Container.GetProperty("resources").GetProperty(bound).TryGetProperty("cpu", out _));
        }
    }

    private static string Folder => Path.Combine(Repository.Root, "docs", "deploy");

    private static Dictionary<string, JsonElement> Read()
    {
        var reader = new DeserializerBuilder().WithAttemptingUnquotedStringTypeDeserialization().Build();
        var writer = new SerializerBuilder().JsonCompatible().Build();
        return Directory.GetFiles(Folder, "*.yaml")
            .Select(file => JsonDocument.Parse(writer.Serialize(reader.Deserialize(File.ReadAllText(file))!)).RootElement)
            .ToDictionary(manifest => manifest.GetProperty("kind").GetString()!, manifest =>
                JsonSerializer.SerializeToElement(manifest));
    }
}
