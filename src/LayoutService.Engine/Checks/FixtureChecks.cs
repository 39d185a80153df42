using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Holes against straps, seams and joists, fixtures in conflict, and the light of a grid.</summary>
internal static class FixtureChecks
{
    // a fixture's own clearance is the limit, so the rule's value is no one's to set
    private static readonly Citation Practice = new() { Document = "Common practice, no source", Basis = Basis.CommonPractice, Confidence = Confidence.Low };

    private static readonly Citation Asked = new() { Document = "The request", Basis = Basis.SetByCaller, Confidence = Confidence.High };

    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var fixtures = bench.Facts.Fixtures;
        if (fixtures.Count == 0)
        {
            return [];
        }

        var checks = new List<Check>();
        Add(Worst(bench, "hole-to-strap", Practice, fixtures, f => f.ToStrap, f => f.Clear, Sentence.Of("move_hole_off_strap", "Move the fixture, allow it a shift, or let the row be trimmed round it.")));
        Add(Worst(bench, "hole-to-seam", Practice, fixtures, f => f.ToSeam, f => f.Clear, Sentence.Of("move_hole_off_seam", "Move the fixture or allow it a shift, so that no seam runs at its hole.")));
        var hot = fixtures.Where(f => f is { Light: true, Deep: true, InsulationContact: false }).ToList();
        var (clearance, code) = bench.Limit("light-clearance");
        Add(Worst(bench, "light-clearance", code, hot, f => f.ToJoist, _ => clearance, Sentence.Of("move_light_off_joist", "Move the light into the bay, or use one that is rated for contact.")));
        var (none, source) = bench.Book.Limit("fixture-conflicts");
        var stuck = fixtures.Where(f => f.InConflict).Select(f => f.Id).ToList();
        checks.Add(new Check
        {
            Rule = "fixture-conflicts",
            Source = source,
            Status = stuck.Count <= none.Value ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtMost,
            Value = stuck.Count,
            Limit = none.Value,
            Unit = "count",
            Where = stuck,
            Remedy = stuck.Count <= none.Value ? null : Sentence.Of("resolve_conflicts", "Read the reasons of these fixtures: move them, allow them a shift, or choose slimmer ones."),
        });
        checks.AddRange(Grid(bench.Facts.Grid));
        return checks;

        void Add(Check? check)
        {
            if (check is not null)
            {
                checks.Add(check);
            }
        }
    }

    // the fixture that misses its own clearance by most, or meets it by least
    private static Check? Worst(
        CheckBench bench, string rule, Citation source, IReadOnlyList<FixtureFact> fixtures, Func<FixtureFact, Length?> found, Func<FixtureFact, Length> kept, Sentence remedy)
    {
        var known = fixtures.Where(f => found(f) is not null).ToList();
        if (known.Count == 0)
        {
            return null;
        }

        // distances are whole units rounded down
        var worst = known.MinBy(f => (found(f)!.Value - kept(f)).Units)!;
        var wrong = known.Where(f => (found(f)!.Value - kept(f)).Units < -1).Select(f => f.Id).ToList();
        var limit = new Cited<Length>(kept(worst), source);
        return bench.Lengths(
            rule, CheckComparison.AtLeast, found(worst)!.Value, limit, wrong.Count > 0 ? wrong : [worst.Id], remedy)
            with
        {
            Status = wrong.Count > 0 ? CheckStatus.Fail : CheckStatus.Pass,
            Remedy = wrong.Count > 0 ? remedy : null,
        };
    }

    private static IEnumerable<Check> Grid(GridFacts? grid)
    {
        if (grid is { Lux: { } lux, LuxWanted: { } wanted })
        {
            yield return new Check
            {
                Rule = "grid-illuminance",
                Source = Asked,
                Status = lux >= wanted ? CheckStatus.Pass : CheckStatus.Fail,
                Comparison = CheckComparison.AtLeast,
                Value = decimal.Round(lux, 3),
                Limit = wanted,
                Unit = "lux",
                Where = grid.Lights,
                Remedy = lux >= wanted ? null : Sentence.Of("more_light", "Use more lights, or brighter ones."),
            };
        }

        if (grid is not null)
        {
            var (ratio, most) = (grid.SpacingToHeight, grid.SpacingToHeightLimit);
            var status = ratio is null || most is null ? CheckStatus.NotChecked : ratio <= most ? CheckStatus.Pass : CheckStatus.Fail;
            yield return new Check
            {
                Rule = "grid-spacing-to-height",
                Source = Asked,
                Status = status,
                Comparison = CheckComparison.AtMost,
                Value = ratio is { } known ? decimal.Round(known, 3) : null,
                Limit = most,
                Unit = "ratio",
                Where = grid.Lights,
                Missing = [.. (grid.HeightKnown ? Array.Empty<string>() : ["#/room/heights", "#/room/floorBuildUp"]), .. (most is null ? ["#/lightGrid/spacingToHeight"] : Array.Empty<string>())],
                Remedy = status == CheckStatus.Fail ? Sentence.Of("closer_lights", "Use more lights of less power, closer together.") : null,
            };
        }
    }
}
