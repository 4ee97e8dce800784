using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>What is said of shear, moment and axial force from mark to mark.</summary>
internal static class SectionForceWords
{
    /// <summary>A remark of its kind; null for any other.</summary>
    internal static ImmutableArray<string>? Of(HandRemark remark, WorkingWords words) => remark switch
    {
        HandRemark.Stretch stretch => [Stretch(stretch, words)],
        HandRemark.Jumps jumps => [$"At {words.Place(jumps.Place)}, what stands there added:"],
        HandRemark.ZeroShear { Load: HandStretchLoad.Uniform } =>
            ["The shear changes its sign here: it is nothing where V = w s, and there the moment has a peak."],
        HandRemark.ZeroShear =>
            ["The shear changes its sign here: it is nothing where w s + k s^2 / 2 = V, that is at s = 2 V / (w + root(w^2 + 2 k V)), the root with the sign of V; there the moment has a peak."],
        HandRemark.LoadTurns => ["The load changes from down to up on this stretch: it is nothing at one place, a mark of its own."],
        HandRemark.EndsWithNothing => ["Behind the right end there is no beam: V and M must have come to nothing."],
        HandRemark.HingeIsFree hinge => [$"In {WorkingNames.Hinge(hinge.Hinge)} the moment must have come to nothing:"],
        HandRemark.AxialForces => ["Axial force N, tension positive: behind each force along the beam, less what acts to the right."],
        _ => null,
    };

    private static string Stretch(HandRemark.Stretch stretch, WorkingWords words)
    {
        string place = $"From {words.Place(stretch.From)} to {words.Place(stretch.To)}";
        (string load, string rule) = stretch.Load switch
        {
            HandStretchLoad.Nothing => ("no load", "V stays, M grows by V times the length"),
            HandStretchLoad.Uniform =>
                ("an even load w", "V falls by w times the length, M grows by the mean V times the length"),
            HandStretchLoad.Varying =>
                ("a load from w left to w right", "V falls by the mean w times the length c, M grows by V c - (2 w left + w right) c^2 / 6"),
            _ => throw new UnreachableException(),
        };
        return stretch.IsFirst ? $"{place}, {load}: {rule}." : $"{place}, {load}:";
    }
}
