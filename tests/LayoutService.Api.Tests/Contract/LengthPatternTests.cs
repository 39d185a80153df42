using System.Text.Json;

namespace LayoutService.Api.Tests.Contract;

/// <summary>What the service reads as a length, the contract calls one; what the contract refuses, the service refuses.</summary>
public class LengthPatternTests(Service service) : IClassFixture<Service>
{
    private static readonly string[] Lengths =
    [
        "12' 6 1/2\"", "12ft 6-1/2in", "12'-6 1/2\"", "150 1/2 in", "150-1/2\"", "12.5 ft", "12\u2032 6 1/2\u2033", "12\u2019 6 1/2\u201D",
        "12\u2018 6\u00BD\u201C", "12' 6 1\u20442''", "12'\u00A06\u202F1/2\"", "12' 6\u20131/2\"", ".5 in", "\u215Din", "-3 1/2\"", "\u22122' 6\"",
        "3810 mm", "3810mm", "3.81 m", "381 cm", "3 Metres", "12 FT. 6 IN.", "  3810 mm  ", "0 in", "12`6\u00B4\u00B4", "6\uFF02", "5\uFF07", "1/64\"",
    ];

    private static readonly string[] Others = ["", "1", "mm", "three mm", "3,81 m", "3 & 4 in", "3\tin", "\u4E09 m", "<3 in", new string('1', 41)];

    [Fact]
    public async Task Every_text_that_is_read_matches_the_contract()
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        foreach (var text in Lengths)
        {
            Assert.DoesNotContain(await FaultsAsync(text), f => f.Contains("length_", StringComparison.Ordinal));
            Assert.Empty(contract.FaultsOf(JsonSerializer.SerializeToElement(text), "Length"));
        }
    }

    [Fact]
    public async Task Every_text_that_the_contract_refuses_is_not_read()
    {
        var contract = new ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        foreach (var text in Others)
        {
            Assert.NotEmpty(contract.FaultsOf(JsonSerializer.SerializeToElement(text), "Length"));
            Assert.Contains(await FaultsAsync(text), f => f.Contains("length_", StringComparison.Ordinal));
        }
    }

    private async Task<IReadOnlyList<string>> FaultsAsync(string text)
    {
        var reply = await service.PostAsync("/v1/plans/check", SmallRoom.With("room.floorBuildUp", JsonSerializer.Serialize(text)));
        return reply.Status == 200 ? [] : reply.Faults;
    }
}
