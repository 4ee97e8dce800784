using FieldCheck.Reporting.Pictures;

namespace FieldCheck.Reporting.Paper;

/// <summary>
/// A part of a page, x to the right and y down from the top left [pt]. Closed set: the cases are the nested records.
/// </summary>
/// <param name="X">Its left end.</param>
/// <param name="Y">Where it stands: the base line of words, the top of all else.</param>
/// <param name="Element">What it is a part of; null: of nothing that is said, as a rule between rows.</param>
internal abstract record PaperMark(double X, double Y, PaperElement? Element)
{
    /// <summary>Words on one line.</summary>
    internal sealed record Words(double X, double Y, PaperElement? Element, string Text, PaperStyle Style)
        : PaperMark(X, Y, Element);

    /// <summary>A line to the right.</summary>
    internal sealed record Rule(double X, double Y, double Width, double Thickness) : PaperMark(X, Y, null);

    /// <summary>A drawing, so many times its own size.</summary>
    internal sealed record Drawing(double X, double Y, PaperElement? Element, Picture Picture, double Scale)
        : PaperMark(X, Y, Element);
}
