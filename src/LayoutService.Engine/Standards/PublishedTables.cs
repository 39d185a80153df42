using System.Text.Json;

namespace LayoutService.Engine.Standards;

/// <summary>
/// Every table that the engine plans by, loaded once and strictly. Loading throws when any table is wrong, so a service
/// that starts has whole tables.
/// </summary>
public sealed class PublishedTables
{
    /// <summary>Date of the last change that alters what a rule says.</summary>
    public const string Edition = "2026-11-25";

    private static readonly Lazy<PublishedTables> Loaded = new(() => new PublishedTables());

    private PublishedTables()
    {
        var read = new HashSet<string>(StringComparer.Ordinal);
        TableFile<T> Take<T>(string id, System.Text.Json.Serialization.Metadata.JsonTypeInfo<TableFile<T>> shape)
        {
            read.Add(id);
            return TableReader.Read(id, shape);
        }

        var shapes = TableShapes.Default;
        Rulesets = Take("rulesets", shapes.Rulesets);
        Furring = [Take("nbc-furring", shapes.Furring), Take("irc-furring", shapes.Furring)];
        BoardSpans = [Take("nbc-board-spans", shapes.BoardSpans), Take("irc-board-spans", shapes.BoardSpans)];
        BoardPenetration = Take("nbc-board-penetration", shapes.Penetrations);
        BoardInsulation = Take("board-insulation", shapes.BoardInsulation);
        Heights =
        [
            Take("nbc-heights", shapes.Heights), Take("on-heights", shapes.Heights), Take("irc-heights", shapes.Heights),
        ];
        LumberSizes = Take("lumber-sizes", shapes.Lumber);
        LumberWeights = Take("lumber-weights", shapes.LumberWeights);
        Boards = Take("boards", shapes.Boards);
        SheetSizes = Take("sheet-sizes", shapes.SheetSizes);
        StickLengths = Take("stick-lengths", shapes.StickLengths);
        DeadLoads = Take("dead-loads", shapes.Loads);
        InsulationWeights = Take("insulation-weights", shapes.Loads);
        Batts = Take("batts", shapes.Batts);
        CompressedBatts = Take("compressed-batts", shapes.CompressedBatts);
        JoistSpans = [Take("nbc-joist-spans-general", shapes.JoistSpans), Take("nbc-joist-spans-furred", shapes.JoistSpans)];
        FinishLevels = Take("finish-levels", shapes.FinishLevels);
        LightLevels = Take("light-levels", shapes.LightLevels);
        SupersededFurring = Take("on-2012-furring", shapes.Furring);
        SupersededHeights = Take("irc-2015-heights", shapes.Heights);
        WoodValues = Take("wood-values", shapes.WoodValues);
        WoodGravities = Take("wood-gravity", shapes.WoodGravities);
        Practice = Take("practice", shapes.Rules);
        Coverage = Take("coverage", shapes.Rules);
        Rules =
        [
            Take("nbc-board-fastening", shapes.Rules), Take("irc-board-fastening", shapes.Rules),
            Take("strap-fastening", shapes.Rules), Take("fire-separation", shapes.Rules), Take("cables", shapes.Rules),
            Take("plane", shapes.Rules), Take("joist-restraint", shapes.Rules), Take("joist-cutting", shapes.Rules), Take("insulation", shapes.Rules),
            Take("strap-strength", shapes.Rules), Take("access", shapes.Rules),
            Take("fire-materials", shapes.Rules), Take("electrical-clearances", shapes.Rules), Take("wood-tolerances", shapes.Rules),
            Take("sound", shapes.Rules), Take("services", shapes.Rules), Take("fixtures", shapes.Rules), Practice, Coverage,
        ];

        var unread = TableReader.Ids().FirstOrDefault(id => !read.Contains(id));
        if (unread is not null)
        {
            throw new JsonException($"Table '{unread}' is built in, and nothing reads it.");
        }

        RulesVersion = Edition + "-" + TableReader.Fingerprint();
        TableChecks.Require(this);
        InForce = Rulesets.Rows.ToDictionary(row => row.Id, row => new RulesInForce(this, row), StringComparer.Ordinal);
    }

    /// <summary>The tables of this build. The first use loads them.</summary>
    public static PublishedTables Current => Loaded.Value;

    /// <summary>Id of the whole set: its date and a fingerprint of every byte. Each plan states it.</summary>
    public string RulesVersion { get; }

    public TableFile<RulesetRow> Rulesets { get; }

    /// <summary>The single rules of each ruleset, by ruleset id, cited as that ruleset cites them.</summary>
    internal IReadOnlyDictionary<string, RulesInForce> InForce { get; }

    public IReadOnlyList<TableFile<FurringRow>> Furring { get; }

    public IReadOnlyList<TableFile<BoardSpanRow>> BoardSpans { get; }

    public TableFile<PenetrationRow> BoardPenetration { get; }

    public TableFile<BoardInsulationRow> BoardInsulation { get; }

    public IReadOnlyList<TableFile<HeightRow>> Heights { get; }

    public TableFile<LumberRow> LumberSizes { get; }

    public TableFile<LumberWeightRow> LumberWeights { get; }

    public TableFile<BoardRow> Boards { get; }

    public TableFile<SheetSizeRow> SheetSizes { get; }

    public TableFile<StickLengthRow> StickLengths { get; }

    public TableFile<LoadRow> DeadLoads { get; }

    public TableFile<LoadRow> InsulationWeights { get; }

    public TableFile<BattRow> Batts { get; }

    public TableFile<CompressedBattRow> CompressedBatts { get; }

    /// <summary>Clear spans of floor joists by what braces them: in general, and with a ceiling on wood furring.</summary>
    public IReadOnlyList<TableFile<JoistSpanRow>> JoistSpans { get; }

    public TableFile<FinishLevelRow> FinishLevels { get; }

    public TableFile<LightLevelRow> LightLevels { get; }

    /// <summary>Figures of an edition that no ruleset stands for any more; no plan reads them.</summary>
    public TableFile<FurringRow> SupersededFurring { get; }

    public TableFile<HeightRow> SupersededHeights { get; }

    /// <summary>Stiffness and bending strength of dimension lumber.</summary>
    public TableFile<WoodValueRow> WoodValues { get; }

    /// <summary>Specific gravity of wood, for what a fastener holds.</summary>
    public TableFile<WoodGravityRow> WoodGravities { get; }

    /// <summary>House practice and defaults, as rules.</summary>
    public TableFile<RuleRow> Practice { get; }

    /// <summary>Waste conventions, coverage and fastener masses, as rules.</summary>
    public TableFile<RuleRow> Coverage { get; }

    /// <summary>Every table whose rows are rules by themselves, practice and coverage among them.</summary>
    public IReadOnlyList<TableFile<RuleRow>> Rules { get; }
}
