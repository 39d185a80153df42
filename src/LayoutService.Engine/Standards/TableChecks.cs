using System.Text.Json;

namespace LayoutService.Engine.Standards;

/// <summary>What the shapes alone cannot say of a table: dimensions, known words, rulesets that exist, no rule said twice.</summary>
internal static class TableChecks
{
    private static readonly string[] Comparisons = ["at-most", "at-least", "equal"];
    private static readonly string[] Boards = ["regular", "ceiling-board", "lightweight", "type-x"];
    private static readonly string[] Surfaces = ["wall", "ceiling-painted", "ceiling-textured"];

    private static readonly string[] Spaces =
        ["any", "habitable", "bedroom", "bathroom", "laundry", "hallway", "basement", "unfinished-basement", "stair"];

    /// <summary>Throws <see cref="JsonException"/> at the first table that is wrong.</summary>
    public static void Require(PublishedTables tables)
    {
        var rulesets = tables.Rulesets.Rows.Select(row => row.Id).ToHashSet(StringComparer.Ordinal);
        void Known(string table, IEnumerable<string>? ids)
        {
            foreach (var id in ids ?? [])
            {
                Must(rulesets.Contains(id), table, $"ruleset '{id}' does not exist");
            }
        }

        foreach (var table in tables.Furring)
        {
            Known(table.Id, table.Rulesets);
            Are(table.Id, Dimension.Length, table.Rows.SelectMany(row => new[] { row.RowSpacing, row.SupportSpacing, row.Thickness, row.Face }));
        }

        foreach (var table in tables.BoardSpans)
        {
            Known(table.Id, table.Rulesets);
            Are(table.Id, Dimension.Length, table.Rows.SelectMany(row => new[] { row.Thickness, row.MaxSpacing }));
            Words(table.Id, Boards, table.Rows.Select(row => row.Board));
            Words(table.Id, Surfaces, table.Rows.Select(row => row.Surface));
            Words(table.Id, ["parallel", "perpendicular"], table.Rows.Select(row => row.Orientation));
            Once(table.Id, table.Rows.Select(row => $"{row.Thickness} {row.Board} {row.Orientation} {row.Surface}"));
        }

        foreach (var table in tables.Heights)
        {
            Known(table.Id, table.Rulesets);
            Known(table.Id, table.Rows.SelectMany(row => row.Rulesets ?? []));
            Are(table.Id, Dimension.Length, table.Rows.Select(row => row.Least));
            Are(table.Id, Dimension.Share, table.Rows.Select(row => row.Share));
            Words(table.Id, Spaces, table.Rows.Select(row => row.Space));
        }

        Are("nbc-board-penetration", Dimension.Length, tables.BoardPenetration.Rows.SelectMany(row => new[] { row.Nails, row.Screws }));
        Are("board-insulation", Dimension.MassPerArea, tables.BoardInsulation.Rows.Select(row => row.MostMass));
        Words("board-insulation", Boards, tables.BoardInsulation.Rows.Select(row => row.Board));
        Are("boards", Dimension.MassPerArea, tables.Boards.Rows.SelectMany(row => new[] { row.HandlingMass, row.HandlingMassHigh, row.DesignLoad }));
        Words("boards", Boards, tables.Boards.Rows.Select(row => row.Kind));
        Are("lumber-sizes", Dimension.Length, tables.LumberSizes.Rows.SelectMany(row => new[] { row.Thickness, row.Width, row.MetricThickness, row.MetricWidth }));
        Once("lumber-sizes", tables.LumberSizes.Rows.Select(row => row.Name));
        Are("lumber-weights", Dimension.WeightPerVolume, tables.LumberWeights.Rows.Select(row => row.Weight));
        Are("sheet-sizes", Dimension.Length, tables.SheetSizes.Rows.SelectMany(row => new[] { row.Width, row.Length, row.MetricWidth, row.MetricLength }));
        Are("stick-lengths", Dimension.Length, tables.StickLengths.Rows.SelectMany(row => new[] { row.Length, row.MetricLength }));
        Words("batts", ["glass-fibre", "glass-fibre-canada", "mineral-wool"], tables.Batts.Rows.Select(row => row.Material));
        Are("batts", Dimension.ThermalResistance, tables.Batts.Rows.Select(row => row.Resistance));
        Are("compressed-batts", Dimension.ThermalResistance, tables.CompressedBatts.Rows.Select(row => row.Resistance));

        foreach (var table in tables.JoistSpans)
        {
            Known(table.Id, table.Rulesets);
            Are(table.Id, Dimension.Length, table.Rows.SelectMany(row => new[] { row.Depth, row.Spacing, row.Span }));
            Once(table.Id, table.Rows.Select(row => $"{row.Species} {row.Grade} {row.Depth} {row.Bracing} {row.Spacing}"));
        }

        Are("finish-levels", Dimension.Count, tables.FinishLevels.Rows.SelectMany(row => new[] { row.JointCoats, row.FastenerCoats }));
        Words("finish-levels", ["none", "marks-accepted", "smooth", "skimmed"], tables.FinishLevels.Rows.Select(row => row.Surface));
        Are("light-levels", Dimension.Light, tables.LightLevels.Rows.Select(row => row.Level));
        Once("light-levels", tables.LightLevels.Rows.Select(row => row.Space));
        Are("wood-values", Dimension.Pressure, tables.WoodValues.Rows.SelectMany(row => new[] { row.Modulus, row.Bending }));
        Once("wood-values", tables.WoodValues.Rows.Select(row => $"{row.Species} {row.Grade}"));
        Are("wood-gravity", Dimension.Share, tables.WoodGravities.Rows.Select(row => row.Gravity));
        Once("wood-gravity", tables.WoodGravities.Rows.Select(row => row.Species));

        foreach (var table in tables.Rules)
        {
            Known(table.Id, table.Rulesets);
            Known(table.Id, table.Rows.SelectMany(row => row.Rulesets ?? []));
            Words(table.Id, Comparisons, table.Rows.Select(row => row.Comparison));
            foreach (var row in table.Rows.Where(row => row.Imperial is not null))
            {
                Must(row.Imperial!.Unit.Dimension == row.Value.Unit.Dimension, table.Id, $"'{row.Rule}' says two different kinds of thing");
            }
        }

        foreach (var ruleset in rulesets)
        {
            Once("rules of " + ruleset, tables.Rules.SelectMany(table =>
                table.Rows.Where(row => row.Rulesets?.Contains(ruleset) ?? table.SpeaksFor(ruleset)).Select(row => row.Rule)));
        }
    }

    private static void Are(string table, Dimension dimension, IEnumerable<Figure?> figures)
    {
        foreach (var figure in figures)
        {
            Must(figure is null || figure.Unit.Dimension == dimension, table, $"'{figure}' does not measure {dimension}");
        }
    }

    private static void Words(string table, string[] known, IEnumerable<string> words)
    {
        foreach (var word in words)
        {
            Must(known.Contains(word), table, $"'{word}' is not a word of this table");
        }
    }

    private static void Once(string table, IEnumerable<string> keys)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var key in keys)
        {
            Must(seen.Add(key), table, $"'{key}' stands twice");
        }
    }

    private static void Must(bool holds, string table, string otherwise)
    {
        if (!holds)
        {
            throw new JsonException($"Table '{table}': {otherwise}.");
        }
    }
}
