namespace LayoutService.Api.Bulk;

/// <summary>One line of what was sent, without its end.</summary>
/// <param name="Number">From 1, blank lines counted.</param>
/// <param name="Json">Its bytes; empty when it is too long.</param>
/// <param name="TooLong">Whether it has more bytes than a body may have.</param>
internal readonly record struct InputLine(long Number, ReadOnlyMemory<byte> Json, bool TooLong);
