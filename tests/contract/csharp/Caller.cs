// A caller's program in C# over a client that is made from the contract: what it sends and reads is checked by the compiler.
using LayoutService.Client;
using LayoutService.Client.Models;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Http.HttpClientLibrary;

using var http = new HttpClient();
using var adapter = new HttpClientRequestAdapter(new AnonymousAuthenticationProvider(), httpClient: http) { BaseUrl = args[0] };
var client = new LayoutClient(adapter);
PlanRequest Room(double kerf) => new()
{
    Reference = "typed",
    Units = UnitsWord.Metric,
    Room = new RoomRequest { Outline = new UntypedArray([.. new[] { (0, 0), (3600, 0), (3600, 3000), (0, 3000) }.Select(c => new UntypedArray([new UntypedInteger(c.Item1), new UntypedInteger(c.Item2)]))]) },
    JoistFields = [new JoistFieldRequest { Run = RunWord.Y, Spacing = new Length { Double = 400 }, First = new Length { String = "200 mm" } }],
    Strapping = new StrappingRequest { Kerf = new Length { Double = kerf } },
};

var plan = await client.V1.Plans.PostAsync(Room(3)) ?? throw new InvalidOperationException("no answer");
var rows = plan.Strapping?.Rows ?? [];
var pieces = rows.Sum(row => row.Pieces?.Count ?? 0);
if (plan.Reference != "typed" || plan.Summary?.Rows is not > 0 || rows.Count != plan.Summary.Rows || pieces < rows.Count)
{
    throw new InvalidOperationException("the plan is not one");
}

try
{
    await client.V1.Plans.PostAsync(Room(500));
    throw new InvalidOperationException("a kerf of 500 was taken");
}
catch (Problem problem)
{
    if (problem.Errors?[0].Pointer != "#/strapping/kerf")
    {
        throw;
    }

    Console.WriteLine($"C# client: {rows.Count} rows, {pieces} pieces; refused with {problem.Errors[0].Code}");
}
