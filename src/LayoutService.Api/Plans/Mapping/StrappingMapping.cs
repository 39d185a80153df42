using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class StrappingMapping
{
    private static readonly decimal[] StockFeet = [8, 10, 12, 14, 16];
    private static readonly decimal[] StockMillimetres = [2400, 3000, 3600, 4200, 4800];

    public static StrappingWish Of(StrappingRequest wish, Assumptions assumed)
    {
        var direct = assumed.Word("#/strapping/method", "How the sheets are carried", wish.Method, StrappingMethodWord.Strapped) == StrappingMethodWord.Direct;
        var said = assumed;
        if (direct)
        {
            // defaults of straps shape nothing where there are none
            assumed = said.Unheard();
            if (wish is not { Size: null, JointsAllowed: null, MinPiece: null, Stock: null, LongestHandled: null })
            {
                said.Note("#/strapping", "direct", "The board is screwed to the joists: what was said of straps, their size, joints and stock changes nothing.");
            }
        }

        var (name, thickness, face) = SizeOf(wish.Size, assumed);
        return new StrappingWish
        {
            Direct = direct,
            SizeName = name,
            Thickness = thickness,
            Face = face,
            MaxSpacing = said.Length("#/strapping/maxSpacing", direct ? "The widest distance between what carries an edge of the board" : "The widest row spacing", wish.MaxSpacing, 16, 400, "strap-spacing-default"),
            JointsAllowed = JointsOf(wish.JointsAllowed, assumed),
            MinPiece = assumed.Length("#/strapping/minPiece", "The shortest piece", wish.MinPiece, 24, 600, "min-piece"),
            Stock = StockOf(wish.Stock, assumed),
            Kerf = said.Length("#/strapping/kerf", "The saw's kerf", wish.Kerf, 0.125m, 3, "kerf"),
            EndTrim = said.Length("#/strapping/endTrim", "The trim of each length", wish.EndTrim, 0.125m, 3, "end-trim"),
            EndClearance = said.Length("#/strapping/endClearance", "The clearance of strap ends at walls", wish.EndClearance, 0.25m, 6, "end-clearance"),
            LongestHandled = wish.LongestHandled?.In(assumed.Imperial),
        };
    }

    /// <summary>Straps under an old ceiling that stays have no room above them for a scab.</summary>
    public static StrappingWish Under(RoomRequest room, StrappingWish wish, Assumptions assumed)
    {
        if (wish.Direct || (wish.JointsAllowed & JointStyles.Scab) == 0 || !ExistingRequest.IsThere(room.Existing))
        {
            return wish;
        }

        assumed.Note("#/strapping/jointsAllowed", "without scab", "A scab lies on the strap's upper face, where an old ceiling that stays leaves no room: the other joints of the set are made.");
        return wish with { JointsAllowed = wish.JointsAllowed & ~JointStyles.Scab };
    }

    /// <summary>Thickness and face of the strap asked for, or of the default 1x3, and its trade name when it has one.</summary>
    public static (string? Name, Length Thickness, Length Face) SizeOf(StrapSizeRequest? size, Assumptions assumed)
    {
        if (size is { Thickness: { } thickness, Face: { } face })
        {
            return (null, thickness.In(assumed.Imperial), face.In(assumed.Imperial));
        }

        if (size is null && (assumed.Own("strap-thickness-default") ?? assumed.Own("strap-face-default")) is not null)
        {
            var (usualThickness, usualFace) = StrapSizes.Of(StrapSizeWord.OneByThree, assumed.Imperial);
            return (
                null,
                assumed.Length("#/strapping/size/thickness", "The thickness of the strap", null, usualThickness, usualThickness, "strap-thickness-default"),
                assumed.Length("#/strapping/size/face", "The face of the strap", null, usualFace, usualFace, "strap-face-default"));
        }

        var name = assumed.Word("#/strapping/size", "The size of the strap", size?.Name, StrapSizeWord.OneByThree);
        var (t, f) = StrapSizes.Of(name, assumed.Imperial);
        return (Words.Text(name), assumed.Default(t, t), assumed.Default(f, f));
    }

    private static JointStyles JointsOf(IReadOnlyList<JointWord>? words, Assumptions assumed)
    {
        if (words is null)
        {
            assumed.Note("#/strapping/jointsAllowed", "on-joist", "The joints allowed were not given; joints on joists only are taken.");
            return JointStyles.OnJoist;
        }

        if (words.Contains(JointWord.SideLap))
        {
            var others = words.Where(w => w != JointWord.SideLap).Select(w => Words.Text(w)).ToList();
            assumed.Note("#/strapping/jointsAllowed", others.Count == 0 ? "none" : string.Join(", ", others),
                "A side lap puts the strap beyond it a face off the row's line, away from the wall or the butt that it was laid for: "
                + (others.Count == 0 ? "each row is laid in one piece." : "the other joints of the set are made."));
        }

        return words.Aggregate(default(JointStyles), (all, word) => all | word switch
        {
            JointWord.OnJoist => JointStyles.OnJoist,
            JointWord.SideLap => JointStyles.SideLap,
            JointWord.Scab => JointStyles.Scab,
            _ => JointStyles.Block,
        });
    }

    private static IReadOnlyList<StickStock> StockOf(IReadOnlyList<StickStockRequest>? stock, Assumptions assumed)
    {
        if (stock is not null)
        {
            return [.. stock.Select((s, i) => new StickStock(
                IdOf(s, i), s.Length!.Value.In(assumed.Imperial), s.Sku, s.PackSize ?? 1, s.PackPrice, s.Quantity))];
        }

        var said = assumed.Imperial ? "8, 10, 12, 14, 16 ft" : "2400, 3000, 3600, 4200, 4800 mm";
        assumed.Note("#/strapping/stock", said, $"The lengths that can be bought were not given; {said} are taken.");
        return assumed.Imperial
            ? [.. StockFeet.Select(feet => new StickStock($"strap-{feet}ft", Length.FromInches(12 * feet)))]
            : [.. StockMillimetres.Select(mm => new StickStock($"strap-{mm}", Length.FromMillimetres(mm)))];
    }

    /// <summary>Id of a stock: the caller's, or its number in the list.</summary>
    public static string IdOf(StickStockRequest stock, int index) =>
        stock.Id ?? string.Create(CultureInfo.InvariantCulture, $"strap-{index + 1}");
}
