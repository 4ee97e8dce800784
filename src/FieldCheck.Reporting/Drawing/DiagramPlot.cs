using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Draws shear, moment, axial force and deflection as rows of text.</summary>
public static class DiagramPlot
{
    /// <summary>The picture of a curve.</summary>
    /// <param name="curve">What to draw.</param>
    /// <param name="width">Columns in all, the margin among them; 20 to 200.</param>
    /// <param name="height">Rows; 3 to 20.</param>
    /// <param name="style">How to draw it.</param>
    /// <returns>Exactly <paramref name="height"/> rows, none longer than <paramref name="width"/>.</returns>
    public static ImmutableArray<string> Draw(PlotCurve curve, int width, int height, PlotStyle style) =>
        throw new NotImplementedException();

    /// <summary>All peaks and zeros of a curve in words, broken into lines.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> PeakLines(PlotCurve curve, int width) => throw new NotImplementedException();
}
