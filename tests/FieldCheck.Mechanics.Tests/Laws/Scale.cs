using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>How large each quantity is on this beam: tolerances are shares of these, never absolute.</summary>
internal sealed class Scale
{
    private readonly Dictionary<Curve, double> _sizes = [];

    internal Scale(BeamModel model, params BeamResponse[] responses)
    {
        SectionState[] states = [.. responses.SelectMany(response => Probes.Of(model, response)
            .SelectMany(x => new[] { response.At(x).Left, response.At(x).Right }))];
        Load[] loads = [.. model.Cases.SelectMany(one => one.Loads)];
        double couples = loads.OfType<Load.Couple>().Sum(one => Math.Abs(one.Moment));
        Reaction[] reactions = [.. responses.SelectMany(response => response.Reactions)];
        Force = loads.Sum(SizeOf)
            + states.Max(state => Math.Max(Math.Abs(state.Shear), Math.Abs(state.Axial)))
            + reactions.Max(one => Math.Abs(one.Horizontal) + Math.Abs(one.Vertical));
        Moment = (Force * model.Length) + couples + states.Max(state => Math.Abs(state.Moment))
            + reactions.Max(one => Math.Abs(one.Moment));
        double softest = model.Spans.Min(span => span.FlexuralRigidity);
        double slope = states.Max(state => Math.Abs(state.Slope));
        double stiffest = model.Spans.Max(span => span.FlexuralRigidity);
        Slope = slope + (states.Max(state => Math.Abs(state.Moment)) * model.Length / (stiffest + softest));
        Deflection = (Slope * model.Length) + states.Max(state => Math.Abs(state.Deflection));
        _sizes[Curve.Axial] = _sizes[Curve.Shear] = Force;
        _sizes[Curve.Moment] = Moment;
        _sizes[Curve.Slope] = Slope;
        _sizes[Curve.Deflection] = Deflection;
    }

    internal double Force { get; }

    internal double Moment { get; }

    internal double Slope { get; }

    internal double Deflection { get; }

    internal double Of(Curve curve) => _sizes[curve];

    private static double SizeOf(Load load) => load switch
    {
        Load.Point point => Math.Abs(point.Down) + Math.Abs(point.Right),
        Load.Distributed spread =>
            (spread.To - spread.From) * Math.Max(Math.Abs(spread.StartIntensity), Math.Abs(spread.EndIntensity)),
        _ => 0,
    };
}
