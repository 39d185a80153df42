using System.Globalization;
using System.Runtime.InteropServices;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Benchmarks;

/// <summary>Measures quickly and writes docs/performance.md: what a person reads who asks how fast this is.</summary>
public static class PerformancePage
{
    private const double SolverSeconds = 60;

    private static readonly double[] Areas = [10, 30, 100, 300, 1000, 3000, 10_000];

    public static void Write(TextWriter page)
    {
        Line(page, $"""
            # How fast the engine is

            Measured on {DateTime.UtcNow:yyyy-MM-dd} with engine {LayoutEngine.EngineVersion}, .NET {Environment.Version}, {Environment.ProcessorCount} cores ({RuntimeInformation.ProcessArchitecture}); load of the machine just before: {Load()}.
            The engine alone, one thread, from a validated survey to the whole plan: rows, sheets, lumber, counts, checks and steps;
            no HTTP and no JSON. Times are the median of many calls in one warm process, by the clock, so a busy machine lengthens them;
            beside them the fastest call, which is about what an idle machine gives. Bytes are those allocated by one call.

            This page is written by

                dotnet run -c Release --project tests/Benchmarks -- table > docs/performance.md

            and the same scenes run under BenchmarkDotNet with `dotnet run -c Release --project tests/Benchmarks -- --filter '*'`.
            `-- digest` prints one hash over the plans of 300 seeded rooms, so that a change for speed can be shown to alter none.

            ## The typical room

            6 × 9 m, joists at irregular places 340 to 480 mm apart, two doubled; 1x3 straps from five lengths, sheets from three, all priced.
            Whole, it has twelve lights, two ducts, a bulkhead along a wall and batts (the example `typical-room` is its like); bare, none of these.

            | room and effort | time, median | fastest | allocated | calls |
            |---|---|---|---|---|
            """);
        foreach (var (name, survey) in new[]
        {
            ("whole, quick", FurnishedRoom.Of(Effort.Quick)), ("bare, quick", Scenes.Typical(Effort.Quick)),
            ("whole, thorough", FurnishedRoom.Of(Effort.Thorough)), ("bare, thorough", Scenes.Typical(Effort.Thorough)),
        })
        {
            var effort = survey.Effort;
            var measured = Measuring.Median(() => LayoutEngine.Plan(survey), effort == Effort.Quick ? 10 : 20, 5);
            Line(page, $"| {name} | {Time(measured.Milliseconds)} | {Time(measured.Fastest)} | {Bytes(measured.Bytes)} | {measured.Calls} |");
        }

        Growth(page);
        Against(page);
        Bulk(page);
    }

    // measured by a script of its own, over an hour at times; its table is taken over as it stands
    private static void Bulk(TextWriter page)
    {
        Line(page, $"\n## Many rooms in one call\n\nFrom [bulk](measured/bulk.md), which says how and what to mind.\n");
        foreach (var row in File.ReadLines(Path.Combine("docs", "measured", "bulk.md")).Where(row => row.StartsWith('|')))
        {
            Line(page, $"{row.Replace("[performance](../performance.md)", "this page", StringComparison.Ordinal)}");
        }

        Line(page, $"\n## Over HTTP\n\nFrom [beside a bare endpoint](measured/http.md), which says how and what to mind.\n");
        foreach (var row in File.ReadLines(Path.Combine("docs", "measured", "http.md")).Where(row => row.StartsWith('|')))
        {
            Line(page, $"{row}");
        }
    }

    private static void Growth(TextWriter page)
    {
        Line(page, $"""

            ## Growth

            Rooms of the same make, sides as 2 to 3, quick effort. The last two columns divide the fastest time and bytes by n log n, n the area in m²: where they do not rise, growth is no worse than that.
            Where the quick search leaves butt joints of neighbouring courses too near each other, the engine spends the thorough search's budget on that room: 1,000 m² and 10,000 m² are such rooms here and stand above the others.

            | area | time, median | fastest | allocated | ns per m² log₂ m² | bytes per m² log₂ m² |
            |---|---|---|---|---|---|
            """);
        foreach (var area in Areas)
        {
            var survey = Scenes.OfArea(area);
            var measured = Measuring.Median(() => LayoutEngine.Plan(survey), 3, 3);
            var order = area * Math.Log2(area);
            Line(page, $"| {area:#,0} m² | {Time(measured.Milliseconds)} | {Time(measured.Fastest)} | {Bytes(measured.Bytes)} | {measured.Fastest * 1e6 / order:#,0} | {measured.Bytes / order:#,0} |");
        }
    }

    private static void Against(TextWriter page)
    {
        Line(page, $"""

            ## Beside a general solver

            Rows and lumber of rectangles, quick effort, against the same problem as an integer program in Google.OrTools (CP-SAT, all cores, {SolverSeconds} s at most), in the same run.
            The solver's problem is the easier one: neighbouring rows may break on one joist there, and it may stop as soon as it is as good as our answer (so its cost is the first it found that is no dearer, not its best).
            The ratio is its time by ours; with ">" where it found nothing as cheap in its time.

            | room | rows, ours and its | cost, ours | cost, its | time, ours | time, its | ratio |
            |---|---|---|---|---|---|---|
            """);
        foreach (var (name, survey) in new[]
        {
            ("12 m²", Scenes.OfArea(12)), ("30 m²", Scenes.OfArea(30)), ("typical, 54 m²", Scenes.Typical(Effort.Quick)), ("100 m²", Scenes.OfArea(100)),
        })
        {
            var ours = RowsAndLumber.Plan(survey);
            var measured = Measuring.Median(() => RowsAndLumber.Plan(survey), 2);
            var its = GeneralSolver.Plan(survey, ours, SolverSeconds);
            var reached = its.Cost <= ours.Cost;
            var cost = its.Cost is { } found ? (found / 10_000m).ToString("0.00", CultureInfo.InvariantCulture) : "none";
            Line(page, $"| {name} | {ours.Rows} and {its.Rows} | {ours.Cost / 10_000m:0.00} | {cost} | {Time(measured.Milliseconds)} | {Time(its.Milliseconds)} | {(reached ? "" : "> ")}{its.Milliseconds / measured.Milliseconds:#,0} |");
        }
    }

    private static void Line(TextWriter page, FormattableString text)
    {
        page.WriteLine(text.ToString(CultureInfo.InvariantCulture));
        page.Flush();
    }

    private static string Time(double milliseconds) => milliseconds < 100
        ? milliseconds.ToString("0.00", CultureInfo.InvariantCulture) + " ms"
        : (milliseconds / 1000).ToString("0.00", CultureInfo.InvariantCulture) + " s";

    private static string Bytes(long bytes) => (bytes / 1000.0).ToString("#,0", CultureInfo.InvariantCulture) + " kB";

    // the three averages that Linux keeps; a busy machine slows everything here
    private static string Load() => File.Exists("/proc/loadavg")
        ? string.Join(", ", File.ReadAllText("/proc/loadavg").Split(' ').Take(3))
        : "not known";
}
