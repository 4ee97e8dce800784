using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Draws the beam with its supports, its loads and, once solved, its reactions.</summary>
public static class BeamSketch
{
    /// <summary>The sketch of a beam.</summary>
    /// <param name="beam">The beam as read.</param>
    /// <param name="answer">
    /// The combination whose loads and reactions are shown; null: the loads as typed, no reactions.
    /// </param>
    /// <param name="width">Columns in all, the margin among them; 20 or more.</param>
    /// <param name="style">How to draw it.</param>
    /// <returns>
    /// Labels of the loads, loads, beam, supports with reactions, then reactions that found no place beside their
    /// support; no row longer than <paramref name="width"/>.
    /// </returns>
    public static ImmutableArray<string> Draw(
        BuiltBeam beam, CombinationResponse? answer, int width, SketchStyle style) => throw new NotImplementedException();
}
