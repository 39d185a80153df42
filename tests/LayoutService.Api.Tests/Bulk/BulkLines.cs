using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Bulk;

/// <summary>Rooms as JSON Lines, and an answer in bulk as lines.</summary>
internal static class BulkLines
{
    public const string MediaType = "application/jsonl";

    /// <summary>A small room with a reference and sides of its own, on one line.</summary>
    public static string Room(int number) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""{"reference":"room {{number}}","units":"metric","room":{"outline":[[0,0],[{{3000 + (number % 80 * 10)}},0],[{{3000 + (number % 80 * 10)}},{{2400 + (number / 80 % 80 * 10)}}],[0,{{2400 + (number / 80 % 80 * 10)}}]]},"joistFields":[{"run":"y","spacing":400,"first":200}]}""");

    public static string Rooms(int count) => string.Concat(Enumerable.Range(0, count).Select(i => Room(i) + "\n"));

    /// <summary>An example of the contract, on one line.</summary>
    public static string Example(string name) => JsonNode.Parse(Repository.ExampleRequest(name))!.ToJsonString();

    public static async Task<IReadOnlyList<JsonElement>> AskAsync(Service service, string lines, string query = "?include=summary")
    {
        var reply = await service.PostAsync("/v1/plans/bulk" + query, Encoding.UTF8.GetBytes(lines), MediaType);
        Assert.Equal(200, reply.Status);
        Assert.Equal(MediaType, reply.MediaType);
        return Parse(reply.Text);
    }

    /// <summary>Every line; the last must be the summary, and nothing may stand after it.</summary>
    public static IReadOnlyList<JsonElement> Parse(string answer)
    {
        Assert.EndsWith("\n", answer);
        var lines = answer.Split('\n')[..^1].Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal("summary", lines[^1].GetProperty("kind").GetString());
        Assert.DoesNotContain(lines[..^1], line => line.GetProperty("kind").GetString() == "summary");
        return lines;
    }

    /// <summary>A line in short: kind, index, line, reference, status.</summary>
    public static string Brief(JsonElement line) =>
        $"{line.GetProperty("kind").GetString()} {line.GetProperty("index")} {line.GetProperty("line")} {(line.TryGetProperty("reference", out var r) ? r.GetString() : "-")} {line.GetProperty("status")}";

    public static string Summary(IReadOnlyList<JsonElement> lines) => lines[^1].GetProperty("summary").GetRawText();
}
