using LayoutService.Api.Calculator;

namespace LayoutService.Api.Pages;

/// <summary>The calculator with its demo room planned, as a yard's page would hold it.</summary>
internal static class FrontPage
{
    public static PageResult Of(CalculatorModule module) => new(
        "LayoutService: plan a ceiling",
        $"""<script type="module" src="{module.Address}" integrity="{module.Integrity}" crossorigin="anonymous"></script>""",
        $"""
        <header>
        <p class="name">LayoutService</p>
        <nav aria-label="Pages"><a href="/developers">For developers</a></nav>
        </header>
        <main>
        <h1>A strapped and boarded ceiling, planned before anyone drives to the yard</h1>
        <p>Give the room as measured. You get every row of straps with its marks, every sheet and hole, what to cut from what, what to order,
        and the rules that were checked. The room and the prices below are made up; change anything in it, or start over with your own.</p>
        <ceiling-calculator demo cart catalogue="{PageEndpoints.PricesAddress}"></ceiling-calculator>
        <noscript><p>The calculator needs JavaScript. The service can also be called without it: see the <a href="/developers">page for developers</a>.</p></noscript>
        </main>
        <footer><p>It works with figures alone. Local codes, the inspector, the electrician and the other licensed trades decide.</p></footer>
        """);
}
