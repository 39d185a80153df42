namespace LayoutService.Engine.Tests.Architecture;

/// <summary>What each folder of the engine may name. A folder that is not listed here is refused.</summary>
internal static class FolderAllowances
{
    private static readonly string[] Everything =
    [
        "Access", "Bulkheads", "Ceilings", "Checks", "Composition", "Cutting", "Fixtures", "Geometry", "Insulation", "Levelling", "Measures", "Sheets", "Standards",
        "Steps", "Strapping", "Takeoff",
    ];

    public static readonly IReadOnlyDictionary<string, string[]> ByFolder = new SortedDictionary<string, string[]>(StringComparer.Ordinal)
    {
        // the ground: lengths, then geometry on lengths
        ["Measures"] = [],
        ["Geometry"] = ["Measures"],

        // published tables and the rules read from them know no room
        ["Standards"] = ["Measures"],

        // sticks and sheets in plain numbers: no ceiling; of the measures only how many units a millimetre has
        ["Cutting"] = ["Measures"],

        // the nouns that stages exchange
        ["Ceilings"] = ["Geometry", "Measures"],

        // stages: strangers to each other and to the cutter
        ["Strapping"] = ["Ceilings", "Geometry", "Measures"],
        ["Sheets"] = ["Ceilings", "Geometry", "Measures"],
        ["Fixtures"] = ["Ceilings", "Geometry", "Measures"],
        ["Bulkheads"] = ["Ceilings", "Geometry", "Measures"],
        ["Insulation"] = ["Ceilings", "Geometry", "Measures"],
        ["Levelling"] = ["Geometry", "Measures"],
        ["Access"] = ["Ceilings", "Measures"],
        ["Checks"] = ["Ceilings", "Measures", "Standards"],

        // readers of finished plans: the plan records of the stages only, see StagesStayStrangersTests
        ["Takeoff"] = ["Bulkheads", "Ceilings", "Fixtures", "Insulation", "Measures", "Sheets", "Strapping"],
        ["Steps"] = ["Bulkheads", "Ceilings", "Fixtures", "Geometry", "Insulation", "Measures", "Sheets", "Strapping"],

        // where stages meet: the root tells the story, Composition does the joining
        ["Composition"] = Everything,
        [""] = Everything,
    };

    /// <summary>Folders that only read finished plans.</summary>
    public static readonly string[] Readers = ["Takeoff", "Steps"];

    /// <summary>The files whose types a reader may name.</summary>
    public static readonly string[] PlanRecords = ["StrappingPlan.cs", "SheetPlan.cs", "InsulationPlan.cs", "FixturePlan.cs"];
}
