using System.Text.Json.Serialization;

namespace LayoutService.Api.Plans.Requests;

/// <summary>Units of every number in a request and its answer: `imperial` is inches, `metric` millimetres.</summary>
public enum UnitsWord
{
    Imperial,
    Metric,
}

/// <summary>The building code whose published figures are applied. A word never changes its meaning.</summary>
public enum RulesetWord
{
    [JsonStringEnumMemberName("us-irc-2021")]
    UsIrc2021,

    [JsonStringEnumMemberName("us-irc-2024")]
    UsIrc2024,

    [JsonStringEnumMemberName("ca-nbc-2020")]
    CaNbc2020,

    [JsonStringEnumMemberName("ca-on-2024")]
    CaOn2024,
}

/// <summary>How long the cutting search may go on. Both words give the same answer every time they are asked.</summary>
public enum EffortWord
{
    Quick,
    Thorough,
}

/// <summary>Where the tape was held: on the bare framing, or on a finished wall face.</summary>
public enum OutlineFaceWord
{
    Framing,
    Finished,
}

/// <summary>What the hole in the ceiling is for.</summary>
public enum OpeningWord
{
    Post,
    Chimney,
    Stair,
    Other,
    Well,
}

/// <summary>What stands at an edge of the room.</summary>
public enum WallWord
{
    Concrete,
    Stud,
    Later,
    Open,
}

/// <summary>What the room is used for; decides which headroom is asked for.</summary>
public enum RoomUseWord
{
    Habitable,
    Bedroom,
    Hallway,
    Bathroom,
    Laundry,
    Basement,
    UnfinishedBasement,
}

/// <summary>Direction in which joists run.</summary>
public enum RunWord
{
    X,
    Y,
}

/// <summary>What the joists are.</summary>
public enum JoistWord
{
    Sawn,

    [JsonStringEnumMemberName("i-joist")]
    IJoist,

    OpenWebTruss,
    Steel,
}

/// <summary>How the sheets are carried: on straps, or straight on the joists.</summary>
public enum StrappingMethodWord
{
    Strapped,
    Direct,
}

/// <summary>How two strap ends may meet in a row.</summary>
public enum JointWord
{
    OnJoist,
    SideLap,
    Scab,
    Block,
}

/// <summary>Nominal size of wood as a yard says it.</summary>
public enum StrapSizeWord
{
    [JsonStringEnumMemberName("1x2")]
    OneByTwo,

    [JsonStringEnumMemberName("1x3")]
    OneByThree,

    [JsonStringEnumMemberName("1x4")]
    OneByFour,

    [JsonStringEnumMemberName("2x2")]
    TwoByTwo,

    [JsonStringEnumMemberName("2x3")]
    TwoByThree,

    [JsonStringEnumMemberName("2x4")]
    TwoByFour,
}

/// <summary>Kind of gypsum board: plain, light, stiffened ceiling board, or type X for fire resistance.</summary>
public enum BoardWord
{
    Regular,
    Lightweight,
    CeilingBoard,
    TypeX,
}

/// <summary>Nominal size of a joist as a yard says it.</summary>
public enum JoistSizeWord
{
    [JsonStringEnumMemberName("2x4")]
    TwoByFour,

    [JsonStringEnumMemberName("2x6")]
    TwoBySix,

    [JsonStringEnumMemberName("2x8")]
    TwoByEight,

    [JsonStringEnumMemberName("2x10")]
    TwoByTen,

    [JsonStringEnumMemberName("2x12")]
    TwoByTwelve,
}

/// <summary>Species group of lumber as the grade stamp says it: Douglas fir and larch, hem and fir, spruce, pine and fir, or northern species.</summary>
public enum SpeciesWord
{
    [JsonStringEnumMemberName("d-fir-l")]
    DouglasFirLarch,

    HemFir,

    [JsonStringEnumMemberName("s-p-f")]
    SprucePineFir,

    Northern,
}

/// <summary>Grade of lumber as the grade stamp says it.</summary>
public enum GradeWord
{
    SelectStructural,

    [JsonStringEnumMemberName("no-1")]
    NumberOne,

    [JsonStringEnumMemberName("no-2")]
    NumberTwo,

    [JsonStringEnumMemberName("no-3")]
    NumberThree,
}

/// <summary>What finish the ceiling gets: paint, or a water-based texture, which loads the board with water.</summary>
public enum BoardFinishWord
{
    Painted,
    Textured,
}

/// <summary>Fire rating wanted of the ceiling.</summary>
public enum FireRatingWord
{
    [JsonStringEnumMemberName("45-min")]
    FortyFiveMinutes,

    [JsonStringEnumMemberName("1-h")]
    OneHour,

    [JsonStringEnumMemberName("1.5-h")]
    OneAndAHalfHours,
}

/// <summary>What a ceiling that is there already is made of.</summary>
public enum ExistingWord
{
    Gypsum,
    Plaster,
    Wood,
    Tile,
    Other,
}

/// <summary>What the space above or below is used for.</summary>
public enum NeighbourWord
{
    Living,
    Attic,
    Garage,
    CrawlSpace,
    Outside,
    Other,
}
