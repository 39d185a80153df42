using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Fuzz;

/// <summary>
/// Requests made up from the contract, valid and invalid by it, to every operation that takes JSON. Set LAYOUT_CONTRACT_FUZZ
/// for more, and LAYOUT_CONTRACT_SEED for others; what failed is told with what was sent.
/// </summary>
public class ContractFuzzTests(Service service) : IClassFixture<Service>
{
    private const int EachBent = 2;

    [Fact]
    public async Task Whatever_is_made_up_from_the_contract_is_answered_by_the_contract()
    {
        var rounds = Setting("LAYOUT_CONTRACT_FUZZ", 120);
        var contract = (await service.GetAsync("/openapi/v1.json")).Json;
        var checks = new ContractChecks(contract);
        var dice = new ContractDice(contract, Setting("LAYOUT_CONTRACT_SEED", 20250601));
        var examples = Repository.Examples.Select(Repository.ExampleRequest).ToArray();
        var seen = new HashSet<(bool Valid, int Status)>();
        for (var round = 0; round < rounds; round++)
        {
            var (path, schema) = checks.Operations[round % checks.Operations.Count];
            var start = schema == "PlanRequest" && dice.Next(3) == 0 ? JsonNode.Parse(examples[dice.Next(examples.Length)]) : dice.Valid(schema);
            for (var bent = 0; bent <= EachBent; bent++)
            {
                var body = bent == 0 ? start : dice.Bent(start!.DeepClone());
                var text = body?.ToJsonString() ?? "null";
                var valid = checks.Takes(schema, body);
                Assert.True(valid || bent > 0, $"round {round}: the dice made an invalid {schema}: {text}");
                var reply = await service.PostAsync(path, text);
                var failed = checks.Failed(path, valid, reply).ToList();
                Assert.True(failed.Count == 0, $"round {round}, POST {path}, {(valid ? "valid" : "invalid")}: {string.Join(", ", failed)}\n{reply.Status} {reply.Text[..Math.Min(600, reply.Text.Length)]}\nfor {text}");
                seen.Add((valid, reply.Status));
            }
        }

        Assert.Superset(new HashSet<(bool, int)> { (true, 200), (true, 422), (false, 400), (false, 422) }, seen);
    }

    [Theory]
    [InlineData(true, 500, "application/problem+json", null, "no server error")]
    [InlineData(true, 400, "application/problem+json", null, "valid is read")]
    [InlineData(false, 200, "application/json", null, "invalid is refused")]
    [InlineData(true, 418, "application/problem+json", null, "declared status")]
    [InlineData(true, 422, "text/plain", null, "declared form")]
    [InlineData(true, 200, "application/json", """{"units":"metric"}""", "declared schema: ")]
    public async Task Each_check_notices_what_it_is_for(bool valid, int status, string form, string? body, string told)
    {
        var checks = new ContractChecks((await service.GetAsync("/openapi/v1.json")).Json);
        var real = await service.PostAsync("/v1/plans/check", status == 200 ? SmallRoom.Text : "{");
        var reply = real with { Status = status, MediaType = form, Body = body is null ? real.Body : Encoding.UTF8.GetBytes(body) };
        Assert.Contains(checks.Failed("/v1/plans/check", valid, reply), name => name.StartsWith(told, StringComparison.Ordinal));
    }

    private static int Setting(string name, int usual) =>
        Environment.GetEnvironmentVariable(name) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : usual;
}
