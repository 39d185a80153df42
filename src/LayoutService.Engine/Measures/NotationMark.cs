namespace LayoutService.Engine.Measures;

/// <summary>What one mark of a written length is.</summary>
internal enum NotationKind
{
    /// <summary>A whole or decimal number.</summary>
    Number,

    /// <summary>A proper fraction of a tape.</summary>
    Fraction,

    /// <summary>A unit: its size stands in the mark's value, in 1/8000 mm.</summary>
    Unit,

    /// <summary>A dash.</summary>
    Dash,
}

/// <summary>One mark of a written length. <see cref="Text"/> is what was written, for the error sentence.</summary>
internal readonly record struct NotationMark(NotationKind Kind, decimal Value, string Text, bool Whole = false);
