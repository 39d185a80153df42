using System.Text.Json.Nodes;

namespace LayoutService.Api.Describing;

/// <summary>Last touches to the written contract that the generator's model cannot hold.</summary>
internal static class ContractTyping
{
    /// <summary>States the server, that no call needs credentials, and what the tags mean.</summary>
    public static void Finish(JsonObject document)
    {
        document["servers"] = new JsonArray(new JsonObject { ["url"] = "/", ["description"] = "This service." });
        document["security"] = new JsonArray();
        document["tags"] = new JsonArray(
            new JsonObject { ["name"] = "Operation", ["description"] = "For those who run the service, or find their way in it." },
            new JsonObject { ["name"] = "Plans", ["description"] = "One room in, the whole plan or one part of it out." },
            new JsonObject { ["name"] = "Standards", ["description"] = "The figures applied, and where they are published." });
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
