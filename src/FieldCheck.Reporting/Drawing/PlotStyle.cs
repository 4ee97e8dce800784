namespace FieldCheck.Reporting.Drawing;

/// <summary>How a diagram is drawn.</summary>
/// <param name="Glyphs">What it is drawn with.</param>
/// <param name="IsFilled">True: lightly filled between the zero line and the curve; false: outline only.</param>
/// <param name="Margin">Columns kept at the left edge for quantity, unit and convention; 0 for none.</param>
/// <param name="Reading">Where the reading line stands [m from the left end]; null for none.</param>
public sealed record PlotStyle(
    PlotGlyphs Glyphs = PlotGlyphs.Ascii, bool IsFilled = true, int Margin = 0, double? Reading = null);
