using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Steps;

/// <summary>Lengths as the texts of steps say them; figures of practice are chosen whole in the caller's units.</summary>
internal sealed record TradeText(UnitSystem Units, Func<Length, string> Tape)
{
    public string Of(decimal inches, decimal millimetres) => Tape(
        Units == UnitSystem.Imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres));

    public string Of(Length length) => Tape(length);
}
