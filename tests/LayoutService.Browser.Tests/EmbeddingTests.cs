using LayoutService.Api.Tests.Running;
using Microsoft.Playwright;

namespace LayoutService.Browser.Tests;

/// <summary>The calculator in pages that are not ours: strict, hostile, and with a cart.</summary>
[Collection(InABrowser.Name)]
public sealed class EmbeddingTests(Browsers browsers)
{
    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_page_under_a_strict_policy_with_trusted_types_has_nothing_to_refuse()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator cart></ceiling-calculator>", yard.StrictPolicy.Replace("default-src 'none';", "default-src 'none'; img-src data:;", StringComparison.Ordinal));
        await yard.PlanRectangleAsync();
        Assert.True(await yard.Calculator.Locator(".picture svg line, .picture svg path").CountAsync() > 10);
        await yard.Button("Larger").ClickAsync();
        await yard.Button("Copy the order").ClickAsync();
        await Assertions.Expect(yard.Calculator.GetByText("The order is copied.")).ToBeVisibleAsync();
        foreach (var name in new[] { "Drawing (SVG)", "Job sheet (PDF)", "Order (CSV)" })
        {
            var file = await yard.Page.RunAndWaitForDownloadAsync(() => yard.Button(name).ClickAsync());
            Assert.NotEmpty(await File.ReadAllBytesAsync((await file.PathAsync())!));
        }

        Assert.Equal("rgb(11, 92, 99)", (await yard.ValueAsync("getComputedStyle(document.querySelector('ceiling-calculator').shadowRoot.querySelector('.primary')).backgroundColor")).GetString());
        Assert.Empty(yard.Wrongs);
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task Two_calculators_on_a_page_of_hostile_styles_keep_their_looks_and_their_rooms()
    {
        const string Hostile = "* { all: unset !important; color: red !important; font-size: 60px !important; display: inline !important } button, input, svg, table { display: none !important }";
        await using var plain = await browsers.YardAsync();
        await plain.OpenAsync("<ceiling-calculator></ceiling-calculator>");
        const string Looks = """
            (() => { const root = document.querySelector('ceiling-calculator').shadowRoot; const of = (at, ...names) => names.map(name => getComputedStyle(root.querySelector(at))[name]).join(' ');
              return [of('h2', 'color', 'fontSize', 'display'), of('button.primary', 'color', 'backgroundColor', 'display', 'minHeight'), of('input[type=text]', 'display', 'fontSize', 'borderTopWidth')].join('; ') })()
            """;
        var wanted = (await plain.ValueAsync(Looks)).GetString();

        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator id='one'></ceiling-calculator><ceiling-calculator id='two' lang='fr-CA'></ceiling-calculator>", style: Hostile);
        Assert.Equal(wanted, (await yard.ValueAsync(Looks)).GetString());
        Assert.Equal("block", (await yard.ValueAsync("getComputedStyle(document.querySelector('#one')).display")).GetString());
        await yard.PlanRectangleAsync();
        var second = yard.Page.Locator("#two");
        Assert.Equal("", await second.GetByLabel("Du mur gauche au mur droit").InputValueAsync());
        await second.GetByLabel("Du mur gauche au mur droit").FillAsync("9 pi");
        await yard.Button("1. Room").ClickAsync();
        Assert.Equal("14'", await yard.Field("Left wall to right wall").InputValueAsync());
        await yard.IsAccessibleAsync();
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task The_page_s_cart_receives_the_order_with_the_yard_s_own_prices()
    {
        await using var yard = await browsers.YardAsync();
        await yard.Page.RouteAsync("**/prices.json", route => route.FulfillAsync(new()
        {
            ContentType = "application/json",
            Body = """
                {"units":"imperial","currency":"CAD","straps":[{"id":"S12","length":144,"sku":"1312","packPrice":5.5}],
                 "sheets":[{"id":"B8","width":48,"length":96,"sku":"G48","packPrice":16}],"items":[{"code":"board-screw","packSize":1000,"packPrice":24}]}
                """,
        }));
        await yard.Page.AddInitScriptAsync("window.carts = []; addEventListener('ceiling-order', e => carts.push(e.detail)); addEventListener('ceiling-plan', e => window.told = e.detail.takeoff.totals)");
        await yard.OpenAsync("<ceiling-calculator cart catalogue='/prices.json' reference='cart 12'></ceiling-calculator>");
        await yard.PlanRectangleAsync();
        await yard.Button("Add the order to the cart").ClickAsync();
        var order = (await yard.ValueAsync("carts"))[0];
        var lines = order.GetProperty("takeoff").GetProperty("lines").EnumerateArray().ToList();
        var straps = lines.Single(line => line.GetProperty("code").GetString() == "strap");
        var pack = straps.GetProperty("packs")[0];
        Assert.Equal("1312", pack.GetProperty("sku").GetString());
        Assert.Equal(pack.GetProperty("count").GetInt32() * 5.5m, straps.GetProperty("amount").GetDecimal());
        Assert.Contains(lines, line => line.GetProperty("code").GetString() == "sheet" && line.GetProperty("packs")[0].GetProperty("sku").GetString() == "G48");
        Assert.Equal("cart 12", order.GetProperty("plan").GetProperty("reference").GetString());
        Assert.Equal("CAD", (await yard.ValueAsync("told.currency")).GetString());
        await Assertions.Expect(yard.Calculator.Locator(".totals")).ToContainTextAsync("Cost of priced items");
    }

    [NeedsFact(Browsers.Chromium, Browsers.Chromium)]
    public async Task A_theme_is_given_by_properties_and_parts()
    {
        await using var yard = await browsers.YardAsync();
        await yard.OpenAsync("<ceiling-calculator></ceiling-calculator>", style: "ceiling-calculator { --ceiling-accent: rgb(70, 20, 90) } ceiling-calculator::part(title) { text-transform: uppercase }");
        Assert.Equal("rgb(70, 20, 90)", (await yard.ValueAsync("getComputedStyle(document.querySelector('ceiling-calculator').shadowRoot.querySelector('.primary')).backgroundColor")).GetString());
        Assert.Equal("uppercase", (await yard.ValueAsync("getComputedStyle(document.querySelector('ceiling-calculator').shadowRoot.querySelector('h2')).textTransform")).GetString());
    }
}
