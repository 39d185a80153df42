namespace LayoutService.Drawing;

/// <summary>
/// How much paper a text takes. The reader's font is not known, so a text is taken to be as wide as in the widest of the
/// usual sans-serif fonts: two thirds of its size for each character (DejaVu Sans digits are 0.636 wide, from its own table).
/// </summary>
public static class Lettering
{
    public const double Size = 11;

    public const double Small = 9;

    public static double Width(string text, double size) => text.Length * size * 0.66;

    public static double Height(double size) => size * 1.25;
}
