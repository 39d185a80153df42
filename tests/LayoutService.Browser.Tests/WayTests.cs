using System.Net;
using System.Text.Json;
using LayoutService.Api.Tests.Running;
using Microsoft.Playwright;

namespace LayoutService.Browser.Tests;

/// <summary>How people get through it: by keys alone, on a phone, magnified, in other languages, with second thoughts.</summary>
[Collection(InABrowser.Name)]
public sealed class WayTests(Browsers browsers)
{
    private const string Element = "<ceiling-calculator></ceiling-calculator>";

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task Keys_alone_lead_from_an_empty_room_to_the_order()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await TabToAsync(yard, "across");
        await yard.Page.Keyboard.TypeAsync("14'");
        await TabToAsync(yard, "depth");
        await yard.Page.Keyboard.TypeAsync("12'");
        await TabToAsync(yard, "next");
        await yard.Page.Keyboard.PressAsync("Enter");
        await TabToAsync(yard, "first");
        await yard.Page.Keyboard.TypeAsync("8");
        await TabToAsync(yard, "calculate");
        await yard.Page.Keyboard.PressAsync("Enter");
        await yard.PlannedAsync();
        Assert.Equal("head", await KeyAsync(yard));
        await TabToAsync(yard, "tab-drawing");
        await yard.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal("tab-order", await KeyAsync(yard));
        Assert.True(await yard.Calculator.Locator("#panel-order tbody tr").CountAsync() > 5);
        Assert.True(await yard.Calculator.Locator("#panel-order").IsVisibleAsync());
        await TabToAsync(yard, "back");
    }

    [NeedsTheory(Browsers.Chromium)]
    [InlineData(320, 640, 1)]
    [InlineData(320, 256, 4)] // 1280 × 1024 at a zoom of 400 %
    public async Task Narrow_and_magnified_windows_lose_nothing_and_never_scroll_sideways(int width, int height, float scale)
    {
        await using var yard = await browsers.YardAsync(width, height, scale);
        await yard.OpenAsync("<ceiling-calculator demo></ceiling-calculator>", style: "body { margin: 0 }");
        await yard.PlannedAsync();
        foreach (var step in new[] { "4. Plan", "1. Room", "2. Joists", "3. Ceiling" })
        {
            await yard.Button(step).ClickAsync();
            Assert.Equal(width, (await yard.ValueAsync("document.documentElement.scrollWidth")).GetInt32());
            Assert.Equal("", (await yard.ValueAsync(SmallTargets)).GetString());
            if (step is "4. Plan" or "1. Room")
            {
                await yard.IsAccessibleAsync();
            }
        }
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task In_French_a_decimal_comma_is_read_and_never_sent()
    {
        await using var yard = await browsers.YardAsync();
        JsonElement sent = default;
        yard.Page.Request += (_, request) => sent = request.Url.Contains("/v1/plans", StringComparison.Ordinal) && request.PostData is { } body ? JsonDocument.Parse(body).RootElement : sent;
        await yard.OpenAsync("<ceiling-calculator units='metric'></ceiling-calculator>", lang: "fr-CA");
        await yard.Field("Du mur gauche au mur droit").FillAsync("3,81 m");
        await yard.Field("Du mur avant au mur arrière").FillAsync("3 200,5");
        await yard.Button("2. Solives").ClickAsync();
        await yard.Calculator.GetByText("Mesurées une à une").ClickAsync();
        await yard.Field("Axe de chaque solive").FillAsync("200; 600,5; 1000; 1400; 1800; 2200; 2600; 3000; 3400; 3700");
        await yard.IsAccessibleAsync();
        await yard.Button("Calculer le plan").ClickAsync();
        await yard.PlannedAsync();
        Assert.Equal("[[0,0],[3810,0],[3810,3200.5],[0,3200.5]]", sent.GetProperty("room").GetProperty("outline").GetRawText());
        Assert.Equal(600.5m, sent.GetProperty("joistFields")[0].GetProperty("positions")[1].GetDecimal());
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Tab, new() { Name = "Commande" })).ToBeVisibleAsync();
        await yard.Calculator.GetByRole(AriaRole.Tab, new() { Name = "Commande" }).ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByText("Panneau de gypse").First).ToBeVisibleAsync();
        await yard.IsAccessibleAsync();
    }

    [NeedsTheory(Browsers.Chromium)]
    [InlineData("imperial", "12' 6 1/2\"|150-1/2\"", "12ft 6-1/2in|150-1/2\"", "12′ 6½″|150-1/2\"", "150 1/2 in|150-1/2\"", "12'6|150\"", "5' 1/2\"|60-1/2\"", "3.81 m|150\"", "1,5 ft|18\"", "12|", "twelve|", "1/0\"|")]
    [InlineData("metric", "3810|3.81 m", "3 810 mm|3.81 m", "3,81 m|3.81 m", "381 cm|3.81 m", "3 200,5|3.2005 m", "12' 6\"|3.81 m", "٣٨١٠|3.81 m", "38x10|")]
    public async Task Lengths_are_understood_as_people_write_them_or_not_at_all(string units, params string[] readings)
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync($"<ceiling-calculator units='{units}'></ceiling-calculator>");
        foreach (var reading in readings)
        {
            var (text, said) = (reading.Split('|')[0], reading.Split('|')[1]);
            await yard.Field("Left wall to right wall").FillAsync(text);
            Assert.Equal(said.Length == 0 ? text : $"{text} = {said}", $"{text} {await yard.Calculator.Locator("#f-across-said").TextContentAsync()}".TrimEnd());
        }
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task In_Arabic_it_stands_from_right_to_left_and_drawings_do_not()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator lang='ar' demo></ceiling-calculator>");
        await yard.PlannedAsync();
        Assert.Equal("rtl", await yard.Calculator.Locator(".shell").GetAttributeAsync("dir"));
        Assert.Equal("ltr", (await yard.ValueAsync("getComputedStyle(document.querySelector('ceiling-calculator').shadowRoot.querySelector('.picture')).direction")).GetString());
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task Changes_are_undone_and_done_again_and_back_keeps_what_was_typed()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await yard.Field("Left wall to right wall").FillAsync("14'");
        await yard.Field("Front wall to back wall").FillAsync("12'");
        await yard.Calculator.GetByRole(AriaRole.Radio, new() { Name = "Corner by corner" }).CheckAsync();
        await Assertions.Expect(yard.Field("Length of wall 2")).ToHaveValueAsync("12'");
        await yard.Button("Undo").ClickAsync();
        await Assertions.Expect(yard.Field("Front wall to back wall")).ToHaveValueAsync("12'");
        await yard.Button("Undo").ClickAsync();
        await Assertions.Expect(yard.Field("Front wall to back wall")).ToHaveValueAsync("");
        await yard.Button("Redo").ClickAsync();
        await yard.Button("Next: Joists").ClickAsync();
        await yard.Button("Back").ClickAsync();
        await Assertions.Expect(yard.Field("Front wall to back wall")).ToHaveValueAsync("12'");
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_room_corner_by_corner_is_the_room_that_is_sent()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator units='metric' lang='en-GB'></ceiling-calculator>");
        await yard.Calculator.GetByRole(AriaRole.Radio, new() { Name = "Corner by corner" }).CheckAsync();
        await yard.Field("Length of wall 1").FillAsync("4000");
        await yard.Field("Length of wall 2").FillAsync("2500");
        await yard.Field("Wall 3 goes").SelectOptionAsync("back-left");
        await yard.Field("Wall 3, left to right").FillAsync("500");
        await yard.Field("Wall 3, front to back").FillAsync("0.5 m");
        await yard.Button("Add a wall").ClickAsync();
        await yard.Field("Wall 4 goes").SelectOptionAsync("left");
        await yard.Field("Length of wall 4").FillAsync("350 cm");
        await yard.Field("Length of wall 4").BlurAsync();
        Assert.Equal("[[0,0],[4000,0],[4000,2500],[3500,3000],[0,3000]]", (await yard.ValueAsync("document.querySelector('ceiling-calculator').request.room.outline")).GetRawText());
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_long_calculation_shows_that_it_goes_on_and_can_be_stopped()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator demo></ceiling-calculator>");
        await yard.PlannedAsync();
        await yard.AnswerAsync(HttpStatusCode.OK, "application/json", "{}", 90_000);
        await yard.Button("1. Room").ClickAsync();
        await yard.Button("Work out the plan").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Progressbar)).ToBeVisibleAsync();
        await Assertions.Expect(yard.Button("Stop")).ToBeFocusedAsync();
        await yard.IsAccessibleAsync();
        await yard.Button("Stop").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByText("Stopped. Nothing was changed.")).ToBeVisibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_busy_service_and_a_room_without_a_plan_are_told_in_plain_words()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator demo></ceiling-calculator>");
        await yard.PlannedAsync();
        await yard.AnswerAsync(HttpStatusCode.ServiceUnavailable, "application/problem+json", """{"type":"/problems/busy","title":"The service is busy","status":503,"detail":"All places are taken.","instance":"/v1/plans","requestId":"r"}""");
        await yard.Button("1. Room").ClickAsync();
        await yard.Button("Work out the plan").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Alert)).ToContainTextAsync("The planning service is busy. Try again in 7 seconds.");
        await yard.Page.UnrouteAllAsync();
        await yard.AnswerAsync(HttpStatusCode.UnprocessableContent, "application/problem+json", """
            {"type":"/problems/no-plan","title":"No sensible plan exists","status":422,"detail":"None.","instance":"/v1/plans","requestId":"r",
             "findings":[{"code":"c","text":"Row 3 has nothing to hang from.","params":{},"where":["R3"],"remedies":[{"code":"m","text":"Allow joints with scabs.","params":{}}]}]}
            """);
        await yard.Button("Work out the plan").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Alert)).ToContainTextAsync("Row 3 has nothing to hang from.");
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Alert)).ToContainTextAsync("Allow joints with scabs.");
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task On_paper_every_part_of_the_plan_shows_and_the_rest_of_the_page_does_not()
    {
        await using var yard = await browsers.YardAsync();
        await yard.Page.AddInitScriptAsync("window.print = () => { window.printed = true; }");
        await yard.OpenAsync("<ceiling-calculator demo></ceiling-calculator><p id='other'>Other wares</p>");
        await yard.PlannedAsync();
        await yard.Button("Print").ClickAsync();
        await yard.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True((await yard.ValueAsync("window.printed")).GetBoolean());
        foreach (var panel in new[] { "drawing", "order", "cuts", "marks", "checks", "work" })
        {
            Assert.True(await yard.Calculator.Locator($"#panel-{panel}").IsVisibleAsync());
        }

        Assert.False(await yard.Page.Locator("#other").IsVisibleAsync());
        await yard.Page.EvaluateAsync("dispatchEvent(new Event('afterprint'))");
        await yard.Page.EmulateMediaAsync(new() { Media = Media.Screen });
        Assert.True(await yard.Page.Locator("#other").IsVisibleAsync());
    }

    /// <summary>What can be pressed and is smaller than 24 × 24 (WCAG 2.2, 2.5.8); a box in a label is as large as its label.</summary>
    private const string SmallTargets = """
        [...document.querySelector('ceiling-calculator').shadowRoot.querySelectorAll('button, select, textarea, input[type=text], label.option, summary')]
          .filter(e => e.checkVisibility()).map(e => [e, e.getBoundingClientRect()]).filter(([, r]) => r.width < 24 || r.height < 24)
          .map(([e, r]) => `${e.outerHTML.slice(0, 80)} ${r.width}x${r.height}`).join('; ')
        """;

    private static async Task<string?> KeyAsync(YardPage yard) =>
        (await yard.ValueAsync("document.querySelector('ceiling-calculator').shadowRoot.activeElement?.dataset.key ?? ''")).GetString();

    private static async Task TabToAsync(YardPage yard, string key)
    {
        for (var presses = 0; presses < 80; presses++)
        {
            await yard.Page.Keyboard.PressAsync("Tab");
            if (await KeyAsync(yard) == key)
            {
                return;
            }
        }

        Assert.Fail($"Tabbing does not reach {key}.");
    }
}
