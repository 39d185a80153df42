using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>
/// The spacing that a printed one stands for. Canadian codes print 300, 400 and 600 mm for the 12, 16 and 24 in that floors
/// are framed at (older editions print 305, 406 and 610 mm); both are one module here, so a 16 in floor is not faulted
/// for 6.4 mm. Strictly read it is over the print, and a check that leans on this says so.
/// </summary>
public static class NominalModule
{
    /// <summary>The module's own length: 12, 16 or 24 in for 300, 400 or 600 mm; any other figure is itself.</summary>
    public static Length Of(Figure printed) => (printed.Unit.Symbol, printed.Value) switch
    {
        ("mm", 300m) => Length.FromInches(12),
        ("mm", 400m) => Length.FromInches(16),
        ("mm", 600m) => Length.FromInches(24),
        _ => printed.Length,
    };
}
