using System.Text.Json;

namespace LayoutService.Api.Tests.Orders;

/// <summary>Packs, taxes, culls, labour, way in and crew over HTTP.</summary>
public class PriceTests(Service service) : IClassFixture<Service>
{
    private static readonly string Room = SmallJob.Alone(SmallJob.Room(3600, 3000));

    [Fact]
    public async Task A_pack_with_a_name_of_its_own_serves_every_line_of_its_code()
    {
        var line = Line(await TakeoffAsync(Room), "strap-screw");
        var packs = line.GetProperty("packs").EnumerateArray().ToList();
        Assert.NotEmpty(packs);
        Assert.All(packs, p => Assert.Contains(p.GetProperty("id").GetString(), new[] { "p100", "p350" }));
        Assert.Equal(packs.Sum(p => p.GetProperty("count").GetDecimal() * p.GetProperty("packPrice").GetDecimal()), line.Amount());
    }

    [Fact]
    public async Task Two_taxes_are_each_charged_on_the_sum_and_not_on_labour_when_said_so()
    {
        var totals = (await TakeoffAsync(SmallRoom.With(SmallRoom.With(Room, "prices.labour", """{"hourPrice":50,"perStrapPiece":0.2}"""), "prices.tax",
            """[{"name":"A","rate":0.05},{"name":"B","rate":0.0725,"onLabour":false}]"""))).GetProperty("totals");
        var labour = Line(await TakeoffAsync(SmallRoom.With(Room, "prices.labour", """{"hourPrice":50,"perStrapPiece":0.2}""")), "labour-straps");
        Assert.Equal("HUR", labour.GetProperty("unitCode").GetString());
        Assert.Equal(labour.GetProperty("counted").GetDecimal() * 50, labour.Amount());
        var taxes = totals.GetProperty("taxes");
        Assert.Equal(totals.Amount(), taxes[0].GetProperty("base").GetDecimal());
        Assert.Equal(totals.Amount() - labour.Amount(), taxes[1].GetProperty("base").GetDecimal());
        Assert.Equal(totals.Amount() + taxes[0].Amount() + taxes[1].Amount(), totals.GetProperty("withTax").GetDecimal());
    }

    [Fact]
    public async Task Culls_are_the_callers_own_and_none_when_they_are_zero()
    {
        var half = await TakeoffAsync(SmallRoom.With(Room, "prices.culls", """{"boards":0.5}"""));
        var sticks = Lines(half).Where(l => l.GetProperty("code").GetString() == "strap").Sum(l => l.GetProperty("counted").GetDecimal());
        Assert.Equal(Math.Ceiling(sticks / 2), Line(half, "strap-culls").GetProperty("counted").GetDecimal());
        Assert.DoesNotContain(Lines(await TakeoffAsync(SmallRoom.With(Room, "prices.culls", """{"boards":0}"""))), l => l.GetProperty("code").GetString() == "strap-culls");
    }

    [Fact]
    public async Task An_amount_in_a_currency_without_minor_units_is_whole()
    {
        var takeoff = await TakeoffAsync(Room.Replace("CAD", "JPY", StringComparison.Ordinal));
        Assert.All(Lines(takeoff).Where(l => l.TryGetProperty("amount", out _)), l => Assert.Equal(decimal.Truncate(l.Amount()), l.Amount()));
    }

    [Fact]
    public async Task A_long_sheet_that_does_not_get_round_the_turn_is_not_bought_and_a_caution_says_so()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(Room, "access", """{"turn":{"widthBefore":900,"widthAfter":900,"height":2000}}"""))).Json;
        Assert.All(plan.GetProperty("cutPlan").GetProperty("sheetStock").EnumerateArray(), s => Assert.Equal("b24", s.GetProperty("stockId").GetString()));
        Assert.Contains(plan.GetProperty("cautions").EnumerateArray(), c => c.GetProperty("code").GetString() == "stock_does_not_get_in" && c.GetProperty("where")[0].GetString() == "b36");
    }

    [Fact]
    public async Task Nothing_heavier_than_the_crew_lifts_is_bought()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(Room, "crew", """{"people":1,"lift":false,"massLimit":25}"""))).Json;
        Assert.InRange(plan.GetProperty("summary").GetProperty("heaviestLift").GetDecimal(), 1, 25);
        var check = plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "lift-mass-most");
        Assert.Equal(("pass", 25m), (check.GetProperty("status").GetString(), check.GetProperty("limit").GetDecimal()));
    }

    [Fact]
    public async Task When_no_sheet_gets_in_there_is_no_plan_and_the_reason_is_told()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(Room, "access", """{"passages":[{"width":600,"height":700}]}"""));
        Assert.Equal(422, reply.Status);
        var finding = reply.Json.GetProperty("findings")[0];
        Assert.Equal("nothing_gets_in", finding.GetProperty("code").GetString());
        Assert.Equal(["b24", "b36"], finding.GetProperty("where").EnumerateArray().Select(w => w.GetString()!));
        Assert.NotEmpty(finding.GetProperty("remedies").EnumerateArray());
    }

    [Theory]
    [InlineData("access", """{"passages":[{"width":800}]}""", "#/access/passages/0/height required: This member is needed.")]
    [InlineData("access", """{"turn":{"widthBefore":900,"widthAfter":1}}""", "#/access/turn/widthAfter out_of_range: This must be from 100 to 30000 mm; it is 1 mm.")]
    [InlineData("crew", """{"people":0}""", "#/crew/people out_of_range: This must be from 1 to 20; it is 0.")]
    [InlineData("prices.tax", """[{"rate":0.1}]""", "#/prices/tax/0/name required: This member is needed.")]
    [InlineData("prices.labour", """{"perStrapPiece":1}""", "#/prices/labour/hourPrice required: This member is needed.")]
    [InlineData("prices.culls", """{"boards":1.5}""", "#/prices/culls/boards out_of_range: This must be from 0 to 1; it is 1.5.")]
    public async Task What_is_out_of_bounds_is_told_at_its_place(string path, string json, string fault) =>
        Assert.Equal([fault], (await service.PostAsync("/v1/plans", SmallRoom.With(Room, path, json))).Faults);

    private async Task<JsonElement> TakeoffAsync(string room)
    {
        var reply = await service.PostAsync("/v1/plans", room);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json.GetProperty("takeoff");
    }

    private static IEnumerable<JsonElement> Lines(JsonElement takeoff) => takeoff.GetProperty("lines").EnumerateArray();

    private static JsonElement Line(JsonElement takeoff, string code) => Lines(takeoff).Single(l => l.GetProperty("code").GetString() == code);
}
