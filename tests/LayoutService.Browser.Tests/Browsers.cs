using System.Text.Json;
using LayoutService.Api.Tests.Running;
using Microsoft.Playwright;

namespace LayoutService.Browser.Tests;

/// <summary>The service as a process of its own and one browser, started when the first test asks for a page, ended after the last.</summary>
public sealed class Browsers : IAsyncLifetime
{
    public const string Chromium = "chromium";

    /// <summary>How long a page may take for anything; only a broken one, or a crowded machine, takes a second.</summary>
    private const float LongestMilliseconds = 30_000;

    private readonly SemaphoreSlim starting = new(1);
    private RunningService? service;
    private IPlaywright? driver;
    private IBrowser? browser;
    private (string Address, string Integrity) module;

    public Uri Address => service!.Address;

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        driver?.Dispose();
        if (service is not null)
        {
            await service.DisposeAsync();
        }
    }

    /// <summary>A page of a yard in a window of its own, of a size in CSS pixels.</summary>
    internal async Task<YardPage> YardAsync(int width = 1200, int height = 900, float scale = 1)
    {
        var page = await PageAsync(width, height, scale);
        return new(page, service!.Address, module.Address, module.Integrity);
    }

    /// <summary>An empty page.</summary>
    internal async Task<IPage> PageAsync(int width = 1200, int height = 900, float scale = 1)
    {
        await StartAsync();
        var window = await browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, DeviceScaleFactor = scale, Permissions = ["clipboard-read", "clipboard-write"] });
        window.SetDefaultTimeout(LongestMilliseconds);
        return await window.NewPageAsync();
    }

    private async Task StartAsync()
    {
        await starting.WaitAsync();
        try
        {
            if (browser is not null)
            {
                return;
            }

            Assertions.SetDefaultExpectTimeout(LongestMilliseconds);
            service = await RunningService.StartAsync();
            using var client = new HttpClient { BaseAddress = service.Address };
            var current = JsonDocument.Parse(await client.GetStringAsync("/calculator/current.json")).RootElement;
            module = (current.GetProperty("address").GetString()!, current.GetProperty("integrity").GetString()!);
            driver = await Playwright.CreateAsync();

            // a yard's page that a test gives the browser counts as one of the wide network, and may not reach this machine otherwise
            browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-gpu", "--disable-features=LocalNetworkAccessChecks"] });
        }
        finally
        {
            starting.Release();
        }
    }
}

/// <summary>One service and one browser for all classes; they take turns.</summary>
[CollectionDefinition(Name)]
public sealed class InABrowser : ICollectionFixture<Browsers>
{
    public const string Name = "in a browser";
}
