namespace LayoutService.Api.Tests.CutPlans;

/// <summary>Each limit of a cut plan taken at its end, and refused one past it.</summary>
public class CutLimitTests(Service service) : IClassFixture<Service>
{
    private const string Stick = "{\"length\":1000}";
    private const string Panel = "{\"width\":300,\"length\":1200}";
    private const string StickStock = "[{\"length\":2400}]";
    private const string PanelStock = "[{\"width\":1200,\"length\":2400}]";

    [Theory]
    [InlineData("cutLengths", "sticks", Stick, StickStock)]
    [InlineData("cutPanels", "sheets", Panel, PanelStock)]
    public async Task A_list_at_the_limit_is_taken_and_one_item_more_is_not(string limit, string use, string wanted, string stock)
    {
        var most = await LimitAsync(limit);
        Assert.Equal(200, (await CutAsync(use, Times(wanted, most), stock)).Status);
        Assert.Equal(["count_out_of_range"], (await CutAsync(use, Times(wanted, most + 1), stock)).Codes);
    }

    [Theory]
    [InlineData("cutPieces", "sticks", Stick, StickStock, 3)]
    [InlineData("cutPanelPieces", "sheets", Panel, PanelStock, 8)]
    public async Task So_many_pieces_are_cut_at_once_and_one_more_is_not(string limit, string use, string wanted, string stock, int fromOne)
    {
        var most = await LimitAsync(limit);
        var counted = wanted.Replace("}", $",\"count\":{most}}}", StringComparison.Ordinal);
        var at = await CutAsync(use, counted, stock.Replace("2400", "3006", StringComparison.Ordinal));
        Assert.Equal(200, at.Status);
        var bought = at.Json.GetProperty(use == "sticks" ? "stock" : "sheetStock").GetArrayLength();
        Assert.Equal((most + fromOne - 1) / fromOne, bought);

        var past = await CutAsync(use, counted + "," + wanted, stock);
        Assert.Equal([$"#/{use}/wanted too_many_pieces: At most {most} pieces can be cut at once; these are {most + 1}."], past.Faults);
        var one = await CutAsync(use, counted.Replace($"{most}", $"{most + 1}", StringComparison.Ordinal), stock);
        Assert.Equal(["out_of_range"], one.Codes);
    }

    [Theory]
    [InlineData("sticks", Stick, "{\"length\":2400}")]
    [InlineData("sheets", Panel, "{\"width\":1200,\"length\":2400}")]
    public async Task Twenty_kinds_of_stock_are_taken_and_one_more_is_not(string use, string wanted, string stock)
    {
        var most = await LimitAsync("stock");
        Assert.Equal(200, (await CutAsync(use, wanted, $"[{Times(stock, most)}]")).Status);
        Assert.Equal(["count_out_of_range"], (await CutAsync(use, wanted, $"[{Times(stock, most + 1)}]")).Codes);
    }

    [Theory]
    [InlineData("sticks", "{\"length\":0.1}", "[{\"length\":100000}]", 200)]
    [InlineData("sticks", "{\"length\":0.0999}", "[{\"length\":100000}]", 422)]
    [InlineData("sticks", "{\"length\":100000}", "[{\"length\":100000}]", 200)]
    [InlineData("sticks", "{\"length\":1}", "[{\"length\":100000.1}]", 422)]
    [InlineData("sheets", "{\"width\":0.1,\"length\":0.1}", "[{\"width\":25000,\"length\":25000}]", 200)]
    [InlineData("sheets", "{\"width\":1,\"length\":0.0999}", "[{\"width\":25000,\"length\":25000}]", 422)]
    [InlineData("sheets", "{\"width\":1,\"length\":1}", "[{\"width\":25000.1,\"length\":25000}]", 422)]
    public async Task A_size_at_the_end_of_its_bounds_is_cut_and_a_little_past_it_is_not(string use, string wanted, string stock, int status) =>
        Assert.Equal(status, (await CutAsync(use, wanted, stock)).Status);

    private Task<HttpReply> CutAsync(string use, string wanted, string stock) =>
        service.PostAsync("/v1/cut-plans", $"{{\"units\":\"metric\",\"{use}\":{{\"wanted\":[{wanted}],\"stock\":{stock}}}}}");

    private async Task<int> LimitAsync(string name) => (await service.GetAsync("/v1/limits")).Json.GetProperty(name).GetInt32();

    private static string Times(string item, int count) => string.Join(",", Enumerable.Repeat(item, count));
}
