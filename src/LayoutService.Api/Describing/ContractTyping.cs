using System.Text.Json.Nodes;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Describing;

/// <summary>Last touches to the written contract that the generator's model cannot hold.</summary>
internal static class ContractTyping
{
    /// <summary>States the server, that a call needs a key where keys are set, and what the tags mean.</summary>
    public static void Finish(JsonObject document)
    {
        OnOneLine(document["paths"]!);
        OnOneLine(document["components"]!);
        document["servers"] = new JsonArray(new JsonObject { ["url"] = "/", ["description"] = "This service, in production or wherever it runs.", ["x-internal"] = false });
        document["components"]!["securitySchemes"] = new JsonObject
        {
            ["key"] = new JsonObject
            {
                ["type"] = "apiKey",
                ["in"] = "header",
                ["name"] = CallerKeys.Header,
                ["description"] = "Needed where the operator has set keys; elsewhere everybody may call.",
            },
        };
        document["security"] = new JsonArray(new JsonObject { ["key"] = new JsonArray() }, new JsonObject());
        document["tags"] = new JsonArray(
            new JsonObject { ["name"] = "Cut plans", ["description"] = "The cutting engine alone: pieces and stock in, cuts out." },
            new JsonObject { ["name"] = "Operation", ["description"] = "For those who run the service, or find their way in it." },
            new JsonObject { ["name"] = "Orders", ["description"] = "Many rooms as one order, and variants of one room side by side." },
            new JsonObject { ["name"] = "Plans", ["description"] = "One room in, the whole plan or one part of it out." },
            new JsonObject { ["name"] = "Standards", ["description"] = "The figures applied, and where they are published." });
    }

    /// <summary>Descriptions come from comments, whose lines end where the code's do.</summary>
    private static void OnOneLine(JsonNode node)
    {
        if (node is JsonObject members)
        {
            if (members["description"] is JsonValue text && text.TryGetValue<string>(out var said))
            {
                members["description"] = said.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\n', ' ');
            }

            foreach (var inner in members.Select(m => m.Value).OfType<JsonNode>().ToList())
            {
                OnOneLine(inner);
            }
        }
        else if (node is JsonArray items)
        {
            foreach (var item in items.OfType<JsonNode>())
            {
                OnOneLine(item);
            }
        }
    }

    /// <summary>Removes examples that write a length as text; they are no examples of the narrowed contract.</summary>
    public static void DropTextExamples(JsonNode path)
    {
        foreach (var operation in path.AsObject().Select(o => o.Value).OfType<JsonObject>())
        {
            (operation["requestBody"]?["content"]?["application/json"] as JsonObject)?.Remove("examples");
        }
    }
}
