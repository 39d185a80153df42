using System.Text.Json.Serialization;

namespace LayoutService.Engine.Standards;

/// <summary>What kind of ground a figure stands on.</summary>
public enum Basis
{
    /// <summary>It is printed in the named document.</summary>
    [JsonStringEnumMemberName("published")]
    Published,

    /// <summary>A text other than the named document says that it is printed there.</summary>
    [JsonStringEnumMemberName("secondary")]
    Secondary,

    /// <summary>Known to the writer; no text was at hand.</summary>
    [JsonStringEnumMemberName("from-memory")]
    FromMemory,

    /// <summary>Common practice; no standard governs it.</summary>
    [JsonStringEnumMemberName("common-practice")]
    CommonPractice,

    /// <summary>Arithmetic on published figures.</summary>
    [JsonStringEnumMemberName("derived")]
    Derived,

    /// <summary>Set by the caller in the request, in place of the table's own.</summary>
    [JsonStringEnumMemberName("set-by-caller")]
    SetByCaller,
}

/// <summary>How sure we are that the figure is what the document prints.</summary>
public enum Confidence
{
    /// <summary>Read in the document's own text.</summary>
    [JsonStringEnumMemberName("high")]
    High,

    /// <summary>Read in another edition, or in a text that quotes the document, or worked out from read figures.</summary>
    [JsonStringEnumMemberName("medium")]
    Medium,

    /// <summary>From memory, or common practice that varies. Confirm it before you rely on it.</summary>
    [JsonStringEnumMemberName("low")]
    Low,
}

/// <summary>
/// Where a figure comes from: the document that prints it and the clause, what kind of ground that is, and how it is known.
/// Common practice names no document: <see cref="Document"/> then says so.
/// </summary>
public sealed record Citation
{
    public required string Document { get; init; }

    public string? Edition { get; init; }

    public string? Clause { get; init; }

    public string? Publisher { get; init; }

    public required Basis Basis { get; init; }

    public required Confidence Confidence { get; init; }

    /// <summary>How the figure is known, or what a reader must mind about it.</summary>
    public string? Note { get; init; }
}

/// <summary>A value and where it comes from; the two never part.</summary>
public sealed record Cited<T>(T Value, Citation Source);

/// <summary>A row's own words about its source; what it leaves out, the table's source says.</summary>
public sealed record RowSource
{
    public string? Document { get; init; }

    public string? Edition { get; init; }

    public string? Clause { get; init; }

    public string? Publisher { get; init; }

    public Basis? Basis { get; init; }

    public Confidence? Confidence { get; init; }

    public string? Note { get; init; }

    /// <summary>The whole citation of a row. A row with its own document takes nothing but basis and confidence from the table.</summary>
    public Citation Over(Citation table) => new()
    {
        Document = Document ?? table.Document,
        Edition = Edition ?? (Document is null ? table.Edition : null),
        Clause = Clause ?? (Document is null ? table.Clause : null),
        Publisher = Publisher ?? (Document is null ? table.Publisher : null),
        Basis = Basis ?? table.Basis,
        Confidence = Confidence ?? table.Confidence,
        Note = Note ?? (Document is null ? table.Note : null),
    };
}
