using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen.Plotting;

/// <summary>The curves of what is shown, each worked out once at most for a picture or a key.</summary>
internal sealed class ShownCurves
{
    private readonly Dictionary<Curve, PlotCurve?> _curves = [];
    private readonly PlotOptions _options;

    /// <param name="state">The state.</param>
    internal ShownCurves(ScreenState state)
    {
        _options = state.Preferences.Plots;
        if (state.Shown is { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands })
        {
            Beam = beam;
            Response = stands.Combinations[state.CombinationShown].Response;
            Envelope = state.View == ScreenView.Plots && _options.HasEnvelope ? Round(state, beam) : null;
        }
    }

    /// <summary>The envelope that is drawn round the curves; null: none is.</summary>
    internal Envelope? Envelope { get; }

    /// <summary>The beam; null where it cannot be worked out or cannot stand.</summary>
    internal BuiltBeam? Beam { get; }

    /// <summary>How it answers; null where there is no beam.</summary>
    internal BeamResponse? Response { get; }

    /// <summary>The curves of the Plots view that can be drawn, from its top down.</summary>
    internal ImmutableArray<Curve> Chosen => [.. _options.Curves.Where(curve => this[curve] is not null)];

    /// <summary>
    /// A curve; null where it cannot be drawn: deflections need a stiffness, axial forces something that acts along.
    /// </summary>
    /// <param name="curve">Which.</param>
    internal PlotCurve? this[Curve curve]
    {
        get
        {
            if (!_curves.TryGetValue(curve, out PlotCurve? plot))
            {
                plot = WorkedOut(curve);
                _curves.Add(curve, plot);
            }

            return plot;
        }
    }

    // That of the combination shown; none where that is all that may happen.
    private static Envelope? Round(ScreenState state, BuiltBeam beam)
    {
        CombinationBasis basis = beam.Model.Combinations[state.CombinationShown].Basis;
        return beam.Varies || beam.Model.Combinations.Count(other => other.Basis == basis) > 1
            ? state.Shown.Envelopes.FirstOrDefault(envelope => envelope.Basis == basis)
            : null;
    }

    private PlotCurve? WorkedOut(Curve curve)
    {
        if (Beam is null || (curve == Curve.Deflection && !Beam.Model.HasAbsoluteStiffness))
        {
            return null;
        }

        PlotCurve plot = PlotCurve.Of(Beam, Response!, curve, _options.IsSagDown) with
        {
            Band = Envelope is Envelope envelope ? PlotBand.Of(envelope, curve) : null,
        };
        bool isNothing = plot.Peaks.All(peak => Math.Abs(peak.Value) <= plot.Negligible)
            && (plot.Band is not PlotBand band || Math.Max(band.Max.Value, -band.Min.Value) <= plot.Negligible);
        return curve == Curve.Axial && isNothing ? null : plot;
    }
}
