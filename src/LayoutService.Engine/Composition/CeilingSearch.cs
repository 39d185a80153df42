using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Rows and sheets as one choice. The least number of full rows is exact (see <see cref="RowSkeletons"/>); every candidate
/// placing of that many rows is then offered to the board search, and the best pair wins: least slivers, then stagger,
/// then cost of sheets and joints, then narrow rips, butts and different gaps. Budgets are counted, never timed.
/// </summary>
public sealed class CeilingSearch
{
    // board nearer to its bound than this is not laid with butts anywhere
    private const double Near = 1.085;

    // how much narrower the beam is that shows which divisions are worth the full one
    private const int Scouting = 8;

    private readonly FramedRoom _room;
    private readonly RowRules _rules;
    private readonly StockPrices _prices;
    private readonly SheetPricing _pricing;
    private readonly StrapLines _straps;
    private readonly ExtraStraps _extra;
    private readonly JointWeights _weights;
    private readonly FreeButts _free;
    private readonly bool _buttsAnywhere;
    private readonly Effort _effort;
    private readonly long _enough;
    private readonly long _near;
    private readonly Dictionary<RowSet, CourseOptions> _options = [];
    private readonly List<Span> _posts;
    private readonly List<ChosenCeiling> _met = [];
    private bool _crowded;
    private List<CourseDivision>? _stepped;

    /// <param name="room">The framed room.</param>
    /// <param name="buttsAnywhere">Whether board that stays dear is laid with butts between rows too.</param>
    /// <param name="effort">How hard to search; as the survey asks where nothing is said.</param>
    public CeilingSearch(FramedRoom room, bool buttsAnywhere = true, Effort? effort = null)
    {
        _effort = effort ?? room.Survey.Effort;
        _buttsAnywhere = buttsAnywhere;
        _room = room;
        _rules = RowRules.Of(room.Survey.Strapping);
        _prices = new StockPrices(room.Survey.Sheets);
        _pricing = new SheetPricing(room.Survey.Sheets, _prices);
        _straps = new StrapLines(room, _rules);
        _extra = new ExtraStraps(room, _rules, _straps);
        _weights = new JointWeights(room, _prices, StrapWeight.Of(room.Survey, _prices));
        _free = new FreeButts(room, _prices, _straps, _rules);
        _posts = Posts(room, _rules);
        _enough = _effort == Effort.Quick ? SheetBound.WithTenth(room, _prices) : SheetBound.Of(room, _prices);
        _near = Math.Min(_enough, (long)(SheetBound.Of(room, _prices) * Near));
    }

    /// <summary>The best pair found; where the quick budget leaves butts unstaggered or no layout at all, the thorough one is spent.</summary>
    public (ChosenCeiling? Chosen, Finding? Obstacle) Best()
    {
        var walls = WallRows.Find(_room, _rules);
        var wallRows = BulkheadLines.With(_room, _rules, walls);
        var skeletons = Skeletons(wallRows);
        if (skeletons.Count == 0 && wallRows.Count > walls.Count)
        {
            // without straps of their own those sides get blocks
            (wallRows, skeletons) = (walls, Skeletons(walls));
        }

        if (skeletons.Count == 0)
        {
            return (null, Findings.RowsDoNotFit());
        }

        (ChosenCeiling? Chosen, Finding? Obstacle) best = (null, null);
        foreach (var budget in SearchBudget.Rounds(_effort))
        {
            if (best.Chosen is { Layout.Runs.Count: var runs } && runs > budget.MostRuns)
            {
                break;
            }

            best = Better(best, Best(budget, wallRows, skeletons));
            if (!_buttsAnywhere || best.Chosen is not { Layout: { Penalty: 0 } layout } || layout.SheetCost <= _enough)
            {
                break;
            }
        }

        if (_effort == Effort.Quick && (best.Chosen is null || best.Chosen.Layout.Penalty > 0))
        {
            best = Better(best, Best(SearchBudget.For(Effort.Thorough), wallRows, skeletons));
        }

        // around holes a quick search takes its own word for what the sheets cost
        return best.Chosen is { } chosen && (_effort == Effort.Thorough || !_room.KeepOuts.Any) ? (Truest(chosen), best.Obstacle) : best;
    }

