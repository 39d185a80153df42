namespace LayoutService.Api.Plans.Answers;

/// <summary>How far one row may still move on the day without breaking a rule, all other rows in place.</summary>
/// <param name="RowId">The row.</param>
/// <param name="TowardsLow">Towards the outline's lowest coordinate along the joists, where its tape mark is measured from.</param>
/// <param name="TowardsLowText">The same as tape text, rounded down.</param>
/// <param name="HeldLow">What holds it there: `wall`, `spacing`, `clear-gap`, `butt`, `fixture`, or `fixed` where it was cut or backed for its own place.</param>
/// <param name="TowardsHigh">Away from it.</param>
/// <param name="TowardsHighText">The same as tape text, rounded down.</param>
/// <param name="HeldHigh">What holds it there.</param>
public sealed record SlackAnswer(
    string RowId, decimal TowardsLow, string TowardsLowText, string HeldLow, decimal TowardsHigh, string TowardsHighText, string HeldHigh);
