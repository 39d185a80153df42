using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Reads the floor tables for the joists as found (NBC 9.23.4.2. and 9.23.9.4.); null where the ruleset has none.</summary>
public static class FloorSpans
{
    private static readonly string At = "#/joistFields/0/";

    public static FloorStiffness? Of(RuleBook book, CheckFacts facts) =>
        book.HasJoistSpans() ? Of(new CheckBench(book, facts)) : null;

    private static FloorStiffness Of(CheckBench bench)
    {
        var floor = bench.Facts.Floor;
        var needs = FurredCeiling.Lacks(bench);
        var empty = new FloorStiffness
        {
            Earned = needs.Count == 0,
            Needs = needs,
            Spans = [],
            Notes = [],
            Missing = [],
            Source = bench.Book.Cite(null, bench.Book.Tables.JoistSpans[0].Source),
        };
        if (floor.Joists != JoistKind.Sawn)
        {
            return empty with { Earned = false, Needs = [], Notes = [.. NotSawn(bench), Engineer] };
        }

        var missing = Missing(floor);
        if (missing.Count > 0)
        {
            return empty with { Missing = missing, Notes = [Engineer] };
        }

        var module = floor.JoistSpacing is { } apart ? bench.Book.JoistModule(apart) : null;
        if (module is null)
        {
            return empty with { Notes = [Sentence.Of("joists_wider_than_tables", "The floor tables end at joists 600 mm (24 in) apart."), Engineer] };
        }

        var spans = new List<FloorSpan>();
        foreach (var bracing in JoistSpans.Bracings)
        {
            if (IsPrintedThickness(floor) && bench.Book.JoistSpan(floor.Species!, floor.Grade!, floor.JoistDepth!.Value, module, bracing) is { } span)
            {
                spans.Add(new(bracing, span.Value.Length, span.Source));
            }
        }

        if (spans.Count == 0)
        {
            return empty with { Module = module, Notes = [Sentence.Of("joists_not_in_tables", "The floor tables kept here have no row for joists of this species, grade and size."), Engineer] };
        }

        var bridged = floor.Bridging == true;
        var without = Find(spans, bridged ? "bridging" : "strapping");
        var with = needs.Count == 0
            ? Find(spans, bridged ? "furred-ceiling-and-bridging" : "furred-ceiling") ?? Find(spans, bridged ? "strapping-and-bridging" : "strapping")
            : bench.Facts.Straps is null || !FurredCeiling.Restrains(bench) ? without : Find(spans, bridged ? "strapping-and-bridging" : "strapping");
        return empty with { Module = module, Spans = spans, Without = without, With = with, Notes = [.. Notes(bench, without, with), Engineer] };
    }

    private static Sentence Engineer => Sentence.Of(
        "floor_for_engineer", "This compares printed spans; it does not judge this floor. An engineer or the building department does.");

    private static IEnumerable<Sentence> Notes(CheckBench bench, FloorSpan? without, FloorSpan? with)
    {
        if (bench.Facts.Floor.Bridging is null)
        {
            yield return Sentence.Of("bridging_not_said", "Whether the floor has bridging was not said: the spans without it are compared.");
        }

        yield return Sentence.Of(
            "least_bracing_in_tables", "The tables know no joist without bracing below: the span without this ceiling is the one with the least bracing that they print.");
        if (without is { } before && with is { } after && before.Span.Units > 0)
        {
            var gain = (((decimal)after.Span.Units / before.Span.Units) - 1) * 100;
            var said = decimal.Round(gain).ToString(CultureInfo.InvariantCulture) + " %";
            yield return Sentence.Of("printed_gain", $"The printed span with this ceiling is {said} longer.", ("gain", said));
        }
    }

    private static IEnumerable<Sentence> NotSawn(CheckBench bench)
    {
        if (bench.Facts.Floor.Joists == JoistKind.IJoist)
        {
            var share = ((bench.Book.Limit("i-joist-bracing").Value.Value - 1) * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";
            yield return Sentence.Of(
                "i_joist_published_effect",
                $"For I-joists the wood standard's vibration method gives about {share} more span where bracing or board is attached below; the maker's span tables govern.",
                ("share", share));
        }
        else
        {
            yield return Sentence.Of("no_published_floor_effect", "No published method that this service has says what straps do for such joists.");
        }
    }

    private static List<string> Missing(FloorFacts floor)
    {
        var missing = new List<string>();
        if (floor.Species is null)
        {
            missing.Add(At + "species");
        }

        if (floor.Grade is null)
        {
            missing.Add(At + "grade");
        }

        if (floor.JoistDepth is null)
        {
            missing.Add(At + "size");
        }

        return missing;
    }

    // The tables are for 38 mm (1-1/2 in) joists.
    private static bool IsPrintedThickness(FloorFacts floor) =>
        floor.JoistThickness is { } thick && Math.Abs(thick.Units - Length.FromMillimetres(38).Units) <= Length.PerMillimetre;

    private static FloorSpan? Find(List<FloorSpan> spans, string bracing) => spans.Find(span => span.Bracing == bracing);
}
