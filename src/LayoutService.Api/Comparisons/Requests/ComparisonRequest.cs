using LayoutService.Api.Wire;

namespace LayoutService.Api.Comparisons.Requests;

/// <summary>Variants of one room.</summary>
public sealed record ComparisonRequest
{
    /// <summary>The caller's own name for this comparison; echoed unchanged.</summary>
    public string? Reference { get; init; }

    /// <summary>A whole request for a plan; the first line of the table.</summary>
    public WirePart? Base { get; init; }

    /// <summary>The variants, each a line of the table.</summary>
    public IReadOnlyList<VariantRequest>? Variants { get; init; }
}

/// <summary>One variant.</summary>
public sealed record VariantRequest
{
    /// <summary>Its name in the table; each name once, and not `base`.</summary>
    public string? Name { get; init; }

    /// <summary>
    /// What is different from the base: an RFC 7396 patch of the request. Objects are changed member by member, lists whole; a
    /// null takes a member away. Units, currency and taxes stay, so that the figures can be compared.
    /// </summary>
    public WirePart? Change { get; init; }
}
