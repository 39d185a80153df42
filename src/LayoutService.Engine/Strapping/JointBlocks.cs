using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Blocks over joints between joists: 2x4 laid flat across the clear bay in line with the row, underside flush, so that both ends
/// lie on it. Common practice, no source.
/// </summary>
public static class JointBlocks
{
    /// <summary>The least clear bay that a block is nailed into: 100 mm.</summary>
    public const long LeastBay = 100 * Length.PerMillimetre;

    public static IEnumerable<NailerLine> Of(IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, IReadOnlyList<IReadOnlyList<RunPiece>> ways)
    {
        for (var r = 0; r < runs.Count; r++)
        {
            foreach (var node in ways[r].Skip(1).Select(p => runs[r].Nodes[p.From]).Where(n => n.Joint == JointKind.Block))
            {
                var (low, high) = (runs[r].Supports.Last(s => s.Hi <= node.At), runs[r].Supports.First(s => s.Lo >= node.At));
                var u = lines[runs[r].Line].At;
                yield return new NailerLine(NailerRole.Block, new Uv(u, low.Hi), new Uv(u, high.Lo), 0, [runs[r].Line]) { CarriesJoint = true };
            }
        }
    }
}
