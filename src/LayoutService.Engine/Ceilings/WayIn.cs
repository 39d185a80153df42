using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>How things get into the room: through every passage and round the turn, or else through the window.</summary>
public sealed record WayIn(IReadOnlyList<ClearOpening> Passages, SquareTurn? Turn, ClearOpening? Window);

/// <summary>The clear width and height of a door, a hatch or a window.</summary>
public sealed record ClearOpening(Length Width, Length Height);

/// <summary>A square turn between two passages: clear widths before and after it, and the clear height; null when nothing limits it.</summary>
public sealed record SquareTurn(Length WidthBefore, Length WidthAfter, Length? Height);

/// <summary>Who lifts. The limit is of one sheet or stick, kg; null when the caller set none.</summary>
public sealed record Crew(int People, bool Lift, decimal? MassLimit);

/// <summary>Stock that was not offered to the plan, and why.</summary>
public sealed record StockLeftOut(string Id, Sentence Why);
