using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>
/// Dressed sizes of nominal wood: inches by PS 20 (American Softwood Lumber Standard), dry; millimetres as the National
/// Building Code of Canada prints them.
/// </summary>
internal static class StrapSizes
{
    /// <summary>Thickness and face, in the units of the request.</summary>
    public static (decimal Thickness, decimal Face) Of(StrapSizeWord name, bool imperial) => (name, imperial) switch
    {
        (StrapSizeWord.OneByTwo, true) => (0.75m, 1.5m),
        (StrapSizeWord.OneByThree, true) => (0.75m, 2.5m),
        (StrapSizeWord.OneByFour, true) => (0.75m, 3.5m),
        (StrapSizeWord.TwoByTwo, true) => (1.5m, 1.5m),
        (StrapSizeWord.TwoByThree, true) => (1.5m, 2.5m),
        (StrapSizeWord.TwoByFour, true) => (1.5m, 3.5m),
        (StrapSizeWord.OneByTwo, false) => (19, 38),
        (StrapSizeWord.OneByThree, false) => (19, 64),
        (StrapSizeWord.OneByFour, false) => (19, 89),
        (StrapSizeWord.TwoByTwo, false) => (38, 38),
        (StrapSizeWord.TwoByThree, false) => (38, 64),
        _ => (38, 89),
    };
}
