// Plans every room of a CSV in one call and writes what to order.
//
//     dotnet run orders.cs -- rooms.csv orders.csv http://127.0.0.1:8080
//
// .NET 10 or later, no packages.
#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

var (roomsFile, ordersFile, service) = (args[0], args[1], args[2]);
var body = new StringBuilder();
foreach (var row in File.ReadLines(roomsFile).Skip(1).Where(row => row.Length > 0))
{
    var cells = Regex.Matches(row, "(\"(?:[^\"]|\"\")*\"|[^,]*)(?:,|$)").Select(m => m.Groups[1].Value)
        .Select(c => c.StartsWith('"') ? c[1..^1].Replace("\"\"", "\"") : c).ToArray();
    double width = Number(cells[2]), depth = Number(cells[3]);
    body.Append(new JsonObject
    {
        ["reference"] = cells[0],
        ["units"] = cells[1],
        ["room"] = new JsonObject { ["outline"] = new JsonArray(At(0, 0), At(width, 0), At(width, depth), At(0, depth)) },
        ["joistFields"] = new JsonArray(new JsonObject { ["run"] = cells[4], ["spacing"] = Number(cells[5]), ["first"] = Number(cells[6]) }),
    }.ToJsonString()).Append('\n');
}

using var client = new HttpClient { BaseAddress = new Uri(service) };
using var content = new StringContent(body.ToString(), Encoding.UTF8, new MediaTypeHeaderValue("application/jsonl"));
using var call = new HttpRequestMessage(HttpMethod.Post, "/v1/plans/bulk?include=takeoff") { Content = content };
using var answer = await client.SendAsync(call, HttpCompletionOption.ResponseHeadersRead);
answer.EnsureSuccessStatusCode();
using var lines = new StreamReader(await answer.Content.ReadAsStreamAsync());
using var orders = new StreamWriter(ordersFile) { NewLine = "\r\n" };
orders.WriteLine("reference,code,description,quantity,unit");
JsonNode? summary = null;
while (await lines.ReadLineAsync() is { } text)
{
    var line = JsonNode.Parse(text)!;
    foreach (var item in line["plan"]?["takeoff"]?["lines"]?.AsArray() ?? [])
    {
        orders.WriteLine(string.Join(',', new[] { line["reference"], item!["code"], item["description"], item["quantity"], item["unit"] }.Select(Cell)));
    }

    if (line["problem"] is { } problem)
    {
        Console.Error.WriteLine($"line {line["line"]} ({line["reference"]}): {problem["detail"]}");
    }

    summary = line["summary"] ?? summary;
}

if (summary?["complete"]?.GetValue<bool>() != true)
{
    Console.Error.WriteLine($"The answer was cut; send the rest again from room {summary?["nextIndex"] ?? 0}.");
    return 1;
}

Console.WriteLine($"{summary["ok"]} rooms planned, {summary["failed"]} not");
return 0;

static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
static JsonArray At(double x, double y) => new(x, y);
static string Cell(JsonNode? value) => value?.ToString() is { } text && text.IndexOfAny(['"', ',', '\r', '\n']) >= 0
    ? $"\"{text.Replace("\"", "\"\"")}\""
    : value?.ToString() ?? "";
