using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The checks of all parts of a room as one list: of one rule the worst, since a ceiling is as good as its worst part; the places of
/// parts that are as bad together. Every caution once.
/// </summary>
internal static class JoinedChecks
{
    private static readonly Citation ControlJoints = new()
    {
        Document = "GA-216, Application and Finishing of Gypsum Panel Products", Publisher = "Gypsum Association", Basis = Basis.Published, Confidence = Confidence.Low,
        Note = "From memory, clause not named: a control joint, or blocking between, where ceiling framing or furring changes direction; so in ASTM C840.",
    };

    public static (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions) Of(IReadOnlyList<(RunPart Part, (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions, FloorStiffness? Floor) Said)> parts, IReadOnlyList<RunBreak> breaks)
    {
        var checks = parts.SelectMany((p, n) => p.Said.Checks.Select(c => (Part: n, Check: InRoom(p.Part, c)))).GroupBy(c => c.Check.Rule)
            .SelectMany(rule => rule.GroupBy(c => c.Part).All(own => own.Count() == 1) ? [Worst([.. rule.Select(c => c.Check)])] : Distinct(rule.Select(c => c.Check)))
            .ToList();
        var cautions = parts.SelectMany(p => p.Said.Cautions).GroupBy(c => (c.Sentence.Code, c.Sentence.Text))
            .Select(same => same.First() with { Where = [.. same.SelectMany(c => c.Where).Distinct()] })
            .ToList();
        cautions.Add(ControlJoint(breaks));

        return (checks, cautions);
    }

    private static Caution ControlJoint(IReadOnlyList<RunBreak> breaks)
    {
        var lines = string.Join(", ", breaks.Select(b => b.Id));
        return new(
            Sentence.Of(
                "control_joint_at_run_break",
                $"The joists change direction at {lines}: the two floors move apart, and a taped seam there cracks. End straps and board on both sides of the line, fasten nothing across it, and cover it with control joint trim, as wide a gap as its maker says. In a rated ceiling the listing says how.",
                ("lines", lines)),
            ControlJoints,
            [.. breaks.Select(b => b.Id)]);
    }

    private static Check Worst(List<Check> checks)
    {
        var status = checks.Max(c => Rank(c.Status));
        var worst = checks.Where(c => Rank(c.Status) == status).ToList();
        var one = worst[0].Comparison == CheckComparison.AtLeast ? worst.MinBy(c => c.Value ?? decimal.MaxValue)! : worst.MaxBy(c => c.Value ?? decimal.MinValue)!;
        var same = worst.Where(c => c.Value == one.Value).ToList();
        return one with { Where = [.. same.SelectMany(c => c.Where).Distinct()], Missing = [.. same.SelectMany(c => c.Missing).Distinct()] };
    }

    private static IEnumerable<Check> Distinct(IEnumerable<Check> checks) =>
        checks.GroupBy(c => (c.Status, c.Value, c.Limit, string.Join(' ', c.Where))).Select(same => same.First());

    private static int Rank(CheckStatus status) => status switch
    {
        CheckStatus.Fail => 3,
        CheckStatus.Marginal => 2,
        CheckStatus.NotChecked => 1,
        _ => 0,
    };

    // a part's first field is another of the room's
    private static Check InRoom(RunPart part, Check check) => check.Missing.Count == 0 ? check : check with
    {
        Missing = [.. check.Missing.Select(m => m.Replace("#/joistFields/0/", $"#/joistFields/{part.Fields[0]}/", StringComparison.Ordinal))],
    };
}
