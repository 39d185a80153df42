using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Api.Tests.Contract;

namespace LayoutService.Api.Tests.Fuzz;

/// <summary>What any answer must be by the contract, whatever was sent: six checks, each told by its name.</summary>
internal sealed class ContractChecks(JsonElement contract)
{
    private readonly ContractSchema schemas = new(WithParts(contract));

    /// <summary>Operations that take JSON: path, and the schema of what they take.</summary>
    public IReadOnlyList<(string Path, string Schema)> Operations { get; } =
    [
        .. contract.GetProperty("paths").EnumerateObject()
            .Where(path => path.Value.TryGetProperty("post", out var post) && post.GetProperty("requestBody").GetProperty("content").TryGetProperty("application/json", out _))
            .Select(path => (path.Name, NameOf(path.Value.GetProperty("post").GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema"))!)),
    ];

    /// <summary>Whether the contract takes a body. A member that is null is as good as absent, which the schemas do not mention.</summary>
    public bool Takes(string schema, JsonNode? body) =>
        schemas.FaultsOf(JsonElement.Parse(WithoutNulls(body)?.ToJsonString() ?? "null"), schema).Count == 0;

    private static JsonNode? WithoutNulls(JsonNode? value) => value switch
    {
        JsonObject members => new JsonObject(members.Where(m => m.Value is not null).Select(m => KeyValuePair.Create(m.Key, WithoutNulls(m.Value)))),
        JsonArray items => new JsonArray([.. items.Select(WithoutNulls)]),
        _ => value?.DeepClone(),
    };

    /// <summary>Names of the checks that an answer fails.</summary>
    /// <param name="path">The operation.</param>
    /// <param name="valid">Whether what was sent is valid by its schema.</param>
    /// <param name="reply">What came back.</param>
    public IEnumerable<string> Failed(string path, bool valid, HttpReply reply)
    {
        if (reply.Status >= 500)
        {
            yield return "no server error";
        }

        if (valid && reply.Status == 400)
        {
            yield return "valid is read";
        }

        if (!valid && reply.Status is not (400 or 422))
        {
            yield return "invalid is refused";
        }

        var responses = contract.GetProperty("paths").GetProperty(path).GetProperty("post").GetProperty("responses");
        if (!responses.TryGetProperty(reply.Status.ToString(System.Globalization.CultureInfo.InvariantCulture), out var declared))
        {
            yield return "declared status";
            yield break;
        }

        if (!declared.GetProperty("content").TryGetProperty(reply.MediaType ?? "", out var content))
        {
            yield return "declared form";
            yield break;
        }

        if (FaultOf(content.GetProperty("schema"), reply) is { } fault)
        {
            yield return "declared schema: " + fault;
        }
    }

    private string? FaultOf(JsonElement schema, HttpReply reply)
    {
        if (NameOf(schema) is { } one)
        {
            return schemas.FaultsOf(reply.Json, one).FirstOrDefault();
        }

        var each = NameOf(schema.GetProperty("items"))!;
        return reply.Json.EnumerateArray().SelectMany(item => schemas.FaultsOf(item, each)).FirstOrDefault();
    }

    /// <summary>The contract with a part of a room closed like the room, but without what it needs: what the words of the contract say of it.</summary>
    private static JsonElement WithParts(JsonElement contract)
    {
        var root = JsonNode.Parse(contract.GetRawText())!;
        var part = root["components"]!["schemas"]!["PlanRequest"]!.DeepClone();
        part.AsObject().Remove("required");
        root["components"]!["schemas"]!["PlanPart"] = part;
        return JsonElement.Parse(root.ToJsonString());
    }

    private static string? NameOf(JsonElement schema) => schema.TryGetProperty("$ref", out var name) ? name.GetString()!.Split('/')[^1] : null;
}
