using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Lengths and places taken in another unit.</summary>
internal static class ExplanationLengths
{
    /// <summary>The units of lengths that are mixed up.</summary>
    internal static readonly UnitMixUp[] Units = [UnitMixUp.FootAndMetre, UnitMixUp.InchAndFoot];

    /// <summary>The figures of a beam with every length stretched [N or N·m]; null: they cannot fit.</summary>
    internal static double[]? Stretched(ExplanationBeam beam, double ratio)
    {
        double down = beam.Loads.Sum(load =>
            load.Factor * (ExplanationLoad.Down(load.Load) * (load.Load is Load.Distributed ? ratio - 1 : 0)));
        return beam.Fit.CouldFit(down) && double.IsFinite(ratio * beam.Model.Length)
            ? beam.On(Stretched(beam.Model, ratio))
            : null;
    }

    private static BeamModel Stretched(BeamModel model, double ratio)
    {
        BeamModel bare = new([.. model.Spans.Select(span => Stretched(span, ratio))], [], [], [], []);
        return new BeamModel(
            bare.Spans,
            [.. model.Supports.Select(support => ExplanationModels.Moved(support, At(support.Position)))],
            [.. model.Hinges.Select(At)],
            [.. model.Cases.Select(one => one with { Loads = [.. one.Loads.Select(load => Stretched(load, At))] })],
            []);

        // What stood at a joint stays at the joint, to the last bit.
        double At(double position)
        {
            int joint = model.JointPositions.IndexOf(position);
            return joint >= 0 ? bare.JointPositions[joint] : Math.Min(ratio * position, bare.Length);
        }
    }

    private static Span Stretched(Span span, double ratio) =>
        new(ratio * span.Length, span.FlexuralRigidity, span.AxialRigidity, span.ShearRigidity);

    private static Load Stretched(Load load, Func<double, double> at) => load switch
    {
        Load.Point point => new Load.Point(at(point.Position), point.Down, point.Right),
        Load.Couple couple => new Load.Couple(at(couple.Position), couple.Moment, couple.Side),
        Load.Distributed spread => new Load.Distributed(
            at(spread.From), at(spread.To), spread.StartIntensity, spread.EndIntensity, spread.ActsAlong),
        _ => throw new UnreachableException(),
    };
}
