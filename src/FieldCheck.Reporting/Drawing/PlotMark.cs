namespace FieldCheck.Reporting.Drawing;

/// <summary>A named place on the zero line of a diagram.</summary>
/// <param name="Position">Where it stands [m from the left end].</param>
/// <param name="Label">What it is called.</param>
public sealed record PlotMark(double Position, string Label);
