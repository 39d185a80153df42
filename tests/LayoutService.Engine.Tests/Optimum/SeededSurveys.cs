using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>One invented room: its seed, the name of its shape, and the survey.</summary>
internal sealed record SeededSurvey(int Seed, string Shape, Survey Survey)
{
    public override string ToString() => $"seed {Seed} ({Shape})";
}

/// <summary>
/// Invented rooms from seeds: nine outlines with posts, chimneys and stairs, joists regular or as found (irregular,
/// doubled, unsorted), three strap spacings, mixes of stock with and without prices, inches or millimetres. Every length
/// is a whole sixteenth of an inch, or a whole millimetre, so that a reference can count in whole steps.
/// </summary>
internal static class SeededSurveys
{
    /// <summary>The room of a seed.</summary>
    public static SeededSurvey Make(int seed, Effort effort = Effort.Quick)
    {
        var dice = new RoomDice(unchecked((ulong)seed * 0x9E3779B1UL) + 77);
        var imperial = dice.Chance(50);
        // outlines in quarter inches or 5 mm; joists in sixteenths or millimetres
        var coarse = imperial ? Length.PerInch / 4 : 5 * Length.PerMillimetre;
        var fine = imperial ? Length.PerSixteenth : Length.PerMillimetre;
        long Steps(long millimetres) => millimetres * Length.PerMillimetre / coarse;
        long Fine(long millimetres) => millimetres * Length.PerMillimetre / fine;
        var (shape, ring) = SeededOutlines.Draw(dice, Steps);
        var holes = SeededHoles.Draw(dice, ring, Steps);
        var alongX = dice.Chance(50);
        var extent = (alongX ? ring.Max(c => c.Y) - ring.Min(c => c.Y) : ring.Max(c => c.X) - ring.Min(c => c.X)) * coarse / fine;
        var face = imperial ? 24 : 38;
        var joists = Joists(dice, extent, face, Fine);
        var (shiftX, shiftY) = dice.Chance(50) ? (0L, 0L) : (dice.Whole(-500, 500), dice.Whole(-500, 500));
        Point At(Corner c) => new(new Length((c.X + shiftX) * coarse), new Length((c.Y + shiftY) * coarse));
        return new SeededSurvey(seed, shape, new Survey
        {
            Units = imperial ? UnitSystem.Imperial : UnitSystem.Metric,
            Ruleset = imperial ? "us-irc-2021" : "ca-nbc-2020",
            Effort = effort,
            Room = new RoomSurvey
            {
                Outline = [.. ring.Select(At)],
                Openings = [.. holes.Select((h, i) => new Opening($"O{i + 1}", h.Kind, [.. h.Ring.Select(At)], Length.Zero))],
            },
            JoistFields =
            [
                new JoistField
                {
                    Id = "F1",
                    RunDegrees = alongX ? 0 : 90,
                    Face = new Length(face * fine),
                    Positions = [.. joists.Select(j => new Length(j * fine))],
                },
            ],
            Strapping = SeededStock.Straps(dice, imperial),
            Sheets = SeededStock.Sheets(dice, imperial),
            Prices = new PriceList { Currency = imperial ? "USD" : "CAD" },
        });
    }

    // the first and last within 300 mm of the walls, bays of 300 to 600 mm
    private static List<long> Joists(RoomDice dice, long extent, long face, Func<long, long> fine)
    {
        var usual = dice.Pick(fine(305), fine(406), fine(406), fine(488), fine(600));
        var regular = dice.Chance(35);
        var at = dice.Whole(face, fine(300));
        var joists = new List<long> { at };
        while (extent - at > fine(300))
        {
            var bay = regular ? usual : dice.Chance(60) ? usual + dice.Whole(-fine(12), fine(12)) : dice.Whole(fine(300), fine(600));
            at = Math.Min(at + bay, extent - face);
            joists.Add(at);
        }

        if (!regular && dice.Chance(40))
        {
            joists.Add(joists[(int)dice.Whole(0, joists.Count - 2)] + face);
        }

        if (dice.Chance(30))
        {
            joists.Reverse();
        }

        return joists;
    }
}
