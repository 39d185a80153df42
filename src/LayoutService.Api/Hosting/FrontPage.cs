namespace LayoutService.Api.Hosting;

/// <summary>A plain page for a person who opens the service's address.</summary>
internal static class FrontPage
{
    public const string Html = """
        <!doctype html>
        <html lang="en">
        <head><meta charset="utf-8"><title>LayoutService</title></head>
        <body>
        <h1>LayoutService</h1>
        <p>Plans a strapped and boarded ceiling under an existing wood floor: one room in, the whole plan out.</p>
        <ul>
        <li><code>POST /v1/plans</code> the whole plan of a room</li>
        <li><code>POST /v1/plans/bulk</code> many rooms, as JSON Lines both ways</li>
        <li><code>POST /v1/plans/check</code> only the errors that the plan would give</li>
        <li><code>POST /v1/strapping</code>, <code>POST /v1/sheets</code> one part alone</li>
        <li><a href="/v1/limits">GET /v1/limits</a> the largest that a request may be</li>
        <li><a href="/v1/rules">GET /v1/rules</a>, <a href="/v1/rulesets">/v1/rulesets</a>, <a href="/v1/materials">/v1/materials</a> the figures applied and their sources</li>
        <li><a href="/openapi/v1.json">GET /openapi/v1.json</a>, <a href="/openapi/v1.yaml">/openapi/v1.yaml</a>, <a href="/openapi/v1-typed.json">/openapi/v1-typed.json</a> the contract</li>
        <li><a href="/health/live">GET /health/live</a>, <a href="/health/ready">/health/ready</a></li>
        </ul>
        </body>
        </html>

        """;
}
