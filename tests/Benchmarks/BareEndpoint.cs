using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace LayoutService.Benchmarks;

/// <summary>
/// What a service of this framework can do at the most: reads the same request into the same types and answers with bytes that
/// were made beforehand. Runs until its input ends.
/// </summary>
internal static class BareEndpoint
{
    public const string Word = "bare";

    public static async Task RunAsync(string address, string answerFile)
    {
        var answer = await File.ReadAllBytesAsync(answerFile);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls(address);
        builder.Services.ConfigureHttpJsonOptions(options => WireJson.Apply(options.SerializerOptions));
        var app = builder.Build();
        app.MapPost("/v1/plans", (PlanRequest asked) => asked.Room is null ? Results.BadRequest() : Results.Bytes(answer, "application/json"));
        await app.StartAsync();
        await Console.In.ReadToEndAsync();
        await app.StopAsync();
    }
}
