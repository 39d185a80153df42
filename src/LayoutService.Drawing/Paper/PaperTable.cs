namespace LayoutService.Drawing.Paper;

/// <summary>A table of a printed page, in words as they are printed.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Heads">A head for each column.</param>
/// <param name="Shares">How much of the width each column has, in parts.</param>
/// <param name="Rows">The rows.</param>
public sealed record PaperTable(string Title, IReadOnlyList<string> Heads, IReadOnlyList<double> Shares, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>True when each row begins with a box to tick.</summary>
    public bool Ticked { get; init; }
}