    private ChosenCeiling Truest(ChosenCeiling chosen)
    {
        var others = _met.Where(m => First(m).CompareTo(First(chosen)) <= 0).OrderBy(Key).Take(_effort == Effort.Quick ? 3 : 40)
            .Concat(new[] { chosen.Others.FewestButts, chosen.Others.LeastMaterial }.OfType<ChosenCeiling>());
        return TrueCosts.Better(_room, _prices, chosen, others) is { } better ? Finished(better, _met) : chosen;
    }

    private ChosenCeiling Finished(ChosenCeiling chosen, IReadOnlyList<ChosenCeiling> met) =>
        TrimStraps.With(_room, _straps, chosen.OnlyUsedShorts()) with { Others = OtherCeilings.Of(chosen, met, PostsCut) };

    private (ChosenCeiling? Chosen, Finding? Obstacle) Better(
        (ChosenCeiling? Chosen, Finding? Obstacle) a, (ChosenCeiling? Chosen, Finding? Obstacle) b) =>
        a.Chosen is null || (b.Chosen is not null && Key(b.Chosen).CompareTo(Key(a.Chosen)) < 0) ? b : a;

    private (ChosenCeiling? Chosen, Finding? Obstacle) Best(
        SearchBudget budget, IReadOnlyList<WallRow> wallRows, IReadOnlyList<RowSkeleton> skeletons)
    {
        var found = new List<(ChosenCeiling Made, SheetSearch Search, int[] Choice)>();
        var settings = new Dictionary<SheetSearch, (CourseOptions Options, LayoutCosting Costing)>();
        foreach (var division in Divisions(budget))
        {
            var runs = CourseRuns.Of(_room, division);
            var costing = new LayoutCosting(_room, _pricing.Cost(division.SheetWidth), _prices, _weights, division, runs);
            var wishes = SheetEnds.Of(_room, _prices, division, runs);
            foreach (var skeleton in skeletons)
            {
                foreach (var rows in new RowLattices(_rules, skeleton).Offer(wishes, budget.Lattices / skeletons.Count))
                {
                    var lines = _extra.ThroughOpenings(_straps.Lay(rows, skeleton.Locals), runs, _crowded);
                    CourseOptions options;
                    var search = Over(lines);
                    if (search is null && found.Count == 0)
                    {
                        lines = _extra.BetweenRows(lines, runs);
                        search = Over(lines);
                    }

                    if (search is not null)
                    {
                        var (layout, choice) = search.Guessed();
                        settings[search] = (options, costing);
                        found.Add((new ChosenCeiling(_rules, wallRows, skeleton, lines, layout), search, choice));
                    }

                    SheetSearch? Over(List<StrapLine> over)
                    {
                        options = Options(new RowSet(division.SheetWidth, budget.Patterns, [.. over]));
                        return SheetSearch.Over(_room, costing, _prices, division, runs, options);
                    }
                }
            }
        }

        if (found.Count == 0)
        {
            if (_crowded || budget.Stepped)
            {
                return (null, Findings.SheetsDoNotReach());
            }

            // at the last a strap through an opening may stand nearer to another than the clear gap
            _crowded = true;
            return Best(budget, wallRows, skeletons);
        }

        var best = found.OrderBy(f => Key(f.Made))
            .Take(budget.Carried)
            .Select(f =>
            {
                var (layout, choice) = f.Search.Carried(f.Made.Layout, f.Choice);
                return (Made: f.Made with { Layout = layout }, f.Search, Choice: choice);
            })
            .OrderBy(f => Key(f.Made))
            .ToList();
        var made = best.Take(budget.Improved).Select(f => f.Made with { Layout = f.Search.Improve(f.Made.Layout, f.Choice, budget.Costings) }).ToList();
        if (_buttsAnywhere && made.Min(m => m.Layout.Penalty > 0 ? long.MaxValue : m.Layout.SheetCost) > _near)
        {
            AddFreed();
            made = [.. made.OrderBy(Key).Take(budget.Cut).Select(Cut)];
        }

        var chosen = made.MinBy(Key)!;
        List<ChosenCeiling> met = [.. made, .. best.Select(f => f.Made)];
        _met.AddRange(met);
        return (Finished(chosen, met), null);

        // a narrow beam shows which divisions are worth the full one
        void AddFreed()
        {
            var starts = best.DistinctBy(f => f.Made.Layout.Division).Take(budget.Freed).Select(f => (f.Made, f.Search)).ToList();
            if (starts.Count > budget.Best)
            {
                var scouted = starts.ConvertAll(f => Freed(f.Made, f.Search, budget.Beam / Scouting).ToList());
                made.AddRange(scouted.SelectMany(s => s));
                starts = [.. starts
                    .Select((f, i) => (Start: f, Reached: Key(scouted[i].MinBy(Key) ?? f.Made), i))
                    .OrderBy(s => s.Reached).ThenBy(s => s.i)
                    .Take(budget.Best)
                    .Select(s => s.Start)];
            }

            foreach (var (start, search) in starts)
            {
                if (budget.Best < int.MaxValue && made.Exists(m => m.Layout is { Penalty: 0, Division.Slivers: 0 } && m.Layout.SheetCost <= _enough))
                {
                    break;
                }

                made.AddRange(Freed(start, search, budget.Beam));
            }
        }

        IEnumerable<ChosenCeiling> Freed(ChosenCeiling start, SheetSearch search, int beam)
        {
            var (options, costing) = settings[search];
            return _free.Of([.. start.Lines], options, costing, start.Layout.Division, start.Layout.Runs, beam, beam / 2)
                .Select(laid => start with { Lines = laid.Lines, Layout = laid.Layout });
        }

        ChosenCeiling Cut(ChosenCeiling ceiling)
        {
            var layout = ceiling.Layout;
            var sheets = Math.Min(layout.SheetCost, _pricing.Cut(layout.Division.SheetWidth, LayoutCosting.Wanted(_room, layout)));
            return ceiling with { Layout = layout with { SheetCost = sheets, Cost = layout.Cost - layout.SheetCost + sheets } };
        }
    }

