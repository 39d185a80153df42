using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Reading;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>The auditor finds nothing in a plan made by hand, and notices each deliberate damage to it.</summary>
public sealed class PlanAuditorTests
{
    /// <summary>Damages that the hand plan has nothing for: it needs no ledger, and has no fixture.</summary>
    private static readonly string[] NotHere = ["take the ledgers and nailers away", "leave a nailer out of the steps", "lay a nailer where another lies", "lay a nailer through an opening", "say that other board is as good as free", .. Mutations.All.Where(m => m.Rule.StartsWith("fixtures.", StringComparison.Ordinal) || m.Rule.StartsWith("cutouts.", StringComparison.Ordinal)).Select(m => m.Name)];

    public static TheoryData<string> Names => [.. Mutations.All.Where(m => !m.Rule.StartsWith("batts.", StringComparison.Ordinal)).Select(m => m.Name).Except(NotHere)];

    [Fact]
    public void A_plan_made_by_hand_has_no_fault() => Assert.Empty(Audit(HandPlan.Answer));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_damaged_plan_breaks_the_rule_that_guards_it(string name)
    {
        var mutation = Mutations.All.Single(m => m.Name == name);
        var answer = JsonNode.Parse(HandPlan.Answer)!;

        Assert.True(mutation.Apply(answer), "the damage found nothing to act on");

        Assert.Contains(mutation.Rule, Audit(answer.ToJsonString()).Select(f => f.Rule));
    }

    [Fact]
    public void The_auditor_shares_no_code_with_the_service() => Assert.DoesNotContain(
        typeof(PlanAuditor).Assembly.GetReferencedAssemblies(), a => a.Name!.StartsWith("LayoutService", StringComparison.Ordinal));

    [Fact]
    public void A_strap_end_far_from_its_last_joist_breaks_the_overhang_rule()
    {
        var request = HandPlan.Request.Replace(",2380]", "]", StringComparison.Ordinal);

        Assert.Contains("pieces.overhang", Audit(HandPlan.Answer, request).Select(f => f.Rule));
    }

    [Theory]
    [InlineData(90)]
    [InlineData(30)]
    [InlineData(135)]
    public void A_plan_turned_and_shifted_with_its_room_has_no_fault(double degrees)
    {
        var request = JsonNode.Parse(HandPlan.Request)!;
        request["room"]!["outline"] = Turned(request["room"]!["outline"]!, degrees);
        var field = request["joistFields"]![0]!.AsObject();
        field.Remove("run");
        field["runDegrees"] = degrees;
        field["positions"] = new JsonArray([.. field["positions"]!.AsArray().Select(p => (JsonNode)(2440 - p!.GetValue<int>()))]);
        var answer = JsonNode.Parse(HandPlan.Answer)!;
        foreach (var joist in answer["joists"]!["members"]!.AsArray())
        {
            joist!["at"] = 2440 - joist["at"]!.GetValue<int>();
        }

        foreach (var bay in answer["joists"]!["bays"]!.AsArray())
        {
            (bay!["from"], bay["to"]) = (2440 - bay["to"]!.GetValue<int>(), 2440 - bay["from"]!.GetValue<int>());
        }

        Assert.Empty(Audit(Turned(answer, degrees).ToJsonString(), request.ToJsonString()));
    }

    [Theory]
    [InlineData("12' 6 1/2\"", 3822.7)]
    [InlineData("12ft 6-1/2in", 3822.7)]
    [InlineData("150 1/2 in", 3822.7)]
    [InlineData("3.81 m", 3810)]
    [InlineData("3810mm", 3810)]
    [InlineData("7/8\"", 22.225)]
    [InlineData("8′ 0″", 2438.4)]
    public void Trade_notation_reads_as_millimetres(string text, double millimetres)
    {
        Assert.True(LengthText.TryRead(text, out var read));
        Assert.Equal(millimetres, read, 9);
    }

    /// <summary>A copy in which every pair of numbers is a point turned about the origin and shifted, to six decimals.</summary>
    private static JsonNode Turned(JsonNode node, double degrees)
    {
        if (node is JsonArray { Count: 2 } point && point.All(n => n?.GetValueKind() == JsonValueKind.Number))
        {
            var (x, y, angle) = ((double)point[0]!.AsValue(), (double)point[1]!.AsValue(), degrees * Math.PI / 180);
            return new JsonArray(
                decimal.Round((decimal)((x * Math.Cos(angle)) - (y * Math.Sin(angle)) - 5000), 6) / 1.000000000m,
                decimal.Round((decimal)((x * Math.Sin(angle)) + (y * Math.Cos(angle)) + 1234), 6) / 1.000000000m);
        }

        return node switch
        {
            JsonArray list => new JsonArray([.. list.Select(n => Turned(n!, degrees))]),
            JsonObject parent => new JsonObject(parent.Select(m => KeyValuePair.Create(m.Key, (JsonNode?)Turned(m.Value!, degrees)))),
            _ => node.DeepClone(),
        };
    }

    private static IReadOnlyList<Fault> Audit(string answer, string? request = null)
    {
        using var asked = JsonDocument.Parse(request ?? HandPlan.Request);
        using var given = JsonDocument.Parse(answer);
        return PlanAuditor.Audit(asked.RootElement, given.RootElement);
    }
}
