using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>What the auditor notices of an edge without a wall, a partition under the straps, and an old ceiling.</summary>
public sealed class EdgeDamagesTests(Service service) : IClassFixture<Service>
{
    private static readonly string Square = SmallRoom.With("partitions", """[{"id":"P1","line":[[0,1500],[3600,1500]],"thickness":90,"top":"straps"}]""");

    private static readonly string Light = SmallRoom.With(
        SmallRoom.With("room.existing", """{"thickness":12.7}"""), "fixtures", """[{"id":"L1","kind":"can-light","at":[1200,1600],"cutout":{"diameter":100}}]""");

    public static TheoryData<string, string, string> Damages => new()
    {
        { SmallRoom.With("room.walls", """[{"edge":0,"kind":"open"}]"""), "sheets edgeBeads", "open.bead" },
        { SmallRoom.With("room.walls", """[{"edge":0,"kind":"open"}]"""), "cautions", "open.said" },
        { Square, "partitions 0 rows 0", "partitions.under" },
        { Light, "fixtures 0 opensOldCeiling", "oldCeiling.opened" },
        { Light, "cautions", "oldCeiling.said" },
    };

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task The_auditor_notices_what_is_taken_out(string request, string taken, string rule)
    {
        var answer = JsonNode.Parse((await service.PostAsync("/v1/plans", request)).Body)!;
        Assert.DoesNotContain(Rules(request, answer), r => r == rule);
        TakeOut(answer, taken.Split(' '));
        Assert.Contains(rule, Rules(request, answer));
    }

    private static void TakeOut(JsonNode node, string[] path)
    {
        foreach (var step in path[..^1])
        {
            node = node is JsonArray list ? list[int.Parse(step)]! : node[step]!;
        }

        if (node is JsonArray items)
        {
            items.RemoveAt(int.Parse(path[^1]));
        }
        else if (node[path[^1]] is JsonArray { Count: > 0 } all && path.Length == 1)
        {
            all.Clear();
        }
        else
        {
            node.AsObject().Remove(path[^1]);
        }
    }

    private static IEnumerable<string> Rules(string request, JsonNode answer) =>
        PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, JsonDocument.Parse(answer.ToJsonString()).RootElement).Select(f => f.Rule);
}
