using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Rooms;

/// <summary>What a request says of straps, sheets and prices: stock mixes with and without prices, spacing, joints.</summary>
internal sealed class MaterialWishes(Dice dice, RoomWishes wishes, bool imperial, LengthWriting write, Func<double, long> steps)
{
    private readonly bool priced = wishes.Prices ?? dice.Chance(55);

    public bool Priced { get; private set; }

    public JsonObject Strapping()
    {
        var strapping = new JsonObject();
        if (Says(70))
        {
            strapping["size"] = dice.Chance(50)
                ? new JsonObject { ["name"] = "1x3" }
                : new JsonObject { ["thickness"] = write.Length(steps(19.05)), ["face"] = write.Length(steps(63.5)) };
        }

        if (Says(80))
        {
            strapping["maxSpacing"] = write.Length(imperial ? steps(dice.Pick(304.8, 406.4, 406.4, 609.6)) : dice.Pick(300L, 400, 400, 600));
        }

        if (Says(90))
        {
            strapping["stock"] = StickStock();
        }

        Maybe(strapping, "kerf", 40, steps(3.175));
        Maybe(strapping, "endTrim", 30, dice.Chance(50) ? 0 : steps(6.35));
        Maybe(strapping, "minPiece", 30, steps(dice.Pick(406.4, 609.6, 762)));
        Maybe(strapping, "endClearance", 10, dice.Chance(50) ? 0 : steps(9.525));
        if (wishes.OtherJoints && dice.Chance(25))
        {
            strapping["jointsAllowed"] = dice.Pick<Func<JsonArray>>(
                () => ["on-joist"], () => ["on-joist", "scab"], () => ["on-joist", "block"], () => ["on-joist", "scab", "block"])();
        }

        return strapping;
    }

    public JsonObject Sheets()
    {
        var sheets = new JsonObject();
        if (Says(60))
        {
            sheets["thickness"] = imperial ? dice.Pick(0.5m, 0.625m) : dice.Pick(12.7m, 15.9m);
        }

        if (Says(90))
        {
            sheets["stock"] = SheetStock();
        }

        Maybe(sheets, "cutAllowance", 15, dice.Chance(50) ? 0 : steps(3.175));
        Maybe(sheets, "minStagger", 10, steps(dice.Pick(406.4, 609.6)));
        if (priced && Priced && dice.Chance(40))
        {
            sheets["jointCost"] = new JsonObject { ["butt"] = dice.Whole(0, 600) / 100m, ["tapered"] = dice.Whole(0, 200) / 100m };
        }

        return sheets;
    }

    private JsonArray StickStock()
    {
        var all = imperial ? new List<long> { 8 * 192, 10 * 192, 12 * 192, 14 * 192, 16 * 192 } : [2440, 3050, 3660, 4270, 4880];
        return Stock(all, dice.Whole(1, 4), "s", (length, item) => item["length"] = write.Length(length), length => length);
    }

    private JsonArray SheetStock()
    {
        long[] lengths = imperial ? [8 * 192, 9 * 192, 10 * 192, 12 * 192, 14 * 192, 16 * 192] : [2400, 2440, 2700, 3000, 3600, 4200, 4800];
        var width = imperial ? dice.Pick(48L * 16, 48 * 16, 54 * 16) : dice.Pick(1200L, 1220, 1220);
        var both = dice.Chance(15);
        return Stock([.. lengths], dice.Whole(1, 3), "b", (length, item) =>
        {
            item["width"] = write.Length(both && length == lengths[0] ? (imperial ? 54 * 16 : 1350) : width);
            item["length"] = write.Length(length);
        }, length => length * 3);
    }

    /// <summary>A few of the lengths, in any order; prices about by length, so that no one length is always best.</summary>
    private JsonArray Stock(List<long> lengths, long count, string prefix, Action<long, JsonObject> size, Func<long, long> worth)
    {
        dice.Shuffle(lengths);
        var stock = new JsonArray();
        var rate = dice.Whole(40, 90);
        for (var i = 0; i < Math.Min(count, lengths.Count); i++)
        {
            var item = new JsonObject { ["id"] = $"{prefix}{i + 1}" };
            size(lengths[i], item);
            if (priced)
            {
                Priced = true;
                var pack = dice.Chance(12) ? dice.Pick(2, 6, 10) : 1;
                if (pack > 1)
                {
                    item["packSize"] = pack;
                }

                var feet = worth(lengths[i]) / (imperial ? 192m : 304.8m);
                item["packPrice"] = decimal.Round(feet * (rate + dice.Whole(-6, 6)) / 100m * pack, 2);
                if (dice.Chance(40))
                {
                    item["sku"] = $"{prefix.ToUpperInvariant()}-{lengths[i]}";
                }
            }

            if (wishes.Quantities && i > 0 && dice.Chance(8))
            {
                item["quantity"] = dice.Whole(1, 12);
            }

            stock.Add(item);
        }

        return stock;
    }

    private bool Says(int percent) => !wishes.Defaults || dice.Chance(percent);

    private void Maybe(JsonObject parent, string name, int percent, long value)
    {
        if (dice.Chance(percent))
        {
            parent[name] = write.Length(value);
        }
    }
}
