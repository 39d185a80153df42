using System.Xml.Linq;

namespace LayoutService.Api.Tests.Orders;

/// <summary>
/// The members of UBL 2.3 that are written, in the order of its schemas, an exclamation mark before those that must be there. The
/// request for quotation was read in xsd/maindoc/UBL-RequestForQuotation-2.3.xsd (OASIS, CSD04, 25 November 2020); the order and
/// the common aggregates are from memory of UBL-Order-2.3.xsd and UBL-CommonAggregateComponents-2.3.xsd. No registry that the
/// tests may use has the schemas, so their order is held here instead.
/// </summary>
internal static class UblOrder
{
    private static readonly Dictionary<string, string[]> Members = new(StringComparer.Ordinal)
    {
        ["RequestForQuotation"] =
        [
            "UBLVersionID", "ID", "!IssueDate", "!IssueTime", "Note", "PricingCurrencyCode", "LineCountNumeric", "!SellerSupplierParty",
            "BuyerCustomerParty", "!RequestForQuotationLine",
        ],
        ["Order"] =
        [
            "UBLVersionID", "!ID", "!IssueDate", "Note", "DocumentCurrencyCode", "LineCountNumeric", "!BuyerCustomerParty", "!SellerSupplierParty",
            "AnticipatedMonetaryTotal", "!OrderLine",
        ],
        ["RequestForQuotationLine"] = ["ID", "!LineItem"],
        ["OrderLine"] = ["!LineItem"],
        ["LineItem"] = ["!ID", "Quantity", "LineExtensionAmount", "Price", "!Item"],
        ["Item"] = ["Description", "PackQuantity", "PackSizeNumeric", "Name", "BuyersItemIdentification", "SellersItemIdentification"],
        ["Price"] = ["!PriceAmount", "BaseQuantity"],
        ["AnticipatedMonetaryTotal"] = ["LineExtensionAmount", "!PayableAmount"],
        ["BuyerCustomerParty"] = ["Party"],
        ["SellerSupplierParty"] = ["Party"],
        ["Party"] = ["PartyName"],
        ["PartyName"] = ["!Name"],
        ["BuyersItemIdentification"] = ["!ID"],
        ["SellersItemIdentification"] = ["!ID"],
    };

    public static IReadOnlyList<string> FaultsOf(XElement element)
    {
        var faults = new List<string>();
        if (!element.HasElements)
        {
            return Members.ContainsKey(element.Name.LocalName) ? [$"{element.Name.LocalName} is empty"] : [];
        }

        var allowed = Members[element.Name.LocalName];
        var names = allowed.Select(name => name.TrimStart('!')).ToList();
        var found = element.Elements().Select(e => names.IndexOf(e.Name.LocalName)).ToList();
        if (found.Contains(-1) || !found.SequenceEqual(found.Order()))
        {
            faults.Add($"{element.Name.LocalName} holds {string.Join(", ", element.Elements().Select(e => e.Name.LocalName))}");
        }

        faults.AddRange(allowed.Where(name => name[0] == '!' && element.Elements().All(e => e.Name.LocalName != name[1..])).Select(name => $"{element.Name.LocalName} lacks {name[1..]}"));
        faults.AddRange(element.Elements().SelectMany(FaultsOf));
        return faults;
    }
}
