using LayoutService.Api.Tests.Errors;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>What is refused, where and why; nothing that can be sent makes the service fail.</summary>
public class CutFaultTests(Service service) : IClassFixture<Service>
{
    private const string Sticks = "{\"wanted\":[{\"length\":100}],\"stock\":[{\"length\":200}]}";
    private const string Sheets = "{\"wanted\":[{\"width\":10,\"length\":10}],\"stock\":[{\"width\":100,\"length\":200}]}";

    public static TheoryData<string> Bodies => [.. HostileBodies.Names];

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_body_made_for_another_call_or_for_harm_is_refused_with_a_place(string name)
    {
        var reply = await service.PostAsync("/v1/cut-plans", HostileBodies.Of(name).Body);
        Assert.InRange(reply.Status, 400, 422);
        Assert.Equal("application/problem+json", reply.MediaType);
        Assert.NotEmpty(reply.Faults);
    }

    [Theory]
    [InlineData("\"units\":\"metric\"", "# nothing_to_cut: Give sticks, sheets, or both.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{}", "#/sticks/wanted required: This member is needed.|#/sticks/stock required: This member is needed.")]
    [InlineData("\"sticks\":" + Sticks, "#/units required: This member is needed.")]
    [InlineData("\"units\":\"metric\",\"kerf\":3,\"endTrim\":0,\"sheets\":" + Sheets,
        "#/kerf without_sticks: This is the kerf of the sticks, and there are none; that of sheets stands in sheets.|#/endTrim without_sticks: This is the trim of the sticks, and there are none; that of sheets stands in sheets.")]
    [InlineData("\"units\":\"metric\",\"currency\":\"cad\",\"sticks\":" + Sticks, "#/currency text_pattern: A currency is the three capital letters of ISO 4217, for example CAD or USD.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":100}],\"stock\":[{\"length\":200,\"packPrice\":1}]}", "#/currency currency_missing: A price is given, but no currency.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"id\":\"a\",\"length\":1},{\"id\":\"a\",\"length\":2}],\"stock\":[{\"length\":200}]}",
        "#/sticks/wanted/1/id id_repeated: Another item of this list has the id \"a\" already.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"id\":\"a\",\"length\":1,\"count\":2},{\"id\":\"a-2\",\"length\":2}],\"stock\":[{\"length\":200}]}",
        "#/sticks/wanted/1/id piece_named_twice: Two pieces would be called \"a-2\".")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":1}],\"stock\":[{\"id\":\"s\",\"length\":200},{\"id\":\"s\",\"length\":300}]}",
        "#/sticks/stock/1/id id_repeated: Another item of this list has the id \"s\" already.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":0}],\"stock\":[{\"length\":-5}]}",
        "#/sticks/wanted/0/length out_of_range: This must be from 0.1 to 100000 mm; it is 0 mm.|#/sticks/stock/0/length out_of_range: This must be from 0.1 to 100000 mm; it is -5 mm.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":1,\"count\":0}],\"stock\":[{\"length\":5,\"quantity\":-1,\"packSize\":0}]}",
        "#/sticks/wanted/0/count out_of_range: This must be from 1 to 5000; it is 0.|#/sticks/stock/0/quantity out_of_range: This must be from 0 to 1000000; it is -1.|#/sticks/stock/0/packSize out_of_range: This must be from 1 to 10000; it is 0.")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[null],\"stock\":[]}", "#/sticks/wanted/0 wrong_type")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[],\"stock\":[]}",
        "#/sticks/wanted count_out_of_range: This list must hold from 1 to 1000 items; it holds 0.|#/sticks/stock count_out_of_range: This list must hold from 1 to 20 items; it holds 0.")]
    [InlineData("\"units\":\"metric\",\"sheets\":{\"edgeTrim\":5,\"wanted\":[{\"width\":10,\"length\":10,\"factoryEdges\":\"one\",\"mayTurn\":true}],\"stock\":[{\"width\":100,\"length\":200}]}",
        "#/sheets/wanted/0/factoryEdges no_factory_edge_left: The edge trim takes the factory edges off every sheet.|#/sheets/wanted/0/mayTurn turned_off_its_edge: A piece that keeps a factory edge lies along it, and cannot be turned.")]
    [InlineData("\"units\":\"metric\",\"sheets\":{\"wanted\":[{\"width\":10,\"length\":10,\"factoryEdges\":\"two\"}],\"stock\":[{\"width\":100,\"length\":200}]}", "#/sheets/wanted/0/factoryEdges unknown_word")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":\"8\"}],\"stock\":[{\"length\":200}]}", "#/sticks/wanted/0/length length_")]
    [InlineData("\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":8,\"grain\":1}],\"stock\":[{\"length\":200}]}", "#/sticks/wanted/0/grain unknown_member")]
    public async Task Each_fault_is_told_at_its_place(string members, string faults)
    {
        var reply = await service.PostAsync("/v1/cut-plans", "{" + members + "}");
        Assert.InRange(reply.Status, 400, 422);
        var told = faults.Split('|');
        Assert.Equal(told.Length, reply.Faults.Count);
        for (var i = 0; i < told.Length; i++)
        {
            Assert.StartsWith(told[i], reply.Faults[i]);
        }
    }

    [Fact]
    public async Task Stock_that_its_trim_uses_up_gives_findings()
    {
        var sticks = await service.PostAsync("/v1/cut-plans", "{\"units\":\"metric\",\"endTrim\":300,\"sticks\":" + Sticks + "}");
        Assert.Equal("piece_longer_than_stock", sticks.Json.GetProperty("findings")[0].GetProperty("code").GetString());
        var sheets = await service.PostAsync("/v1/cut-plans", "{\"units\":\"metric\",\"sheets\":" + Sheets.Replace("{\"wanted\"", "{\"edgeTrim\":50,\"wanted\"", StringComparison.Ordinal) + "}");
        Assert.Equal("piece_larger_than_stock", sheets.Json.GetProperty("findings")[0].GetProperty("code").GetString());
    }

    [Fact]
    public async Task Stock_for_nothing_is_cut_and_proved_at_once()
    {
        var reply = await service.PostAsync("/v1/cut-plans",
            "{\"units\":\"metric\",\"currency\":\"CAD\",\"sticks\":{\"wanted\":[{\"length\":100,\"count\":7}],\"stock\":[{\"length\":200,\"packPrice\":0}]},\"sheets\":{\"wanted\":[{\"width\":10,\"length\":10,\"count\":7}],\"stock\":[{\"width\":10,\"length\":10,\"packPrice\":0}]}}");
        Assert.Equal(200, reply.Status);
        Assert.All(reply.Json.GetProperty("results").EnumerateArray(), r => Assert.Equal((0m, true), (r.GetProperty("gap").GetDecimal(), r.GetProperty("provedOptimal").GetBoolean())));
    }

    [Fact]
    public async Task Another_method_and_another_form_are_refused()
    {
        var get = await service.GetAsync("/v1/cut-plans");
        Assert.Equal((405, "POST"), (get.Status, get.Headers["Allow"]));
        Assert.Equal(406, (await service.SendAsync(HttpMethod.Post, "/v1/cut-plans", "text/csv", "{\"units\":\"metric\",\"sticks\":" + Sticks + "}")).Status);
    }
}
