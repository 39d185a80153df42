namespace LayoutService.Auditor;

/// <summary>One broken invariant: the rule's name, the id or place it was broken at, and what was found against what was due.</summary>
public sealed record Fault(string Rule, string Where, string Text)
{
    public override string ToString() => $"{Rule} at {Where}: {Text}";
}
