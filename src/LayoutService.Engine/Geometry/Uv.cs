namespace LayoutService.Engine.Geometry;

/// <summary>A place in the working frame: u along the joists, v across them, in units of 1/8000 mm.</summary>
public readonly record struct Uv(long U, long V);

/// <summary>A closed stretch from <see cref="Lo"/> to <see cref="Hi"/>, in units.</summary>
public readonly record struct Span(long Lo, long Hi)
{
    public long Size => Hi - Lo;

    public long Middle => Lo + ((Hi - Lo) / 2);

    public bool Holds(long value) => Lo <= value && value <= Hi;

    public bool Holds(Span other) => Lo <= other.Lo && other.Hi <= Hi;

    /// <summary>True when the two share more than one point.</summary>
    public bool Overlaps(Span other) => Math.Max(Lo, other.Lo) < Math.Min(Hi, other.Hi);

    /// <summary>The least stretch that holds both.</summary>
    public Span Hull(Span other) => new(Math.Min(Lo, other.Lo), Math.Max(Hi, other.Hi));

    public Span Meet(Span other) => new(Math.Max(Lo, other.Lo), Math.Min(Hi, other.Hi));
}
