using System.Text;
using System.Text.Json;
using LayoutService.Api.Tests.Contract;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>Every example of a cut plan is valid by the contract, is cut, and its answer is valid, whole and the committed one.</summary>
public class CutExampleTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string> Examples => [.. Repository.CutPlanExamples];

    [Fact]
    public void There_are_lengths_sheets_and_both() =>
        Assert.Equal(["cut-plan-board", "cut-plan-fence", "cut-plan-shelves"], Repository.CutPlanExamples);

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task An_example_is_valid_by_the_contract_and_so_is_its_answer(string name)
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var request = Repository.ExampleRequest(name);
        Assert.Empty(contract.FaultsOf(JsonDocument.Parse(request).RootElement, "CutPlanRequest"));
        var answer = await service.PostAsync("/v1/cut-plans", request);
        Assert.Equal(200, answer.Status);
        Assert.Empty(contract.FaultsOf(answer.Json, "CuttingAnswer"));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_committed_answer_is_the_one_that_is_given(string name)
    {
        var answer = await service.PostAsync("/v1/cut-plans", Repository.ExampleRequest(name));
        var file = Repository.OpenApi($"examples/{name}.response.json");
        if (Repository.Regenerate)
        {
            await File.WriteAllBytesAsync(file, [.. answer.Body, (byte)'\n']);
        }

        Assert.Equal(await File.ReadAllTextAsync(file), Encoding.UTF8.GetString(answer.Body) + "\n");
    }

    [Theory]
    [InlineData("cut-plan-board")]
    [InlineData("cut-plan-shelves")]
    public async Task The_sheets_of_an_example_can_be_cut_from_edge_to_edge(string name)
    {
        var request = Repository.ExampleRequest(name);
        SheetCheck.Whole(request, await service.PostAsync("/v1/cut-plans", request));
    }

    [Fact]
    public async Task The_contract_shows_examples_of_a_cut_plan_at_its_own_call_only()
    {
        var paths = (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("paths");
        Assert.Equal(Repository.CutPlanExamples, Names("/v1/cut-plans"));
        Assert.Equal(Repository.Examples, Names("/v1/plans"));

        IEnumerable<string> Names(string path) => paths.GetProperty(path).GetProperty("post").GetProperty("requestBody")
            .GetProperty("content").GetProperty("application/json").GetProperty("examples").EnumerateObject().Select(e => e.Name);
    }
}
