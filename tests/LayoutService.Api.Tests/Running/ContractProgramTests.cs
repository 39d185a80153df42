namespace LayoutService.Api.Tests.Running;

/// <summary>Programs of the npm registry and of NuGet look at the contract, make clients from it, and call the running service with them.</summary>
[Collection(OwnProcess.Name)]
public sealed class ContractProgramTests
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(8);

    [NeedsFact("npm", "npm")]
    public async Task Linters_validators_generated_clients_and_work_flows_find_nothing()
    {
        await using var service = await RunningService.StartAsync();
        var printed = await Tool.RunAsync(
            "bash", [Path.Combine(Repository.Root, "tests", "contract", "check.sh"), service.Address.ToString().TrimEnd('/')], Longest);
        foreach (var said in new[] { "schemas compiled", "typed client:", "generated client:", "Workflows: 3 passed, 3 total", "all checks passed" })
        {
            Assert.Contains(said, printed, StringComparison.Ordinal);
        }
    }

    [NeedsFact("curl", "curl")]
    public async Task A_client_in_CSharp_made_from_the_contract_compiles_without_a_warning_and_runs()
    {
        await using var service = await RunningService.StartAsync();
        var printed = await Tool.RunAsync(
            "bash", [Path.Combine(Repository.Root, "tests", "contract", "csharp.sh"), service.Address.ToString().TrimEnd('/')], Longest);
        Assert.Contains("C# client: 9 rows, 9 pieces; refused with out_of_range", printed, StringComparison.Ordinal);
    }
}
