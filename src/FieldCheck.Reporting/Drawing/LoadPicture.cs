namespace FieldCheck.Reporting.Drawing;

/// <summary>One load as the sketch shows it.</summary>
/// <param name="From">Left end of what it covers [m].</param>
/// <param name="To">Right end of what it covers [m]; the same for a single place.</param>
/// <param name="Glyph">What it is drawn with at a place [m from the left end].</param>
/// <param name="Rank">The higher one is drawn where two loads share a column.</param>
/// <param name="Size">What it weighs in all [N], for the order of the labels.</param>
/// <param name="Number">Its number on the sheet; empty for own weight.</param>
/// <param name="Label">Its label: number and size.</param>
internal sealed record LoadPicture(
    double From, double To, Func<double, char> Glyph, int Rank, double Size, string Number, string Label)
{
    /// <summary>A load at one place that pushes up.</summary>
    internal const char Uplift = 'U';

    /// <summary>A spread load that pushes up.</summary>
    internal const char SpreadUplift = 'u';

    internal const char None = ' ';

    /// <summary>True: it is drawn below the beam, for it pushes up.</summary>
    internal static bool IsBelow(char glyph) => glyph is Uplift or SpreadUplift;
}
