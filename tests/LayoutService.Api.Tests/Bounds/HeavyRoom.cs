using System.Globalization;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>A room that takes the engine many seconds: a comb of a room, pieced thoroughly.</summary>
internal static class HeavyRoom
{
    private const int Corners = 120;
    private const int Side = 40_000;

    public static string Text { get; } = Write();

    private static string Write()
    {
        var step = (double)Side / (Corners - 2);
        var top = Enumerable.Range(0, Corners - 2)
            .Select(i => string.Create(CultureInfo.InvariantCulture, $"[{Side - (i * step):0.#},{(Side / 2) + (i % 2 * 6000)}]"));
        return $$"""{"units":"metric","effort":"thorough","room":{"outline":[[0,0],[{{Side}},0],{{string.Join(",", top)}}]},"joistFields":[{"run":"y","spacing":400,"first":200}]}""";
    }
}
