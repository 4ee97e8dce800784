using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Seen from the other side of the wall the same beam has the same answer, turned round.</summary>
public sealed class MirrorTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void BeamTurnedRound_HasTheSameAnswerTurnedRound() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse here = Answer.To(model);
        BeamResponse there = Answer.To(Mirrored(model));
        Scale scale = new(model, here);

        foreach ((Reaction one, Reaction other) in here.Reactions.Zip(there.Reactions.Reverse()))
        {
            Law.Equal(one.Vertical, other.Vertical, Rounding * scale.Force, "Vertical");
            Law.Equal(one.Horizontal, -other.Horizontal, Rounding * scale.Force, "Horizontal");
            Law.Equal(one.Moment, -other.Moment, Rounding * scale.Moment, "Moment");
            Law.Equal(one.Normal ?? 0, other.Normal ?? 0, Rounding * scale.Force, "Normal");
        }

        foreach (double x in Probes.Dense(model, here, inEach: 2))
        {
            (SectionState left, SectionState right) = here.At(x);
            (SectionState turnedLeft, SectionState turnedRight) = there.At(model.Length - x);
            Agrees(left, turnedRight, scale, $"left of {x:R}");
            Agrees(right, turnedLeft, scale, $"right of {x:R}");
        }
    });

    private static void Agrees(SectionState one, SectionState other, Scale scale, string where)
    {
        Law.Equal(one.Axial, other.Axial, Rounding * scale.Force, "N " + where);
        Law.Equal(one.Shear, -other.Shear, Rounding * scale.Force, "V " + where);
        Law.Equal(one.Moment, other.Moment, Rounding * scale.Moment, "M " + where);
        Law.Equal(one.Slope, -other.Slope, Rounding * scale.Slope, "Slope " + where);
        Law.Equal(one.Deflection, other.Deflection, Rounding * scale.Deflection, "Deflection " + where);
    }

    internal static BeamModel Mirrored(BeamModel model)
    {
        double length = model.Length;
        return new BeamModel(
            [.. model.Spans.Reverse()],
            [.. model.Supports.Reverse().Select(support => Mirrored(support, length))],
            [.. model.Hinges.Reverse().Select(hinge => length - hinge)],
            [.. model.Cases.Select(one => one with { Loads = Mirrored(one.Loads, length) })],
            model.Combinations,
            model.HasAbsoluteStiffness);
    }

    private static Support Mirrored(Support support, double length) => new(
        length - support.Position,
        support.Along,
        support.Across,
        support.Rotation,
        -support.SurfaceSlope,
        support.Settlement,
        -support.ImposedRotation,
        support.Action);

    private static ImmutableArray<Load> Mirrored(ImmutableArray<Load> loads, double length) =>
    [
        .. loads.Select(load => (Load)(load switch
        {
            Load.Point point => new Load.Point(length - point.Position, point.Down, -point.Right),
            Load.Couple couple => new Load.Couple(
                length - couple.Position, -couple.Moment, couple.Side == Side.Left ? Side.Right : Side.Left),
            Load.Distributed spread => new Load.Distributed(
                length - spread.To,
                length - spread.From,
                spread.ActsAlong ? -spread.EndIntensity : spread.EndIntensity,
                spread.ActsAlong ? -spread.StartIntensity : spread.StartIntensity,
                spread.ActsAlong),
            _ => throw new ArgumentOutOfRangeException(nameof(loads), load, "Not a load."),
        })),
    ];
}
