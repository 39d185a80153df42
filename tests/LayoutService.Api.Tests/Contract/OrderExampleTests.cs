using System.Text;
using System.Text.Json;

namespace LayoutService.Api.Tests.Contract;

/// <summary>Every example of a job and of a comparison is valid by the contract, and its answer is the committed one and valid too.</summary>
public class OrderExampleTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string, string, string> Examples
    {
        get
        {
            var all = new TheoryData<string, string, string>();
            foreach (var name in Repository.JobExamples)
            {
                all.Add(name, "/v1/jobs", "Job");
            }

            foreach (var name in Repository.ComparisonExamples)
            {
                all.Add(name, "/v1/comparisons", "Comparison");
            }

            return all;
        }
    }

    [Fact]
    public void There_is_a_job_of_a_dozen_rooms_and_a_comparison()
    {
        var job = JsonDocument.Parse(Repository.ExampleRequest("job-twelve-rooms")).RootElement;
        Assert.Equal(12, job.GetProperty("rooms").GetArrayLength());
        Assert.NotEmpty(Repository.ComparisonExamples);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task An_example_and_its_answer_are_valid_by_the_contract_and_the_answer_is_the_committed_one(string name, string path, string schema)
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var request = Repository.ExampleRequest(name);
        Assert.Empty(contract.FaultsOf(JsonDocument.Parse(request).RootElement, schema + "Request"));
        var answer = await service.PostAsync(path, request);
        Assert.Equal(200, answer.Status);
        Assert.Empty(contract.FaultsOf(answer.Json, schema + "Answer"));
        var file = Repository.OpenApi($"examples/{name}.response.json");
        if (Repository.Regenerate)
        {
            await File.WriteAllBytesAsync(file, [.. answer.Body, (byte)'\n']);
        }

        Assert.Equal(await File.ReadAllTextAsync(file), Encoding.UTF8.GetString(answer.Body) + "\n");
    }
}
