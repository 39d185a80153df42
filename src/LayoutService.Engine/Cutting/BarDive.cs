namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: a start for the repair that lies near the relaxation. Method: diving: solve the relaxation, fix the ways and
/// fillings that it uses whole (else the one it uses most), solve what is left, until nothing is used by half; the pieces
/// of the fixed ways then take the room of the fixed fillings, and a beam places the rest. Cost: one relaxation a round.
/// Why this one: where a plan must combine three and more pieces on most sticks, a beam alone does not find the way in.
/// </summary>
internal sealed class BarDive(BarCase bars, LengthRelaxation relaxation, BarBeam beam)
{
    private const int MostRounds = 60;
    private readonly List<int[]>[] _ways = MakeWays(bars.Graphs.Length);
    private readonly List<(long Length, int Stick)> _rooms = [];
    private readonly int[] _demand = new int[bars.Lengths.Length];
    private readonly int[] _left = new int[bars.Graphs.Length];
    private int _sticks;

    /// <summary>Dives from the relaxation as it stands; least is the use from which a single column is fixed.</summary>
    public void Run(BarSolution into, BarPrices prices, BarBeamStyle style, double least, long work)
    {
        foreach (BarRun run in bars.Runs)
        {
            _left[run.Graph]++;
        }

        long limit = relaxation.Work + work;
        for (int round = 0; round < MostRounds && relaxation.Work < limit; round++)
        {
            relaxation.Solve(_demand, _left, bars.Kinds.Quantity, false, long.MaxValue, limit - relaxation.Work);
            if (!Fix(least))
            {
                break;
            }
        }

        Assemble(into, out int[] rest);
        beam.Place(into, rest, prices, style);
    }

    private bool Fix(double least)
    {
        LengthProgram program = relaxation.Program;
        bool any = false;
        int most = -1;
        double value = least;
        for (int row = 0; row < program.Basis.Length; row++)
        {
            int column = program.Basis[row];
            if (!relaxation.IsWay(column) && program.CostOf(column) <= 0)
            {
                continue;
            }

            for (int n = 0; n < (int)(program.Value[row] + 1e-4); n++)
            {
                any |= Take(column);
            }

            double part = program.Value[row] - Math.Floor(program.Value[row] + 1e-4);
            if (part > value)
            {
                value = part;
                most = column;
            }
        }

        return any || (most >= 0 && Take(most));
    }

    private bool Take(int column)
    {
        ReadOnlySpan<int> rows = relaxation.Program.RowsOf(column);
        ReadOnlySpan<double> values = relaxation.Program.ValuesOf(column);
        if (relaxation.IsWay(column))
        {
            int graph = rows[0] - bars.Lengths.Length;
            if (_left[graph] == 0)
            {
                return false;
            }

            _left[graph]--;
            _ways[graph].Add(relaxation.WayOf(column));
        }

        bool filling = !relaxation.IsWay(column);
        for (int e = 0; e < rows.Length; e++)
        {
            if (rows[e] < bars.Lengths.Length)
            {
                _demand[rows[e]] -= (int)values[e];
                for (int n = 0; filling && n < (int)values[e]; n++)
                {
                    _rooms.Add((bars.Lengths[rows[e]], _sticks));
                }
            }
        }

        _sticks += filling ? 1 : 0;
        return true;
    }

    /// <summary>Gives the fixed ways to runs, and their pieces, longest first, the shortest room that holds them.</summary>
    private void Assemble(BarSolution into, out int[] rest)
    {
        var left = new List<int>();
        var pieces = new List<(long Length, int Run, int Place)>();
        var given = new int[bars.Graphs.Length];
        for (int r = 0; r < bars.Runs.Length; r++)
        {
            int graph = bars.Runs[r].Graph;
            if (given[graph] == _ways[graph].Count)
            {
                left.Add(r);
                continue;
            }

            int[] way = _ways[graph][given[graph]++];
            for (int k = 0; k < way.Length; k++)
            {
                pieces.Add((bars.Lengths[bars.Graphs[graph].Length[way[k]]], r, k));
                into.Arcs[r].Add(way[k]);
                into.Sticks[r].Add(-1);
            }
        }

        pieces.Sort((a, b) => a.Length != b.Length ? b.Length.CompareTo(a.Length) : (a.Run, a.Place).CompareTo((b.Run, b.Place)));
        _rooms.Sort();
        for (int stick = 0; stick < _sticks + pieces.Count; stick++)
        {
            into.Content.Add(0);
        }

        foreach ((long length, int run, int place) in pieces)
        {
            int room = _rooms.FindIndex(free => free.Length >= length);
            int stick = room < 0 ? _sticks++ : _rooms[room].Stick;
            if (room >= 0)
            {
                _rooms.RemoveAt(room);
            }

            into.Sticks[run][place] = stick;
            into.Content[stick] += length;
        }

        rest = [.. left];
    }

    private static List<int[]>[] MakeWays(int graphs)
    {
        var ways = new List<int[]>[graphs];
        for (int g = 0; g < graphs; g++)
        {
            ways[g] = [];
        }

        return ways;
    }
}
