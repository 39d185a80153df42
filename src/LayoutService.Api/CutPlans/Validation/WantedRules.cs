using System.Globalization;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Validation;
using LayoutService.Engine.Composition;

namespace LayoutService.Api.CutPlans.Validation;

/// <summary>Rules of what is wanted: not too many pieces, each with a name of its own, and edges that a sheet can give.</summary>
internal static class WantedRules
{
    public static void CheckSticks(StickCutsRequest sticks, FaultList faults)
    {
        IdRules.CheckUnique((sticks.Stock ?? []).Select(CutIds.Of), "#/sticks/stock", faults);
        var wanted = (sticks.Wanted ?? []).Select((w, i) => (CutIds.Of(w, i), w.Count ?? 1)).ToList();
        CheckPieces(wanted, "#/sticks/wanted", ServiceLimits.MaxCutPieces, faults);
    }

    public static void CheckSheets(SheetCutsRequest sheets, bool imperial, FaultList faults)
    {
        IdRules.CheckUnique((sheets.Stock ?? []).Select(CutIds.Of), "#/sheets/stock", faults);
        var wanted = (sheets.Wanted ?? []).Select((w, i) => (CutIds.Of(w, i), w.Count ?? 1)).ToList();
        CheckPieces(wanted, "#/sheets/wanted", ServiceLimits.MaxCutPanelPieces, faults);
        var trimmed = sheets.EdgeTrim is { } trim && trim.In(imperial).Units > 0;
        for (var i = 0; i < wanted.Count; i++)
        {
            CheckEdges(sheets.Wanted![i], trimmed, $"#/sheets/wanted/{Number(i)}", faults);
        }
    }

    private static void CheckEdges(WantedSheetRequest piece, bool trimmed, string at, FaultList faults)
    {
        if (piece.FactoryEdges is not (FactoryEdgesWord.One or FactoryEdgesWord.Both))
        {
            return;
        }

        if (trimmed)
        {
            faults.Add($"{at}/factoryEdges", "no_factory_edge_left", "The edge trim takes the factory edges off every sheet.");
        }

        if (piece.MayTurn == true)
        {
            faults.Add($"{at}/mayTurn", "turned_off_its_edge", "A piece that keeps a factory edge lies along it, and cannot be turned.");
        }
    }

    private static void CheckPieces(List<(string Id, int Count)> wanted, string list, int most, FaultList faults)
    {
        IdRules.CheckUnique(wanted.Select(w => w.Id), list, faults);
        if (!faults.Sound(list))
        {
            return;
        }

        var pieces = wanted.Sum(w => (long)w.Count);
        if (pieces > most)
        {
            faults.Add(list, "too_many_pieces", $"At most {Number(most)} pieces can be cut at once; these are {pieces.ToString(CultureInfo.InvariantCulture)}.",
                ("most", Number(most)), ("count", pieces.ToString(CultureInfo.InvariantCulture)));
            return;
        }

        CheckNames(wanted, list, faults);
    }

    /// <summary>Of two <c>a</c> the second is named <c>a-2</c>, which no other piece may then be called.</summary>
    private static void CheckNames(List<(string Id, int Count)> wanted, string list, FaultList faults)
    {
        var named = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < wanted.Count; i++)
        {
            for (var n = 1; n <= wanted[i].Count; n++)
            {
                var name = PieceNames.Of(wanted[i].Id, wanted[i].Count, n);
                if (!named.Add(name))
                {
                    faults.Add($"{list}/{Number(i)}/id", "piece_named_twice", $"Two pieces would be called \"{name}\".", ("id", name));
                    break;
                }
            }
        }
    }

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
