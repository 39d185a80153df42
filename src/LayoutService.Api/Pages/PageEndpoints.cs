using LayoutService.Api.Calculator;

namespace LayoutService.Api.Pages;

/// <summary>The two pages for people: the calculator with a demo room, and the way in for developers.</summary>
public static class PageEndpoints
{
    internal const string StyleAddress = "/pages/page.css";
    internal const string PricesAddress = "/pages/demo-prices.json";
    internal const string IconAddress = "/pages/icon.svg";

    public static void MapPages(this IEndpointRouteBuilder routes)
    {
        var pages = routes.MapGroup("").ExcludeFromDescription();
        pages.MapGet("/", (CalculatorModule module) => FrontPage.Of(module));
        pages.MapGet("/developers", (CalculatorModule module) => DevelopersPage.Of(module));
        Map(pages, StyleAddress, "page.css", "text/css; charset=utf-8");
        Map(pages, PricesAddress, "demo-prices.json", "application/json");
        Map(pages, IconAddress, "icon.svg", "image/svg+xml");
    }

    private static void Map(RouteGroupBuilder pages, string address, string file, string mediaType) => pages.MapGet(address, (HttpResponse response) =>
    {
        response.Headers.CacheControl = "no-cache";
        return Results.Bytes(Resource.Bytes(file), mediaType);
    });
}
