using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Drawing;

/// <summary>Lengths as they stand on a drawing: short, without the feet form.</summary>
public sealed class TapeInk(UnitSystem units)
{
    /// <summary>A place on the tape, to the nearest mark.</summary>
    public string Mark(Length length) => Say(length, TapeRounding.Nearest);

    /// <summary>A length to cut, to the mark below.</summary>
    public string Cut(Length length) => Say(length, TapeRounding.Down);

    private string Say(Length length, TapeRounding rounding)
    {
        if (units == UnitSystem.Metric)
        {
            return TapeText.Metric(length, rounding)[..^3];
        }

        var text = TapeText.Imperial(length, rounding);
        var feet = text.IndexOf(" (", StringComparison.Ordinal);
        return feet < 0 ? text : text[..feet];
    }
}
