using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>What can hurt someone about fixtures and what hangs.</summary>
internal static class FixtureCautions
{
    private static readonly Citation Practice = new()
    {
        Document = "Common practice, no source", Basis = Basis.CommonPractice, Confidence = Confidence.Low,
    };

    public static IEnumerable<Caution> Of(CheckBench bench)
    {
        var fixtures = bench.Facts.Fixtures;
        if (Ids(f => f.Wired) is { Count: > 0 } wired)
        {
            yield return new(
                Sentence.Of("wired_fixtures", "Wiring of lights, alarms, fans and boxes is a licensed electrician's work, with the power off and a permit where one is asked for; no box or joint is boarded over."),
                Practice, wired);
        }

        if (Ids(f => f is { Light: true, InsulationContact: false }) is { Count: > 0 } hot)
        {
            var keep = bench.Limit("light-insulation-clearance");
            yield return new(
                Sentence.Of("light_off_insulation", $"These lights are not rated for contact: keep batts {bench.Text(keep.Value)} off them and their drivers, and never lay any over them. Heat can start a fire.",
                    ("clearance", bench.Text(keep.Value))),
                keep.Source, hot);
        }

        if (Ids(f => f.Fan) is { Count: > 0 } fans)
        {
            yield return new(
                Sentence.Of("fan_support", "A fan hangs from a box that is rated for fans, fastened to joists or blocking, never from a strap or the board."), Practice, fans);
        }

        if (Ids(f => f.Sprinkler) is { Count: > 0 } sprinklers)
        {
            yield return new(Sentence.Of("sprinklers", "Sprinklers are placed and moved by their licensed trade only; their own spacing and clearance rules come first."), Practice, sprinklers);
        }

        if (bench.Facts.Mounts.Count > 0)
        {
            yield return new(
                Sentence.Of("hanging_loads", "What hangs overhead can fall: it hangs from joists or blocking with hardware rated for it. Whether the joists carry it is for an engineer or the building department."),
                Practice, bench.Facts.Mounts);
        }

        if (bench.Facts.Grid is { } grid)
        {
            var setback = bench.Limit("cable-setback");
            yield return new(
                Sentence.Of("cable_path_is_estimate", $"The cable path is an estimate of length for the electrician, no permission: within {bench.Text(setback.Value)} of where screws go a cable wants a steel plate.",
                    ("setback", bench.Text(setback.Value))),
                setback.Source, grid.Lights);
        }

        List<string> Ids(Func<FixtureFact, bool> which) => [.. fixtures.Where(which).Select(f => f.Id)];
    }
}
