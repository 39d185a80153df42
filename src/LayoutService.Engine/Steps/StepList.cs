using System.Globalization;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Steps;

/// <summary>Steps as they are written down, numbered in order from <c>step-1</c>.</summary>
internal sealed class StepList
{
    private readonly List<WorkStep> steps = [];

    public IReadOnlyList<WorkStep> Steps => steps;

    public void Add(Sentence sentence, IEnumerable<Touch> touches) => Add(sentence, touches, hold: false);

    /// <summary>Work stops after this step until somebody else has looked.</summary>
    public void Hold(Sentence sentence, IEnumerable<Touch> touches) => Add(sentence, touches, hold: true);

    public static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    public static string Names(IEnumerable<string> ids) => string.Join(", ", ids);

    private void Add(Sentence sentence, IEnumerable<Touch> touches, bool hold) =>
        steps.Add(new WorkStep($"step-{Number(steps.Count + 1)}", sentence, [.. touches], hold));
}
