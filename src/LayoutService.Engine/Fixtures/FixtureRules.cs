using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Fixtures;

/// <summary>The distances that fixtures keep, in units.</summary>
/// <param name="FinishToJoist">From the finished face up to the underside of the joists: board, strap and an old ceiling that stays.</param>
/// <param name="LightFromWood">A light that batts may not touch, from wood: NEC 410.116(A)(1), 1/2 in; CEC 30-900 series from memory, 13 mm.</param>
/// <param name="Inside">The hollow over the board when that is a bulkhead's; null in the ceiling.</param>
public sealed record FixtureRules(long FinishToJoist, long LightFromWood, BoxHollow? Inside = null)
{
    /// <summary>Any other body from a joist's face: the survey's own tolerance, 6 mm. Common practice, no source.</summary>
    public const long BodyFromJoist = 6 * Length.PerMillimetre;

    public static FixtureRules Of(Survey survey, Length lightFromWood) => new(
        (survey.Sheets.Thickness * survey.Sheets.Layers).Units + survey.JoistToBoard.Units, lightFromWood.Units);

    /// <summary>True when the body reaches up between the joists.</summary>
    public bool Deep(FixtureWish wish) => wish.BodyDepth.Units > FinishToJoist;

    /// <summary>How far a deep body keeps from the faces of the joists.</summary>
    public long FromJoist(FixtureWish wish) => wish.IsLight && !wish.InsulationContact ? LightFromWood : BodyFromJoist;
}

/// <summary>What a bulkhead offers a fixture in its underside.</summary>
/// <param name="Board">Thickness of its board.</param>
/// <param name="Height">From its board up to the joists, or to the ceiling's board where that was there first.</param>
/// <param name="Closed">True when the ceiling's board is above it.</param>
public sealed record BoxHollow(long Board, long Height, bool Closed);
