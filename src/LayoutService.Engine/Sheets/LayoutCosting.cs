using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>A whole layout of butts over given bearing lines.</summary>
/// <param name="Division">The courses.</param>
/// <param name="Runs">Their runs.</param>
/// <param name="Butts">For each run the lines that its butts stand on, rising.</param>
/// <param name="Lines">The lines.</param>
/// <param name="Penalty">What is wrong with the stagger (see <see cref="Butt"/>); 0 when it is kept.</param>
/// <param name="Cost">Sheets, joints, and what short straps and corners weigh.</param>
/// <param name="SheetCost">Sheets alone.</param>
/// <param name="ButtCount">Butts in all.</param>
/// <param name="ButtLength">Their length in all.</param>
public sealed record SheetLayout(
    CourseDivision Division,
    IReadOnlyList<CourseRun> Runs,
    IReadOnlyList<int[]> Butts,
    IReadOnlyList<BearingLine> Lines,
    long Penalty,
    long Cost,
    long SheetCost,
    int ButtCount,
    long ButtLength);

/// <summary>Costs layouts of one division truly: the boards are cut by the costing that the root hands in.</summary>
public sealed class LayoutCosting
{
    private readonly FramedRoom _room;
    private readonly BoardCosting _costing;
    private readonly StockPrices _prices;
    private readonly CourseDivision _division;
    private readonly IReadOnlyList<CourseRun> _runs;
    private readonly RunBoards _boards;
    private readonly long _seams;
    private readonly List<WantedBoard> _wanted = [];

    public LayoutCosting(
        FramedRoom room, BoardCosting costing, StockPrices prices, JointWeights weights, CourseDivision division, IReadOnlyList<CourseRun> runs)
    {
        (_room, _costing, _prices, Weights, _division, _runs) = (room, costing, prices, weights, division, runs);
        _boards = new RunBoards(room, division);
        _seams = prices.SeamCost(room, division);
    }

    public JointWeights Weights { get; }

    /// <summary>The layout of these butts (of each run, in order) over these lines.</summary>
    public SheetLayout Of(IReadOnlyList<BearingLine> lines, IReadOnlyList<int[]> butts, long penalty)
    {
        WorkMeter.Spend(50L * butts.Count);
        var weight = _seams;
        var count = 0;
        long length = 0;
        for (var r = 0; r < _runs.Count; r++)
        {
            length += _runs[r].Across.Size * butts[r].Length;
            count += butts[r].Length;
            foreach (var line in butts[r])
            {
                weight += _prices.ButtCost(_runs[r].Across.Size) + (lines[line].Extra ? Weights.Strap : 0)
                    + (Weights.Corner * Weights.Corners(_runs[r].Strip, lines[line].At));
            }
        }

        _wanted.Clear();
        Fill(_boards, _runs, lines, butts, _wanted);
        var sheets = _costing(_wanted);
        return new SheetLayout(_division, _runs, butts, lines, penalty, sheets + weight, sheets, count, length);
    }

    /// <summary>The boards of a layout, as cut.</summary>
    public static IReadOnlyList<WantedBoard> Wanted(FramedRoom room, SheetLayout layout)
    {
        var wanted = new List<WantedBoard>();
        Fill(new RunBoards(room, layout.Division), layout.Runs, layout.Lines, layout.Butts, wanted);
        return wanted;
    }

    private static void Fill(
        RunBoards boards, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines, IReadOnlyList<int[]> butts, List<WantedBoard> wanted)
    {
        for (var r = 0; r < runs.Count; r++)
        {
            var at = runs[r].Along.Lo;
            foreach (var butt in butts[r])
            {
                boards.Add(runs[r], at, lines[butt].At, wanted);
                at = lines[butt].At;
            }

            boards.Add(runs[r], at, runs[r].Along.Hi, wanted);
        }
    }

    /// <summary>The penalty of butts over these lines: every pair in neighbouring courses.</summary>
    public long Stagger(IReadOnlyList<BearingLine> lines, IReadOnlyList<int[]> butts)
    {
        var places = Butt.Places(lines);
        var stood = butts.Select(run => Array.ConvertAll(run, line => places[line])).ToArray();
        long penalty = 0;
        for (var a = 0; a < _runs.Count; a++)
        {
            for (var b = a + 1; b < _runs.Count && _runs[b].Course <= _runs[a].Course + 1; b++)
            {
                if (_runs[b].Course == _runs[a].Course + 1)
                {
                    penalty += Butt.Penalty(stood[a].AsSpan(), stood[b].AsSpan(), _room.Survey.Sheets.MinStagger?.Units, _room.Survey.Sheets.StaggerRows);
                }
            }
        }

        return penalty;
    }
}
