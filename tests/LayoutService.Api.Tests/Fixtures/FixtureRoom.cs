using System.Text.Json;
using LayoutService.Auditor;

namespace LayoutService.Api.Tests.Fixtures;

/// <summary>A metric room of 6.0 × 4.2 m, joists along y at 400 mm from 200 mm, and what is asked of its fixtures.</summary>
internal static class FixtureRoom
{
    public static string With(string members) => $$"""
        {"units":"metric","room":{"outline":[[0,0],[6000,0],[6000,4200],[0,4200]],"heights":[{"floorToJoist":2450}],"floorBuildUp":15},
         "joistFields":[{"run":"y","spacing":400,"first":200,"depth":235}],{{members}}}
        """;

    /// <summary>The plan, which the auditor has found nothing wrong with.</summary>
    public static async Task<JsonElement> PlanAsync(Service service, string request)
    {
        var reply = await service.PostAsync("/v1/plans", request);
        Assert.True(reply.Status == 200, reply.Text);
        Assert.Empty(PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, reply.Json));
        return reply.Json;
    }

    public static JsonElement Fixture(JsonElement plan, string id) =>
        plan.GetProperty("fixtures").EnumerateArray().Single(f => f.GetProperty("id").GetString() == id);

    public static string Status(JsonElement plan, string id) => Fixture(plan, id).GetProperty("status").GetString()!;

    public static IReadOnlyList<string> Codes(JsonElement list) =>
        [.. list.EnumerateArray().Select(r => r.TryGetProperty("code", out var code) ? code.GetString()! : "")];
}
