using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>
/// What the code's floor tables say of these joists, with and without this ceiling. It compares printed spans and nothing else:
/// it judges no floor, and it claims no stiffness beyond what is printed.
/// </summary>
public sealed record FloorStiffness
{
    /// <summary>True when this board on these straps is the furred ceiling that the longer spans ask for (NBC 9.23.9.4.(6)).</summary>
    public required bool Earned { get; init; }

    /// <summary>What straps and board lack for the longer spans.</summary>
    public required IReadOnlyList<Sentence> Needs { get; init; }

    /// <summary>The printed joist spacing that speaks for the widest one found; null beyond the tables.</summary>
    public Figure? Module { get; init; }

    /// <summary>Printed spans of these joists, by what braces them; empty where the tables do not know them.</summary>
    public required IReadOnlyList<FloorSpan> Spans { get; init; }

    /// <summary>The printed span without this ceiling, and with it.</summary>
    public FloorSpan? Without { get; init; }

    public FloorSpan? With { get; init; }

    /// <summary>What to mind: the limits of the method, and whose judgement the floor is.</summary>
    public required IReadOnlyList<Sentence> Notes { get; init; }

    /// <summary>JSON pointers to what was not said.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    public required Citation Source { get; init; }
}

/// <summary>One printed clear span, face to face of supports. <see cref="Bracing"/> is a word of the tables.</summary>
public sealed record FloorSpan(string Bracing, Length Span, Citation Source);
