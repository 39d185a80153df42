namespace LayoutService.Engine.Takeoff;

/// <summary>One pack on sale: how many of the line's unit it holds, and its price if known.</summary>
public sealed record Pack(string? Id, string? Sku, decimal Size, decimal? Price);
