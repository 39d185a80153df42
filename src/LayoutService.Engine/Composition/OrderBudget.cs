using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Composition;

/// <summary>Steps that cutting an order may take, chosen so that no order within the limits takes more than some two seconds.</summary>
public static class OrderBudget
{
    /// <summary>Above so many different rectangles one pass of the search is long by itself.</summary>
    private const int ManySizes = 100;

    /// <summary>Fewer than a ceiling's sheets may take: any sizes may be asked for here, and small ones make long steps.</summary>
    private const int ThoroughSheetSteps = 3_000_000;

    /// <summary>Above so many different lengths the dive needs more steps; where stock may run out each is long there.</summary>
    private const int SomeLengths = 150;

    /// <summary>Above so many different lengths a step of the search is long anyway.</summary>
    private const int ManyLengths = 300;

    /// <summary>Under a millisecond, where the pieces are too many or too uneven to be proved at once.</summary>
    private const int QuickRoomSteps = 40_000;

    public static int StickSteps(Effort effort, int lengths, bool limited)
    {
        var steps = lengths <= SomeLengths ? StickCutter.UsualSteps
            : limited ? StickCutter.UsualSteps / 20
            : lengths <= ManyLengths ? 2 * StickCutter.UsualSteps
            : StickCutter.UsualSteps / 2;
        return effort == Effort.Quick ? steps : 2 * steps;
    }

    /// <summary>Steps for packing a room's chosen strap pieces again: at quick effort little beside the greedy fillings, as the same time gains more in the choice of pieces.</summary>
    public static int Repack(Effort effort) => effort == Effort.Quick ? QuickRoomSteps / 20 : 50 * QuickRoomSteps;

    /// <summary>Steps for a room's ledgers, or for the frames of its bulkheads.</summary>
    public static int Frame(Effort effort) => effort == Effort.Quick ? QuickRoomSteps : StickCutter.UsualSteps;

    /// <summary>Of ledgers and frames, whose pieces are mostly alike, the dive leaves little to gain; null for the usual share.</summary>
    public static int? FrameRepack(Effort effort) => effort == Effort.Quick ? QuickRoomSteps / 16 : null;

    public static int SheetSteps(Effort effort, int sizes) =>
        sizes > ManySizes ? SheetCutter.QuickSteps
        : effort == Effort.Quick ? 10 * SheetCutter.QuickSteps
        : ThoroughSheetSteps;
}
