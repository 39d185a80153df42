using System.Text.Json;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>
/// Worked problems of a carpentry course. Source: US Army Engineer School, EN0069A, lesson 4, answers (public domain); the
/// arithmetic was done again. The book saws without loss, so the kerf is 0 unless said.
/// </summary>
public class WorkedProblemTests(Service service) : IClassFixture<Service>
{
    private const string TenAndTwelve = """[{"id":"10ft","length":120},{"id":"12ft","length":144}]""";

    [Theory]
    [InlineData(4, TenAndTwelve, "10ft", 1, 8)]
    [InlineData(4, """[{"id":"12ft","length":144}]""", "12ft", 1, 32)]
    [InlineData(5, TenAndTwelve, "12ft", 1, 4)]
    public async Task Of_28_inch_stakes_a_10_ft_length_gives_four_and_a_12_ft_length_five(int stakes, string stock, string chosen, int lengths, decimal waste)
    {
        var bought = await CutAsync($$"""[{"id":"stake","length":28,"count":{{stakes}}}]""", stock, "0");
        Assert.Equal(Enumerable.Repeat(chosen, lengths), bought.Select(b => b.GetProperty("stockId").GetString()));
        Assert.Equal(waste, bought[0].GetProperty("offcut").GetDecimal());
    }

    /// <summary>Five 8 ft lengths waste 13 ft, three 10 ft lengths 3 ft.</summary>
    [Fact]
    public async Task Nine_3_ft_pieces_come_from_three_10_ft_lengths()
    {
        var both = await CutAsync("""[{"id":"p","length":36,"count":9}]""", """[{"id":"8ft","length":96},{"id":"10ft","length":120}]""", "0");
        Assert.Equal(["10ft", "10ft", "10ft"], both.Select(b => b.GetProperty("stockId").GetString()));
        Assert.Equal(36, both.Sum(b => b.GetProperty("offcut").GetDecimal()));
        var eights = await CutAsync("""[{"id":"p","length":36,"count":9}]""", """[{"id":"8ft","length":96}]""", "0");
        Assert.Equal(5, eights.Count);
        Assert.Equal(13 * 12, eights.Sum(b => b.GetProperty("offcut").GetDecimal()));
    }

    /// <summary>
    /// Four uprights of 5'-1", two of 3'-7" out of what the four leave, and two more lengths for the rails: six in all. The
    /// rails' own size is not in the text found, so each is taken as a whole length. A kerf of 1/8 in changes nothing.
    /// </summary>
    [Theory]
    [InlineData("0")]
    [InlineData("0.125")]
    public async Task Offcuts_of_the_long_uprights_give_the_short_ones_so_six_10_ft_lengths_are_enough(string kerf)
    {
        var bought = await CutAsync(
            """[{"id":"upright","length":61,"count":4},{"id":"short","length":43,"count":2},{"id":"rail","length":120,"count":2}]""",
            """[{"id":"10ft","length":120}]""", kerf);
        Assert.Equal(6, bought.Count);
        Assert.Equal(2, bought.Count(b => b.GetProperty("cuts").EnumerateArray().Select(c => c.GetProperty("length").GetDecimal()).SequenceEqual([61, 43])));
    }

    private async Task<List<JsonElement>> CutAsync(string wanted, string stock, string kerf)
    {
        var request = $$$"""{"units":"imperial","kerf":{{{kerf}}},"sticks":{"wanted":{{{wanted}}},"stock":{{{stock}}}}}""";
        var reply = await service.PostAsync("/v1/cut-plans", request);
        StickCheck.Whole(request, reply);
        Assert.True(reply.Json.GetProperty("results")[0].GetProperty("provedOptimal").GetBoolean());
        return [.. reply.Json.GetProperty("stock").EnumerateArray()];
    }
}
