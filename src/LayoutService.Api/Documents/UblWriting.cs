using System.Globalization;
using System.Xml.Linq;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Api.Documents;

/// <summary>
/// Writes a request for quotation or an order by OASIS UBL 2.3. Members stand in the order of its schemas. Id and date come from
/// the request: the service knows no clock. A line of the document is one size of pack of a takeoff line; hours of labour are no
/// yard's, and left out. Quantities carry UN/CEFACT Recommendation 20 codes.
/// </summary>
internal static class UblWriting
{
    public const string MediaType = "application/xml";

    private const string Names = "urn:oasis:names:specification:ubl:schema:xsd:";
    /// <summary>The schema of a request for quotation asks for a time of issue; only its day is known.</summary>
    private const string Midnight = "00:00:00";

    private static readonly XNamespace Cac = Names + "CommonAggregateComponents-2";
    private static readonly XNamespace Cbc = Names + "CommonBasicComponents-2";

    public static byte[] RequestForQuotation(OrderSheet sheet)
    {
        var head = sheet.Document!;
        var lines = Lines(sheet).ToList();
        return Bytes(Root("RequestForQuotation",
            Head(head),
            Text("IssueTime", Midnight),
            Text("Note", sheet.Reference),
            Text("PricingCurrencyCode", sheet.Takeoff.Totals.Currency),
            Text("LineCountNumeric", Number(lines.Count)),
            Party("SellerSupplierParty", head.Seller),
            Party("BuyerCustomerParty", head.Buyer),
            lines.Select((line, i) => Aggregate("RequestForQuotationLine", Text("ID", Number(i + 1)), LineItem(line, i + 1, null)))));
    }

    public static byte[] Order(OrderSheet sheet)
    {
        var head = sheet.Document!;
        var lines = Lines(sheet).ToList();
        var currency = sheet.Takeoff.Totals.Currency;
        var sum = lines.Sum(line => line.Bought.Amount ?? 0);
        return Bytes(Root("Order",
            Head(head),
            Text("Note", sheet.Reference),
            Text("DocumentCurrencyCode", currency),
            Text("LineCountNumeric", Number(lines.Count)),
            Party("BuyerCustomerParty", head.Buyer),
            Party("SellerSupplierParty", head.Seller),
            currency is null ? null : Aggregate("AnticipatedMonetaryTotal", Money("LineExtensionAmount", sum, currency), Money("PayableAmount", sum, currency)),
            lines.Select((line, i) => Aggregate("OrderLine", LineItem(line, i + 1, currency)))));
    }

    private static IEnumerable<(Plans.Answers.TakeoffLineAnswer Line, PackAmount Bought)> Lines(OrderSheet sheet) =>
        sheet.Takeoff.Lines
            .Where(line => !TakeoffCodes.IsLabour(line.Code))
            .SelectMany(line => PackAmounts.Of(line, sheet.Takeoff.Totals.Currency).Select(bought => (line, bought)))
            .Where(line => line.bought.Quantity > 0);

    private static XElement LineItem((Plans.Answers.TakeoffLineAnswer Line, PackAmount Bought) line, int number, string? currency)
    {
        var (takeoff, bought) = line;
        var price = currency is not null && bought.Pack is { PackPrice: not null } pack
            ? Aggregate("Price", Money("PriceAmount", pack.PackPrice.Value, currency), Measured("BaseQuantity", pack.PackSize, takeoff.UnitCode))
            : null;
        return Aggregate("LineItem",
            Text("ID", Number(number)),
            Measured("Quantity", bought.Quantity, takeoff.UnitCode),
            currency is not null && bought.Amount is { } amount ? Money("LineExtensionAmount", amount, currency) : null,
            price,
            Aggregate("Item",
                Text("Description", takeoff.Description),
                bought.Pack is { } whole ? Measured("PackQuantity", whole.Count, "C62") : null,
                bought.Pack is { } one ? Text("PackSizeNumeric", Number(one.PackSize)) : null,
                Text("Name", takeoff.Id is null ? takeoff.Code : $"{takeoff.Code} {takeoff.Id}"),
                Identified("BuyersItemIdentification", bought.Pack?.Id ?? takeoff.Id ?? takeoff.Code),
                Identified("SellersItemIdentification", bought.Pack?.Sku)));
    }

    private static object[] Head(DocumentRequest head) =>
    [
        Text("UBLVersionID", "2.3")!,
        Text("ID", head.Id)!,
        Text("IssueDate", head.IssueDate!.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))!,
    ];

    private static XElement Root(string name, params object?[] content) => new(
        XNamespace.Get(Names + name + "-2") + name,
        new XAttribute(XNamespace.Xmlns + "cac", Cac.NamespaceName),
        new XAttribute(XNamespace.Xmlns + "cbc", Cbc.NamespaceName),
        content);

    private static XElement? Party(string name, string? party) => party is null
        ? null
        : Aggregate(name, Aggregate("Party", Aggregate("PartyName", Text("Name", party))));

    private static XElement? Identified(string name, string? id) => id is null ? null : Aggregate(name, Text("ID", id));

    private static XElement Aggregate(string name, params object?[] content) => new(Cac + name, content);

    private static XElement? Text(string name, string? value) => string.IsNullOrEmpty(value) ? null : new(Cbc + name, XmlText.Of(value));

    private static XElement Measured(string name, decimal value, string unitCode) =>
        new(Cbc + name, new XAttribute("unitCode", unitCode), Number(value));

    private static XElement Money(string name, decimal value, string currency) =>
        new(Cbc + name, new XAttribute("currencyID", currency), Number(value));

    private static string Number(decimal value) => value.ToString(CultureInfo.InvariantCulture);

    private static byte[] Bytes(XElement root)
    {
        using var kept = new MemoryStream();
        using (var writer = System.Xml.XmlWriter.Create(kept, new() { Encoding = new System.Text.UTF8Encoding(false), Indent = true, NewLineChars = "\n" }))
        {
            new XDocument(new XDeclaration("1.0", "UTF-8", null), root).Save(writer);
        }

        return [.. kept.ToArray(), (byte)'\n'];
    }
}
