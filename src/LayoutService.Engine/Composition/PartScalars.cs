using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Scalars along and across the joists are from the outline's lowest coordinate: a part's are brought from its own outline to
/// the room's. Points need nothing.
/// </summary>
internal static class PartScalars
{
    public static CeilingPlan In(RunPart part, CeilingPlan plan)
    {
        var (along, across) = (new Length(part.Along), new Length(part.Across));

        // board that is screwed to the joists lies across them
        var (boardAlong, boardAcross) = plan.Strapping.Direct ? (across, along) : (along, across);
        return plan with
        {
            Joists = new JoistPlan(
                [.. plan.Joists.Members.Select(m => m with { At = m.At + across })],
                [.. plan.Joists.Bays.Select(b => b with
                {
                    From = b.From + across,
                    To = b.To + across,
                    Along = b.Along is { } stretch ? (stretch.From + along, stretch.To + along) : (along, along + new Length(part.Size)),
                    RunDegrees = part.RunDegrees,
                    Fields = [.. b.Fields.Select(f => part.Fields[f])],
                })]),
            Strapping = plan.Strapping with
            {
                Rows = [.. plan.Strapping.Rows.Select(r => r with
                {
                    At = r.At + along,
                    Marks = [.. r.Marks.Select(m => m with { NearEdge = m.NearEdge + along })],
                })],
            },
            Sheets = plan.Sheets with
            {
                Courses = [.. plan.Sheets.Courses.Select(c => c with { From = c.From + boardAcross, To = c.To + boardAcross })],
                Pieces = [.. plan.Sheets.Pieces.Select(p => p with
                {
                    Ends = [.. p.Ends.Select(e => e with { At = e.At + boardAlong, From = e.From + boardAcross, To = e.To + boardAcross })],
                })],
            },
        };
    }
}
