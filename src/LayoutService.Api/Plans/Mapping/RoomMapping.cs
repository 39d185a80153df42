using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class RoomMapping
{
    public static RoomSurvey Of(RoomRequest room, Assumptions assumed, bool levelsRead = false)
    {
        var face = assumed.Word("#/room/outlineFace", "What the tape was held to", room.OutlineFace, OutlineFaceWord.Framing);
        NoteHeights(room, assumed);
        if (levelsRead && (room.Heights ?? []).Any(h => h.At is null))
        {
            assumed.Note("#/room/heights", "lowest joist", "A height without a place is taken as read under the lowest joist.");
        }

        return new RoomSurvey
        {
            Outline = OpenRing(room.Outline!, assumed.Imperial),
            OutlineOnFinish = face == OutlineFaceWord.Finished,
            Openings = [.. (room.Openings ?? []).Select((opening, i) => OpeningOf(opening, i, assumed))],
            Heights = [.. (room.Heights ?? []).Select(h => new HeightReading(
                h.At is { } at ? PointOf(at, assumed.Imperial) : null, h.FloorToJoist!.Value.In(assumed.Imperial)))],
            Walls = (room.Walls ?? []).ToDictionary(w => w.Edge!.Value, w => Enum.Parse<WallKind>(w.Kind!.Value.ToString())),
            Existing = ExistingOf(room.Existing, assumed),
            Above = NeighbourOf(room.Above),
            Below = NeighbourOf(room.Below),
            FloorBuildUp = room.FloorBuildUp?.In(assumed.Imperial),
            ExistingBuilding = room.ExistingBuilding ?? false,
            SecondarySuite = room.SecondarySuite ?? false,
            Use = room.Use is { } use ? Words.Text(use) : null,
        };
    }

    /// <summary>The corners in the caller's order, without the first repeated at the end.</summary>
    public static IReadOnlyList<Point> OpenRing(IReadOnlyList<WirePoint> ring, bool imperial)
    {
        var corners = ring.Select(p => PointOf(p, imperial)).ToList();
        if (corners.Count > 1 && corners[0] == corners[^1])
        {
            corners.RemoveAt(corners.Count - 1);
        }

        return corners;
    }

    public static Point PointOf(WirePoint point, bool imperial) => new(point.X.In(imperial), point.Y.In(imperial));

    /// <summary>Id of an opening: the caller's, or its number in the list.</summary>
    public static string IdOf(OpeningRequest opening, int index) =>
        opening.Id ?? string.Create(CultureInfo.InvariantCulture, $"opening-{index + 1}");

    // Only where a height is checked does it matter which building the room is in.
    private static void NoteHeights(RoomRequest room, Assumptions assumed)
    {
        if (room.Heights is not { Count: > 0 })
        {
            return;
        }

        if (room.ExistingBuilding is null)
        {
            assumed.Note("#/room/existingBuilding", "false", "Whether the building stands already was not said; the heights of new buildings are taken.");
        }

        if (room.SecondarySuite is null)
        {
            assumed.Note("#/room/secondarySuite", "false", "Whether the room is part of a secondary suite was not said; it is taken that it is not.");
        }
    }

    // an object without content is none
    private static ExistingCeiling? ExistingOf(ExistingRequest? existing, Assumptions assumed)
    {
        if (existing is null or { Material: null, Thickness: null, Stays: null or false })
        {
            return existing?.Stays == false ? new(null, Length.Zero, false) : null;
        }

        if (existing.Stays is null)
        {
            assumed.Note("#/room/existing/stays", "true", "Whether the old ceiling stays was not said; it is strapped over.");
        }

        return new(
            existing.Material is { } material ? Enum.Parse<ExistingMaterial>(material.ToString()) : null,
            existing.Thickness?.In(assumed.Imperial) ?? Length.Zero,
            existing.Stays ?? true);
    }

    private static Neighbour? NeighbourOf(NeighbourRequest? neighbour) => neighbour is null or { Use: null, Heated: null }
        ? null
        : new(neighbour.Use is { } use ? Enum.Parse<NeighbourUse>(use.ToString()) : null, neighbour.Heated);

    private static Opening OpeningOf(OpeningRequest opening, int index, Assumptions assumed)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"#/room/openings/{index}");
        var kind = assumed.Word($"{at}/kind", "The kind of opening", opening.Kind, OpeningWord.Other) switch
        {
            OpeningWord.Post => OpeningKind.Post,
            OpeningWord.Chimney => OpeningKind.Chimney,
            OpeningWord.Stair => OpeningKind.Stair,
            OpeningWord.Well => OpeningKind.Well,
            _ => OpeningKind.Other,
        };
        return new(
            IdOf(opening, index),
            kind,
            OpenRing(opening.Outline!, assumed.Imperial),
            assumed.Length($"{at}/clearance", "The clearance of the opening", opening.Clearance, 0, 0))
        {
            Headroom = opening.Headroom?.In(assumed.Imperial),
        };
    }
}
