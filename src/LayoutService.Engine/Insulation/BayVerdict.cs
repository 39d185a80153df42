using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Insulation;

/// <summary>Where in a bay's depth a batt lies.</summary>
public enum BattPlace
{
    /// <summary>Nothing in the way: it lies on the straps.</summary>
    Clear,

    /// <summary>On the straps, under what is in the bay.</summary>
    Below,

    /// <summary>Against the floor, over what is in the bay.</summary>
    Above,
}

/// <summary>
/// What becomes of a stretch of a bay: the layer that goes into its free depth, from <see cref="Top"/> to
/// <see cref="Bottom"/>, or none, and the obstacles that say so.
/// </summary>
public sealed record BayVerdict(BattLayer? Layer, BattPlace Place, long Top, long Bottom, IReadOnlyList<BattObstacle> Obstacles)
{
    public long Depth => Bottom - Top;

    /// <summary>True when the same batt can go on without a cut.</summary>
    public bool Continues(BayVerdict other)
    {
        if (Layer is null || other.Layer is null)
        {
            return Layer is null && other.Layer is null && Obstacles.SequenceEqual(other.Obstacles);
        }

        return Layer == other.Layer && Place == BattPlace.Above == (other.Place == BattPlace.Above);
    }

    /// <summary>Both stretches as one: the depth that is free in both.</summary>
    public BayVerdict With(BayVerdict other) => this with
    {
        Place = Place == BattPlace.Clear ? other.Place : Place,
        Top = Math.Max(Top, other.Top),
        Bottom = Math.Min(Bottom, other.Bottom),
        Obstacles = [.. Obstacles.Union(other.Obstacles)],
    };
}

/// <summary>
/// Decides on the depth that obstacles leave in a bay: the space on the straps first, since mass below the metal is what
/// stops sound; the thickest space above otherwise.
/// </summary>
public sealed class BayDepths(BattChoice choice, long depth)
{
    public BayVerdict Of(IReadOnlyList<BattObstacle> obstacles)
    {
        if (obstacles.Count == 0)
        {
            return new BayVerdict(choice.For(depth), BattPlace.Clear, -depth, 0, []);
        }

        var taken = new List<Span>(obstacles.Count);
        foreach (var obstacle in obstacles)
        {
            taken.Add(new Span(Math.Max(obstacle.Top, -depth), Math.Min(obstacle.Bottom, 0)));
        }

        Region.Merge(taken);
        if (choice.For(-taken[^1].Hi) is { } below)
        {
            return new BayVerdict(below, BattPlace.Below, taken[^1].Hi, 0, obstacles);
        }

        var free = new Span(-depth, taken[0].Lo);
        for (var i = 0; i + 1 < taken.Count; i++)
        {
            var between = new Span(taken[i].Hi, taken[i + 1].Lo);
            free = between.Size > free.Size ? between : free;
        }

        return new BayVerdict(choice.For(free.Size), BattPlace.Above, free.Lo, free.Hi, obstacles);
    }
}
