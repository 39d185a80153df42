using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// A line across the joists that a board's end can be screwed to: its centre along the joists and the stretches across
/// them where wood is. An extra line is a short strap that is laid only where a butt stands on it. What strapping offers to sheets; nothing else of a row is known there.
/// </summary>
public sealed record BearingLine(long At, IReadOnlyList<Span> Stretches, bool Through, bool Extra = false);
