namespace LayoutService.Engine.Standards;

/// <summary>A material that is known: what kind of thing, the name it is sold by, its figures, and where they come from.</summary>
public sealed record Material(string Kind, string Name, IReadOnlyList<MaterialFigure> Figures, Citation Source);

public sealed record MaterialFigure(string Name, Figure Value);

/// <summary>Known sizes, boards, batts, fasteners and finishing materials.</summary>
public static class MaterialCatalogue
{
    /// <summary>Every known material, in the order of the tables.</summary>
    public static IReadOnlyList<Material> Of(PublishedTables tables)
    {
        var all = new List<Material>();
        void Add<T>(TableFile<T> table, string kind, RowSource? source, string name, params (string Name, Figure? Value)[] figures) =>
            all.Add(new(kind, name,
                [.. figures.Where(figure => figure.Value is not null).Select(figure => new MaterialFigure(figure.Name, figure.Value!))],
                source?.Over(table.Source) ?? table.Source));

        foreach (var row in tables.LumberSizes.Rows)
        {
            Add(tables.LumberSizes, "lumber", row.Source, row.Name,
                ("thickness", row.Thickness), ("width", row.Width), ("metricThickness", row.MetricThickness), ("metricWidth", row.MetricWidth));
        }

        foreach (var row in tables.LumberWeights.Rows)
        {
            Add(tables.LumberWeights, "wood", row.Source, row.Species, ("moisture", row.Moisture), ("weight", row.Weight));
        }

        foreach (var row in tables.WoodValues.Rows)
        {
            Add(tables.WoodValues, "wood-grade", row.Source, $"{row.Species} {row.Grade}", ("modulus", row.Modulus), ("bending", row.Bending));
        }

        foreach (var row in tables.WoodGravities.Rows)
        {
            Add(tables.WoodGravities, "wood-gravity", row.Source, row.Species, ("gravity", row.Gravity));
        }

        foreach (var row in tables.Boards.Rows)
        {
            Add(tables.Boards, "board", row.Source, $"{row.Kind} {row.Thickness}", ("thickness", row.Thickness),
                ("metricThickness", row.MetricThickness), ("handlingMass", row.HandlingMass), ("handlingMassHigh", row.HandlingMassHigh), ("designLoad", row.DesignLoad));
        }

        foreach (var row in tables.SheetSizes.Rows)
        {
            Add(tables.SheetSizes, "sheet-size", row.Source, $"{row.Width} x {row.Length}", ("width", row.Width), ("length", row.Length),
                ("metricWidth", row.MetricWidth), ("metricLength", row.MetricLength));
        }

        foreach (var row in tables.StickLengths.Rows)
        {
            Add(tables.StickLengths, "stick-length", row.Source, row.Length.Printed, ("length", row.Length), ("metricLength", row.MetricLength));
        }

        foreach (var row in tables.Batts.Rows)
        {
            Add(tables.Batts, "batt", row.Source, $"{row.Material} {row.Resistance} {row.Thickness}",
                [("resistance", row.Resistance), ("thickness", row.Thickness), .. row.Widths.Select(width => ("width", (Figure?)width))]);
        }

        foreach (var row in tables.FinishLevels.Rows)
        {
            Add(tables.FinishLevels, "finish-level", row.Source, $"level {row.Level}: {row.Surface}, {row.Use}", ("jointCoats", row.JointCoats), ("fastenerCoats", row.FastenerCoats));
        }

        foreach (var row in tables.LightLevels.Rows)
        {
            Add(tables.LightLevels, "light-level", row.Source, row.Space, ("level", row.Level));
        }

        foreach (var row in tables.CompressedBatts.Rows)
        {
            Add(tables.CompressedBatts, "compressed-batt", row.Source, $"{row.Nominal} {row.Thickness} in {row.Depth}", ("nominal", row.Nominal),
                ("thickness", row.Thickness), ("depth", row.Depth), ("resistance", row.Resistance));
        }

        foreach (var table in new[] { tables.DeadLoads, tables.InsulationWeights })
        {
            foreach (var row in table.Rows)
            {
                Add(table, "design-load", row.Source, row.Part, ("load", row.Load));
            }
        }

        foreach (var table in tables.JoistSpans)
        {
            foreach (var joist in table.Rows.GroupBy(row => (row.Species, row.Grade, row.Depth)))
            {
                Add(table, "joist-span", joist.First().Source, $"{joist.Key.Species} {joist.Key.Grade}, 38x{joist.Key.Depth.Value:0}",
                    [.. joist.Select(row => ($"{row.Bracing} at {row.Spacing}", (Figure?)row.Span))]);
            }
        }

        foreach (var row in tables.Coverage.Rows)
        {
            Add(tables.Coverage, "finishing", row.Source, row.Title, (row.Rule, row.Value));
        }

        return all;
    }
}
