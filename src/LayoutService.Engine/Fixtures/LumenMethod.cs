namespace LayoutService.Engine.Fixtures;

/// <summary>
/// The lumen method for the average light on a work plane: lights = E A / (F UF MF), and the room index K = A / (half the
/// perimeter × h), which for a rectangle is L W / ((L + W) h). Read in CIBSE-style course notes; it holds for an empty room
/// lit by a regular grid, and says nothing of how even the light is. Half a space at walls and a greatest spacing over
/// mounting height come from the same kind of source.
/// </summary>
public static class LumenMethod
{
    /// <summary>Lights needed, rounded up: a light too few is too dark.</summary>
    public static int LightsFor(decimal lux, decimal squareMetres, decimal lumens, decimal utilisation, decimal maintenance) =>
        (int)Math.Min(1_000_000m, Math.Ceiling(lux * squareMetres / (lumens * utilisation * maintenance)));

    /// <summary>Average light reached, lux.</summary>
    public static decimal LuxOf(int lights, decimal squareMetres, decimal lumens, decimal utilisation, decimal maintenance) =>
        lights * lumens * utilisation * maintenance / squareMetres;

    /// <summary>Room index; <paramref name="height"/> from the work plane to the lights, all in metres.</summary>
    public static decimal RoomIndex(decimal squareMetres, decimal perimeter, decimal height) => 2 * squareMetres / (perimeter * height);

    /// <summary>Greatest spacing for a mounting height: its product with the ratio that the light's maker allows.</summary>
    public static decimal GreatestSpacing(decimal height, decimal spacingToHeight) => height * spacingToHeight;
}
