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
        HandRemark.Jumps jumps => [Jumps(words.Place(jumps.Place), jumps)],
        HandRemark.ZeroShear { Load: HandStretchLoad.Uniform } zero =>
            [$"The shear changes its sign here: it is nothing where V = w s, at the distance s behind {words.Place(zero.From)}. There the moment has a peak."],
        HandRemark.ZeroShear zero =>
            [$"The shear changes its sign here: at the distance s behind {words.Place(zero.From)}, where w s + k s^2 / 2 = V, with k what w grows by per length: s = 2 V / (w + root(w^2 + 2 k V)), the root with the sign of V (0, where rounding brings what it is of below 0). There the moment has a peak."],
        HandRemark.LoadTurns => ["The load changes from down to up on this stretch: it is nothing at one place, a mark of its own."],
        HandRemark.EndsWithNothing => ["Behind the right end there is no beam: V and M must have come to nothing."],
        HandRemark.HingeIsFree hinge => [$"In {WorkingNames.Hinge(hinge.Hinge)} itself the moment must have come to nothing:"],
        HandRemark.AxialForces => ["Axial force N, tension positive, from left to right: each force to the right takes from it."],
        _ => null,
    };

    private static string Jumps(string place, HandRemark.Jumps jumps) => (jumps.HasForces, jumps.HasCouples) switch
    {
        (true, false) => $"At {place}, V plus what pushes up there, less what presses down:",
        (false, true) => $"At {place}, M less what turns counter-clockwise there:",
        _ => $"At {place}, V plus what pushes up there, less what presses down; M less what turns counter-clockwise there:",
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
