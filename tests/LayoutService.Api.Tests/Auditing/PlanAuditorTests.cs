using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Reading;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>The auditor finds nothing in a plan made by hand, and notices each deliberate damage to it.</summary>
public sealed class PlanAuditorTests
{
    /// <summary>Damages that the hand plan has nothing for: it needs no ledger.</summary>
    private static readonly string[] NotHere = ["take the ledgers and nailers away"];

    public static TheoryData<string> Names => [.. Mutations.All.Select(m => m.Name).Except(NotHere)];

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
    public void A_strap_end_far_from_its_last_joist_breaks_the_overhang_rule()
    {
        var request = HandPlan.Request.Replace(",2380]", "]", StringComparison.Ordinal);

        Assert.Contains("pieces.overhang", Audit(HandPlan.Answer, request).Select(f => f.Rule));
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

    private static IReadOnlyList<Fault> Audit(string answer, string? request = null)
    {
        using var asked = JsonDocument.Parse(request ?? HandPlan.Request);
        using var given = JsonDocument.Parse(answer);
        return PlanAuditor.Audit(asked.RootElement, given.RootElement);
    }
}
