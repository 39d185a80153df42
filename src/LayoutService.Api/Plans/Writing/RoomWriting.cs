using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes walls, joists, steps and alternatives.</summary>
internal static class RoomWriting
{
    /// <summary>The walls inside the room; null when there are none.</summary>
    public static IReadOnlyList<PartitionAnswer>? Partitions(IReadOnlyList<PlannedPartition> partitions, AnswerInk ink) => partitions.Count == 0 ? null :
    [
        .. partitions.Select(p => new PartitionAnswer(
            p.Id, Words.Text(p.Wish.Top), p.Wish.Rated, [.. p.Outlines.Select(ink.Ring)], p.Rows, p.Blocks, [.. p.Notes.Select(AnswerInk.Say)])),
    ];

    public static IReadOnlyList<WallAnswer> Walls(IReadOnlyList<WallLine> walls, AnswerInk ink) =>
        [.. walls.Select(w => new WallAnswer(w.Id, w.Edge, ink.Place(w.From), ink.Place(w.To), ink.Number(w.Length), ink.Mark(w.Length), w.Kind is { } kind ? Words.Text(kind) : null))];

    public static JoistsAnswer Joists(JoistPlan joists, AnswerInk ink) => new(
        [.. joists.Members.Select(j => new JoistAnswer
        {
            Id = j.Id,
            Field = j.Field,
            At = ink.Number(j.At),
            AtText = ink.Mark(j.At),
            Face = ink.Number(j.Face),
            From = ink.Place(j.From),
            To = ink.Place(j.To),
            Support = j.Support,
        })],
        [.. joists.Bays.Select(b => new BayAnswer(
            b.Id, ink.Number(b.From), ink.Number(b.To), ink.Number(b.Width), ink.Mark(b.Width), ink.Number(b.Along?.From), ink.Number(b.Along?.To), b.RunDegrees is { } run ? Figures.Plain(run, 6) : null))],
        joists.Breaks.Count == 0 ? null : [.. joists.Breaks.Select(b => new RunBreakAnswer(b.Id, ink.Place(b.From), ink.Place(b.To), ink.Number(b.Length), ink.Mark(b.Length), b.Fields))]);

    public static IReadOnlyList<StepAnswer> Steps(IReadOnlyList<WorkStep> steps) =>
        [.. steps.Select(s => new StepAnswer
        {
            Id = s.Id,
            Text = s.Sentence.Text,
            Code = s.Sentence.Code,
            Params = AnswerInk.Params(s.Sentence),
            Touches = [.. s.Touches.Select(t => new TouchAnswer(t.Kind, t.Id))],
            Hold = s.Hold ? true : null,
        })];

    public static IReadOnlyList<AlternativeAnswer> Alternatives(IReadOnlyList<Alternative> alternatives) =>
        [.. alternatives.Select(a => new AlternativeAnswer
        {
            Code = a.Sentence.Code,
            Text = a.Sentence.Text,
            Params = AnswerInk.Params(a.Sentence),
            Of = a.Of,
            Saving = a.Saving is { } saving ? Mapping.Figures.Plain(saving, 6) : null,
        })];
}
