using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>How far a figure of a row may be off.</summary>
internal static class StatedAllowance
{
    /// <summary>What a row without a tolerance allows [–]; the default of the beam file.</summary>
    private const double DefaultShare = 0.02;

    /// <summary>The allowance beside one answer; a tolerance given as a force leaves a moment the default.</summary>
    internal static ReactionAllowance Of(
        StatedEntry row, ReactionComponent component, double halfDigit, StatedAgainst against, BuiltBeam beam)
    {
        bool isMoment = component.Kind == QuantityKind.Moment;
        double whole = isMoment ? GreatestMoment(against.Response) : LoadSizes.Total(beam.Model, against.Factors) + Rolling(against, beam);
        return Read(row) switch
        {
            Tolerance.OfFigure share => new ReactionAllowance(halfDigit, share.Ratio, 0, whole),
            Tolerance.OfForce force when !isMoment => new ReactionAllowance(halfDigit, 0, force.Value, whole),
            _ => new ReactionAllowance(halfDigit, DefaultShare, 0, whole),
        };
    }

    /// <summary>The sizes of the axles that are on the beam where a rolling load governs [N].</summary>
    private static double Rolling(StatedAgainst against, BuiltBeam beam)
    {
        if (against.Governs?.Rolling is not RollingPlace place)
        {
            return 0;
        }

        RollingLoad rolling = beam.Rolling[place.Rolling];
        double sense = place.IsReversed ? -1 : 1;
        return Math.Abs(against.Factors[rolling.Case]) * (1 + rolling.Impact) * rolling.Axles
            .Where(axle => place.Position + sense * axle.Offset is double at && at >= 0 && at <= beam.Model.Length)
            .Sum(axle => Math.Abs(axle.Down));
    }

    private static Tolerance? Read(StatedEntry row) =>
        row.Tolerance is string text && ToleranceReader.Read(text) is Reading<Tolerance>.Accepted accepted
            ? accepted.Value
            : null;

    private static double GreatestMoment(BeamResponse response)
    {
        Extremes moments = response.ExtremesOf(Curve.Moment);
        return Math.Max(Math.Abs(moments.Max.Value), Math.Abs(moments.Min.Value));
    }
}
