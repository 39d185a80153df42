namespace LayoutService.Engine.Cutting;

/// <summary>One stick of a solution: the kind in StockKinds and the indices of its lengths, ascending.</summary>
internal readonly record struct StickFilling(int Kind, IReadOnlyList<int> Lengths);
