using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Stated;

/// <summary>One figure that a supplier or a drawing states, and what it comes to.</summary>
public sealed record StatedFigure
{
    /// <summary>The row it stands in, counted from 0.</summary>
    public required int Row { get; init; }

    /// <summary>That row, as typed.</summary>
    public required StatedEntry Entry { get; init; }

    /// <summary>The support, as an index into those of the model.</summary>
    public required int Support { get; init; }

    /// <summary>The support's label.</summary>
    public required string Label { get; init; }

    /// <summary>Which component is stated.</summary>
    public required ReactionComponent Component { get; init; }

    /// <summary>The figure as typed.</summary>
    public required string Text { get; init; }

    /// <summary>The figure as read [N or N·m]: positive up, to the right, counter-clockwise.</summary>
    public required double Stated { get; init; }

    /// <summary>Half a unit of the last digit written [N or N·m]; 0 for fractions and what was worked out.</summary>
    public required double HalfDigit { get; init; }

    /// <summary>Plus or minus typed behind it [N or N·m]; 0 without.</summary>
    public double PlusOrMinus { get; init; }

    /// <summary>How far it may be off as it is written [N or N·m]: by what is typed behind it, by rounding at least.</summary>
    public double AsWritten => Math.Max(HalfDigit, PlusOrMinus);

    /// <summary>The answer it is held against; null where it is not judged.</summary>
    public StatedAgainst? Against { get; init; }

    /// <summary>It beside the computed one; null where it is not judged.</summary>
    public ReactionComparison? Comparison { get; init; }

    /// <summary>Why it is not judged, in words that follow a colon; empty where it is.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What it comes to.</summary>
    public ReactionVerdict Verdict => Comparison?.Verdict ?? ReactionVerdict.NotJudged;
}
