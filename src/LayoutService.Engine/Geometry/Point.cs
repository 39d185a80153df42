using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Geometry;

/// <summary>A place on the floor plan seen from above, in the caller's own coordinates: x right, y up.</summary>
public readonly record struct Point(Length X, Length Y);
