using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// Undersides as read, mm: on a joist straight between its readings and level past the outer ones; a joist without any in line
/// between its nearest neighbours of the same field that have some.
/// </summary>
public sealed class AskedLevels
{
    private readonly AskedJoists joists;
    private readonly Dictionary<AskedJoist, SortedList<double, double>> read = [];

    private AskedLevels(AskedJoists joists) => this.joists = joists;

    public static AskedLevels? Of(AskedRoom room, JsonElement fields)
    {
        var levels = new AskedLevels(room.Joists);
        foreach (var (field, number) in fields.EnumerateArray().Select((f, i) => (f, i)))
        {
            foreach (var reading in field.Member("undersides").Items())
            {
                var at = room.Place(reading.GetProperty("at"));
                var joist = room.Joists.Members.Where(j => j.Field == number && j.Along.From <= at.U + 0.001 && at.U <= j.Along.To + 0.001).MinBy(j => Math.Abs(j.Centre - at.V));
                var own = levels.read.TryGetValue(joist, out var known) ? known : levels.read[joist] = [];
                var level = reading.Member("level").Length(room.Unit)!.Value;
                own[at.U] = own.TryGetValue(at.U, out var other) ? Math.Min(other, level) : level;
            }
        }

        return levels.read.Count == 0 ? null : levels;
    }

    /// <summary>Level of the lowest joist of a support, at a place along it.</summary>
    public double Of(Stretch support, double along) => joists.Members
        .Where(j => j.Along.From <= along && along < j.Along.To && j.Across.From > support.From - 0.2 && j.Across.To < support.To + 0.2)
        .Min(j => OfJoist(j, along));

    /// <summary>Level of one joist at a place along it.</summary>
    public double OfJoist(AskedJoist joist, double along) =>
        read.ContainsKey(joist) ? On(joist, along) : Between(along, joist.Centre, read.Keys.Where(o => o.Field == joist.Field));

    /// <summary>Level between the joists that run over a place.</summary>
    public double Of(Uv place) => Between(place.U, place.V, read.Keys.Where(j => j.Along.From <= place.U && place.U <= j.Along.To));

    private double Between(double along, double across, IEnumerable<AskedJoist> among)
    {
        var rising = among.OrderBy(j => j.Centre).ToList();
        var above = rising.FindIndex(j => j.Centre >= across);
        if (above <= 0)
        {
            return On(above < 0 ? rising[^1] : rising[0], along);
        }

        var (low, high) = (rising[above - 1], rising[above]);
        var share = (across - low.Centre) / (high.Centre - low.Centre);
        return (On(low, along) * (1 - share)) + (On(high, along) * share);
    }

    private double On(AskedJoist joist, double along)
    {
        var own = read[joist];
        var next = own.Keys.ToList().FindIndex(u => u >= along);
        if (next <= 0)
        {
            return next < 0 ? own.Values[^1] : own.Values[0];
        }

        var (from, to) = (own.Keys[next - 1], own.Keys[next]);
        return own.Values[next - 1] + ((own.Values[next] - own.Values[next - 1]) * (along - from) / (to - from));
    }
}
