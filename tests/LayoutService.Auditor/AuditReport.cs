using System.Globalization;

namespace LayoutService.Auditor;

/// <summary>
/// What one audit found. A fault is a broken rule. A note is a preference that was not met, or a rule that the plan
/// itself says it fails (a check with status fail): both are for a person to weigh, neither proves the plan wrong.
/// </summary>
public sealed class AuditReport
{
    private readonly List<Fault> faults = [];
    private readonly List<Fault> notes = [];
    private readonly HashSet<string> declared;

    internal AuditReport(IEnumerable<string> declaredFailures) =>
        declared = new HashSet<string>(declaredFailures, StringComparer.OrdinalIgnoreCase);

    /// <summary>Rules broken.</summary>
    public IReadOnlyList<Fault> Faults => faults;

    /// <summary>Preferences not met, and failures that the plan declares.</summary>
    public IReadOnlyList<Fault> Notes => notes;

    internal void Fault(string rule, string where, FormattableString text) =>
        faults.Add(new Fault(rule, where, text.ToString(CultureInfo.InvariantCulture)));

    internal void Note(string rule, string where, FormattableString text) =>
        notes.Add(new Fault(rule, where, text.ToString(CultureInfo.InvariantCulture)));

    /// <summary>A fault, unless the plan's own checks say that this rule fails (their rule names hold the word).</summary>
    internal void FaultUnlessDeclared(string word, string rule, string where, FormattableString text)
    {
        if (declared.Any(d => d.Contains(word, StringComparison.OrdinalIgnoreCase)))
        {
            Note(rule, where, text);
        }
        else
        {
            Fault(rule, where, text);
        }
    }
}
