namespace FieldCheck.Sheet.Reading;

/// <summary>A value met while a text is being worked out, and where in the text it stands.</summary>
/// <param name="Value">In coherent SI.</param>
/// <param name="Dimension">What it is made of.</param>
/// <param name="Start">Where it starts, counted from 0.</param>
/// <param name="End">Just past its last character.</param>
internal readonly record struct Term(double Value, Dimension Dimension, int Start, int End)
{
    /// <summary>Half a unit of the last digit, while the term is one number as written; otherwise 0.</summary>
    internal double HalfDigit { get; init; }

    /// <summary>A unit was written somewhere in it.</summary>
    internal bool HasUnit { get; init; }

    /// <summary>Where the unit starts, while the term is one number with one unit; otherwise 0.</summary>
    internal int UnitStart { get; init; }

    /// <summary>It is one number as written, with its sign and unit: nothing was worked out.</summary>
    internal bool IsWritten { get; init; }

    /// <summary>A part of a whole, written in per cent.</summary>
    internal bool IsShare { get; init; }

    internal bool IsBare => !HasUnit && Dimension.IsNone;
}
