using System.Text.Json;

namespace LayoutService.Api.Tests.CutPlans;

/// <summary>Recomputes the sheets of a cut plan from its answer alone, for requests in which lengths are numbers.</summary>
internal static class SheetCheck
{
    private sealed record Box(decimal X, decimal Y, decimal Along, decimal Across)
    {
        public decimal EndX => X + Along;

        public decimal EndY => Y + Across;
    }

    /// <summary>Every piece is cut once at its size, nothing overlaps, and cuts from edge to edge part it all.</summary>
    public static void Whole(string request, HttpReply reply)
    {
        Assert.True(reply.Status == 200, reply.Text);
        var asked = JsonDocument.Parse(request).RootElement.GetProperty("sheets");
        var answer = reply.Json;
        var kerf = asked.TryGetProperty("kerf", out var given) ? given.GetDecimal() : 0;
        var wanted = asked.GetProperty("wanted").EnumerateArray()
            .SelectMany((w, i) => StickCheck.Names(w, "panel", i).Select(id => (id, w))).ToDictionary(p => p.id, p => p.w);
        var seen = new List<string>();
        foreach (var sheet in answer.GetProperty("sheetStock").EnumerateArray())
        {
            var whole = new Box(0, 0, sheet.GetProperty("length").GetDecimal(), sheet.GetProperty("width").GetDecimal());
            var pieces = sheet.GetProperty("cuts").EnumerateArray().Select(Of).ToList();
            var offcuts = sheet.GetProperty("offcuts").EnumerateArray().Select(Of).ToList();
            var all = pieces.Concat(offcuts).ToList();
            Assert.All(all, b => Assert.True(b.X >= 0 && b.Y >= 0 && b.EndX <= whole.EndX && b.EndY <= whole.EndY, sheet.ToString()));
            Assert.True(Parts(pieces, kerf), sheet.ToString());
            if (kerf == 0)
            {
                Assert.True(Parts(all, 0), sheet.ToString());
                Assert.Equal(whole.Along * whole.Across, all.Sum(b => b.Along * b.Across), 3);
            }

            foreach (var cut in sheet.GetProperty("cuts").EnumerateArray())
            {
                var id = cut.GetProperty("pieceId").GetString()!;
                seen.Add(id);
                Fits(wanted[id], cut, Of(cut), whole);
            }
        }

        Assert.Equal(wanted.Keys.Order(StringComparer.Ordinal), seen.Order(StringComparer.Ordinal));
        var unit = reply.Json.GetProperty("units").GetString() == "imperial" ? 144m : 1_000_000m;
        StickCheck.Figures(
            answer, asked, "sheets", answer.GetProperty("sheetStock"),
            s => s.GetProperty("width").GetDecimal() * s.GetProperty("length").GetDecimal() / unit, "area");
    }

    /// <summary>A piece has its size, turned only if it may be, and lies along the factory edges that it keeps.</summary>
    private static void Fits(JsonElement wanted, JsonElement cut, Box box, Box sheet)
    {
        var (width, length) = (wanted.GetProperty("width").GetDecimal(), wanted.GetProperty("length").GetDecimal());
        var turned = cut.GetProperty("turned").GetBoolean();
        Assert.Equal(turned ? (length, width) : (width, length), (box.Across, box.Along));
        Assert.True(!turned || wanted.GetProperty("mayTurn").GetBoolean(), cut.ToString());
        var edges = (box.Y == 0 ? 1 : 0) + (box.EndY == sheet.EndY ? 1 : 0);
        var needed = wanted.TryGetProperty("factoryEdges", out var word) ? word.GetString() : "none";
        Assert.True(edges >= (needed == "both" ? 2 : needed == "one" ? 1 : 0), cut.ToString());
    }

    /// <summary>Boxes can be parted by cuts of this width that run from edge to edge, each part again, down to single boxes.</summary>
    private static bool Parts(List<Box> boxes, decimal kerf)
    {
        if (boxes.Count <= 1)
        {
            return true;
        }

        foreach (var cut in boxes)
        {
            var low = boxes.Where(b => b.EndX <= cut.EndX).ToList();
            var high = boxes.Where(b => b.X >= cut.EndX + kerf).ToList();
            if (low.Count + high.Count == boxes.Count && high.Count > 0)
            {
                return Parts(low, kerf) && Parts(high, kerf);
            }

            low = [.. boxes.Where(b => b.EndY <= cut.EndY)];
            high = [.. boxes.Where(b => b.Y >= cut.EndY + kerf)];
            if (low.Count + high.Count == boxes.Count && high.Count > 0)
            {
                return Parts(low, kerf) && Parts(high, kerf);
            }
        }

        return false;
    }

    private static Box Of(JsonElement box) => new(
        box.GetProperty("x").GetDecimal(), box.GetProperty("y").GetDecimal(),
        box.GetProperty("length").GetDecimal(), box.GetProperty("width").GetDecimal());
}
