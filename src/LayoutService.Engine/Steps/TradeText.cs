using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Steps;

/// <summary>Lengths as the texts of steps say them; figures of practice are chosen whole in the caller's units.</summary>
internal sealed record TradeText(UnitSystem Units, Func<Length, string> Tape)
{
    /// <summary>True when the board is screwed to the joists: there are no straps to speak of.</summary>
    public bool Direct { get; init; }

    /// <summary>The words for a size to cut; those for a place where there are no others.</summary>
    public Func<Length, string>? CutTape { get; init; }

    /// <summary>Who hangs the board; null when nobody said.</summary>
    public Crew? Crew { get; init; }

    /// <summary>Who hangs it, in words; never fewer than two people, and a lift where nobody said or one is alone: common practice, no source.</summary>
    public string Hands => Crew is not { People: >= 2 } crew ? "Two people and a lift"
        : $"{(crew.People == 2 ? "Two" : StepList.Number(crew.People))} people{(crew.Lift ? " and a lift" : string.Empty)}";

    /// <summary>What carries the board.</summary>
    public string Carrier => Direct ? "joist" : "strap";

    public string Of(decimal inches, decimal millimetres) => Tape(
        Units == UnitSystem.Imperial ? Length.FromInches(inches) : Length.FromMillimetres(millimetres));

    public string Of(Length length) => Tape(length);

    /// <summary>A size to cut, to the mark below, as the tables say it.</summary>
    public string Cut(Length length) => (CutTape ?? Tape)(length);
}
