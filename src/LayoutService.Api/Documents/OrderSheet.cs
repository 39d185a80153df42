using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Documents;

/// <summary>What documents are written from: blocks of an answer, as it says them. Nothing is counted or rounded again.</summary>
internal sealed record OrderSheet
{
    public required string? Reference { get; init; }

    /// <summary><c>in</c> or <c>mm</c>.</summary>
    public required string LengthUnit { get; init; }

    /// <summary><c>lb</c> or <c>kg</c>.</summary>
    public required string MassUnit { get; init; }

    public required TakeoffAnswer Takeoff { get; init; }

    public required CutPlanAnswer CutPlan { get; init; }

    /// <summary>Rows of straps; empty for a job, whose rooms have their own.</summary>
    public IReadOnlyList<RowAnswer> Rows { get; init; } = [];

    public IReadOnlyList<CheckAnswer> Checks { get; init; } = [];

    /// <summary>Pieces of the ceiling's board; empty for a job.</summary>
    public IReadOnlyList<BoardPieceAnswer> Pieces { get; init; } = [];

    /// <summary>Bulkheads; empty for a job.</summary>
    public IReadOnlyList<BulkheadAnswer> Bulkheads { get; init; } = [];

    public DocumentRequest? Document { get; init; }

    public static OrderSheet Of(PlanAnswer answer, DocumentRequest? document) => new()
    {
        Reference = answer.Reference,
        LengthUnit = answer.Units == UnitsWord.Imperial ? "in" : "mm",
        MassUnit = answer.Units == UnitsWord.Imperial ? "lb" : "kg",
        Takeoff = answer.Takeoff!,
        CutPlan = answer.CutPlan!,
        Rows = answer.Strapping?.Rows ?? [],
        Checks = answer.Checks ?? [],
        Pieces = answer.Sheets?.Pieces ?? [],
        Bulkheads = answer.Bulkheads ?? [],
        Document = document,
    };
}
