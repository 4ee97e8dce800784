using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Pages;

/// <summary>What the answer takes for granted.</summary>
internal static class AssumptionLines
{
    internal static ImmutableArray<string> Of(Calculation calculation, BuiltBeam beam, BeamOutcome outcome) =>
    [
        outcome is BeamOutcome.CanMove
            ? "The beam is straight, lies level, and moves in one upright plane through its axis, a little."
            : "The beam is straight, lies level, and is loaded in one upright plane through its axis; it bends elastically, moves "
                + "little, and plane sections stay plane.",
        "Every support stands at a point, in the middle of its bearing, and holds what its kind says and nothing else.",
        .. outcome is BeamOutcome.CanMove ? [] : Bending(beam),
        .. beam.Supports.Any(support => support.Support.Action is SupportAction.PushesOnly or SupportAction.HoldsDownOnly)
            ? new[] { "A support that acts one way only lets go where it would have to act the other way." }
            : [],
        .. outcome is BeamOutcome.Stands && beam.Varies
            ? new[] { "Figures under a combination are with every pattern load present and no rolling load; the envelope covers the others." }
            : [],
        .. outcome is BeamOutcome.Stands && beam.Rolling.Length > 1
            ? new[] { "Of the rolling loads one is on the beam at a time, never two together." }
            : [],
        "Loads and combinations are those of the file: that they are the right ones, and that the limits and factors fit the "
            + "code in force, is for the person who signs.",
    ];

    private static IEnumerable<string> Bending(BuiltBeam beam) =>
    [
        beam.Model.Spans.Any(span => span.ShearRigidity is not null)
            ? "The flexibility in shear is counted."
            : "The flexibility in shear is not counted.",
        .. beam.UniformStiffnessAssumed
            ? new[] { "No stiffness was given: the beam was taken as uniform, and deflections are not known." }
            : [],
        .. beam.OneModulusAssumed
            ? new[] { "No modulus was given: all of the beam was taken to have the same one, and deflections are not known." }
            : [],
        .. beam.UniformAreaAssumed
            ? new[] { "Areas were not given: they were taken as uniform for the forces along the beam." }
            : [],
    ];
}
