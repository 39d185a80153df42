using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using LayoutService.Auditor;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Posts the rooms of seeds and audits each answer.</summary>
internal static class AuditedAnswers
{
    /// <summary>How many rooms: the part of the environment variable AUDIT_ROOMS, or the usual number when it is not set.</summary>
    public static int Count(int usual, int part = 4) =>
        int.TryParse(Environment.GetEnvironmentVariable("AUDIT_ROOMS"), NumberStyles.None, CultureInfo.InvariantCulture, out var rooms) ? rooms / part : usual;

    /// <summary>
    /// Asserts that every room is planned and that the auditor finds nothing; a seed without a room is passed over. Gives how
    /// many were planned. Rooms that <c>mayBeRefused</c> accepts the refusal of are passed over as well.
    /// </summary>
    public static async Task<int> AssertCleanAsync(Service service, IEnumerable<int> seeds, Func<int, string?> room, Func<string, bool>? mayBeRefused = null)
    {
        var found = new ConcurrentQueue<string>();
        var planned = 0;
        await Parallel.ForEachAsync(seeds, async (seed, _) =>
        {
            if (room(seed) is not { } request)
            {
                return;
            }

            var reply = await service.PostAsync("/v1/plans", request);
            if (reply.Status != 200)
            {
                if (reply.Status == 422 && mayBeRefused?.Invoke(reply.Text) == true)
                {
                    return;
                }

                found.Enqueue($"seed {seed}: {reply.Status} {reply.Text}");
                return;
            }

            Interlocked.Increment(ref planned);
            foreach (var fault in PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, reply.Json))
            {
                found.Enqueue($"seed {seed}: {fault}");
            }
        });

        Assert.True(found.IsEmpty, $"{found.Count} faults, the first: {string.Join("\n", found.Order().Take(20))}");
        return planned;
    }
}
