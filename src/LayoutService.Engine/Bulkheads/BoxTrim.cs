using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Beads along outside corners, and the inside corners that are taped: where the underside meets a wall or another
/// bulkhead's face, where a face meets the board above it, and the upright corners. The angle between a face and a ceiling
/// that ends at it is the ceiling's own perimeter and is not counted twice.
/// </summary>
internal sealed class BoxTrim(BulkheadSolid solid, BoxBoards boards)
{
    public List<PlannedTrim> Beads { get; } = [];

    public List<PlannedTrim> InsideCorners { get; } = [];

    public List<PlannedTrim> Fireblocking { get; } = [];

    public void Add(IReadOnlyList<Side> loop)
    {
        for (var i = 0; i < loop.Count; i++)
        {
            var (side, next) = (loop[i], loop[(i + 1) % loop.Count]);
            switch (side.Kind)
            {
                case SideKind.Face:
                    Beads.Add(Level(side));
                    if (solid.Wish.BoardedAbove)
                    {
                        InsideCorners.Add(Level(side));
                    }

                    break;
                case SideKind.Step when boards.FaceHeight(side) > 0:
                    Beads.Add(Level(side));
                    InsideCorners.Add(Level(side));
                    break;
                case SideKind.Wall:
                    InsideCorners.Add(Level(side));
                    if (!solid.Wish.BoardedAbove)
                    {
                        Fireblocking.Add(Level(side));
                    }

                    break;
                case SideKind.Opening:
                    InsideCorners.Add(Level(side));
                    break;
            }

            Upright(side, next);
        }
    }

    private void Upright(Side side, Side next)
    {
        var (one, other) = (Boarded(side), Boarded(next));
        if (one && other && Math.Abs(BoxCorners.Turn(side, next)) > 0.02)
        {
            var height = Math.Min(Visible(side), Visible(next));
            (BoxCorners.Turn(side, next) > 0 ? Beads : InsideCorners).Add(new PlannedTrim(side.To, side.To, height, true));
        }
        else if ((one && Ends(next)) || (other && Ends(side)))
        {
            InsideCorners.Add(new PlannedTrim(side.To, side.To, Visible(one ? side : next), true));
        }
    }

    private long Visible(Side side) => side.Kind == SideKind.Step ? boards.FaceHeight(side) : solid.Drop;

    private static bool Ends(Side side) => side.Kind is SideKind.Wall or SideKind.Opening or SideKind.Rest;

    private bool Boarded(Side side) => side.Boarded && boards.FaceHeight(side) > 0;

    private static PlannedTrim Level(Side side) => new(side.From, side.To, (long)Math.Round(side.Length), false);
}