    private IEnumerable<CourseDivision> Divisions(SearchBudget budget) => budget.Stepped
        ? (_stepped ??= SteppedCourses.Offer(_room, _prices)).Take(budget.Divisions)
        : CourseLines.Offer(_room, _prices, budget.Divisions);

    // divisions that meet the same rows share what is known about them
    private CourseOptions Options(RowSet rows)
    {
        if (!_options.TryGetValue(rows, out var options))
        {
            _options[rows] = options = new CourseOptions(_room, _prices, _weights, rows.SheetWidth, [.. rows.Lines.Select(l => l.Bearing)], rows.Patterns);
        }

        return options;
    }

    // rows clear of the posts where that costs no row, and rows wherever they fit
    private List<RowSkeleton> Skeletons(List<WallRow> wallRows)
    {
        var plain = RowSkeletons.Choose(_room, _rules, wallRows, []);
        if (plain is null || (_posts.Count == 0 && !_room.KeepOuts.Any))
        {
            return plain is null ? [] : [plain];
        }

        if (_room.KeepOuts.Any)
        {
            return HoleRows.Skeletons(_room, _rules, wallRows, _posts, plain);
        }

        // all posts, else all but one
        for (var left = -1; left < _posts.Count; left++)
        {
            var avoided = _posts.Where((_, i) => i != left).ToList();
            if (RowSkeletons.Choose(_room, _rules, wallRows, avoided) is { } clear && clear.FullRows <= plain.FullRows)
            {
                return [clear, plain];
            }
        }

        return [plain];
    }

    // posts that the board spans past: a row that meets one is cut in two
    private static List<Span> Posts(FramedRoom room, RowRules rules) =>
        [.. room.OpeningRings
            .Where((ring, i) => room.Survey.Room.Openings[i].Kind == OpeningKind.Post && ring.Max(c => c.V) - ring.Min(c => c.V) <= rules.MaxSpacing)
            .Select(ring => new Span(ring.Min(c => c.U) - rules.Half, ring.Max(c => c.U) + rules.Half))];

    // what no saving makes good
    private (int, long, long, int) First(ChosenCeiling made) => (
        made.Layout.Division.Holes.Firm, made.Layout.Division.Slivers, made.Layout.Penalty, PostsCut(made) + HoleRows.Met(_room.KeepOuts.Firm, _rules, made.Lines));

    private ((int, long, long, int) First, long, int, long, int, int) Key(ChosenCeiling made) => (
        First(made),
        made.Layout.Cost,
        made.Layout.Division.Holes.Soft + HoleRows.Met(_room.KeepOuts.Soft, _rules, made.Lines),
        made.Layout.Division.Narrow,
        made.Layout.ButtCount,
        RowGaps.Different(made.Lines));

    private int PostsCut(ChosenCeiling made) =>
        _posts.Count == 0 ? 0 : made.Lines.Sum(l => l.Through ? _posts.Count(p => p.Lo < l.At && l.At < p.Hi) : 0);
}
