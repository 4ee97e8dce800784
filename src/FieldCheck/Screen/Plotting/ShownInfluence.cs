using System.Collections.Immutable;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Influence;

namespace FieldCheck.Screen.Plotting;

/// <summary>The influence line that the Plots view draws.</summary>
/// <param name="Beam">The beam.</param>
/// <param name="Figure">What it is of.</param>
/// <param name="Curve">The line.</param>
internal sealed record ShownInfluence(BuiltBeam Beam, InfluenceOf Figure, PlotCurve Curve)
{
    /// <summary>The line that is wanted; null where none is, or the beam has none such any more.</summary>
    /// <param name="state">The state.</param>
    internal static ShownInfluence? Of(ScreenState state) =>
        state.Influence is InfluenceChoice choice
        && new ShownCurves(state).Beam is BuiltBeam beam
        && FigureOf(beam, choice) is InfluenceOf figure
        && InfluenceCurve.Of(beam, figure, state.Preferences.Plots.IsSagDown) is PlotCurve curve
            ? new ShownInfluence(beam, figure, curve)
            : null;

    /// <summary>What a force at a place does, in lines.</summary>
    /// <param name="position">The place [m from the left end].</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    internal ImmutableArray<string> Lines(double position, int width) =>
        InfluenceCurve.Lines(Beam, Figure, Curve, position, width);

    private static InfluenceOf? FigureOf(BuiltBeam beam, InfluenceChoice choice)
    {
        if (choice.Support is null)
        {
            return choice.Position <= beam.Model.Length ? new InfluenceOf.Section(choice.Curve, choice.Position) : null;
        }

        int support = beam.Supports.ToList().FindIndex(named => named.Label == choice.Support);
        return support < 0 ? null : new InfluenceOf.Reaction(support);
    }
}
