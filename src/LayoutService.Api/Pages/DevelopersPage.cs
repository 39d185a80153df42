using System.Globalization;
using System.Text;
using System.Text.Json;
using LayoutService.Api.Calculator;
using LayoutService.Api.Catalogues;
using LayoutService.Api.Hosting;
using LayoutService.Api.Wire;
using static LayoutService.Api.Pages.PageResult;

namespace LayoutService.Api.Pages;

/// <summary>What a developer needs first. Each list is written from the data that the service itself uses.</summary>
internal static class DevelopersPage
{
    private static readonly (string Address, string Says)[] Documents =
    [
        ("/openapi/v1.json", "the contract, OpenAPI 3.1"), ("/openapi/v1.yaml", "the same as YAML"), ("/openapi/v1-typed.json", "with lengths as numbers only, for generated clients"), ("/openapi/v1-3.2.json", "OpenAPI 3.2, with the safe call QUERY and the items of JSON Lines"),
        ("/v1/rules", "every rule"), ("/v1/rulesets", "the building codes"), ("/v1/materials", "materials known"), ("/v1/limits", "limits"),
        ("/calculator/current.json", "which calculator is served"), ("/health/live", "is it alive"), ("/health/ready", "may requests be sent"),
    ];

    public static PageResult Of(CalculatorModule module) => new("LayoutService for developers", string.Empty, $"""
        <header>
        <p class="name">LayoutService</p>
        <nav aria-label="Pages"><a href="/">Calculator</a></nav>
        </header>
        <main>
        <h1>For developers</h1>
        <p>One room in by <code>POST /v1/plans</code>, the whole plan out. Nothing is kept: the same request has the same answer. Every call stands in the contract.</p>
        <h2 id="documents">Contract and data</h2>
        <ul>
        {Lines(Documents.Select(d => $"""<li><a href="{d.Address}"><code>{d.Address}</code></a> {d.Says}</li>"""))}
        </ul>
        <h2 id="embed">The calculator in your page</h2>
        <p>One element in one module of {Kilobytes(module.Gzipped.Length)} kB packed. What this address gives never changes. Put your own address of the service before it.</p>
        <pre tabindex="0"><code>{Text(Snippet(module))}</code></pre>
        <h2 id="problems">Kinds of problems</h2>
        <p>Refusals are RFC 9457 documents; <code>type</code> is one of these.</p>
        <div class="wide" role="region" aria-labelledby="problems" tabindex="0"><table>
        <thead><tr><th scope="col">Type</th><th scope="col">Status</th><th scope="col">Title</th><th scope="col">What it means</th></tr></thead>
        <tbody>
        {Lines(ProblemKind.All.Select(k => $"""<tr><th scope="row"><a href="{k.Address}">{Text(k.Name)}</a></th><td>{k.Status}</td><td>{Text(k.Title)}</td><td>{Text(k.Text)}</td></tr>"""))}
        </tbody></table></div>
        <h2 id="limits">Limits</h2>
        <p>The largest that each part of a request may be; one past any of them is refused.</p>
        <dl class="limits">
        {Lines(Limits().Select(l => $"<div><dt>{Text(l.Name)}</dt><dd>{l.Value}</dd></div>"))}
        </dl>
        <h2 id="rules">Rules and their sources</h2>
        <p>Set of figures {Text(CatalogueWriting.Version)}. Figures that were transcribed from memory or from a secondary text say so.</p>
        <div class="wide" role="region" aria-labelledby="rules" tabindex="0"><table>
        <thead><tr><th scope="col">Rule</th><th scope="col">What</th><th scope="col">Value</th><th scope="col">Source</th></tr></thead>
        <tbody>
        {Lines(CatalogueWriting.Rules().Rules.Select(Row))}
        </tbody></table></div>
        </main>
        """);

    /// <summary>What a page puts in to have the calculator.</summary>
    public static string Snippet(CalculatorModule module) => $"""
        <script type="module" src="https://your-layout-service{module.Address}"
                integrity="{module.Integrity}" crossorigin="anonymous"></script>
        <ceiling-calculator lang="en-CA" currency="CAD" catalogue="/prices.json" cart></ceiling-calculator>
        """;

    private static string Row(RuleAnswer rule)
    {
        var first = rule.Values.Count > 0 ? rule.Values[0] : null;
        var more = rule.Values.Count > 1 ? $" and {rule.Values.Count - 1} more" : string.Empty;
        var source = first is null ? string.Empty : string.Join(", ", new[] { first.Source.Document, first.Source.Edition, first.Source.Clause }.Where(part => !string.IsNullOrEmpty(part)));
        return $"""<tr><th scope="row"><a href="/v1/rules/{Text(rule.Id)}">{Text(rule.Id)}</a></th><td>{Text(rule.Title)}</td><td>{Text(first?.Value?.Text)}{more}</td><td>{Text(source)}</td></tr>""";
    }

    private static IEnumerable<(string Name, string Value)> Limits() =>
        JsonSerializer.SerializeToElement(new LimitsAnswer(), WireJson.Options).EnumerateObject()
            .Select(limit => (limit.Name, limit.Value.GetInt64().ToString("N0", CultureInfo.InvariantCulture)));

    private static string Lines(IEnumerable<string> lines) => new StringBuilder().AppendJoin('\n', lines).ToString();

    private static int Kilobytes(int bytes) => (bytes + 999) / 1000;
}
