using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Influence;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Makes a curve to draw of an influence line, in the units of results for one unit of force.</summary>
public static class InfluenceCurve
{
    private const string SectionMark = "x";

    // Far above the rounding of the solver, far below what could be seen.
    private const double RoundingShare = 1e-9;

    /// <summary>The curve; null where the beam has none.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="figure">What it is of.</param>
    /// <param name="isSagDown">True: sagging moments are drawn below the zero line.</param>
    public static PlotCurve? Of(BuiltBeam beam, InfluenceOf figure, bool isSagDown)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(figure);
        if (InfluenceLines.Of(beam, figure) is not InfluenceLine line)
        {
            return null;
        }

        BeamWords words = new(beam);
        string force = words.Unit(QuantityKind.Force);
        bool isMoment = figure is InfluenceOf.Section { Curve: Curve.Moment };
        QuantityKind kind = isMoment ? QuantityKind.Moment : QuantityKind.Force;
        double one = UnitForce(force);
        return new PlotCurve
        {
            Length = beam.Model.Length,
            At = line.At,
            Breaks = figure is InfluenceOf.Section { Position: double at } && at > 0 && at < beam.Model.Length
                ? [0, at, beam.Model.Length]
                : [0, beam.Model.Length],
            Peaks = line.Peaks,
            Zeros = line.Zeros,
            Negligible = RoundingShare * line.Peaks.Max(peak => Math.Abs(peak.Value)),
            IsPositiveDown = isMoment && isSagDown,
            Marks = Marks(beam, figure),
            Edge = [Short(beam, figure), words.Unit(kind), $"for 1", force],
            Heading = $"influence line of {Name(words, figure)}",
            Number = value => words.Signed(value * one, kind),
            Say = value => words.Signed(value * one, kind),
            Place = words.Place,
        };
    }

    /// <summary>What a force at a place does, in words, broken into lines; at a jump, on both its sides.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="figure">What the line is of.</param>
    /// <param name="curve">The line.</param>
    /// <param name="position">The place [m from the left end].</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> Lines(
        BuiltBeam beam, InfluenceOf figure, PlotCurve curve, double position, int width)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(curve);
        BeamWords words = new(beam);
        string force = words.Unit(QuantityKind.Force);
        (double left, double right) = curve.At(position);
        bool isJump = Math.Abs(left - right) > curve.Negligible && position > 0 && position < curve.Length;
        string place = words.PlaceInFull(position);
        string value = isJump
            ? $"{Say(words, figure, left * UnitForce(force))} just left of it, {Say(words, figure, right * UnitForce(force))} just right"
            : Say(words, figure, (position >= curve.Length ? left : right) * UnitForce(force));
        return TextFlow.Wrap($"Influence line of {Name(words, figure)}: 1 {force} down at {place} gives {value}.", width, indent: 2);
    }

    private static string Say(BeamWords words, InfluenceOf figure, double value) => figure switch
    {
        InfluenceOf.Reaction => words.Vertical(value),
        InfluenceOf.Section { Curve: Curve.Moment } => words.SaySigned(value, QuantityKind.Moment),
        _ => words.SaySigned(value, QuantityKind.Force),
    };

    private static string Name(BeamWords words, InfluenceOf figure)
    {
        if (figure is InfluenceOf.Reaction reaction)
        {
            return $"{words.Beam.Supports[reaction.Support].Label} vertical";
        }

        InfluenceOf.Section section = (InfluenceOf.Section)figure;
        bool isAtSupport = words.Beam.Supports.Any(support => support.Support.Position == section.Position);
        string side = isAtSupport && section.Curve == Curve.Shear && section.Position < words.Beam.Model.Length ? "right of" : "at";
        return $"{PeakRow.NameOf(section.Curve)} {side} {words.Place(section.Position)}";
    }

    private static string Short(BuiltBeam beam, InfluenceOf figure) => figure switch
    {
        InfluenceOf.Reaction reaction => beam.Supports[reaction.Support].Label,
        InfluenceOf.Section section => PeakRow.NameOf(section.Curve),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static ImmutableArray<PlotMark> Marks(BuiltBeam beam, InfluenceOf figure)
    {
        PlotMark[] supports = [.. beam.Supports.Select(support => new PlotMark(support.Support.Position, support.Label))];
        return figure is InfluenceOf.Section section && supports.All(mark => mark.Position != section.Position)
            ? [.. supports, new PlotMark(section.Position, SectionMark)]
            : [.. supports];
    }

    // The unit that forces are shown in [N].
    private static double UnitForce(string unit) =>
        ((Reading<Quantity>.Accepted)QuantityReader.Read($"1 {unit}", QuantityKind.Force)).Value.Value;
}
