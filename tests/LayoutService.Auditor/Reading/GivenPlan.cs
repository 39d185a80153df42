using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>A plan's answer as the auditor reads it: tolerant of what the contract leaves open, strict about the rest.</summary>
public sealed class GivenPlan
{
    private List<BoardSeam>? seams;

    public GivenPlan(JsonElement answer, AskedRoom room)
    {
        Json = answer;
        Room = room;
        var strapping = answer.Member("strapping");
        AdoptFace(strapping, room);
        Bulkheads = [.. answer.Member("bulkheads").Items().Select(b => new GivenBulkhead(b, room))];
        if (Bulkheads.Any(b => !b.BoardedAbove) || room.Standing.Count > 0)
        {
            room.EndAt([.. Bulkheads.Where(b => !b.BoardedAbove).Select(b => b.Footprint), .. room.Standing.Select(p => p.Footprint)]);
        }

        Rows = strapping.Member("rows").Items().Select(r => new GivenRow(r, room)).OrderBy(r => r.At).ToList();
        Pieces = Rows.SelectMany(r => r.Pieces).ToList();
        Nailers = strapping.Member("nailers").Items().Select(n => NailerOf(n, room)).ToList();
        Boards = answer.Member("sheets").Member("pieces").Items().Select(p => new GivenBoard(p, room)).ToList();
        var cutPlan = answer.Member("cutPlan");
        Sticks = cutPlan.Member("stock").Items().Select(s => new GivenStick(s, room.Unit)).ToList();
        var straps = Pieces.Select(p => p.Id).ToHashSet();
        var stock = room.Strapping.Stock.Select(s => s.Id).ToHashSet();
        StrapSticks = Sticks.Where(s => s.Cuts.Any(c => straps.Contains(c.PieceId)) || stock.Contains(s.StockId ?? "")).ToList();
        CutSheets = cutPlan.Member("sheetStock").Items().Select(s => new GivenCutSheet(s, room.Unit)).ToList();
        Kerf = cutPlan.Member("kerf").Length(room.Unit);
        Results = cutPlan.Member("results").Items().ToList();
        DeclaredFailures = answer.Member("checks").Items().Where(c => c.Member("status").Text() == "fail")
            .Select(c => c.Member("rule").Text() ?? "").ToList();
    }

    public JsonElement Json { get; }
    public AskedRoom Room { get; }
    public IReadOnlyList<GivenRow> Rows { get; }
    public IReadOnlyList<GivenPiece> Pieces { get; }
    public IReadOnlyList<GivenNailer> Nailers { get; }
    public IReadOnlyList<GivenBulkhead> Bulkheads { get; }
    public IReadOnlyList<GivenBoard> Boards { get; }
    public IReadOnlyList<GivenStick> Sticks { get; }
    /// <summary>Sticks of the strap's own size; ledgers and nailers may be of another, which the request does not stock.</summary>
    public IReadOnlyList<GivenStick> StrapSticks { get; }
    public IReadOnlyList<GivenCutSheet> CutSheets { get; }
    public double? Kerf { get; }
    public IReadOnlyList<JsonElement> Results { get; }
    public IReadOnlyList<string> DeclaredFailures { get; }

    /// <summary>Every board edge that is on no wall.</summary>
    public IReadOnlyList<BoardSeam> Seams => seams ??= BoardSeam.Of(this).ToList();

    /// <summary>The row in the summary of results for one use, or null.</summary>
    public JsonElement? Result(string use) =>
        Results.Where(r => r.Member("use").Text() == use).Select(r => (JsonElement?)r).FirstOrDefault();

    private static GivenNailer NailerOf(JsonElement nailer, AskedRoom room)
    {
        var (fx, fy) = nailer.GetProperty("from").Point(room.Unit);
        var (tx, ty) = nailer.GetProperty("to").Point(room.Unit);
        return new GivenNailer(nailer.GetProperty("id").GetString()!, room.Frame.At(fx, fy), room.Frame.At(tx, ty),
            nailer.Member("length").Length(room.Unit) ?? 0);
    }

    /// <summary>A size given by name alone may be 64 mm to one and 2-1/2 in to another: take the plan's, within 1 mm.</summary>
    private static void AdoptFace(JsonElement? strapping, AskedRoom room)
    {
        var stated = (strapping.Member("size").Member("face") ?? strapping.Member("face")).Length(room.Unit);
        if (!room.Strapping.FaceIsGiven && stated is { } face && Math.Abs(face - room.Strapping.Face) <= 1)
        {
            room.Strapping.Face = face;
        }
    }
}
