using System.Globalization;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of straps and sheets: what can be bought must be long enough to be used.</summary>
internal static class StockRules
{
    public static void CheckStraps(StrappingRequest wish, Assumptions assumed, FaultList faults)
    {
        CheckSize(wish.Size, faults);
        if (faults.Sound("#/strapping/size") && faults.Sound("#/strapping/maxSpacing"))
        {
            CheckSpacing(wish, assumed, faults);
        }

        CheckJoints(wish.JointsAllowed ?? [], faults);
        IdRules.CheckUnique((wish.Stock ?? []).Select(StrappingMapping.IdOf), "#/strapping/stock", faults);
        if (!faults.Sound("#/strapping/minPiece") || !faults.Sound("#/strapping/endTrim"))
        {
            return;
        }

        var least = assumed.Length("", "", wish.MinPiece, 24, 600, "min-piece");
        var trim = assumed.Length("", "", wish.EndTrim, 0.125m, 3, "end-trim");
        CheckLongEnough(wish, least, trim, assumed, faults);
    }

    public static void CheckSheets(SheetsRequest wish, bool imperial, FaultList faults)
    {
        IdRules.CheckUnique((wish.Stock ?? []).Select(SheetsMapping.IdOf), "#/sheets/stock", faults);
        var stock = wish.Stock ?? [];
        for (var i = 0; i < stock.Count; i++)
        {
            if (stock[i] is { Width: { } width, Length: { } length }
                && faults.Sound($"#/sheets/stock/{Number(i)}") && width.In(imperial) > length.In(imperial))
            {
                faults.Add($"#/sheets/stock/{Number(i)}/width", "sheet_wider_than_long", "A sheet is not wider than it is long; its length runs along the tapered edges.");
            }
        }
    }

    private static void CheckSize(StrapSizeRequest? size, FaultList faults)
    {
        if (size is { Name: not null } and not { Thickness: null, Face: null })
        {
            faults.Add("#/strapping/size/name", "one_or_the_other", "Give name, or thickness and face, not both.");
        }
        else if (size is { Thickness: not null, Face: null })
        {
            faults.Add("#/strapping/size/face", "required", "A strap with a thickness needs a face.");
        }
        else if (size is { Thickness: null, Face: not null })
        {
            faults.Add("#/strapping/size/thickness", "required", "A strap with a face needs a thickness.");
        }
    }

    private static void CheckSpacing(StrappingRequest wish, Assumptions assumed, FaultList faults)
    {
        var (_, _, face) = StrappingMapping.SizeOf(wish.Size, assumed);
        var gap = assumed.Default(0.5m, 13);
        var asked = wish.MaxSpacing?.In(assumed.Imperial) ?? assumed.Own("strap-spacing-default");
        if (asked is { } spacing && spacing <= face + gap)
        {
            faults.Add(wish.MaxSpacing is null ? "#/rules" : "#/strapping/maxSpacing", "rows_too_close",
                $"Rows of straps {assumed.Tape(face)} wide need a clear gap of more than {assumed.Tape(gap)}; this spacing leaves less.",
                ("face", assumed.Tape(face)), ("gap", assumed.Tape(gap)));
        }
    }

    private static void CheckJoints(IReadOnlyList<JointWord> joints, FaultList faults)
    {
        var seen = new HashSet<JointWord>();
        for (var i = 0; i < joints.Count; i++)
        {
            if (!seen.Add(joints[i]))
            {
                faults.Add($"#/strapping/jointsAllowed/{Number(i)}", "word_repeated", "This word stands in the set already.");
            }
        }
    }

    private static void CheckLongEnough(StrappingRequest wish, Length least, Length trim, Assumptions assumed, FaultList faults)
    {
        var stock = wish.Stock ?? [];
        for (var i = 0; i < stock.Count; i++)
        {
            var at = $"#/strapping/stock/{Number(i)}/length";
            if (stock[i].Length is { } length && faults.Sound(at) && length.In(assumed.Imperial) - trim < least)
            {
                faults.Add(at, "stock_shorter_than_piece",
                    $"No piece can be cut from this length: the shortest piece is {assumed.Tape(least)} and the trim {assumed.Tape(trim)}.",
                    ("least", assumed.Tape(least)), ("trim", assumed.Tape(trim)));
            }
        }

        if (wish.LongestHandled is { } longest && faults.Sound("#/strapping/longestHandled") && longest.In(assumed.Imperial) < least)
        {
            faults.Add("#/strapping/longestHandled", "stock_shorter_than_piece",
                $"The longest piece that can be handled is shorter than the shortest piece, {assumed.Tape(least)}.", ("least", assumed.Tape(least)));
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
