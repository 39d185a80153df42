using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Rows and short straps that a board of one sheet width is laid over. Lines are laid once (see <see cref="StrapLines"/>), so the same rows are the same objects.</summary>
internal readonly record struct RowSet(long SheetWidth, int Patterns, StrapLine[] Lines)
{
    public bool Equals(RowSet other) =>
        SheetWidth == other.SheetWidth && Patterns == other.Patterns && Lines.Length == other.Lines.Length && Lines.Zip(other.Lines).All(l => ReferenceEquals(l.First, l.Second));

    public override int GetHashCode()
    {
        var hash = SheetWidth + Patterns;
        foreach (var line in Lines)
        {
            hash = unchecked((hash * 31) + line.At);
        }

        return hash.GetHashCode();
    }
}
