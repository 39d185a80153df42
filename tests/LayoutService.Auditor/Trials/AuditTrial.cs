using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Likeness;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Auditor.Trials;

/// <summary>What a planner answered: an HTTP status and a body.</summary>
public readonly record struct Reply(int Status, string Body);

/// <summary>
/// Puts seeded rooms to a planner, audits each answer, and keeps the seed beside every fault. The planner is any
/// function from a request's JSON to a reply.
/// </summary>
public sealed class AuditTrial(Func<string, Reply> plan, RoomWishes wishes)
{
    private readonly RoomGenerator generator = new(wishes);

    /// <summary>Rooms tried, and those that got a plan.</summary>
    public int Rooms { get; private set; }
    public int Planned { get; private set; }

    /// <summary>Answers other than 200, with their seed: (seed, status, body).</summary>
    public List<(int Seed, int Status, string Body)> Refused { get; } = [];

    public List<(int Seed, Fault Fault)> Faults { get; } = [];

    /// <summary>Preferences not met, by rule.</summary>
    public SortedDictionary<string, int> Notes { get; } = new(StringComparer.Ordinal);

    /// <summary>Audits the plans of these seeds.</summary>
    public AuditTrial Audit(IEnumerable<int> seeds) => Each(seeds, (seed, request, answer) =>
    {
        using var asked = JsonDocument.Parse(request);
        using var given = JsonDocument.Parse(answer);
        var report = PlanAuditor.Look(asked.RootElement, given.RootElement);
        Faults.AddRange(report.Faults.Select(f => (seed, f)));
        foreach (var note in report.Notes)
        {
            Notes[note.Rule] = Notes.GetValueOrDefault(note.Rule) + 1;
        }
    });

    /// <summary>Compares each plan with that of the room moved; counts only, or places too.</summary>
    public AuditTrial Move(IEnumerable<int> seeds, Motion motion, bool places) =>
        Compare(seeds, request => Metamorphic.Moved(request, motion), motion, places);

    /// <summary>Compares each plan with that of the same room written otherwise.</summary>
    public AuditTrial Rewrite(IEnumerable<int> seeds, Func<string, string> rewritten) => Compare(seeds, rewritten, Motion.Still, true);

    /// <summary>Damages each plan in every way; a fault is a damage that was done and not noticed. Returns how often each was done.</summary>
    public IReadOnlyDictionary<string, (int Done, int Noticed)> Damage(IEnumerable<int> seeds)
    {
        var tally = Mutations.All.ToDictionary(m => m.Name, _ => (Done: 0, Noticed: 0));
        Each(seeds, (_, request, answer) =>
        {
            using var asked = JsonDocument.Parse(request);
            foreach (var mutation in Mutations.All)
            {
                var node = JsonNode.Parse(answer)!;
                if (mutation.Apply(node))
                {
                    using var damaged = JsonDocument.Parse(node.ToJsonString());
                    var noticed = PlanAuditor.Audit(asked.RootElement, damaged.RootElement).Any(f => f.Rule == mutation.Rule);
                    var (done, seen) = tally[mutation.Name];
                    tally[mutation.Name] = (done + 1, seen + (noticed ? 1 : 0));
                }
            }
        });
        return tally;
    }

    /// <summary>Faults by rule with the first seeds, refusals, notes: for a failing test's message.</summary>
    public override string ToString()
    {
        var text = new StringBuilder($"{Planned} of {Rooms} rooms planned, {Faults.Count} faults\n");
        foreach (var group in Faults.GroupBy(f => f.Fault.Rule).OrderByDescending(g => g.Count()))
        {
            var first = group.First();
            text.Append($"{group.Key}: {group.Count()}, seeds {string.Join(' ', group.Select(f => f.Seed).Distinct().Take(6))}; seed {first.Seed} {first.Fault}\n");
        }

        foreach (var group in Refused.GroupBy(r => r.Status))
        {
            text.Append($"status {group.Key}: {group.Count()}, seed {group.First().Seed}: {group.First().Body[..Math.Min(600, group.First().Body.Length)]}\n");
        }

        return text.Append(string.Join(", ", Notes.Select(n => $"note {n.Key} {n.Value}"))).ToString();
    }

    private AuditTrial Compare(IEnumerable<int> seeds, Func<string, string> change, Motion motion, bool places) => Each(seeds, (seed, request, answer) =>
    {
        var other = plan(change(request));
        if (other.Status != 200)
        {
            Faults.Add((seed, new Fault("likeness.status", motion.Name, $"{other.Status}: {other.Body[..Math.Min(300, other.Body.Length)]}")));
            return;
        }

        var unit = (double)Rewriting.Unit(Rewriting.Copy(request));
        using var first = JsonDocument.Parse(answer);
        using var second = JsonDocument.Parse(other.Body);
        Faults.AddRange(Comparison.Counts(first.RootElement, second.RootElement).Select(f => (seed, f)));
        Faults.AddRange((places ? Comparison.Geometry(first.RootElement, second.RootElement, motion, unit, unit) : []).Select(f => (seed, f)));
    });

    private AuditTrial Each(IEnumerable<int> seeds, Action<int, string, string> look)
    {
        foreach (var seed in seeds)
        {
            Rooms++;
            var request = generator.Next(seed);
            var reply = plan(request);
            if (reply.Status == 200)
            {
                Planned++;
                look(seed, request, reply.Body);
            }
            else
            {
                Refused.Add((seed, reply.Status, reply.Body));
            }
        }

        return this;
    }
}
