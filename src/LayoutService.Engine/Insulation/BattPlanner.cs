using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Insulation;

/// <summary>One strip of batts as it lies in a bay: a ring without holes in the working frame.</summary>
/// <param name="Bay">Id of the bay.</param>
/// <param name="Ring">Its outline.</param>
/// <param name="Along">How far it reaches along the joists.</param>
/// <param name="Across">How far it reaches across them.</param>
/// <param name="CutWidth">Width to cut from the batt.</param>
/// <param name="Batt">The batt it is cut from.</param>
/// <param name="Verdict">The space it lies in, and what made that.</param>
/// <param name="Strips">Strips side by side that fill the width here.</param>
public sealed record LaidBatt(string Bay, Uv[] Ring, Span Along, Span Across, long CutWidth, Batt Batt, BayVerdict Verdict, int Strips);

public enum OpenReason
{
    /// <summary>No batt fits above or below what is there.</summary>
    NoDepth,

    /// <summary>Narrower or shorter than the least piece.</summary>
    TooSmall,

    /// <summary>No batt is thin enough for the bay itself.</summary>
    BayTooShallow,
}

/// <summary>A part of a bay that is left without a batt.</summary>
public sealed record OpenPart(string Bay, Uv[] Ring, OpenReason Reason, IReadOnlyList<BattObstacle> Obstacles);

public sealed record BattLayout(IReadOnlyList<LaidBatt> Laid, IReadOnlyList<OpenPart> Open);

/// <summary>
/// Lays batts in every bay. Problem: a bay is a strip along the joists whose free depth changes where services, fixtures
/// and blocking cross it. Method: a sweep along each bay; between two places where something begins or ends the depth is
/// known, the best layer is looked up, and stretches that take the same layer go on as one. Exact for what is square to the
/// joists; what runs askew is taken by its extent in the bay. Cost: bays × (cells of the room + obstacles²).
/// </summary>
public sealed class BattPlanner
{
    private readonly BattScene _scene;
    private readonly BattChoice _choice;
    private readonly BattStrips _strips;
    private readonly List<LaidBatt> _laid = [];
    private readonly List<OpenPart> _open = [];

    private BattPlanner(BattScene scene)
    {
        _scene = scene;
        _choice = new BattChoice(BattMake.Of(scene.Batts), scene.Rules.SqueezeMost);
        _strips = new BattStrips(scene.Rules);
    }

    public static BattLayout Plan(BattScene scene)
    {
        var planner = new BattPlanner(scene);
        foreach (var bay in scene.Bays)
        {
            foreach (var stretch in new BaySweep(scene, bay, new BayDepths(planner._choice, bay.Depth)).Stretches())
            {
                planner.Fill(bay, stretch);
            }
        }

        return new BattLayout(planner._laid, planner._open);
    }

    private void Fill(BattBay bay, BayStretch stretch)
    {
        foreach (var ring in _scene.Region.Inside(stretch.Along, stretch.Across))
        {
            var (along, across) = Extents(ring);
            if (stretch.Verdict.Layer is null)
            {
                var reason = stretch.Verdict.Obstacles.Count == 0 ? OpenReason.BayTooShallow : OpenReason.NoDepth;
                _open.Add(new OpenPart(bay.Id, ring, reason, stretch.Verdict.Obstacles));
            }
            else if (TooSmall(along, across))
            {
                _open.Add(new OpenPart(bay.Id, ring, OpenReason.TooSmall, stretch.Verdict.Obstacles));
            }
            else
            {
                Lay(bay, stretch.Verdict, along, across, ring);
            }
        }
    }

    private void Lay(BattBay bay, BayVerdict verdict, Span along, Span across, Uv[] ring)
    {
        var (batt, widths) = _strips.Of(verdict.Layer!.Make.Sizes, across.Size);
        if (widths.Count == 1)
        {
            _laid.Add(new LaidBatt(bay.Id, ring, along, across, _strips.Cut(batt, across.Size), batt, verdict, 1));
            return;
        }

        var at = across.Lo;
        foreach (var width in widths)
        {
            var strip = new Span(at, at + width);
            at += width;
            foreach (var part in _scene.Region.Inside(along, strip))
            {
                var (partAlong, partAcross) = Extents(part);
                if (TooSmall(partAlong, partAcross))
                {
                    _open.Add(new OpenPart(bay.Id, part, OpenReason.TooSmall, verdict.Obstacles));
                }
                else
                {
                    var cut = width == batt.Width.Units ? width : _strips.Cut(batt, partAcross.Size);
                    _laid.Add(new LaidBatt(bay.Id, part, partAlong, partAcross, cut, batt, verdict, widths.Count));
                }
            }
        }
    }

    private bool TooSmall(Span along, Span across) => along.Size < _scene.Rules.LeastStrip || across.Size < _scene.Rules.LeastStrip;

    private static (Span Along, Span Across) Extents(Uv[] ring)
    {
        var (u0, u1, v0, v1) = (long.MaxValue, long.MinValue, long.MaxValue, long.MinValue);
        foreach (var corner in ring)
        {
            u0 = Math.Min(u0, corner.U);
            u1 = Math.Max(u1, corner.U);
            v0 = Math.Min(v0, corner.V);
            v1 = Math.Max(v1, corner.V);
        }

        return (new Span(u0, u1), new Span(v0, v1));
    }
}
