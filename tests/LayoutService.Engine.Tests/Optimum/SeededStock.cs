using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>What the yard sells for an invented room: straps and sheets, priced in about two rooms of three.</summary>
internal static class SeededStock
{
    public static StrappingWish Straps(RoomDice dice, bool imperial)
    {
        Length Of(decimal inches, decimal millimetres) => imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);
        var (face, spacing) = dice.Pick(
            (Of(2.5m, 64), Of(16, 400)), (Of(2.5m, 64), Of(16, 400)), (Of(2.5m, 64), Of(12, 300)), (Of(3.5m, 89), Of(24, 600)));
        var priced = dice.Chance(65);
        var rate = dice.Whole(40, 90) / 100m;
        var stock = new List<StickStock>();
        for (var k = 0; k < 5; k++)
        {
            // 8 to 16 ft, or 2400 to 4800 mm
            var length = Of(96 + (24 * k), 2400 + (600 * k));
            var price = decimal.Round(rate * (8 + (2 * k)) * (0.92m + (dice.Whole(0, 20) / 100m)), 2);
            if (dice.Chance(65) || (k == 4 && stock.Count == 0))
            {
                stock.Add(new StickStock($"S{k}", length, null, 1, priced ? price : null));
            }
        }

        return new StrappingWish
        {
            Thickness = Of(0.75m, 19),
            Face = face,
            MaxSpacing = spacing,
            JointsAllowed = JointStyles.OnJoist,
            MinPiece = Of(24, 600),
            Stock = stock,
            Kerf = Of(0.125m, 3),
            EndTrim = Of(0.125m, 3),
            EndClearance = Of(0.25m, 6),
        };
    }

    public static SheetWish Sheets(RoomDice dice, bool imperial)
    {
        Length Of(decimal inches, decimal millimetres) => imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);
        var priced = dice.Chance(65);
        var rate = dice.Whole(35, 70) / 100m;
        var stock = new List<SheetStock>();
        for (var k = 0; k < 3; k++)
        {
            // 4 x 8, 4 x 10, 4 x 12 ft, or 1200 mm by 2400, 3000, 3600
            var price = decimal.Round(rate * (32 + (8 * k)) * (0.95m + (dice.Whole(0, 15) / 100m)), 2);
            if (dice.Chance(65) || (k == 2 && stock.Count == 0))
            {
                stock.Add(new SheetStock($"B{k}", Of(48, 1200), Of(96 + (24 * k), 2400 + (600 * k)), null, 1, priced ? price : null));
            }
        }

        if (dice.Chance(15))
        {
            // 54 in x 12 ft, or 1350 x 3600
            stock.Add(new SheetStock("W", Of(54, 1350), Of(144, 3600), null, 1, priced ? decimal.Round(rate * 57, 2) : null));
        }

        return new SheetWish
        {
            Type = "regular",
            Thickness = Of(0.5m, 12.7m),
            Stock = stock,
            CutAllowance = Of(0.125m, 3),
        };
    }
}
