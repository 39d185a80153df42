using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace LayoutService.Api.Tests.Orders;

/// <summary>
/// The members of UBL 2.3 that are written, in the order of its schemas, an exclamation mark before those that must be there, an asterisk
/// before those that may be repeated. Read in OASIS UBL 2.3 CS02 (25 May 2021): xsdrt/maindoc/UBL-RequestForQuotation-2.3.xsd and
/// UBL-Order-2.3.xsd, xsdrt/common/UBL-CommonAggregateComponents-2.3.xsd; the types of the two parties (a Party, that may be left out)
/// alone are from memory. No registry that the tests may use has the files, so what they say of these members is held here instead.
/// </summary>
internal static class UblOrder
{
    private static readonly Dictionary<string, string[]> Members = new(StringComparer.Ordinal)
    {
        ["RequestForQuotation"] =
        [
            "UBLVersionID", "ID", "!IssueDate", "!IssueTime", "*Note", "PricingCurrencyCode", "LineCountNumeric", "!SellerSupplierParty",
            "BuyerCustomerParty", "!*RequestForQuotationLine",
        ],
        ["Order"] =
        [
            "UBLVersionID", "!ID", "!IssueDate", "*Note", "DocumentCurrencyCode", "LineCountNumeric", "!BuyerCustomerParty", "!SellerSupplierParty",
            "AnticipatedMonetaryTotal", "!*OrderLine",
        ],
        ["RequestForQuotationLine"] = ["ID", "!LineItem"],
        ["OrderLine"] = ["!LineItem"],
        ["LineItem"] = ["!ID", "Quantity", "LineExtensionAmount", "Price", "!Item"],
        ["Item"] = ["*Description", "PackQuantity", "PackSizeNumeric", "Name", "BuyersItemIdentification", "SellersItemIdentification"],
        ["Price"] = ["!PriceAmount", "BaseQuantity"],
        ["AnticipatedMonetaryTotal"] = ["LineExtensionAmount", "!PayableAmount"],
        ["BuyerCustomerParty"] = ["Party"],
        ["SellerSupplierParty"] = ["Party"],
        ["Party"] = ["*PartyName"],
        ["PartyName"] = ["!Name"],
        ["BuyersItemIdentification"] = ["!ID"],
        ["SellersItemIdentification"] = ["!ID"],
    };

    public static IReadOnlyList<string> FaultsOf(XElement element)
    {
        var name = element.Name.LocalName;
        if (!element.HasElements)
        {
            return Members.ContainsKey(name) ? [$"{name} is empty"] : [.. ValueFaults(element, name)];
        }

        var allowed = Members[name];
        var names = allowed.Select(member => member.TrimStart('!', '*')).ToList();
        var found = element.Elements().Select(e => names.IndexOf(e.Name.LocalName)).ToList();
        var faults = new List<string>();
        if (found.Contains(-1) || !found.SequenceEqual(found.Order()))
        {
            faults.Add($"{name} holds {string.Join(", ", element.Elements().Select(e => e.Name.LocalName))}");
        }

        faults.AddRange(allowed.Where(member => member.Contains('!', StringComparison.Ordinal) && !found.Contains(Array.IndexOf(allowed, member))).Select(member => $"{name} lacks {member}"));
        faults.AddRange(allowed.Where(member => !member.Contains('*', StringComparison.Ordinal) && found.Count(f => f == Array.IndexOf(allowed, member)) > 1).Select(member => $"{name} has {member} twice"));
        faults.AddRange(element.Elements().SelectMany(FaultsOf));
        return faults;
    }

    /// <summary>What the basic types ask for: an amount is a decimal with its currency, a quantity and a number a decimal, a day and a time of XML Schema.</summary>
    private static IEnumerable<string> ValueFaults(XElement element, string name)
    {
        var text = element.Value;
        var sound = name switch
        {
            _ when name.EndsWith("Amount", StringComparison.Ordinal) => IsDecimal(text) && element.Attribute("currencyID") is not null,
            _ when name.EndsWith("Quantity", StringComparison.Ordinal) || name.EndsWith("Numeric", StringComparison.Ordinal) => IsDecimal(text),
            "IssueDate" => Regex.IsMatch(text, @"^\d{4}-\d\d-\d\d$"),
            "IssueTime" => Regex.IsMatch(text, @"^\d\d:\d\d:\d\d$"),
            _ => text.Length > 0,
        };
        return sound ? [] : [$"{name} is '{text}'"];
    }

    private static bool IsDecimal(string text) => Regex.IsMatch(text, @"^-?\d+(\.\d+)?$");
}
