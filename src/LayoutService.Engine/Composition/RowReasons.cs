using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Why each row lies where it does: what it is tight to, carries, backs or is cut by; else the spacing.</summary>
internal sealed class RowReasons(FramedRoom room, ChosenCeiling chosen, CutLumber cut, string[] rowIds)
{
    /// <param name="line">The row's line.</param>
    /// <param name="before">The line of the row before it; null for the first.</param>
    /// <param name="butts">Ids of the sheets whose butt ends it backs; null for none.</param>
    public List<Reason> Of(int line, int? before, List<string>? butts)
    {
        var reasons = new List<Reason>();
        var at = chosen.Lines[line].At;
        var walls = chosen.WallRows.Where(w => w.At == at && (chosen.Lines[line].Serves is null || chosen.Lines[line].Serves == w)).SelectMany(w => w.Sources).Distinct().ToList();
        if (walls.Any(s => s >= 0))
        {
            reasons.AddRange(EdgeReasons.Of(room, walls));
        }

        var faces = walls.Select(room.BulkheadAt).OfType<BulkheadSolid>().Where(b => !b.Wish.BoardedAbove).Select(b => b.Id).Distinct().ToList();
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("bulkhead", faces, "tight_to_bulkhead", "Carries the board's edge along the bulkhead's face."));
        }

        var beside = walls.Select(room.PartitionAt).OfType<FramedPartition>().Distinct().ToLookup(p => p.Stands, p => p.Wish.Id);
        if (beside[false].Any())
        {
            reasons.Add(new Reason("partition", [.. beside[false]], "over_partition", "Half over the partition's plate, which is screwed up into it, and half beside it for the board's edge."));
        }

        faces = [.. beside[true]];
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("partition", faces, "tight_to_partition", "Tight to the partition, which stands before the straps."));
        }

        faces = [.. room.Solids.Where(b => BulkheadLines.Under(b, chosen.Lines[line], chosen.Rules.Half)).Select(b => b.Id)];
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("bulkhead", faces, "carries_bulkhead", "The bulkhead below the board is screwed to it."));
        }

        if (walls.Any(room.IsOpening))
        {
            reasons.Add(new Reason("opening", [.. walls.Where(room.IsOpening).Select(s => room.Survey.Room.Openings[-s - 1].Id)], "tight_to_opening", "Carries the board's edge at the opening."));
        }

        var met = chosen.Lines[line].Stretches
            .SelectMany(s => new[] { s.LowEnd == StretchEnd.Opening ? s.LowSource : 0, s.HighEnd == StretchEnd.Opening ? s.HighSource : 0 })
            .Where(s => s < 0)
            .Distinct()
            .Select(s => room.Survey.Room.Openings[-s - 1].Id)
            .ToList();
        if (met.Count > 0)
        {
            reasons.Add(new Reason("opening", met, "cut_at_opening", "Cut in two by this opening; moving clear of it would cost a row or leave the board unsupported."));
        }

        if (chosen.Lines[line].Stretches.Any(s => s.LowEnd == StretchEnd.Fixture))
        {
            var holes = chosen.Lines[line].TrimmedGaps().SelectMany(gap => HoleHeaders.Holes(room, chosen.Rules, chosen.Lines[line].At, gap)).Distinct().ToList();
            var with = cut.Nailers.Any(n => n.Role == NailerRole.Header && n.Lines.Contains(line)) ? "headers" : "short straps beside it";
            reasons.Add(new Reason("fixture", holes, "trimmed_at_hole", $"Trimmed round this hole, with {with}; moving clear of it would cost a row or leave the board unsupported."));
        }

        if (butts is null && chosen.Lines[line] is { Through: false, Serves: null } and var strap && room.KeepOuts.Firm.Count > 0)
        {
            var reach = chosen.Rules.MinGap + chosen.Rules.Half;
            reasons.Add(new Reason(
                "fixture",
                [.. room.KeepOuts.Firm
                    .Where(h => h.AlongKept.Lo < strap.At + reach && strap.At - reach < h.AlongKept.Hi && strap.Stretches.Any(s => s.Across.Overlaps(h.AcrossKept)))
                    .Select(h => h.FixtureId).Order(StringComparer.Ordinal)],
                "beside_hole",
                "Carries the board beside this hole, where a row is trimmed round it and no joist is near enough for headers."));
        }

        if (butts is not null)
        {
            reasons.Add(new Reason("butt", butts, "backs_butt", "Backs the butt ends of these sheets."));
        }

        if (reasons.Count == 0 || (reasons.All(r => r.Code is "backs_butt" or "cut_at_opening" or "trimmed_at_hole") && chosen.Lines[line].Through))
        {
            reasons.Add(new Reason("spacing", before is { } b ? [rowIds[b]] : [], "within_spacing", "Keeps the distance between rows within the limit."));
        }

        return reasons;
    }
}
