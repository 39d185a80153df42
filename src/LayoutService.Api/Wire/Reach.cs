using System.Globalization;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Wire;

/// <summary>The least and the most that a length may be, as round figures in either units; both ends are allowed.</summary>
/// <param name="LeastInches">Least, in inches.</param>
/// <param name="MostInches">Most, in inches.</param>
/// <param name="LeastMillimetres">Least, in millimetres.</param>
/// <param name="MostMillimetres">Most, in millimetres.</param>
public sealed record Reach(decimal LeastInches, decimal MostInches, decimal LeastMillimetres, decimal MostMillimetres)
{
    public Length Least(bool imperial) => imperial ? Length.FromInches(LeastInches) : Length.FromMillimetres(LeastMillimetres);

    public Length Most(bool imperial) => imperial ? Length.FromInches(MostInches) : Length.FromMillimetres(MostMillimetres);

    /// <summary>For the contract: a length's bounds depend on the units, which a schema cannot say.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"From {LeastInches} to {MostInches} in, or {LeastMillimetres} to {MostMillimetres} mm.");
}
