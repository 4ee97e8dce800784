using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Screen;

/// <summary>Draws the Plots view between title and message line: the beam and its curves, large.</summary>
internal static class PlotsViewPicture
{
    private static readonly ImmutableArray<Curve> Curves = [Curve.Shear, Curve.Moment, Curve.Deflection];

    /// <summary>The view; in a low window the curves that come first.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static ImmutableArray<PictureLine> Of(ScreenState state, int width, int height)
    {
        if (state.Shown.Beam is null || !PlotPicture.Has(state, Curve.Shear))
        {
            return ResultsPicture.Of(state, width, height);
        }

        ImmutableArray<Curve> curves =
            [.. Curves.Where(curve => PlotPicture.Has(state, curve)).Take(Math.Max(height / 4, 1))];
        int sketch = height >= 12 ? 4 : 0;
        int peaks = height >= 16 ? Math.Min(curves.Length, height / 8) : 0;
        int room = height - sketch - peaks;
        IEnumerable<PictureLine> plots = curves.SelectMany((curve, index) => PlotPicture.Diagram(
            state, curve, width, room * (index + 1) / curves.Length - room * index / curves.Length));
        return
        [
            .. PlotPicture.Sketch(state, width, sketch),
            .. plots,
            .. PlotPicture.Peaks(state, curves, width, peaks),
        ];
    }
}
