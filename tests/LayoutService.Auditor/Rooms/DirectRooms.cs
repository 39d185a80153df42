using LayoutService.Auditor.Likeness;

namespace LayoutService.Auditor.Rooms;

/// <summary>The same room with its board screwed to the joists. What is said of the straps stays: it changes nothing.</summary>
public static class DirectRooms
{
    public static string? Of(string? request)
    {
        if (request is null)
        {
            return null;
        }

        var room = Rewriting.Copy(request);
        if (room["strapping"] is not System.Text.Json.Nodes.JsonObject strapping)
        {
            room["strapping"] = strapping = [];
        }

        strapping["method"] = "direct";
        return room.ToJsonString();
    }
}
