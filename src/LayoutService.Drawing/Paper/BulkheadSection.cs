using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Geometry;

namespace LayoutService.Drawing.Paper;

/// <summary>A rectangle of a section: along it from one side of the bulkhead, and down from the underside of the joists; in length units.</summary>
internal readonly record struct SectionBox(double From, double To, double Top, double Bottom);

/// <summary>
/// A bulkhead cut square to its longest face, at that face's middle: what the cut goes through, and the nearest rung and tie
/// behind it. All of it is read off the plan's own members and boards.
/// </summary>
internal sealed class BulkheadSection
{
    private readonly Point _middle;
    private readonly double _x;
    private readonly double _y;

    private BulkheadSection(Bulkhead bulkhead, Point from, Point to, double board)
    {
        var size = Far(from, to);
        _middle = new(new((from.X.Units + to.X.Units) / 2), new((from.Y.Units + to.Y.Units) / 2));
        (_x, _y) = (-(to.Y.Units - from.Y.Units) / size, (to.X.Units - from.X.Units) / size);
        var (low, high) = Reach(bulkhead);
        (Start, Width) = (low, high - low);
        var across = bulkhead.Members.Where(member => member.Role is MemberRole.Rail or MemberRole.Ledger).ToList();
        Cut = [.. across.Where(member => Crosses(member.From, member.To)).Select(member => Standing(bulkhead, member, At(member.From, member.To)))];
        Behind = [.. Nearest(bulkhead, across), .. Tie(bulkhead)];
        var underside = bulkhead.Underside.Units;
        Faces = [.. bulkhead.Boards.Where(b => b.Face == BoardFace.Face && Crosses(b.Outline[0], b.Outline[1]))
            .GroupBy(b => At(b.Outline[0], b.Outline[1]), b => b.Width.Units)
            .Select(alike => (At: alike.Key, Foot: underside - board, Height: (double)alike.Sum()))
            .Select(face => face.At < Width / 2
                ? new SectionBox(face.At, face.At + board, face.Foot - face.Height, face.Foot)
                : new SectionBox(face.At - board, face.At, face.Foot - face.Height, face.Foot))];
        Underside = new(0, Width, underside - board, underside);
    }

    /// <summary>The section of a bulkhead; null for one without a face.</summary>
    public static BulkheadSection? Of(Bulkhead bulkhead, double board)
    {
        var face = bulkhead.Boards.Where(b => b.Face == BoardFace.Face).MaxBy(b => (b.Length.Units * 1e6) + b.Width.Units);
        return face is null ? null : new(bulkhead, face.Outline[0], face.Outline[1], board);
    }

    /// <summary>From side to side, finished.</summary>
    public double Width { get; }

    public IReadOnlyList<SectionBox> Cut { get; }

    public IReadOnlyList<SectionBox> Behind { get; }

    public IReadOnlyList<SectionBox> Faces { get; }

    public SectionBox Underside { get; }

    private double Start { get; }

    /// <summary>How far the bulkhead goes to either side of the middle of its face.</summary>
    private (double Low, double High) Reach(Bulkhead bulkhead)
    {
        var places = bulkhead.Parts.SelectMany(part => part).SelectMany(ring => ring.Select((from, i) => (From: from, To: ring[(i + 1) % ring.Count])))
            .Where(edge => Meets(edge.From, edge.To)).Select(edge => Along(edge.From, edge.To)).Order().ToList();
        var here = places.Count == 0 ? 0 : places.Select((at, i) => (Math.Abs(at), i)).Min().i;

        // the rings are crossed in pairs, in and out; the face is one of such a pair
        return places.Count < 2 ? (0, 0) : here % 2 == 0 ? (places[here], places[here + 1]) : (places[here - 1], places[here]);
    }

    private IEnumerable<SectionBox> Nearest(Bulkhead bulkhead, List<BulkheadMember> across) =>
        bulkhead.Members.Where(member => member.Role == MemberRole.Rung && Inside(Along(member.From)))
            .GroupBy(member => Math.Round(Along(member.From)))
            .Where(_ => across.Count > 0)
            .Select(alike => alike.MinBy(member => Math.Abs(Off(member.From)))!)
            .Select(member => Standing(bulkhead, member, Along(member.From) - Start));

    private IEnumerable<SectionBox> Tie(Bulkhead bulkhead) =>
        bulkhead.Members.Where(member => member.Role == MemberRole.Tie && Math.Abs(Off(member.From) - Off(member.To)) < 8000 && Inside(Along(member.From)) && Inside(Along(member.To)))
            .OrderBy(member => Math.Abs(Off(member.From))).Take(1)
            .Select(member => (A: Along(member.From) - Start, B: Along(member.To) - Start, Member: member))
            .Select(tie => new SectionBox(Math.Min(tie.A, tie.B), Math.Max(tie.A, tie.B), tie.Member.Top.Units, tie.Member.Bottom.Units));

    // a member is as wide as its other side than the one that stands
    private static SectionBox Standing(Bulkhead bulkhead, BulkheadMember member, double at)
    {
        var stands = member.Bottom.Units - member.Top.Units;
        var half = (stands == bulkhead.FrameThickness.Units ? bulkhead.FrameFace.Units : bulkhead.FrameThickness.Units) / 2.0;
        return new(at - half, at + half, member.Top.Units, member.Bottom.Units);
    }

    private bool Crosses(Point from, Point to) => Meets(from, to) && Inside(Along(from, to));

    private bool Meets(Point from, Point to) => Off(from) <= 0 != Off(to) <= 0;

    private bool Inside(double along) => along >= Start - 1 && along <= Start + Width + 1;

    private double At(Point from, Point to) => Along(from, to) - Start;

    private double Along(Point from, Point to)
    {
        var (a, b) = (Off(from), Off(to));
        return Along(from) + ((Along(to) - Along(from)) * a / (a - b));
    }

    private double Along(Point place) => ((place.X.Units - _middle.X.Units) * _x) + ((place.Y.Units - _middle.Y.Units) * _y);

    private double Off(Point place) => ((place.Y.Units - _middle.Y.Units) * _x) - ((place.X.Units - _middle.X.Units) * _y);

    private static double Far(Point from, Point to) =>
        Math.Max(1, Math.Sqrt(Math.Pow(to.X.Units - from.X.Units, 2) + Math.Pow(to.Y.Units - from.Y.Units, 2)));
}
