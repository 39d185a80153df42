using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Documents;

/// <summary>The takeoff, a row for each pack bought and one for each line without packs.</summary>
internal static class TakeoffTable
{
    public static readonly Table Table = new(
        "takeoff",
        "What to order, a row for each pack bought and one for each line that no pack is known for.",
        [
            new("code", ColumnKind.Text, "Stable code of the line."),
            new("id", ColumnKind.Text, "Stock or size, where the line is for one."),
            new("description", ColumnKind.Text, "Description."),
            new("unit", ColumnKind.Text, "Unit in words."),
            new("unit_code", ColumnKind.Text, "UN/CEFACT Recommendation 20 code of the unit."),
            new("counted", ColumnKind.Number, "What the layout needs; on the first row of a line only."),
            new("waste", ColumnKind.Number, "What is added to it; on the first row of a line only."),
            new("quantity", ColumnKind.Number, "What the packs of this row hold, in the unit."),
            new("pack_id", ColumnKind.Text, "Id of the pack."),
            new("sku", ColumnKind.Text, "The yard's number for the pack."),
            new("pack_size", ColumnKind.Number, "How much of the unit is in a pack."),
            new("packs", ColumnKind.Number, "How many packs."),
            new("pack_price", ColumnKind.Number, "Price of a pack."),
            new("amount", ColumnKind.Number, "Price of this row; empty without a price. The rows add up to the total."),
            new("currency", ColumnKind.Text, "ISO 4217 code of prices and amounts."),
            new("mass", ColumnKind.Number, "Mass of the whole line; on its first row only."),
            new("mass_unit", ColumnKind.Text, "Unit of the mass."),
            new("counted_from", ColumnKind.Text, "What it was counted from."),
        ],
        sheet => sheet.Takeoff.Lines.SelectMany(line => Rows(line, sheet)));

    private static IEnumerable<object?[]> Rows(TakeoffLineAnswer line, OrderSheet sheet) =>
        PackAmounts.Of(line, sheet.Takeoff.Totals.Currency).Select((bought, i) => new object?[]
        {
            line.Code,
            line.Id,
            line.Description,
            line.Unit,
            line.UnitCode,
            i == 0 ? line.Counted : null,
            i == 0 ? line.Waste : null,
            bought.Quantity,
            bought.Pack?.Id,
            bought.Pack?.Sku,
            bought.Pack?.PackSize,
            bought.Pack?.Count,
            bought.Pack?.PackPrice,
            bought.Amount,
            bought.Amount is null ? null : sheet.Takeoff.Totals.Currency,
            i == 0 ? line.Mass : null,
            i == 0 && line.Mass is not null ? sheet.MassUnit : null,
            line.CountedFrom,
        });
}
