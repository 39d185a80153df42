using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Orders;

/// <summary>Jobs of small priced rooms.</summary>
internal static class SmallJob
{
    /// <summary>What three rooms share: stock and packs of an invented yard.</summary>
    public const string Common = """
        {"units":"metric","strapping":{"stock":[{"id":"s24","length":2400,"packPrice":2.1},{"id":"s48","length":4800,"packPrice":4.3}]},
         "sheets":{"stock":[{"id":"b24","width":1200,"length":2400,"packPrice":13.37},{"id":"b36","width":1200,"length":3600,"packPrice":19.99}]},
         "prices":{"currency":"CAD","tax":[{"name":"HST","rate":0.13}],
           "items":[{"code":"strap-screw","id":"p100","packSize":100,"packPrice":7.77},{"code":"strap-screw","id":"p350","packSize":350,"packPrice":22.2},
                    {"code":"board-screw","packSize":500,"packPrice":11.11},{"code":"joint-tape","packSize":75,"packPrice":4.05},{"code":"joint-compound","packSize":17,"packPrice":21.49}]},
         "document":{"id":"RFQ-7","issueDate":"2024-05-06","buyer":"Fernhill Interiors","seller":"Quarry Lane Lumber"}}
        """;

    public static string Of(params (int Width, int Depth)[] rooms) => Of([.. rooms.Select(r => Room(r.Width, r.Depth))]);

    public static string Of(params string[] rooms) => $$"""{"reference":"three rooms","common":{{Common}},"rooms":[{{string.Join(',', rooms)}}]}""";

    public static string Room(int width, int depth) =>
        $$"""{"room":{"outline":[[0,0],[{{width}},0],[{{width}},{{depth}}],[0,{{depth}}]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}""";

    /// <summary>The whole request that a room of a job stands for.</summary>
    public static string Alone(string room)
    {
        var merged = JsonNode.Parse(Common)!.AsObject();
        foreach (var (name, value) in JsonNode.Parse(room)!.AsObject())
        {
            merged[name] = value?.DeepClone();
        }

        return merged.ToJsonString();
    }

    public static decimal Amount(this JsonElement element) => element.GetProperty("amount").GetDecimal();
}
