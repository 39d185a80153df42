namespace LayoutService.Engine.Cutting;

/// <summary>Which cut frees a piece from the corner of its panel first.</summary>
internal enum SheetFirstCut
{
    /// <summary>The one that leaves the larger single rectangle.</summary>
    LargerRest,

    /// <summary>A rip over the panel's whole length.</summary>
    Rip,

    /// <summary>A cross cut over the panel's whole width.</summary>
    Cross,
}

/// <summary>
/// One sheet being filled piece by piece: each piece goes into the corner of the smallest free panel that holds it, and two
/// edge-to-edge cuts split the rest of that panel in two ("best area fit guillotine" heuristic). Time: pieces × panels.
/// Chosen because any state of it is a cut plan that a knife can follow, and nothing in it assumes a pattern.
/// Sizes are grown by a kerf, as in <see cref="SheetTypes"/>.
/// </summary>
internal sealed class SheetPanelFill(SheetTypes types, int pieces)
{
    public readonly record struct Panel(long X, long Y, long Width, long Length, bool Low, bool High);

    public readonly record struct Placed(int Type, long X, long Y, bool Turned);

    private readonly Panel[] panels = new Panel[pieces + 2];
    private readonly Placed[] placed = new Placed[pieces + 1];
    private int panelCount;
    private int placedCount;

    public ReadOnlySpan<Panel> Panels => panels.AsSpan(0, panelCount);

    public ReadOnlySpan<Placed> Pieces => placed.AsSpan(0, placedCount);

    public void Start(long width, long length)
    {
        panels[0] = new Panel(0, 0, width, length, true, true);
        panelCount = 1;
        placedCount = 0;
    }

    /// <summary>Places one piece of the type if some panel holds it.</summary>
    public bool TryPlace(int type, SheetFirstCut firstCut)
    {
        var best = -1;
        var bestTurned = false;
        var bestRest = long.MaxValue;
        for (var i = 0; i < panelCount; i++)
        {
            ref var panel = ref panels[i];
            if (HoldsStraight(panel, type))
            {
                var rest = Rest(panel, types.Width[type], types.Length[type]);
                if (rest < bestRest)
                {
                    (best, bestTurned, bestRest) = (i, false, rest);
                }
            }

            if (types.Turn[type] && types.Length[type] <= panel.Width && types.Width[type] <= panel.Length)
            {
                var rest = Rest(panel, types.Length[type], types.Width[type]);
                if (rest < bestRest)
                {
                    (best, bestTurned, bestRest) = (i, true, rest);
                }
            }
        }

        if (best < 0)
        {
            return false;
        }

        Place(best, type, bestTurned, firstCut);
        return true;
    }

    /// <summary>Panel area first, the narrower of its two leftovers second; panels are far below 2^31 mm².</summary>
    private static long Rest(in Panel panel, long width, long length) =>
        (panel.Width >> 8) * (panel.Length >> 8) + (Math.Min(panel.Width - width, panel.Length - length) >> 16);

    private bool HoldsStraight(in Panel panel, int type)
    {
        if (types.Width[type] > panel.Width || types.Length[type] > panel.Length)
        {
            return false;
        }

        return types.Need[type] switch
        {
            0 => true,
            1 => types.FactoryEdgesLeft && (panel.Low || panel.High),
            _ => types.FactoryEdgesLeft && panel.Low && panel.High && types.Width[type] == panel.Width,
        };
    }

    private void Place(int index, int type, bool turned, SheetFirstCut firstCut)
    {
        var panel = panels[index];
        var width = turned ? types.Length[type] : types.Width[type];
        var length = turned ? types.Width[type] : types.Length[type];
        var atLow = types.Need[type] == 0 ? !panel.Low || panel.High : panel.Low;
        var y = atLow ? panel.Y : panel.Y + panel.Width - width;
        var sideWidth = panel.Width - width;
        var endLength = panel.Length - length;
        placed[placedCount++] = new Placed(type, panel.X, y, turned);
        panels[index] = panels[--panelCount];

        var rip = firstCut switch
        {
            SheetFirstCut.Rip => true,
            SheetFirstCut.Cross => false,
            _ => Math.Max((double)width * endLength, (double)sideWidth * panel.Length)
                >= Math.Max((double)sideWidth * length, (double)panel.Width * endLength),
        };
        if (sideWidth > 0)
        {
            var sideY = atLow ? y + width : panel.Y;
            panels[panelCount++] = new Panel(
                panel.X, sideY, sideWidth, rip ? panel.Length : length, panel.Low && !atLow, panel.High && atLow);
        }

        if (endLength > 0)
        {
            panels[panelCount++] = rip
                ? new Panel(panel.X + length, y, width, endLength, panel.Low && (atLow || sideWidth == 0), panel.High && (!atLow || sideWidth == 0))
                : new Panel(panel.X + length, panel.Y, panel.Width, endLength, panel.Low, panel.High);
        }
    }
}
