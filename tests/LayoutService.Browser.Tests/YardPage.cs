using System.Collections.Concurrent;
using System.Net;
using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace LayoutService.Browser.Tests;

/// <summary>
/// A page of another origin than the service's, as a yard would have it, open in the browser. It counts what the page's policy
/// refused and what went wrong in it.
/// </summary>
internal sealed class YardPage(IPage page, Uri service, string module, string integrity) : IAsyncDisposable
{
    private readonly ConcurrentQueue<string> wrongs = new();

    public IPage Page => page;

    /// <summary>The first calculator on the page.</summary>
    public ILocator Calculator => page.Locator("ceiling-calculator").First;

    /// <summary>Policy violations, errors of scripts, and errors told to the console.</summary>
    public IReadOnlyCollection<string> Wrongs => wrongs;

    /// <summary>The policy of a strict page: nothing runs or is called but the service's, and no text becomes markup.</summary>
    public string StrictPolicy => $"default-src 'none'; script-src {Origin}; connect-src {Origin}; require-trusted-types-for 'script'; trusted-types 'none'";

    private string Origin => service.GetLeftPart(UriPartial.Authority);

    /// <summary>Opens the page with some elements in it; the service stands at another origin, since localhost is not 127.0.0.1.</summary>
    public async Task OpenAsync(string elements, string? policy = null, string style = "", string lang = "en-US")
    {
        page.Console += (_, said) => Note(said.Type == "error", said.Text);
        page.PageError += (_, error) => Note(true, error);
        await page.ExposeFunctionAsync("refusedByPolicy", (string what) => Note(true, "policy: " + what));
        await page.AddInitScriptAsync("addEventListener('securitypolicyviolation', e => refusedByPolicy(`${e.violatedDirective} ${e.blockedURI}`))");
        var address = $"http://localhost:{service.Port}/yard.html";
        await page.RouteAsync(address, route => route.FulfillAsync(new()
        {
            ContentType = "text/html; charset=utf-8",
            Headers = policy is null ? [] : new Dictionary<string, string> { ["Content-Security-Policy"] = policy },
            Body = $"""
                <!doctype html><html lang="{lang}"><head><title>A yard</title><link rel="icon" href="data:,">{(style.Length > 0 ? $"<style>{style}</style>" : "")}
                <script type="module" src="{Origin}{module}" integrity="{integrity}" crossorigin="anonymous"></script></head>
                <body><main><h1>A yard</h1>{elements}</main></body></html>
                """,
        }));
        await page.GotoAsync(address);
        try
        {
            await Calculator.GetByRole(AriaRole.Heading, new() { Level = 2 }).WaitForAsync();
        }
        catch (TimeoutException)
        {
            Assert.Fail($"The calculator did not come up: {string.Join("; ", wrongs)}");
        }
    }

    /// <summary>Waits for a plan on the first calculator.</summary>
    public Task PlannedAsync() => Calculator.Locator(".totals").WaitForAsync();

    public ILocator Field(string label) => Calculator.GetByLabel(label, new() { Exact = true });

    public ILocator Button(string name) => Calculator.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>Fills in a rectangular room with regular joists, and asks for the plan.</summary>
    public async Task PlanRectangleAsync(string across = "14'", string depth = "12' 6-1/2\"")
    {
        await Field("Left wall to right wall").FillAsync(across);
        await Field("Front wall to back wall").FillAsync(depth);
        await Button("2. Joists").ClickAsync();
        await Field("First joist: wall to its middle").FillAsync("8");
        await Button("Work out the plan").ClickAsync();
        await PlannedAsync();
    }

    /// <summary>Finds nothing against WCAG 2.2 A and AA, by axe-core.</summary>
    public async Task IsAccessibleAsync()
    {
        var found = await page.Locator("ceiling-calculator").First.RunAxe(new AxeRunOptions
        {
            RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"] },
        });
        Assert.NotEmpty(found.Passes);
        Assert.Empty(found.Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
    }

    /// <summary>A value from inside the page, as JSON says it.</summary>
    public async Task<JsonElement> ValueAsync(string script) =>
        JsonDocument.Parse(await page.EvaluateAsync<string>($"JSON.stringify({script.Trim()})")).RootElement;

    /// <summary>Answers the service's calls in its stead.</summary>
    public Task AnswerAsync(HttpStatusCode status, string mediaType, string body, int delay = 0) => page.RouteAsync("**/v1/plans**", async route =>
    {
        await Task.Delay(delay);
        try
        {
            await route.FulfillAsync(new() { Status = (int)status, ContentType = mediaType, Body = body, Headers = new Dictionary<string, string> { ["Access-Control-Allow-Origin"] = "*", ["Access-Control-Expose-Headers"] = "Retry-After", ["Retry-After"] = "7" } });
        }
        catch (PlaywrightException)
        {
            // the page gave the call up
        }
    });

    public async ValueTask DisposeAsync() => await page.Context.CloseAsync();

    private void Note(bool isWrong, string text)
    {
        if (isWrong)
        {
            wrongs.Enqueue(text);
        }
    }
}
