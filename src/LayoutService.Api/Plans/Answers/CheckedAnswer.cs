namespace LayoutService.Api.Plans.Answers;

/// <summary>The request has no faults, and a plan exists.</summary>
/// <param name="Reference">The caller's own name for the request.</param>
/// <param name="RequestDigest">Digest of the request as sent.</param>
/// <param name="Digest">Digest of the request with its defaults.</param>
public sealed record CheckedAnswer(string? Reference, string RequestDigest, string Digest);
