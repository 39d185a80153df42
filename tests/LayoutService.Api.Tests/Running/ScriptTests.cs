using System.Globalization;
using System.Text;

namespace LayoutService.Api.Tests.Running;

/// <summary>The scripts that the docs show, run as they stand against the service.</summary>
[Collection(OwnProcess.Name)]
public sealed class ScriptTests : IAsyncLifetime
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(100);
    private readonly string folder = Directory.CreateTempSubdirectory("layout-scripts").FullName;
    private RunningService service = null!;

    public async Task InitializeAsync() => service = await RunningService.StartAsync();

    public async Task DisposeAsync()
    {
        await service.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    [NeedsFact("python3")]
    public Task Python_writes_the_orders() => WritesOrdersAsync("python3", Script("orders.py"));

    [NeedsFact("jq", "jq")]
    public Task Curl_writes_the_orders() => WritesOrdersAsync("sh", Script("orders.sh"));

    [Fact]
    public Task CSharp_writes_the_orders()
    {
        // apart from the repository's own build settings, as a reader has it
        var copy = Path.Combine(folder, "orders.cs");
        File.Copy(Script("orders.cs"), copy);
        return WritesOrdersAsync("dotnet", "run", copy, "--");
    }

    [NeedsFact("node")]
    public async Task TypeScript_writes_the_orders()
    {
        var version = await Tool.RunAsync("node", ["--version"], Longest);
        var major = int.Parse(version[1..].Split('.')[0], CultureInfo.InvariantCulture);
        if (major > 22)
        {
            await WritesOrdersAsync("node", Script("orders.ts"));
            return;
        }

        // older ones cannot read types: a packaged reader of them is fetched, as the script's head says
        await Tool.RunAsync("npm", ["install", "--silent", "--no-audit", "--no-fund", "--prefix", folder, "esbuild@0.28.2"], Longest);
        var plain = Path.Combine(folder, "orders.mjs");
        await Tool.RunAsync(Path.Combine(folder, "node_modules", ".bin", "esbuild"), [Script("orders.ts"), "--format=esm", "--target=node20", $"--outfile={plain}", "--log-level=error"], Longest);
        await WritesOrdersAsync("node", plain);
    }

    [NeedsFact("curl", "curl")]
    public async Task A_file_split_into_pieces_has_the_answers_of_the_whole()
    {
        var rooms = Path.Combine(folder, "rooms.jsonl");
        await File.WriteAllTextAsync(rooms, Bulk.BulkLines.Rooms(50));
        var answers = Path.Combine(folder, "answers.jsonl");
        await Tool.RunAsync("sh", [Script("split.sh"), rooms, answers, Address, "7", "3", "?include=summary"], Longest);
        var plans = (await File.ReadAllLinesAsync(answers)).Select(line => line[line.IndexOf("\"plan\":", StringComparison.Ordinal)..]);
        using var client = new HttpClient { BaseAddress = service.Address };
        using var content = new StringContent(Bulk.BulkLines.Rooms(50), Encoding.UTF8, Bulk.BulkLines.MediaType);
        using var whole = await client.PostAsync("/v1/plans/bulk?include=summary", content);
        var lines = (await whole.Content.ReadAsStringAsync()).Split('\n')[..50];
        Assert.Equal(lines.Select(line => line[line.IndexOf("\"plan\":", StringComparison.Ordinal)..]), plans);
    }

    private string Address => service.Address.ToString().TrimEnd('/');

    private static string Script(string name) => Path.Combine(Repository.Root, "docs", "scripts", name);

    /// <summary>Runs a script over the CSV of the docs; every script must write the very same file.</summary>
    private async Task WritesOrdersAsync(string program, params string[] words)
    {
        var orders = Path.Combine(folder, "orders.csv");
        var printed = await Tool.RunAsync(program, [.. words, Script("rooms.csv"), orders, Address], Longest, folder);
        Assert.Equal("3 rooms planned, 1 not", printed.Trim());
        Assert.Equal(await ExpectedAsync(), await File.ReadAllTextAsync(orders));
    }

    /// <summary>The order worked out here, from the answers to single calls.</summary>
    private async Task<string> ExpectedAsync()
    {
        string[] rooms =
        [
            """{"reference":"den","units":"imperial","room":{"outline":[[0,0],[138,0],[138,162],[0,162]]},"joistFields":[{"run":"y","spacing":16,"first":8}]}""",
            """{"reference":"office, north","units":"imperial","room":{"outline":[[0,0],[121.5,0],[121.5,144],[0,144]]},"joistFields":[{"run":"x","spacing":16,"first":10}]}""",
            """{"reference":"workshop","units":"metric","room":{"outline":[[0,0],[5200,0],[5200,3900],[0,3900]]},"joistFields":[{"run":"y","spacing":400,"first":150}]}""",
        ];
        using var client = new HttpClient { BaseAddress = service.Address };
        var orders = new StringBuilder("reference,code,description,quantity,unit\r\n");
        foreach (var room in rooms)
        {
            using var content = new StringContent(room, Encoding.UTF8, "application/json");
            using var response = await client.PostAsync("/v1/plans", content);
            var plan = (await HttpReply.OfAsync(response)).Json;
            foreach (var line in plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray())
            {
                orders.AppendJoin(',', new[] { plan.GetProperty("reference"), line.GetProperty("code"), line.GetProperty("description"), line.GetProperty("quantity"), line.GetProperty("unit") }.Select(value => Cell(value.ToString()))).Append("\r\n");
            }
        }

        return orders.ToString();
    }

    private static string Cell(string text) => text.IndexOfAny(['"', ',']) >= 0 ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
