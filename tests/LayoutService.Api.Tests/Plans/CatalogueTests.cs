namespace LayoutService.Api.Tests.Plans;

/// <summary>The figures applied can be read with their sources.</summary>
public class CatalogueTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("/v1/rules", "rules", "RulesAnswer")]
    [InlineData("/v1/rulesets", "rulesets", "RulesetsAnswer")]
    [InlineData("/v1/materials", "materials", "MaterialsAnswer")]
    public async Task A_catalogue_is_not_empty_and_valid_by_the_contract(string path, string list, string schema)
    {
        var contract = new Contract.ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var reply = await service.GetAsync(path);
        Assert.Equal(200, reply.Status);
        Assert.NotEmpty(reply.Json.GetProperty(list).EnumerateArray());
        Assert.Empty(contract.FaultsOf(reply.Json, schema));
    }

    [Fact]
    public async Task A_rule_that_a_plan_was_checked_by_can_be_looked_up()
    {
        var checks = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json.GetProperty("checks");
        Assert.NotEmpty(checks.EnumerateArray());
        foreach (var rule in checks.EnumerateArray().Select(c => c.GetProperty("rule").GetString()!))
        {
            var reply = await service.GetAsync($"/v1/rules/{rule}");
            Assert.Equal(200, reply.Status);
            Assert.Equal(rule, reply.Json.GetProperty("id").GetString());
        }
    }

    [Fact]
    public async Task A_plan_states_the_version_of_the_figures()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var rules = (await service.GetAsync("/v1/rules")).Json;
        Assert.Equal(rules.GetProperty("rulesVersion").GetString(), plan.GetProperty("rulesVersion").GetString());
    }

    [Fact]
    public async Task The_front_page_names_the_calls_and_its_links_lead_somewhere()
    {
        var page = await service.GetAsync("/");
        Assert.Equal("text/html", page.MediaType);
        var links = System.Text.RegularExpressions.Regex.Matches(page.Text, "href=\"([^\"]+)\"").Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(links);
        foreach (var link in links)
        {
            Assert.Equal(200, (await service.GetAsync(link)).Status);
        }
    }

    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task Health_is_told_for_get_and_head(string path, string status)
    {
        Assert.Equal($"{{\"status\":\"{status}\"}}", (await service.GetAsync(path)).Text);
        var head = await service.SendAsync(HttpMethod.Head, path);
        Assert.Equal(200, head.Status);
        Assert.Empty(head.Body);
    }

    [Fact]
    public async Task A_limit_set_by_the_caller_is_the_one_that_is_checked_and_says_so()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("rules", "[{\"id\":\"strap-face\",\"value\":89}]"));
        var check = reply.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "strap-face");
        Assert.Equal("fail", check.GetProperty("status").GetString());
        Assert.Equal(89, check.GetProperty("limit").GetDecimal());
        Assert.Equal("set-by-caller", check.GetProperty("source").GetProperty("basis").GetString());
        Assert.Equal(1, reply.Json.GetProperty("summary").GetProperty("checksFailed").GetInt32());
    }
}
