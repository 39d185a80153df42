using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>What the checks need to know of ducts, pipes, cables and the like.</summary>
internal sealed record ServiceFacts
{
    private static readonly ServiceFacts None = new();

    public IReadOnlyList<string> CablesInGap { get; private init; } = [];

    public Length? CableToStrap { get; private init; }

    public IReadOnlyList<string> Gas { get; private init; } = [];

    public IReadOnlyList<string> Hot { get; private init; } = [];

    public IReadOnlyList<string> NeedReach { get; private init; } = [];

    public static ServiceFacts Of(FramedRoom room, StrappingPlan strapping)
    {
        var survey = room.Survey;
        if (survey.Services is not { Count: > 0 } services)
        {
            return None;
        }

        var cables = services.Where(s => s.Kind == ServiceKind.Cable && s.Bottom > survey.Room.Through && s.Top < survey.JoistToBoard).ToList();
        return new ServiceFacts
        {
            CablesInGap = [.. cables.Select(s => s.Id)],
            CableToStrap = cables.Count == 0 ? null : new Length(cables.Min(cable => ToStrap(room, strapping, cable))),
            Gas = [.. services.Where(s => s.Kind == ServiceKind.GasValve).Select(s => s.Id)],
            Hot = [.. services.Where(s => s.Hot).Select(s => s.Id)],
            NeedReach = [.. services.Where(s => s.NeedsReach).Select(s => s.Id)],
        };
    }

    // A strap lies across the joists: the distance is taken along them, from the cable's nearest ring to the strap's edge.
    private static long ToStrap(FramedRoom room, StrappingPlan strapping, Service cable)
    {
        var half = room.Survey.Strapping.Face.Units / 2;
        var least = long.MaxValue;
        foreach (var ring in cable.Rings())
        {
            var along = ring.Select(point => room.Frame.In(point)).ToList();
            var (lo, hi) = (along.Min(p => p.U), along.Max(p => p.U));
            var (left, right) = (along.Min(p => p.V), along.Max(p => p.V));
            foreach (var piece in strapping.Rows.SelectMany(row => row.Pieces))
            {
                var (a, b) = (room.Frame.In(piece.From), room.Frame.In(piece.To));
                if (Math.Min(a.V, b.V) <= right && Math.Max(a.V, b.V) >= left)
                {
                    least = Math.Min(least, Math.Max(0, Math.Max(a.U - half - hi, lo - a.U - half)));
                }
            }
        }

        return Math.Min(least, room.Frame.SizeU);
    }
}
