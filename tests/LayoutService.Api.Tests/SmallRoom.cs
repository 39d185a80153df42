using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests;

/// <summary>The request that tests start from.</summary>
internal static class SmallRoom
{
    /// <summary>The smallest request: metric, joists along y.</summary>
    public const string Text = """
        {"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}
        """;

    /// <summary>The smallest request with one member set; the path is of names and numbers, as in <c>room.outline.1</c>.</summary>
    public static string With(string path, string json) => With(Text, path, json);

    public static string With(string room, string path, string json)
    {
        var root = JsonNode.Parse(room)!;
        var steps = path.Split('.');
        var node = root;
        foreach (var step in steps[..^1])
        {
            node = Inner(node, step);
        }

        if (node is JsonArray items)
        {
            var index = int.Parse(steps[^1]);
            if (index == items.Count)
            {
                items.Add(JsonNode.Parse(json));
            }
            else
            {
                items[index] = JsonNode.Parse(json);
            }
        }
        else
        {
            node.AsObject()[steps[^1]] = JsonNode.Parse(json);
        }

        return root.ToJsonString();
    }

    public static string Without(string path)
    {
        var root = JsonNode.Parse(Text)!;
        var steps = path.Split('.');
        var node = root;
        foreach (var step in steps[..^1])
        {
            node = Inner(node, step);
        }

        node.AsObject().Remove(steps[^1]);
        return root.ToJsonString();
    }

    private static JsonNode Inner(JsonNode node, string step)
    {
        if (int.TryParse(step, out var index))
        {
            return node.AsArray()[index]!;
        }

        var members = node.AsObject();
        if (members[step] is null)
        {
            members[step] = new JsonObject();
        }

        return members[step]!;
    }
}
