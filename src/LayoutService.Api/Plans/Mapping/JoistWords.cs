using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>
/// Sizes, species and grades of joists as the floor tables name them. Dressed sizes: inches by PS 20 (American Softwood Lumber
/// Standard), dry; millimetres as the National Building Code of Canada prints them.
/// </summary>
internal static class JoistWords
{
    /// <summary>Depth of a nominal size, in the units of the request.</summary>
    public static decimal Depth(JoistSizeWord size, bool imperial) => (size, imperial) switch
    {
        (JoistSizeWord.TwoByFour, true) => 3.5m,
        (JoistSizeWord.TwoBySix, true) => 5.5m,
        (JoistSizeWord.TwoByEight, true) => 7.25m,
        (JoistSizeWord.TwoByTen, true) => 9.25m,
        (JoistSizeWord.TwoByTwelve, true) => 11.25m,
        (JoistSizeWord.TwoByFour, false) => 89,
        (JoistSizeWord.TwoBySix, false) => 140,
        (JoistSizeWord.TwoByEight, false) => 184,
        (JoistSizeWord.TwoByTen, false) => 235,
        _ => 286,
    };

    public static string Table(SpeciesWord species) => species switch
    {
        SpeciesWord.DouglasFirLarch => "D.Fir-L",
        SpeciesWord.HemFir => "Hem-Fir",
        SpeciesWord.SprucePineFir => "S-P-F",
        _ => "Northern",
    };

    /// <summary>The tables print one column for No.1 and No.2.</summary>
    public static string Table(GradeWord grade) => grade switch
    {
        GradeWord.SelectStructural => "Select Structural",
        GradeWord.NumberThree => "No.3",
        _ => "No.1 and No.2",
    };
}
