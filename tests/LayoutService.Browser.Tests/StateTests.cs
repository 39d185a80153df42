using LayoutService.Api.Tests.Running;
using Microsoft.Playwright;

namespace LayoutService.Browser.Tests;

/// <summary>Each state that a person sees, looked at by axe-core and held to what it must show.</summary>
[Collection(InABrowser.Name)]
public sealed class StateTests(Browsers browsers)
{
    private const string Element = "<ceiling-calculator></ceiling-calculator>";

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task An_empty_calculator_asks_for_the_room_and_has_no_sketch_yet()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        Assert.Equal("", await yard.Field("Left wall to right wall").InputValueAsync());
        await Assertions.Expect(yard.Calculator.GetByText("The sketch appears once the lengths are filled in.")).ToBeVisibleAsync();
        await yard.IsAccessibleAsync();
        Assert.Empty(yard.Wrongs);
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_filled_room_is_said_back_and_sketched()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await yard.Calculator.GetByRole(AriaRole.Radio, new() { Name = "L", Exact = true }).CheckAsync();
        await yard.Field("Left wall to right wall").FillAsync("20ft");
        await yard.Field("Front wall to back wall").FillAsync("15' 3 1/2\"");
        await yard.Field("Cut-out, left to right").FillAsync("6'");
        await yard.Field("Cut-out, front to back").FillAsync("60 in");
        await yard.Field("Cut-out, front to back").BlurAsync();
        await Assertions.Expect(yard.Calculator.GetByText("= 183-1/2\"")).ToBeVisibleAsync();
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Img)).ToHaveAttributeAsync(
            "aria-label", "Room with 6 walls: 20' 0\", 10' 3-1/2\", 6' 0\", 5' 0\", 14' 0\", 15' 3-1/2\".");
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task What_is_missing_stands_in_a_list_that_leads_to_each_field()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await yard.Field("Left wall to right wall").FillAsync("14");
        await yard.Button("Work out the plan").ClickAsync();
        var list = yard.Calculator.GetByRole(AriaRole.Alert);
        await Assertions.Expect(list).ToBeFocusedAsync();
        await Assertions.Expect(list).ToContainTextAsync("3 things to put right");
        await Assertions.Expect(yard.Field("Left wall to right wall")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(yard.Field("Left wall to right wall")).ToHaveAccessibleDescriptionAsync("Say feet or inches: 12' or 12\".");
        await yard.IsAccessibleAsync();
        await list.GetByRole(AriaRole.Button, new() { Name = "First joist: wall to its middle" }).ClickAsync();
        await Assertions.Expect(yard.Field("First joist: wall to its middle")).ToBeFocusedAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task What_the_service_refuses_stands_beside_the_field_that_its_pointer_names()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await yard.Field("Left wall to right wall").FillAsync("14'");
        await yard.Field("Front wall to back wall").FillAsync("12'");
        await yard.Button("2. Joists").ClickAsync();
        await yard.Calculator.GetByText("As measured, one by one").ClickAsync();
        await yard.Field("Middle of each joist").FillAsync("8, 24, 40, 400");
        await yard.Button("Work out the plan").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByRole(AriaRole.Alert)).ToContainTextAsync("Middle of each joist");
        await Assertions.Expect(yard.Field("Middle of each joist")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(yard.Calculator.Locator("#f-positions-fault")).ToContainTextAsync("joist", new() { IgnoreCase = true });
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_plan_shows_the_figures_of_the_service_in_every_part()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync(Element);
        await yard.PlanRectangleAsync();
        var plan = await yard.ValueAsync("document.querySelector('ceiling-calculator').plan");
        var summary = plan.GetProperty("summary");
        var totals = await yard.Calculator.Locator(".totals").InnerTextAsync();
        Assert.Contains($"Sheets to buy\n{summary.GetProperty("sheetsToBuy")}", totals, StringComparison.Ordinal);
        Assert.Contains($"Rows of straps\n{summary.GetProperty("rows")}", totals, StringComparison.Ordinal);
        Assert.True(await yard.Calculator.Locator(".picture svg text").CountAsync() > 10);
        await yard.IsAccessibleAsync();

        foreach (var (tab, rows) in new[]
        {
            ("Order", plan.GetProperty("takeoff").GetProperty("lines").GetArrayLength()),
            ("Cuts", plan.GetProperty("cutPlan").GetProperty("stock").GetArrayLength() + plan.GetProperty("cutPlan").GetProperty("sheetStock").GetArrayLength()),
            ("Row marks", summary.GetProperty("rows").GetInt32()),
            ("Checks", plan.GetProperty("checks").GetArrayLength()),
        })
        {
            await yard.Calculator.GetByRole(AriaRole.Tab, new() { Name = tab, Exact = true }).ClickAsync();
            Assert.Equal(rows, await yard.Calculator.Locator(".panel:not([hidden]) tbody tr").CountAsync());
            await yard.IsAccessibleAsync();
        }

        await yard.Calculator.GetByRole(AriaRole.Tab, new() { Name = "Work order" }).ClickAsync();
        Assert.Equal(plan.GetProperty("steps").GetArrayLength(), await yard.Calculator.Locator(".work li").CountAsync());
        await yard.IsAccessibleAsync();
        Assert.Empty(yard.Wrongs);
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task The_front_page_has_the_demo_room_planned_and_breaks_no_policy()
    {
        var page = await browsers.PageAsync();
        var wrongs = new List<string>();
        page.Console += (_, said) => wrongs.AddRange(said.Type == "error" ? [said.Text] : []);
        await page.GotoAsync(browsers.Address.ToString());
        await page.Locator("ceiling-calculator .totals").WaitForAsync();
        await using var front = new YardPage(page, browsers.Address, "", "");
        Assert.Equal("0", await front.Calculator.Locator(".totals .good dd").InnerTextAsync());
        await front.IsAccessibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "For developers" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "Rules and their sources" }).WaitForAsync();
        Assert.Empty(wrongs);
    }
}
