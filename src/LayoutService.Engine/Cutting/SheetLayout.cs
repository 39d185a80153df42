namespace LayoutService.Engine.Cutting;

/// <summary>Places a pattern's pieces on its sheet by walking the joins of its boxes; what a box does not fill is cut off first.</summary>
internal sealed class SheetLayout(SheetTypes types, SheetRipTable rips)
{
    public readonly List<SheetPanelFill.Placed> Placed = [];
    public readonly List<SheetPanelFill.Panel> Free = [];

    /// <summary>A piece that takes its length of the whole sheet; a narrow strip beside it may be left.</summary>
    public void WholeWidth(int type, long x, long width)
    {
        Placed.Add(new SheetPanelFill.Placed(type, x, 0, false));
        Leave(x, types.Width[type], width - types.Width[type], types.Length[type]);
    }

    /// <summary>The rips of a set, and the offcut beyond them.</summary>
    public void Rest(int set, long x, long width, long length)
    {
        if (rips.ShortestBox[set] < 0)
        {
            Leave(x, 0, width, length);
            return;
        }

        Lay(rips.ShortestBox[set], x, 0, width, length, false);
    }

    /// <summary>
    /// Lays a box into a panel. A box that must reach a factory edge reaches it at low y, or at high y when mirrored.
    /// </summary>
    private void Lay(int index, long x, long y, long width, long length, bool mirrored)
    {
        var box = rips[index];
        Leave(x + box.Length, y, width, length - box.Length);
        var spare = width - box.Width;
        Leave(x, mirrored ? y : y + box.Width, spare, box.Length);
        y += mirrored ? spare : 0;
        switch (box.Join)
        {
            case SheetRipTable.Join.Along:
                Lay(box.A, x, y, box.Width, rips[box.A].Length, mirrored);
                Lay(box.B, x + rips[box.A].Length, y, box.Width, rips[box.B].Length, mirrored);
                break;
            case SheetRipTable.Join.Beside:
                LayBeside(box, x, y, mirrored);
                break;
            default:
                Placed.Add(new SheetPanelFill.Placed(box.A, x, y, box.Join == SheetRipTable.Join.TurnedPiece));
                break;
        }
    }

    private void LayBeside(SheetRipTable.Box box, long x, long y, bool mirrored)
    {
        var (outer, inner) = rips[box.A].Edges >= rips[box.B].Edges ? (box.A, box.B) : (box.B, box.A);
        var (outerWidth, innerWidth) = (rips[outer].Width, rips[inner].Width);
        if (box.Edges == 2)
        {
            // One at each factory edge; what is left lies between them.
            Lay(outer, x, y, outerWidth, box.Length, false);
            Leave(x, y + outerWidth, box.Width - outerWidth - innerWidth, box.Length);
            Lay(inner, x, y + box.Width - innerWidth, innerWidth, box.Length, true);
            return;
        }

        Lay(outer, x, mirrored ? y + innerWidth : y, outerWidth, box.Length, mirrored);
        Lay(inner, x, mirrored ? y : y + outerWidth, innerWidth, box.Length, mirrored);
    }

    private void Leave(long x, long y, long width, long length)
    {
        if (width > 0 && length > 0)
        {
            Free.Add(new SheetPanelFill.Panel(x, y, width, length, false, false));
        }
    }
}
