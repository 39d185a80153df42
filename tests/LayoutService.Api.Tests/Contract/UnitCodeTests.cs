using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace LayoutService.Api.Tests.Contract;

/// <summary>
/// Units and currencies of every example's answer, and of the orders written from them, against the published lists.
/// Units: UN/ECE Recommendation 20, revision 17 (2021), annexes II and III, read in UN/CEFACT's own repository uncefact/vocab-codes
/// (CLR/Rec20, file rec20_Rev17e-2021 of those annexes, commit 36270b0): code, name, and that its status is blank, so it is neither
/// marked as deleted nor as deprecated. Currencies: ISO 4217, read in the repository datasets/currency-codes (data/codes-all.csv, commit 051762c).
/// </summary>
public class UnitCodeTests(Service service) : IClassFixture<Service>
{
    /// <summary>Code, its name in Recommendation 20, and the trade's words for it here; what is counted is in ones.</summary>
    private static readonly Dictionary<string, (string Name, string[] Words)> Units = new()
    {
        ["C62"] = ("one", ["length", "sheet", "piece", "batt", "fastener", "panel"]),
        ["FOT"] = ("foot", ["ft"]),
        ["KGM"] = ("kilogram", ["kg"]),
        ["LBR"] = ("pound", ["lb"]),
        ["LTR"] = ("litre", ["litre"]),
        ["MTR"] = ("metre", ["m"]),
    };

    private static readonly string[] Currencies = ["CAD", "EUR", "GBP", "JPY", "KWD", "USD"];

    /// <summary>What a cut plan is weighed by where it has no price: see the contract's unit of a result.</summary>
    private static readonly string[] Unpriced = ["in", "mm", "ft2", "m2"];

    private static readonly string[] Quantities = ["counted", "quantity", "waste"];

    /// <summary>Members that are money, and stand in the currency of the order.</summary>
    private static readonly string[] Amounts = ["amount", "packPrice", "withTax", "amountApart", "amountTogether", "base", "cost", "saving"];

    public static TheoryData<string> Answers => [.. Repository.Examples, .. Repository.JobExamples, .. Repository.CutPlanExamples, .. Repository.ComparisonExamples];

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task Every_quantity_has_a_code_of_the_list_and_every_amount_one_currency(string name)
    {
        var path = name.Split('-')[0] switch { "job" => "/v1/jobs", "comparison" => "/v1/comparisons", "cut" => "/v1/cut-plans", _ => "/v1/plans" };
        var reply = await service.PostAsync(path, Repository.ExampleRequest(name));
        Assert.Equal(200, reply.Status);
        var objects = Objects(reply.Json).ToList();
        var measured = objects.Where(o => Quantities.Any(q => o.TryGetProperty(q, out _))).ToList();
        Assert.All(measured, line => Assert.Contains(line.GetProperty("unit").GetString(), Units[line.GetProperty("unitCode").GetString()!].Words));
        var named = objects.SelectMany(CurrenciesOf).Distinct().ToList();
        Assert.All(named, currency => Assert.Contains(currency, Currencies));
        Assert.True(named.Count <= 1, string.Join(", ", named));
        if (objects.Any(o => Amounts.Any(a => o.TryGetProperty(a, out var amount) && amount.ValueKind == JsonValueKind.Number && !Weighed(o))))
        {
            Assert.Single(named);
        }
    }

    [Fact]
    public void The_examples_have_every_unit_but_the_litre_and_two_currencies()
    {
        var answers = Repository.Examples.Concat(Repository.JobExamples)
            .Select(name => JsonDocument.Parse(File.ReadAllText(Repository.OpenApi($"examples/{name}.response.json"))).RootElement)
            .SelectMany(Objects).ToList();
        Assert.Equal(["C62", "FOT", "KGM", "LBR", "MTR"], answers.Where(o => o.TryGetProperty("unitCode", out _)).Select(o => o.GetProperty("unitCode").GetString()!).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(["CAD", "USD"], answers.SelectMany(CurrenciesOf).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("request-for-quotation")]
    [InlineData("order")]
    public async Task An_order_in_xml_has_no_other_units_and_currencies(string view)
    {
        foreach (var name in Repository.Examples)
        {
            var reply = await service.SendAsync(HttpMethod.Post, $"/v1/plans?view={view}", "application/xml", WithHead(Repository.ExampleRequest(name)));
            var attributes = XDocument.Parse(reply.Text).Descendants().SelectMany(e => e.Attributes()).ToLookup(a => a.Name.LocalName, a => a.Value);
            Assert.NotEmpty(attributes["unitCode"]);
            Assert.All(attributes["unitCode"], code => Assert.Contains(code, Units.Keys));
            Assert.All(attributes["currencyID"], code => Assert.Contains(code, Currencies));
        }
    }

    private static string WithHead(string request)
    {
        var whole = JsonNode.Parse(request)!.AsObject();
        whole["document"] = JsonNode.Parse("""{"id":"7","issueDate":"2024-05-06","buyer":"Fernhill Interiors","seller":"Quarry Lane Lumber"}""");
        return whole.ToJsonString();
    }

    private static IEnumerable<string> CurrenciesOf(JsonElement part)
    {
        if (part.TryGetProperty("currency", out var currency))
        {
            yield return currency.GetString()!;
        }

        if (part.TryGetProperty("cost", out _) && part.TryGetProperty("unit", out var unit) && !Unpriced.Contains(unit.GetString()))
        {
            yield return unit.GetString()!;
        }
    }

    /// <summary>Whether its cost is a length or an area, said in the unit beside it.</summary>
    private static bool Weighed(JsonElement part) => part.TryGetProperty("unit", out var unit) && Unpriced.Contains(unit.GetString());

    private static IEnumerable<JsonElement> Objects(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(m => Objects(m.Value)).Prepend(element),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Objects),
        _ => [],
    };
}
