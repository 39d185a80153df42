using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded orders of several rooms, recomputed by the auditor. AUDIT_ROOMS sets how many (a fortieth of it; 50 when it is not set).</summary>
public sealed class AuditedJobsTests(Service service) : IClassFixture<Service>
{
    private static int Count => AuditedAnswers.Count(50, part: 40);

    [Fact]
    public async Task Every_order_is_pooled_and_the_auditor_finds_nothing()
    {
        var found = new List<string>();
        var saved = 0;
        for (var seed = 1; seed <= Count; seed++)
        {
            var request = SeededJobs.Next(seed);
            var reply = await service.PostAsync("/v1/jobs?include=all", request);
            Assert.True(reply.Status == 200, $"seed {seed}: {reply.Status} {reply.Text}");
            saved += reply.Json.GetProperty("saving").GetProperty("lumberSaved").GetDecimal() > 0 ? 1 : 0;
            found.AddRange(JobAuditor.Audit(JsonDocument.Parse(request).RootElement, reply.Json).Select(fault => $"seed {seed}: {fault}"));
        }

        Assert.True(found.Count == 0, $"{found.Count} faults, the first: {string.Join("\n", found.Take(20))}");
        Assert.True(saved > Count / 10, $"only {saved} orders saved lumber");
    }

    public static TheoryData<string> Damages => [.. JobDamages.All.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task The_auditor_notices(string damage)
    {
        var mutation = JobDamages.All.Single(m => m.Name == damage);
        var tried = 0;
        for (var seed = 1; seed <= 20 && tried < 3; seed++)
        {
            var request = SeededJobs.Next(seed);
            var answer = JsonNode.Parse((await service.PostAsync("/v1/jobs?include=all", request)).Body)!;
            if (!mutation.Apply(answer))
            {
                continue;
            }

            tried++;
            var faults = JobAuditor.Audit(JsonDocument.Parse(request).RootElement, JsonDocument.Parse(answer.ToJsonString()).RootElement);
            Assert.Contains(faults, fault => fault.Rule == mutation.Rule);
        }

        Assert.True(tried > 0, "no order had anything of that kind to damage");
    }
}
