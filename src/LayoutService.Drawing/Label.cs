namespace LayoutService.Drawing;

/// <summary>A text that takes the first free of several places.</summary>
internal static class Label
{
    /// <summary>Writes the text level at the first free place, inside <paramref name="within"/> where that is given; false when there is none.</summary>
    public static bool Write(SvgInk ink, LabelField labels, string text, double size, IReadOnlyList<Spot> places, Box? within, bool upward = false, bool bold = false) =>
        Write(ink, labels, text, size, places, within, upward, bold, clear: true) || Write(ink, labels, text, size, places, within, upward, bold, clear: false);

    /// <summary>The same at places that are clear of holes and seams, or at any.</summary>
    public static bool Write(SvgInk ink, LabelField labels, string text, double size, IReadOnlyList<Spot> places, Box? within, bool upward, bool bold, bool clear)
    {
        foreach (var place in places)
        {
            var box = Box(text, size, place, upward);
            if ((within is null || within.Value.Holds(box)) && labels.Take(clear, box))
            {
                ink.Text(place, text, size, upward, bold);
                return true;
            }
        }

        return false;
    }

    /// <summary>Writes a name with a line below it at the first middle where both have room; false when there is none.</summary>
    public static bool WritePair(SvgInk ink, LabelField labels, string name, string below, IReadOnlyList<Spot> middles, Box within, bool upward, bool clear)
    {
        var (dx, dy) = upward ? (8d, 0d) : (0d, 8d);
        foreach (var middle in middles)
        {
            var (first, second) = (new Spot(middle.X - dx, middle.Y - dy), new Spot(middle.X + dx, middle.Y + dy));
            var (above, under) = (Box(name, Lettering.Size, first, upward), Box(below, Lettering.Small, second, upward));
            if (within.Holds(above) && within.Holds(under) && labels.Take(clear, above, under))
            {
                ink.Text(first, name, Lettering.Size, upward, bold: true);
                ink.Text(second, below, Lettering.Small, upward);
                return true;
            }
        }

        return false;
    }

    private static Box Box(string text, double size, Spot place, bool upward)
    {
        var (along, across) = (Lettering.Width(text, size), Lettering.Height(size));
        return upward ? Drawing.Box.Round(place, across, along) : Drawing.Box.Round(place, along, across);
    }
}
