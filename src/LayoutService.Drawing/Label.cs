namespace LayoutService.Drawing;

/// <summary>A text that takes the first free of several places.</summary>
internal static class Label
{
    /// <summary>Writes the text level at the first free place, inside <paramref name="within"/> where that is given; false when there is none.</summary>
    public static bool Write(SvgInk ink, LabelField labels, string text, double size, IReadOnlyList<Spot> places, Box? within, bool upward = false, bool bold = false)
    {
        var (along, across) = (Lettering.Width(text, size), Lettering.Height(size));
        foreach (var place in places)
        {
            var box = upward ? Box.Round(place, across, along) : Box.Round(place, along, across);
            if ((within is null || within.Value.Holds(box)) && labels.Take(box) is not null)
            {
                ink.Text(place, text, size, upward, bold);
                return true;
            }
        }

        return false;
    }
}
