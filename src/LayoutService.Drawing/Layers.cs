namespace LayoutService.Drawing;

/// <summary>What a drawing may show. Each is one group of the drawing, with the word as its id.</summary>
[Flags]
public enum Layers
{
    None = 0,
    Outline = 1,
    Dimensions = 2,
    Joists = 4,
    Services = 8,
    Straps = 16,
    Marks = 32,
    Sheets = 64,
    Fixtures = 128,
    Bulkheads = 256,
    Insulation = 512,
    Legend = 1024,
    All = 2047,
}
