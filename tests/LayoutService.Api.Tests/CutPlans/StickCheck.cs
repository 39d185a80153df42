using System.Text.Json;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>Recomputes the lengths of a cut plan from its answer alone, for requests in which lengths are numbers.</summary>
internal static class StickCheck
{
    /// <summary>Every piece is cut once, every length holds what is cut from it with its kerfs, and the figures are right.</summary>
    public static void Whole(string request, HttpReply reply)
    {
        Assert.True(reply.Status == 200, reply.Text);
        var sticks = JsonDocument.Parse(request).RootElement.GetProperty("sticks");
        var answer = reply.Json;
        var kerf = answer.GetProperty("kerf").GetDecimal();
        var trim = answer.GetProperty("endTrim").GetDecimal();
        var cut = new List<(string Id, decimal Length)>();
        foreach (var stick in answer.GetProperty("stock").EnumerateArray())
        {
            var length = stick.GetProperty("length").GetDecimal();
            var pieces = stick.GetProperty("cuts").EnumerateArray()
                .Select(c => (c.GetProperty("pieceId").GetString()!, c.GetProperty("length").GetDecimal())).ToList();
            var used = trim + pieces.Sum(p => p.Item2) + (kerf * (pieces.Count - 1));
            Assert.True(used <= length, stick.ToString());
            Assert.Equal(Math.Max(0, length - used - kerf), stick.GetProperty("offcut").GetDecimal());
            cut.AddRange(pieces);
        }

        Assert.Equal(Wanted(sticks).Order(), cut.Order());
        Figures(answer, sticks, "sticks", answer.GetProperty("stock"), s => s.GetProperty("length").GetDecimal(), "length");
    }

    /// <summary>The result is what the stock used comes to, and its bound and gap agree with it.</summary>
    public static void Figures(
        JsonElement answer, JsonElement asked, string use, JsonElement bought, Func<JsonElement, decimal> size, string measure)
    {
        var offers = asked.GetProperty("stock").EnumerateArray().Select((s, i) => (
            Id: s.TryGetProperty("id", out var id) ? id.GetString()! : $"{(use == "sticks" ? "stick" : "sheet")}-{i + 1}",
            Price: s.TryGetProperty("packPrice", out var price) ? price.GetDecimal() : (decimal?)null,
            Quantity: s.TryGetProperty("quantity", out var quantity) ? quantity.GetInt32() : int.MaxValue)).ToList();
        var priced = offers.TrueForAll(o => o.Price is not null);
        var used = bought.EnumerateArray().GroupBy(s => s.GetProperty("stockId").GetString()!).ToDictionary(g => g.Key, g => g.Count());
        Assert.All(offers, o => Assert.True(used.GetValueOrDefault(o.Id) <= o.Quantity, o.Id));

        var cost = bought.EnumerateArray().Sum(s => priced ? offers.Single(o => o.Id == s.GetProperty("stockId").GetString()).Price!.Value : size(s));
        var result = answer.GetProperty("results").EnumerateArray().Single(r => r.GetProperty("use").GetString() == use);
        Assert.Equal(priced ? "cost" : measure, result.GetProperty("objective").GetString());
        Assert.Equal(cost, result.GetProperty("cost").GetDecimal(), 5);
        var bound = result.GetProperty("lowerBound").GetDecimal();
        Assert.InRange(bound, 0, cost);
        Assert.Equal(bound == 0 ? 0 : (cost - bound) / bound, result.GetProperty("gap").GetDecimal(), 4);
        Assert.Equal(result.GetProperty("gap").GetDecimal() == 0, result.GetProperty("provedOptimal").GetBoolean());
    }

    public static IEnumerable<(string Id, decimal Length)> Wanted(JsonElement sticks) =>
        sticks.GetProperty("wanted").EnumerateArray().SelectMany((w, i) => Names(w, "piece", i).Select(id => (id, w.GetProperty("length").GetDecimal())));

    /// <summary>Ids of the pieces of one wanted item, as the contract describes them.</summary>
    public static IEnumerable<string> Names(JsonElement wanted, string usual, int index)
    {
        var id = wanted.TryGetProperty("id", out var own) ? own.GetString()! : $"{usual}-{index + 1}";
        var count = wanted.TryGetProperty("count", out var many) ? many.GetInt32() : 1;
        return count == 1 ? [id] : Enumerable.Range(1, count).Select(n => $"{id}-{n}");
    }
}
