using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Documents;

/// <summary>The documents that are written from a takeoff and a cut plan, whether of one room or of a job.</summary>
internal static class OrderForms
{
    public static readonly IReadOnlyList<Table> OfRooms = [TakeoffTable.Table, CutListTable.Table, RowsTable.Table, ChecksTable.Table, HolesTable.Table];

    public static readonly IReadOnlyList<Table> OfJobs = [TakeoffTable.Table, CutListTable.Table];

    public static AnswerForm<T> Csv<T>(IReadOnlyList<Table> tables, Func<T, OrderSheet> sheetOf) => new(
        CsvWriting.MediaType,
        [.. tables.Select(table => table.Name)],
        (answer, view) =>
        {
            var table = tables.First(known => known.Name == view);
            return new DocumentResult(
                CsvWriting.Of(table, sheetOf(answer)), "text/csv; charset=utf-8; header=present", $"{table.Name}.csv", CsvMetadata.Address(table.Name));
        });

    public static AnswerForm<T> Xlsx<T>(IReadOnlyList<Table> tables, Func<T, OrderSheet> sheetOf) => new(
        XlsxWriting.MediaType, [], (answer, _) => new DocumentResult(XlsxWriting.Of(tables, sheetOf(answer)), XlsxWriting.MediaType, "order.xlsx"));

    public static AnswerForm<T> Ubl<T>(string documentPointer, Func<T, OrderSheet> sheetOf) => new(
        UblWriting.MediaType,
        ["request-for-quotation", "order"],
        (answer, view) => Written(sheetOf(answer), view == "order", documentPointer));

    private static IResult Written(OrderSheet sheet, bool order, string pointer)
    {
        var missing = Missing(sheet.Document).Select(member => Fault.At(
            $"{pointer}/{member}", "required", $"An answer in {UblWriting.MediaType} needs this member: the service knows no clock and no names.")).ToList();
        return missing.Count > 0
            ? new ProblemResult(ProblemKind.Invalid, missing.Count == 1 ? missing[0].Detail : $"The request has {missing.Count} faults.", missing)
            : order
                ? new DocumentResult(UblWriting.Order(sheet), "application/xml; charset=utf-8", "order.xml")
                : new DocumentResult(UblWriting.RequestForQuotation(sheet), "application/xml; charset=utf-8", "request-for-quotation.xml");
    }

    // both schemas ask for an id or a date, and for the seller; who is asked must know by whom
    private static IEnumerable<string> Missing(DocumentRequest? head) =>
        new[] { ("id", string.IsNullOrEmpty(head?.Id)), ("issueDate", head?.IssueDate is null), ("buyer", string.IsNullOrEmpty(head?.Buyer)), ("seller", string.IsNullOrEmpty(head?.Seller)) }
            .Where(member => member.Item2)
            .Select(member => member.Item1);
}
