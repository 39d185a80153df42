namespace LayoutService.Api.Plans.Answers;

/// <summary>A wall inside the room and what the straps have to do with it.</summary>
/// <param name="Id">The caller's id.</param>
/// <param name="Top">What its top is fastened to: `joists`, `straps` or `board`.</param>
/// <param name="Rated">True when it is fire-rated.</param>
/// <param name="Outlines">The floor it stands on: one ring, or several where something divides it.</param>
/// <param name="Rows">Rows that stop at it or stand tight to it; with `straps`, the rows that its plate is screwed up into; with `board`, those that it is screwed to through the board.</param>
/// <param name="Blocking">Blocks and ledgers that carry its plate or the ends of those rows.</param>
/// <param name="Notes">What to know of it.</param>
public sealed record PartitionAnswer(
    string Id, string Top, bool Rated, IReadOnlyList<IReadOnlyList<PointAnswer>> Outlines, IReadOnlyList<string> Rows, IReadOnlyList<string> Blocking,
    IReadOnlyList<SentenceAnswer> Notes);
