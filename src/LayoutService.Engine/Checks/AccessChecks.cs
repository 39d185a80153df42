using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Checks;

/// <summary>Boxes, valves, dampers and cleanouts stay within reach after the board is up.</summary>
internal static class AccessChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        var (most, source) = bench.Book.Limit("covered-access");
        if (!bench.Facts.ServicesGiven)
        {
            yield return bench.NotChecked("covered-access", CheckComparison.AtMost, source, null, ["#/services"]) with { Limit = most.Value, Unit = "count" };
            yield break;
        }

        var covered = bench.Facts.Unreached.Count;
        yield return new Check
        {
            Rule = "covered-access",
            Source = source,
            Status = covered <= most.Value ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtMost,
            Value = covered,
            Limit = most.Value,
            Unit = "count",
            Where = bench.Facts.Unreached,
            Remedy = covered <= most.Value
                ? null
                : Sentence.Of("give_access_panel", "Leave an access panel or a removable board under each of these, or have its trade move it."),
        };
    }
}
