using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>How a person lays board by rule of thumb.</summary>
internal enum HandRule
{
    /// <summary>Full lengths end to end, offcuts reused; nothing asked about wood behind the ends, nor about stagger. Not buildable in general.</summary>
    Unbacked,

    /// <summary>Rows on whole spacings from the starting wall; every butt on one of them, as many row spaces from those of the course before as the survey asks.</summary>
    Backed,
}

/// <summary>
/// Board bought by hand rules (our own simple greedy): courses of full width from either wall, in each course full lengths
/// from either end, the last piece cut to the wall; a piece comes from the smallest offcut that holds it, else from a new
/// sheet, and keeps a factory taper to the field. Where the last course would be a sliver (below 150 mm), the first and the
/// last share the difference. Openings are boarded over and cut out. Tried: both walls, both ends, each stock length alone, and the cheapest
/// length for the last piece; the cheapest counts.
/// </summary>
internal static class HandBoard
{
    private const long LeastPiece = 400 * Length.PerMillimetre;
    private const long LeastRip = 150 * Length.PerMillimetre;

    /// <summary>Cost of the cheapest try: money when every sheet has a price, else square units of length.</summary>
    public static double LeastCost(Survey survey, HandRule rule)
    {
        var sections = CrossSections.Of(survey with { Room = survey.Room with { Openings = [] } });
        var best = double.MaxValue;
        foreach (var sheet in survey.Sheets.Stock)
        {
            foreach (var fromHighWall in new[] { false, true })
            {
                foreach (var fromHighEnd in new[] { false, true })
                {
                    foreach (var cheapestLast in new[] { false, true })
                    {
                        best = Math.Min(best, new Try(survey, sections, sheet, rule, cheapestLast).Cost(fromHighWall, fromHighEnd));
                    }
                }
            }
        }

        return best;
    }

    /// <summary>What a sheet costs in the objective of the survey.</summary>
    public static double Cost(Survey survey, SheetStock sheet) => survey.Sheets.Stock.All(s => s.PackPrice is not null)
        ? (double)(sheet.PackPrice!.Value / sheet.PackSize)
        : (double)sheet.Width.Units * sheet.Length.Units;

    private sealed class Try(Survey survey, List<CrossSection> sections, SheetStock sheet, HandRule rule, bool cheapestLast)
    {
        private readonly List<(long Width, long Length, int Edges)> _offcuts = [];
        private double _cost;

        public double Cost(bool fromHighWall, bool fromHighEnd)
        {
            long low = sections.Min(s => s.V0), high = sections.Max(s => s.V1);
            var before = new HashSet<long>();
            var rest = (high - low) % sheet.Width.Units;
            var first = rest > 0 && rest < LeastRip && high - low > sheet.Width.Units ? (sheet.Width.Units + rest) / 2 : sheet.Width.Units;
            for (long done = 0, width = Math.Min(first, high - low); done < high - low; done += width)
            {
                width = Math.Min(done == 0 ? first : sheet.Width.Units, high - low - done);
                var (v0, v1) = fromHighWall ? (high - done - width, high - done) : (low + done, low + done + width);
                var butts = new HashSet<long>();
                foreach (var (from, to) in Stretches(v0, v1))
                {
                    Lay(to - from, width, before, butts, fromHighEnd ? to : from, fromHighEnd ? -1 : 1);
                }

                before = butts;
            }

            return _cost;
        }

        // the room between two course lines, as whole boxes along the joists
        private List<(long From, long To)> Stretches(long v0, long v1)
        {
            var found = new List<(long From, long To)>();
            foreach (var s in sections.Where(s => s.V0 < v1 && v0 < s.V1).OrderBy(s => Math.Min(s.Low0, s.Low1)))
            {
                // an oblique end is read where the course's own lines cut it
                double t0 = (double)(Math.Max(v0, s.V0) - s.V0) / (s.V1 - s.V0), t1 = (double)(Math.Min(v1, s.V1) - s.V0) / (s.V1 - s.V0);
                var from = (long)Math.Min(s.Low0 + ((s.Low1 - s.Low0) * t0), s.Low0 + ((s.Low1 - s.Low0) * t1));
                var to = (long)Math.Max(s.High0 + ((s.High1 - s.High0) * t0), s.High0 + ((s.High1 - s.High0) * t1));
                if (found.Count > 0 && from <= found[^1].To)
                {
                    found[^1] = (found[^1].From, Math.Max(found[^1].To, to));
                }
                else
                {
                    found.Add((from, to));
                }
            }

            return found;
        }

        private void Lay(long length, long width, HashSet<long> before, HashSet<long> butts, long start, int sign)
        {
            long at = 0;
            var spacing = survey.Strapping.MaxSpacing.Units;
            var full = rule == HandRule.Backed ? sheet.Length.Units / spacing * spacing : sheet.Length.Units;
            while (at < length)
            {
                var left = length - at;
                if (left <= sheet.Length.Units)
                {
                    Take(width, left, true);
                    return;
                }

                // an offcut starts the course where there is one, else a whole sheet
                var offcut = at == 0 ? _offcuts.Where(o => o.Width >= width && o.Length >= LeastPiece && o.Edges > 0).Select(o => o.Length).DefaultIfEmpty().Max() : 0;
                var piece = Math.Min(full, offcut > 0 ? offcut : full);
                piece = rule == HandRule.Backed ? piece / spacing * spacing : piece;
                if (length - at - piece < LeastPiece)
                {
                    piece -= rule == HandRule.Backed ? (LeastPiece + spacing - 1) / spacing * spacing : LeastPiece;
                }

                while (rule == HandRule.Backed && piece > LeastPiece && TooNear(start + (sign * (at + piece))))
                {
                    piece -= spacing;
                }

                if (piece < LeastPiece)
                {
                    piece = full;
                }

                Take(width, piece, false);
                at += piece;
                butts.Add(start + (sign * at));
            }

            bool TooNear(long butt) => before.Any(b => Math.Abs(b - butt) < survey.Sheets.StaggerRows * spacing);
        }

        // a piece needs a tapered factory edge for the field; a sheet has two, and a rip takes one
        private void Take(long width, long length, bool last)
        {
            bool Fits((long Width, long Length, int Edges) o) => o.Width >= width && o.Length >= length && o.Edges > 0;
            (long Width, long Length, int Edges) from;
            if (_offcuts.Exists(Fits))
            {
                from = _offcuts.Where(Fits).MinBy(o => (double)o.Width * o.Length);
                _offcuts.Remove(from);
            }
            else
            {
                var bought = last && cheapestLast
                    ? survey.Sheets.Stock.Where(s => s.Width == sheet.Width && s.Length.Units >= length).MinBy(s => HandBoard.Cost(survey, s))!
                    : sheet;
                from = (bought.Width.Units, bought.Length.Units, 2);
                _cost += HandBoard.Cost(survey, bought);
            }

            if (from.Length > length)
            {
                _offcuts.Add((from.Width, from.Length - length, from.Edges));
            }

            if (from.Width > width)
            {
                _offcuts.Add((from.Width - width, length, from.Edges - 1));
            }
        }
    }
}
