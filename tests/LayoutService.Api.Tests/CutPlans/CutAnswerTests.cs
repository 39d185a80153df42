using System.Globalization;
using System.Text.Json;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>Small cases that can be checked by hand.</summary>
public class CutAnswerTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(1200, 2, 2400, "3", 2)] // 1200 + 3 + 1200 = 2403
    [InlineData(1200, 2, 2400, "0", 1)]
    [InlineData(1200, 2, 2403, "3", 1)] // no kerf after the piece that ends at the stock's end
    [InlineData(799, 3, 2403, "3", 1)] // 3 × 799 + 2 × 3 = 2403
    [InlineData(799, 3, 2402, "3", 2)]
    [InlineData(2400, 3, 2400, "3", 3)]
    public async Task A_kerf_is_lost_after_each_piece_that_does_not_end_at_the_end(int length, int count, int stock, string kerf, int sticks)
    {
        var reply = await SticksAsync($$"""[{"id":"p","length":{{length}},"count":{{count}}}]""", $$"""[{"length":{{stock}}}]""", $"\"kerf\":{kerf},");
        Assert.Equal(sticks, reply.Json.GetProperty("stock").GetArrayLength());
        Assert.True(reply.Json.GetProperty("results")[0].GetProperty("provedOptimal").GetBoolean());
    }

    [Fact]
    public async Task A_trim_is_taken_off_each_length_once()
    {
        Assert.Equal(1, (await SticksAsync("""[{"length":1195,"count":2}]""", """[{"length":2400}]""", "\"kerf\":0,\"endTrim\":10,")).Json.GetProperty("stock").GetArrayLength());
        Assert.Equal(2, (await SticksAsync("""[{"length":1195.5,"count":2}]""", """[{"length":2400}]""", "\"kerf\":0,\"endTrim\":10,")).Json.GetProperty("stock").GetArrayLength());
    }

    /// <summary>Two short lengths at 3 are dearer than one long at 5; a third piece makes 5 + 3.</summary>
    [Fact]
    public async Task The_cheapest_lengths_are_bought_by_what_one_of_a_pack_costs()
    {
        var stock = """[{"id":"short","length":1000,"packPrice":30,"packSize":10},{"id":"long","length":2010,"packPrice":5}]""";
        var reply = await service.PostAsync("/v1/cut-plans", $$$"""{"units":"metric","currency":"CAD","sticks":{"wanted":[{"id":"p","length":1000,"count":3}],"stock":{{{stock}}}}}""");
        var result = reply.Json.GetProperty("results")[0];
        Assert.Equal(["long", "short"], reply.Json.GetProperty("stock").EnumerateArray().Select(s => s.GetProperty("stockId").GetString()));
        Assert.Equal((8m, 8m, "CAD"), (result.GetProperty("cost").GetDecimal(), result.GetProperty("lowerBound").GetDecimal(), result.GetProperty("unit").GetString()));
    }

    [Fact]
    public async Task Quantities_are_kept()
    {
        var reply = await SticksAsync("""[{"id":"p","length":1000,"count":5}]""", """[{"id":"a","length":2003,"quantity":1},{"id":"b","length":1500}]""", "");
        Assert.Equal(["a", "b", "b", "b"], reply.Json.GetProperty("stock").EnumerateArray().Select(s => s.GetProperty("stockId").GetString()));
    }

    [Fact]
    public async Task A_piece_longer_than_every_stock_is_named()
    {
        var reply = await service.PostAsync("/v1/cut-plans",
            """{"units":"metric","endTrim":10,"sticks":{"wanted":[{"id":"ok","length":2390},{"id":"beam","length":2391,"count":2}],"stock":[{"length":2400},{"length":2100}]}}""");
        Refused(reply, "piece_longer_than_stock", ["beam"], "beam: longer than any stock gives; the longest gives 2390 mm.");
    }

    [Fact]
    public async Task Pieces_for_which_the_stock_runs_out_are_named()
    {
        var reply = await service.PostAsync("/v1/cut-plans",
            """{"units":"metric","sticks":{"wanted":[{"id":"p","length":1500,"count":3}],"stock":[{"length":2400,"quantity":2}]}}""");
        Refused(reply, "out_of_stock", ["p"], "No way was found to cut every piece of the sticks from the quantities given: p (1 in all) stay without stock.");
        var sheets = await service.PostAsync("/v1/cut-plans",
            """{"units":"metric","sheets":{"wanted":[{"id":"q","width":1000,"length":1500,"count":3}],"stock":[{"width":1200,"length":2400,"quantity":2}]}}""");
        Refused(sheets, "out_of_stock", ["q"], "No way was found to cut every piece of the sheets from the quantities given: q (1 in all) stay without stock.");
    }

    [Theory]
    [InlineData("""{"id":"wide","width":1300,"length":1000}""")]
    [InlineData("""{"id":"wide","width":600,"length":2500,"mayTurn":true}""")]
    [InlineData("""{"id":"wide","width":1199,"length":1000,"factoryEdges":"both"}""")]
    public async Task A_panel_that_lies_in_no_sheet_is_named(string wanted)
    {
        var reply = await service.PostAsync("/v1/cut-plans", $$$"""{"units":"metric","sheets":{"wanted":[{{{wanted}}}],"stock":[{"width":1200,"length":2400}]}}""");
        Refused(reply, "piece_larger_than_stock", ["wide"], "wide: too wide or too long for every sheet in stock, as it must lie.");
    }

    [Fact]
    public async Task A_panel_too_wide_is_cut_when_it_may_turn()
    {
        var reply = await service.PostAsync("/v1/cut-plans",
            """{"units":"metric","sheets":{"wanted":[{"width":1300,"length":1000,"mayTurn":true}],"stock":[{"width":1200,"length":2400}]}}""");
        Assert.True(reply.Json.GetProperty("sheetStock")[0].GetProperty("cuts")[0].GetProperty("turned").GetBoolean());
        Assert.Empty(reply.Json.GetProperty("stock").EnumerateArray());
    }

    /// <summary>Four quarters of a sheet; with a kerf of 3 their sum is 3 too wide both ways, and one sheet gives one only along each way.</summary>
    [Theory]
    [InlineData("0", 600, 1)]
    [InlineData("3", 600, 4)]
    [InlineData("3", 598.5, 1)]
    public async Task A_kerf_between_panels_counts(string kerf, decimal width, int sheets)
    {
        var length = (width * 2).ToString(CultureInfo.InvariantCulture);
        var request = $$$"""{"units":"metric","sheets":{"kerf":{{{kerf}}},"wanted":[{"width":{{{width.ToString(CultureInfo.InvariantCulture)}}},"length":{{{length}}},"count":4}],"stock":[{"width":1200,"length":2400}]}}""";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        SheetCheck.Whole(request, reply);
        Assert.Equal(sheets, reply.Json.GetProperty("sheetStock").GetArrayLength());
    }

    [Fact]
    public async Task The_same_request_gets_the_same_bytes_and_its_reference_back()
    {
        foreach (var name in Repository.CutPlanExamples)
        {
            var request = Repository.ExampleRequest(name);
            var first = await service.PostAsync("/v1/cut-plans", request);
            var second = await service.PostAsync("/v1/cut-plans", request);
            Assert.Equal(first.Text, second.Text);
            Assert.Equal(JsonDocument.Parse(request).RootElement.GetProperty("reference").GetString(), first.Json.GetProperty("reference").GetString());
        }
    }

    [Fact]
    public async Task The_digest_leaves_out_the_reference_and_nothing_else()
    {
        const string Cut = "\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":100}],\"stock\":[{\"length\":200}]}}";
        var plain = (await service.PostAsync("/v1/cut-plans", "{" + Cut)).Json.GetProperty("requestDigest").GetString();
        Assert.Equal(plain, (await service.PostAsync("/v1/cut-plans", "{\"reference\":\"x\"," + Cut)).Json.GetProperty("requestDigest").GetString());
        Assert.NotEqual(plain, (await service.PostAsync("/v1/cut-plans", "{\"kerf\":3," + Cut)).Json.GetProperty("requestDigest").GetString());
    }

    /// <summary>Many different lengths and sheets: the plan is whole and its gap honest, even when nothing is proved.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Random_orders_are_cut_whole(int seed)
    {
        var dice = new Random(seed);
        var sticks = string.Join(",", Enumerable.Range(0, 60).Select(_ => $"{{\"length\":{dice.Next(2000, 25000) / 10m},\"count\":{dice.Next(1, 4)}}}"));
        var panels = string.Join(",", Enumerable.Range(0, 25).Select(_ =>
            $"{{\"width\":{dice.Next(100, 1200)},\"length\":{dice.Next(100, 2400)},\"count\":{dice.Next(1, 3)},\"mayTurn\":{(dice.Next(2) == 0 ? "true" : "false")}}}"));
        var request = $"{{\"units\":\"metric\",\"kerf\":4,\"endTrim\":2,\"sticks\":{{\"wanted\":[{sticks}],\"stock\":[{{\"length\":3000}},{{\"length\":4200,\"quantity\":20}}]}},"
            + $"\"sheets\":{{\"wanted\":[{panels}],\"stock\":[{{\"width\":1200,\"length\":2400}},{{\"width\":1220,\"length\":3050}}]}}}}";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        StickCheck.Whole(request, reply);
        SheetCheck.Whole(request, reply);
    }

    private async Task<HttpReply> SticksAsync(string wanted, string stock, string more)
    {
        var request = $"{{\"units\":\"metric\",{more}\"sticks\":{{\"wanted\":{wanted},\"stock\":{stock}}}}}";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        StickCheck.Whole(request, reply);
        return reply;
    }

    private static void Refused(HttpReply reply, string code, string[] where, string text)
    {
        Assert.Equal(422, reply.Status);
        Assert.Equal("/problems/no-plan", reply.Json.GetProperty("type").GetString());
        var finding = reply.Json.GetProperty("findings").EnumerateArray().Single();
        Assert.Equal((code, text), (finding.GetProperty("code").GetString(), finding.GetProperty("text").GetString()));
        Assert.Equal(where, finding.GetProperty("where").EnumerateArray().Select(w => w.GetString()));
        Assert.NotEmpty(finding.GetProperty("remedies").EnumerateArray());
    }
}
