using System.Text;

namespace LayoutService.Api.Tests.Contract;

/// <summary>Every example of the contract is valid by it, is planned, and its answer is valid by it too.</summary>
public class ExampleTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string> Examples => [.. Repository.Examples];

    [Fact]
    public void There_is_a_rectangle_an_L_with_an_opening_an_addition_that_runs_the_other_way_angled_walls_batts_bulkheads_with_lights_uneven_joists_and_a_smallest_request() =>
        Assert.Equal(["addition-runs-the-other-way", "angled-room", "batts-over-ducts", "board-on-joists", "l-room-with-chimney", "l-suite-with-bulkhead", "minimal", "plain-rectangle", "typical-room", "uneven-joists-with-partition"], Repository.Examples);

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task An_example_is_valid_by_the_contract_and_so_is_its_answer(string name)
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var request = Repository.ExampleRequest(name);
        Assert.Empty(contract.FaultsOf(System.Text.Json.JsonDocument.Parse(request).RootElement, "PlanRequest"));

        var answer = await service.PostAsync("/v1/plans", request);
        Assert.Equal(200, answer.Status);
        Assert.Empty(contract.FaultsOf(answer.Json, "PlanAnswer"));
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_committed_answer_is_the_one_that_is_given(string name)
    {
        var answer = await service.PostAsync("/v1/plans", Repository.ExampleRequest(name));
        var file = Repository.OpenApi($"examples/{name}.response.json");
        if (Repository.Regenerate)
        {
            await File.WriteAllBytesAsync(file, [.. answer.Body, (byte)'\n']);
        }

        Assert.Equal(await File.ReadAllTextAsync(file), Encoding.UTF8.GetString(answer.Body) + "\n");
    }

    [Fact]
    public async Task The_schema_check_itself_finds_a_fault()
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var unknown = System.Text.Json.JsonDocument.Parse(SmallRoom.With("colour", "\"red\"")).RootElement;
        Assert.NotEmpty(contract.FaultsOf(unknown, "PlanRequest"));
        var answer = System.Text.Json.JsonDocument.Parse("""{"units":"metric"}""").RootElement;
        Assert.NotEmpty(contract.FaultsOf(answer, "PlanAnswer"));
    }
}
